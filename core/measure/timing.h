// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/frame/character.h"
#include "core/frame/unit_fit.h"
#include "core/units.h"

namespace trueunit {

using Characters = std::span<const Character* const>;

// Pure functions of characters; definitions in DEVELOPERS.md.

// Largest |t - s - k unit| / unit in percent; empty without measurable instants. With the nominal unit this is gross,
// with the actual one synchronous start-stop distortion.
std::optional<double> startStopDistortion(Characters characters, double unitSeconds);

// Displacement of one instant in percent of a unit, late positive.
inline double displacementPercent(const Instant& i, double unitSeconds) {
    return 100.0 * (i.seconds - i.k * unitSeconds) / unitSeconds;
}

// Mean, scatter and extremes of the displacement of the instants that share k and direction, by k, to mark first.
struct InstantStatistics {
    int k = 0;
    Condition to = Condition::mark;
    long count = 0;
    double mean = 0.0;  // percent, late positive
    double rms = 0.0;   // standard deviation
    double least = 0.0;
    double largest = 0.0;
};
// afterShortPercent is taken off those that end an element of one unit.
std::vector<InstantStatistics> instantStatistics(Characters characters, double unitSeconds,
                                                 double afterShortPercent = 0.0);

// Start to start, seconds, while the tape runs without pause; with its 95 % half-width. Empty below two intervals.
std::optional<Measured> characterPeriod(Characters characters, double unitSeconds, int levels);

// The part of a unit within which an ideal receiver, started by each character's start instant and running at the
// given unit, may sample every level of every character correctly. Fractions of a unit, 0.5 = centre.
struct SamplingRange {
    double low = 0.0;
    double high = 1.0;
};
std::optional<SamplingRange> samplingRange(Characters characters, double unitSeconds, int levels);

}  // namespace trueunit
