// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <vector>

#include "core/measure/displacement_pattern.h"

namespace trueunit {

// An account of the mean displacements by speed, bias, end and these levers, each free to be of any size, and the
// squares it leaves in variances of the means.
struct LeverAccount {
    std::vector<StandingOut> out;
    double weightedLeft = 0.0;
};

bool touches(const StandingOut& out, int k, Condition to);
double varianceOf(const InstantStatistics& place);  // of its mean

// Every account by so many levers, one or two. Those that these places cannot tell from speed, bias and end, or the
// levers from each other, are not among them. Pure; some microseconds.
std::vector<LeverAccount> leverAccounts(std::span<const InstantStatistics> places, int levels, std::size_t levers);

}  // namespace trueunit
