// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <deque>
#include <vector>

#include "core/simulate/scenario.h"

namespace trueunit {

// The loop: instants to line level, 0 = space, 1 = mark, resting at mark. The shape of an edge is evaluated, not
// filtered, so its 50 % crossing lies exactly at the instant in either direction. No edge is quicker than two samples
// (10 to 90 %): the band of a real card allows none, and the place of an edge between samples would be lost.
class SimulatedLine {
public:
    SimulatedLine(const Scenario::Line& line, double rateHz);

    void push(double seconds, Condition to);  // in order of time, mark and space in turn
    double levelAt(double seconds);           // seconds never go back
    double leadSeconds() const;               // an edge begins at most this long before its instant

private:
    struct Shape {
        double span;    // seconds; what it is the span of depends on the edge
        double before;  // seconds from its beginning to the instant
        double after;   // seconds from the instant until it is complete
    };
    struct Moving {
        double seconds;
        Condition to;
    };

    Shape shapeOf(double riseSeconds) const;
    double progress(const Shape& shape, double sinceInstant) const;  // 0..1
    const Shape& shape(Condition to) const { return to == Condition::mark ? rise_ : fall_; }

    Scenario::Edge edge_;
    Shape rise_;
    Shape fall_;
    std::deque<Moving> ahead_;
    std::vector<Moving> moving_;
    double settled_ = 1.0;
};

}  // namespace trueunit
