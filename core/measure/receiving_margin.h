// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/measure/timing.h"

namespace trueunit {

// An instant that bounds where an ideal receiver may sample a level.
struct BoundingInstant {
    double fraction = 0.0;  // of a unit within the level, 0.5 = centre
    const Character* character = nullptr;
};

// One level over all characters. Sampled earlier than the latest beginning of it, a level reads as the one before (the
// first as the start); sampled later than the earliest end, as the one after (the last as the stop). Empty where no
// character of the window has an instant there.
struct LevelRange {
    int level = 0;  // 1 = first sent
    std::optional<BoundingInstant> low;
    std::optional<BoundingInstant> high;
};

// By an ideal receiver that starts at each character's start instant and runs at the given unit.
std::vector<LevelRange> levelRanges(Characters characters, double unitSeconds, int levels);

// What is left of a range for a receiver that must see the level for part of a unit about its sampling point.
constexpr SamplingRange withSamplingWindow(SamplingRange range, double windowUnits) {
    return {range.low + 0.5 * windowUnits, range.high - 0.5 * windowUnits};
}

}  // namespace trueunit
