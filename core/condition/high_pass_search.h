// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/condition/line_trial.h"

namespace trueunit {

// The high-pass under which a stretch comes nearest to two levels. Pure.
Trial bestOnePole(const Stretch& stretch);
Trial bestTwoPoles(const Stretch& stretch, int rounds);  // each round goes once along both axes and the valley

}  // namespace trueunit
