// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <qcustomplot.h>

#include <vector>

#include "widgets/panel.h"

namespace trueunit {

// What is written of a nudge, at x. Pixels.
struct NudgeWords {
    double x = 0.0;
    QString words;
    double width = 0.0;
};

// Where it is written: row 0 is the nearest to the drawing.
struct NudgePlace {
    const NudgeWords* words = nullptr;
    int row = 0;
    double left = 0.0, right = 0.0;
};

// In rows above the drawing, the youngest first; none lies on another or on the hairline up to another, and an older
// nudge that finds no room for all of its words goes without. Between the pixels left and right. Pure.
std::vector<NudgePlace> placeNudgeWords(const std::vector<NudgeWords>& youngestFirst, double left, double right,
                                        int rows);

// The nudges on the trail: an arrow head the way each went, and where there is room a hairline and above the drawing
// from what to what.
class TrailNudges : public QCPAbstractItem {
public:
    explicit TrailNudges(QCustomPlot* plot);

    void setSnapshot(const SnapshotPtr& snapshot) { snapshot_ = snapshot; }
    void setRows(int rows) { rows_ = rows; }  // of words above the drawing
    static double rowHeight();
    double selectTest(const QPointF&, bool, QVariant*) const override { return -1.0; }

protected:
    void draw(QCPPainter* painter) override;

private:
    void drawHead(QCPPainter& painter, const Nudge& nudge, double x) const;
    void drawWords(QCPPainter& painter, const NudgePlace& place) const;

    SnapshotPtr snapshot_;
    int rows_ = 0;
};

}  // namespace trueunit
