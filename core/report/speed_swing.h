// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/reading.h"

namespace trueunit {

// Slower than any shaft: the speed itself swings, motor and governor.
bool isSpeedSwing(const CyclicLine& line);
// Its amplitude as a displacement says little then; as a part of the speed: percent of that, either way.
double speedSwingPercent(const CyclicLine& line, double unitMs);
// Seen once a character, a slow swing of the speed looks like a line near a whole number of turns in each.
bool maySwingSlowly(const CyclicLine& line);

}  // namespace trueunit
