// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <qcustomplot.h>

#include <array>

#include "widgets/panel.h"

namespace trueunit {

// The nudges on the trail: a hairline where each was, an arrow head the way it went, and from what to what, in
// rows under each other where they would not fit side by side.
class TrailNudges : public QCPAbstractItem {
public:
    explicit TrailNudges(QCustomPlot* plot);

    void setSnapshot(const SnapshotPtr& snapshot) { snapshot_ = snapshot; }
    double selectTest(const QPointF&, bool, QVariant*) const override { return -1.0; }

protected:
    void draw(QCPPainter* painter) override;

private:
    static constexpr std::size_t kWordRows = 3;
    void drawWords(QCPPainter& painter, const Nudge& nudge, double x, std::array<double, kWordRows>& rights) const;

    SnapshotPtr snapshot_;
};

}  // namespace trueunit
