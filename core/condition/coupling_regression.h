// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/condition/line_trial.h"

namespace trueunit {

// The coupling from the samples themselves, whatever form the edges have. A line that went through s^2/(s^2 + a s + b)
// is line = heard + a I1 + b I2 + a parabola, I1 and I2 the first and second integral of what is heard: linear in a and
// b. The line is taken as two levels with tails of either direction after the edges; the edges themselves are left out.
// Short pieces with a parabola of their own keep the integrated noise small. Pure.
// Out: none, one or two poles, as many as the samples ask for. Empty where too many samples are at the rail: what is
// cut off cannot be integrated.
std::optional<HighPass> regressCoupling(const Stretch& stretch);

}  // namespace trueunit
