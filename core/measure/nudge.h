// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

#include "core/units.h"

namespace trueunit {

// A step of the bias that stayed: somebody turned the eccentric, or something gave way. Percent of the nominal unit,
// marking positive, 95 %.
struct Nudge {
    std::uint64_t number = 0;   // of the first character after it
    double seconds = 0.0;       // when that started, since the input started
    std::uint64_t foundBy = 0;  // number of the character that proved it
    Measured before;            // over the last characters before it, at most 32
    Measured after;             // over the first ones after it, at most 32; grows firmer as they come
    Measured step;              // after less before
};

}  // namespace trueunit
