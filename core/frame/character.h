// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <vector>

#include "core/units.h"

namespace trueunit {

// A significant instant inside a character, nominally k units after its start.
struct Instant {
    int k = 0;  // 1 .. levels + 1; the last is the beginning of stop
    Condition to = Condition::mark;
    double seconds = 0.0;  // after the start instant
};

// One start-stop character as it came. Seconds on the corrected clock.
struct Character {
    std::uint64_t number = 0;  // counts since the input started
    unsigned code = 0;         // level 1 is bit 0
    bool stopPresent = true;   // false: framing error; its instants prove nothing
    bool regular = true;       // false: two instants claim one place
    bool afterGap = false;     // samples were lost, or the framing began anew, before it
    double start = 0.0;        // seconds since the input started
    int bounces = 0;
    double longestBounceSeconds = 0.0;
    std::vector<Instant> instants;

    bool measurable() const { return stopPresent && regular; }
};

}  // namespace trueunit
