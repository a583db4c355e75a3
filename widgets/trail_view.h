// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "core/report/smoothing.h"
#include "core/report/trail_line.h"
#include "widgets/panel.h"

class QCPGraph;
class QCPItemRect;
class QCustomPlot;
class QToolButton;

namespace trueunit {

class TrailNudges;

// The bias against time, newest at the right, or in its place the speed. Every turn of the eccentric shows as a step of
// the bias, the nudges found are marked. Limit band behind, the uncertainty lightly about the line. The line is broken
// where no character came; where the window was changed, a rule across says over how many characters the bias is taken
// from there on.
class TrailView : public Panel {
    Q_OBJECT

public:
    explicit TrailView(QWidget* parent = nullptr);

    void setFrozen(bool frozen);   // its right end is then the frozen moment, not now
    void setSpan(double seconds);  // 10 .. 3,600
    double span() const { return span_; }
    void setOf(TrailOf of);
    TrailOf of() const { return of_; }
    void setEvidence(
        const EvidencePlaces& places);  // of the chosen finding; where it rests on the speed, that is shown
    int pointsShown() const;

    QSize sizeHint() const override { return {470, 300}; }
    QSize minimumSizeHint() const override { return {240, 140}; }

protected:
    void refresh(const Snapshot& snapshot) override;

private:
    // Another one asks for another drawing.
    struct Ground {
        std::uint64_t newest = 0;
        double bias = 0.0, biasLimit = 0.0, speedLimit = 0.0;  // percent
        std::optional<double> nominalBaud;
        std::size_t nudges = 0;
        bool operator==(const Ground&) const = default;
    };

    void dress();
    void makeTool();
    void draw(const Snapshot& snapshot);
    void fillLine(double now);
    void chooseRange();
    std::vector<SmoothingChange> changesInView() const;
    void ruleChanges(const std::vector<SmoothingChange>& changes);
    void rule();
    void makeRoomForWords();
    void say(const Snapshot& snapshot);
    QStringList remarks() const;  // the longest first
    QString described(const Snapshot& snapshot) const;

    QCustomPlot* plot_;
    QCPItemRect* band_;
    TrailNudges* nudges_;
    QCPGraph *lower_, *upper_, *line_, *changes_;
    QToolButton* speedButton_;
    TrailOf of_ = TrailOf::bias;
    bool ofFinding_ = false;  // the speed is shown for the chosen finding's sake
    TrailLine drawn_;
    double span_ = 120.0;
    double end_ = 0.0;  // the scale runs from minus to plus this, percent
    bool frozen_ = false;
    Ground ground_;  // as drawn
    double drawnSeconds_ = 0.0;
};

}  // namespace trueunit
