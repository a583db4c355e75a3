// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <limits>
#include <optional>
#include <span>

namespace trueunit {

// Where the input is cut off, by the converter at full scale or by a stage before it: of a sample at a rail nothing is
// known but that it was at least so much. Full scale = 1.
struct Rails {
    static constexpr float kFullScale = 0.999F;
    static constexpr float kNone = std::numeric_limits<float>::infinity();

    float low = -kFullScale;
    float high = kFullScale;

    static constexpr Rails none() { return {-kNone, kNone}; }
    bool reached(float v) const { return v >= high || v <= low; }
    float nearest() const { return std::min(high, -low); }  // what is smaller in magnitude is at neither
    bool operator==(const Rails&) const = default;
};

constexpr float kLargestSample = 8.0F;  // full scale; more is no sample

// A sample beyond full scale comes of floating point, which has no rail there.
constexpr bool beyondFullScale(float v) {
    return (v > 1.001F && v <= kLargestSample) || (v < -1.001F && v >= -kLargestSample);
}

// Rails at the largest or smallest level of a stretch, where many samples in a row lie at exactly that level: it is
// flattened there, or these are the levels of a line that is not coupled and free of noise. Empty: none but those at
// full scale.
std::optional<Rails> flatTops(std::span<const float> samples, double rateHz);
// Is there noise between the rails? Then no level is flat unless it is cut off.
bool noisyBetween(const Rails& rails, std::span<const float> samples);

}  // namespace trueunit
