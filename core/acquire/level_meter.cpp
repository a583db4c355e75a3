// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acquire/level_meter.h"

#include <algorithm>
#include <bit>
#include <cmath>

#include "core/acquire/magnitude.h"

namespace trueunit {

void LevelMeter::push(std::span<const float> samples, double rateHz) {
    std::int32_t bits = 0;
    std::int32_t clips = 0;
    for (const float v : samples) {
        bits = std::max(bits, magnitudeBits(v));
        clips += magnitudeBits(v) >= magnitudeBits(kClip) ? 1 : 0;
    }
    if (bits >= kEndlessBits) {  // what is no number counts for nothing
        bits = clips = 0;
        for (const float v : samples) {
            if (!std::isfinite(v)) continue;
            bits = std::max(bits, magnitudeBits(v));
            clips += std::abs(v) >= kClip ? 1 : 0;
        }
    }
    const auto most = std::bit_cast<float>(bits);
    count_ += samples.size();
    clipped_ += static_cast<std::uint64_t>(clips);
    peak_ = std::max(peak_, most);
    const auto keep = static_cast<float>(std::exp(-static_cast<double>(samples.size()) / (0.1 * rateHz)));
    recent_ = std::max(most, recent_ * keep);
    clippingNow_ = clips > 0 || (clippingNow_ && recent_ > 0.9F);
}

}  // namespace trueunit
