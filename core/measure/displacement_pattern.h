// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/measure/timing.h"

namespace trueunit {

// Instants that stand out of the account by speed, bias and end distortion: those of one lever.
struct StandingOut {
    enum class Which {
        both,     // at k, to mark and to space alike
        marks,    // of one level: its beginning at k, its end at k + 1
        toMark,   // at k
        toSpace,  // at k
    };
    int k = 0;  // the level whose lever it is; levels + 1 = the stop
    Which which = Which::both;
    Measured percent;  // late positive
};

// The mean displacements of the instants explained by as few causes as will do: the speed moves them in proportion to
// k, a contact's offset all to mark alike, an end offset all to space alike, a lever one k. A least-squares fit that
// knows of speed, bias and end only would spread one lever's fault over all three.
struct DisplacementPattern {
    double unitPercent = 0.0;      // the unit is longer than the one the means were taken with by this
    Measured bias;                 // percent, marking positive
    Measured end;                  // percent, marking positive
    std::vector<StandingOut> out;  // worst first, two at most
    double left = 0.0;             // rms of the means that nothing explains, percent
    // What ends an element of one unit is displaced by this, percent, late positive; bias, end and levels are without
    // it. Empty where that is not the case.
    std::optional<Measured> afterShort{};

    bool pullsAtReadings() const { return !out.empty() || afterShort; }
};

// Empty with fewer than six places of five instants each. Pure.
std::optional<DisplacementPattern> displacementPattern(Characters characters, double unitSeconds, int levels);
std::optional<DisplacementPattern> displacementPattern(std::span<const InstantStatistics> instants, int levels);

}  // namespace trueunit
