// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

#include "core/frame/character.h"

namespace trueunit {

// Data on one running clock (split-phase, synchronous) falls into start-stop characters here and there by chance, at
// the clock's speed or another one: then the starts are whole periods of that clock apart, now so many, now one more,
// and never anything between; of many characters some have no stop. A start-stop machine has one length of stop, give
// or take, or pauses of any length. The unit that they were framed with in seconds, positive.
bool runsOnOneClock(std::span<const Character* const> characters, double unitSeconds);

}  // namespace trueunit
