// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/measure/displacements.h"

namespace trueunit {

// One periodic line in displacements at uneven times, with what it takes away from each.
struct PeriodicPart {
    double hz = 0.0;
    double amplitude = 0.0;  // percent
    double falseAlarm = 1.0;
    bool shiftsStart = false;  // the starts of the characters swing with it, as they do with a drive whose speed swings
    std::vector<double> part;  // per displacement
};

// Looks for the strongest line between lowestHz and highestHz: a transform of the displacements laid on an even grid
// proposes frequencies, least squares at the true times decides (N. R. Lomb, 1976, from memory). A shaft that shifts
// every instant shifts the start of the character too: both a line in the instants alone and one in instants and
// start are tried. The false-alarm probability counts the independent frequencies looked at and measures a line
// against the neighbourhood, so that coloured noise does not pass for a line. Empty when there is too little.
std::optional<PeriodicPart> strongestLine(std::span<const Displaced> displaced, double lowestHz, double highestHz);

}  // namespace trueunit
