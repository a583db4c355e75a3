// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acquire/level_meter.h"

#include <algorithm>
#include <bit>
#include <cmath>

#include "core/acquire/magnitude.h"

namespace trueunit {

void LevelMeter::push(std::span<const float> samples, double rateHz) {
    float most = largestMagnitude(samples);
    std::int32_t clips = 0;
    if (!(most < kClip)) {
        std::int32_t bits = 0;
        for (const float v : samples) {  // what is no number counts for nothing
            const std::int32_t finite = magnitudeBits(v) < kEndlessBits ? magnitudeBits(v) : 0;
            bits = std::max(bits, finite);
            clips += finite >= magnitudeBits(kClip) ? 1 : 0;
        }
        most = std::bit_cast<float>(bits);
    }
    count_ += samples.size();
    clipped_ += static_cast<std::uint64_t>(clips);
    peak_ = std::max(peak_, most);
    const auto keep = static_cast<float>(std::exp(-static_cast<double>(samples.size()) / (0.1 * rateHz)));
    recent_ = std::max(most, recent_ * keep);
    clippingNow_ = clips > 0 || (clippingNow_ && recent_ > 0.9F);
}

}  // namespace trueunit
