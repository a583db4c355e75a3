// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <span>

#include "core/frame/character.h"
#include "core/units.h"

namespace trueunit {

// The actual unit and the mean delays, by least squares over all instants of some characters:
//     t - s = k T + a [to mark] + b [to space].
// Seconds. Uncertainties are 95 % half-widths from the scatter of whole characters about the fit (each character's
// instants share its start instant and whatever moves it, so the character is what repeats). Values the instants
// cannot tell apart are empty.
struct UnitFit {
    Measured unit;
    std::optional<Measured> toMark;   // a
    std::optional<Measured> toSpace;  // b
    std::size_t characters = 0;       // that entered
    std::size_t instants = 0;
    double rms = 0.0;  // of what the fit leaves
};

// Characters without a stop or with misplaced instants do not enter. With a unit given it is taken as exact and only
// the delays are fitted. Empty when the instants do not determine the unit.
std::optional<UnitFit> fitUnit(std::span<const Character* const> characters,
                               std::optional<double> unitSeconds = std::nullopt);

// Two-sided 95 % point of Student's distribution (Abramowitz and Stegun, 26.7.5, from memory); 3 and more degrees of
// freedom within 1 %.
double studentFactor(double degreesOfFreedom);

}  // namespace trueunit
