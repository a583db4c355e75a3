// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/frame/unit_fit.h"
#include "core/measure/displacement_pattern.h"
#include "core/measure/timing.h"
#include "core/report/reading.h"

namespace trueunit {

// Speed, character period and stop of a window; clockPercent is what the sound card's clock may add, 95 %.
SpeedReading speedReading(const UnitFit& fit, Characters window, const std::optional<StandardSpeed>& nominal,
                          int levels, double clockPercent);

// One lever out of place draws the unit along, by what setting it aside moves it. How fast the shaft turns lies
// between: the stated uncertainties grow by that. Needs a speed.
std::optional<double> speedErrorBy(const DisplacementPattern& pattern, const SpeedReading& speed);
void doubtSpeed(SpeedReading& speed, const DisplacementPattern& pattern);

}  // namespace trueunit
