// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/steady_tone.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace trueunit {

namespace {
constexpr double kSwellSeconds = 0.02;
}

void SteadyTone::render(float* out, unsigned long frames) noexcept {
    for (unsigned long n = 0; n < frames; ++n) {
        loudness_ = std::min(kAmplitude, loudness_ + kAmplitude / (kSwellSeconds * rateHz_));
        turns_ += kHz / rateHz_;
        turns_ -= std::floor(turns_);
        out[n] = static_cast<float>(loudness_ * std::sin(2.0 * std::numbers::pi * turns_));
    }
}

}  // namespace trueunit
