// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/measure/displacements.h"

namespace trueunit {

// What became otherwise in the midst of some characters: a screw was turned, a governor sagged. Percent of a unit.
struct Changes {
    std::size_t unknowns = 0;  // fitted, of n displacements
    // Of the bias, first and last stretch against the mean of all, and where the last one begins; empty: it held.
    struct OfBias {
        double first = 0.0, last = 0.0;
        std::size_t since = 0;  // character
    };
    std::optional<OfBias> bias;
};

// Takes out of displacements about their means what changes by steps, four at most, or drifts: instants to mark, to
// space, and all in proportion to their place, as the speed moves them. A step is one where it says more of
// the displacements than the unknowns that it costs (G. Schwarz, 1978, from memory). Empty where nothing changed. Pure.
std::optional<Changes> takeOutChanges(std::vector<Displaced>& displaced);

// What n displacements cost that leave these squares after so many unknowns, by the same rule; the less the better.
double costOf(double squares, std::size_t n, std::size_t unknowns);

}  // namespace trueunit
