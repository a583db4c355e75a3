// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/report/smoothing.h"
#include "widgets/panel.h"

class QCPGraph;
class QCPItemRect;
class QCustomPlot;

namespace trueunit {

class TrailNudges;

// The bias against time, newest at the right: every turn of the eccentric shows as a step, the nudges
// found are marked. Limit band behind, the uncertainty lightly about the line. The line is broken where no character
// came; where the window was changed, a rule across says over how many characters it is taken from there on.
class BiasTrail : public Panel {
    Q_OBJECT

public:
    explicit BiasTrail(QWidget* parent = nullptr);

    void setFrozen(bool frozen);   // its right end is then the frozen moment, not now
    void setSpan(double seconds);  // 10 .. 3,600
    double span() const { return span_; }
    int pointsShown() const;

    QSize sizeHint() const override { return {470, 300}; }
    QSize minimumSizeHint() const override { return {240, 140}; }

protected:
    void refresh(const Snapshot& snapshot) override;

private:
    void draw(const Snapshot& snapshot);
    void fillLine(const Snapshot& snapshot);
    void chooseRange(const Snapshot& snapshot);
    std::vector<SmoothingChange> changesInView() const;
    void ruleChanges(const std::vector<SmoothingChange>& changes);
    void rule();
    void makeRoomForWords();
    void say(const Snapshot& snapshot);

    QCustomPlot* plot_;
    QCPItemRect* band_;
    TrailNudges* nudges_;
    QCPGraph *lower_, *upper_, *line_, *changes_;
    double span_ = 120.0;
    double least_ = 0.0, most_ = 0.0;  // percent, of what is shown
    double end_ = 0.0;                 // the scale runs from minus to plus this, percent
    bool frozen_ = false;
    TrailPoint newest_;  // as drawn
    std::size_t drawnNudges_ = 0;
    double drawnSeconds_ = 0.0, drawnLimit_ = 0.0;
};

}  // namespace trueunit
