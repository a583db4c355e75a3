// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <bit>
#include <cstdint>
#include <span>

namespace trueunit {

// The bits of a magnitude, in the order of the magnitudes themselves: whole numbers compare several at a time where
// floating point, with its values that are no number, does not.
constexpr std::int32_t magnitudeBits(float v) { return std::bit_cast<std::int32_t>(v) & 0x7FFFFFFF; }
constexpr std::int32_t kEndlessBits = 0x7F800000;  // infinity; what is no number lies above

// Of all samples; infinite or no number when one of them is.
inline float largestMagnitude(std::span<const float> samples) {
    std::int32_t most = 0;
    for (const float v : samples) most = std::max(most, magnitudeBits(v));
    return std::bit_cast<float>(most);
}

}  // namespace trueunit
