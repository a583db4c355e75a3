// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>

#include "core/frame/unit_fit.h"
#include "core/measure/timing.h"

namespace trueunit {

// Shortest window whose own characters give the unit.
constexpr std::size_t kUnitCharacters = 32;

// Unit, bias and end of a window. A short one takes the unit from the last characters, `recent`: its own could not tell
// speed from bias; and shares its scatter with those since the last nudge.
std::optional<UnitFit> fitWindow(Characters window, Characters recent, std::uint64_t settledSince = 0);

}  // namespace trueunit
