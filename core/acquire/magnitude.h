// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <array>
#include <bit>
#include <cstddef>
#include <cstdint>
#include <span>

namespace trueunit {

// The bits of a magnitude, in the order of the magnitudes themselves: whole numbers compare several at a time where
// floating point, with its values that are no number, does not.
constexpr std::int32_t magnitudeBits(float v) { return std::bit_cast<std::int32_t>(v) & 0x7FFFFFFF; }
constexpr std::int32_t kEndlessBits = 0x7F800000;  // infinity; what is no number lies above

// Of all samples; infinite or no number when one of them is. In lanes, so that no comparison waits for the one before.
inline float largestMagnitude(std::span<const float> samples) {
    constexpr std::size_t kLanes = 16;
    std::array<std::int32_t, kLanes> most{};
    std::size_t i = 0;
    for (; i + kLanes <= samples.size(); i += kLanes)
        for (std::size_t k = 0; k < kLanes; ++k) most[k] = std::max(most[k], magnitudeBits(samples[i + k]));
    for (; i < samples.size(); ++i) most[0] = std::max(most[0], magnitudeBits(samples[i]));
    return std::bit_cast<float>(*std::max_element(most.begin(), most.end()));
}

}  // namespace trueunit
