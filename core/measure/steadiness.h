// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>

#include "core/measure/decomposition.h"
#include "core/measure/timing.h"

namespace trueunit {

constexpr long kFewestSteadyBlocks = 6;  // of eight characters, over which a speed is known to stay or not
constexpr double kWanderRatio = 4.0;
constexpr double kLeastWander = 0.12;  // percent

// How evenly the shaft turns and the clutch lets go, from one character to the next.
struct Steadiness {
    long intervals = 0;         // start to start, of neighbours
    double runningShare = 0.0;  // of them that belong to a tape running without pause
    double stopScatter =
        0.0;  // units; of the interval from one character to the next, slow changes and lines set aside
    double stopScatterTrimmed = 0.0;  // the same without the few largest steps: of a stop that is mostly regular, small
    double wander = 0.0;              // percent; standard deviation of the unit over eight characters beyond chance
    double wanderRatio = 1.0;         // variance of those units over what chance makes of it
    long blocks = 0;                  // of eight characters
    double stopSpread = 0.0;          // units; standard deviation of the interval within eight characters

    bool wanders() const {
        return blocks >= kFewestSteadyBlocks && wanderRatio >= kWanderRatio && wander >= kLeastWander;
    }
};

// Lines quicker than a few characters are taken out first: they are the gears' doing. Empty below ten intervals.
std::optional<Steadiness> steadinessOf(Characters characters, double unitSeconds, int levels,
                                       std::span<const PeriodicLine> lines);

// Slower lines than this belong to the speed itself: motor and governor, not a shaft.
constexpr double kSlowestShaftHz = 0.45;

}  // namespace trueunit
