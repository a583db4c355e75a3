// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

#include "core/measure/bias_scatter.h"
#include "core/units.h"

namespace trueunit {

// The mean bias of some neighbouring characters, weighted; one standard deviation as its uncertainty.
Measured meanBias(std::span<const BiasPoint> points, const BiasScatter& scatter);

// How surely the newest characters stand apart from those before them, as the standard deviations of a normal variable
// that are as rare; 0 when they do not. A step counts when it is large enough to be worth a word, not carried by one
// character alone, and not the trace of a changed speed: that displaces every instant by its place, a nudge those to
// mark only, and by the same amount.
double contrastOf(std::span<const BiasPoint> before, std::span<const BiasPoint> newest, const BiasScatter& scatter);

// Student's t as the normal deviate of the same rarity (D. L. Wallace, 1959, from memory): within 1 % in the tails
// from five degrees of freedom on.
double normalDeviateOf(double t, double degreesOfFreedom);

inline constexpr double kLeastStepPercent = 0.4;  // a smaller one is no nudge

}  // namespace trueunit
