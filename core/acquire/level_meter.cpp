// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acquire/level_meter.h"

#include <algorithm>
#include <cmath>

#include "core/acquire/magnitude.h"

namespace trueunit {

std::uint64_t LevelMeter::clippedOf(std::span<const float> samples) const {
    const auto cut = [this](float v) { return std::isfinite(v) && rails_.reached(v); };
    return static_cast<std::uint64_t>(std::count_if(samples.begin(), samples.end(), cut));
}

void LevelMeter::push(std::span<const float> samples, double rateHz) {
    float most = largestMagnitude(samples);
    if (!(most < Rails::kNone)) {
        most = 0.0F;
        for (const float v : samples)  // what is no number counts for nothing
            if (std::isfinite(v)) most = std::max(most, std::abs(v));
    }
    if (beyondFullScale(most) && !railsKnown_) {
        rails_ = Rails::none();
        clipped_ = 0;
    }
    const auto clips = most < rails_.nearest() ? std::uint64_t{0} : clippedOf(samples);
    count_ += samples.size();
    clipped_ += clips;
    peak_ = std::max(peak_, most);
    const auto keep = static_cast<float>(std::exp(-static_cast<double>(samples.size()) / (0.1 * rateHz)));
    recent_ = std::max(most, recent_ * keep);
    clippingNow_ = clips > 0 || (clippingNow_ && recent_ > 0.9F * rails_.nearest());
}

}  // namespace trueunit
