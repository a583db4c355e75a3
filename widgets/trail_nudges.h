// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <qcustomplot.h>

#include "widgets/panel.h"

namespace trueunit {

// The nudges on the trail: a hairline where each was, an arrow head the way it went, and where there is room from what
// to what.
class TrailNudges : public QCPAbstractItem {
public:
    explicit TrailNudges(QCustomPlot* plot);

    void setSnapshot(const SnapshotPtr& snapshot) { snapshot_ = snapshot; }
    double selectTest(const QPointF&, bool, QVariant*) const override { return -1.0; }

protected:
    void draw(QCPPainter* painter) override;

private:
    void drawWords(QCPPainter& painter, const Nudge& nudge, double x, double right) const;

    SnapshotPtr snapshot_;
};

}  // namespace trueunit
