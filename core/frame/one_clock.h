// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

#include "core/frame/character.h"

namespace trueunit {

// Data on one running clock (split-phase, synchronous) falls into start-stop characters here and there by chance: then
// some characters have no stop, and the others follow each other after now one, now two whole units and never anything
// between. A start-stop machine has one length of stop, or pauses of any length. The unit in seconds.
bool runsOnOneClock(std::span<const Character* const> characters, double unitSeconds);

}  // namespace trueunit
