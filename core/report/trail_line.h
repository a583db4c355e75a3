// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/report/snapshot.h"

namespace trueunit {

enum class TrailOf { bias, speed };

inline constexpr double kTrailBreakSeconds = 3.0;  // longer without a character: the line is not drawn through
inline double trailStep(TrailOf of) { return of == TrailOf::bias ? 5.0 : 1.0; }  // percent, in which its scale moves

// One quantity against time, as the window and the report draw it.
struct TrailLine {
    struct Point {
        double seconds = 0.0;      // since the input started
        double percent = 0.0;      // of a unit, or of the speed
        double uncertainty = 0.0;  // 95 %
    };

    std::vector<Point> points;  // oldest first
    double limit = 0.0;         // percent either way; 0: none holds
    bool aboutMean = false;     // no nominal speed is known: the error is that against the mean of what is shown
};

// Of what the snapshot holds from `since` on. Pure.
TrailLine trailLine(const Snapshot& snapshot, TrailOf of, double since = 0.0);

}  // namespace trueunit
