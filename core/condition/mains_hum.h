// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/condition/line_trial.h"

namespace trueunit {

// Are the transitions seen in a stretch of input made by the mains, with whatever harmonics? Then around them each of
// their periods is like the one before. Keying never is: its characters take no such period. Pure.
bool isMainsHum(const Stretch& stretch);

}  // namespace trueunit
