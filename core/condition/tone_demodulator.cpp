// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/condition/tone_demodulator.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

namespace trueunit {

namespace {
constexpr double kMeanSeconds = 0.0010;  // each of the three means, about
constexpr double kStrengthSeconds = 0.05;
constexpr double kFaint = 0.1;  // of the strength: no more evening out below it, so that noise is not blown up
}  // namespace

ToneDemodulator::ToneDemodulator(const Tones& tones, double rateHz) : tones_(tones) {
    const bool two = tones.kind == InputKind::twoTone;
    const double carrier = two ? 0.5 * (tones.lowHz + tones.highHz) : tones.lowHz;
    const double shift = tones.highHz - tones.lowHz;
    turn_ = std::polar(1.0, -2.0 * std::numbers::pi * carrier / rateHz);
    // A whole number of half periods of the carrier: the double frequency falls into a null.
    const double half = 0.5 / carrier;
    const double wanted = two ? std::min(kMeanSeconds, 0.6 / shift) : kMeanSeconds;
    const double length = half * std::max(1.0, std::round(wanted / half));
    const auto n = std::max<std::size_t>(1, static_cast<std::size_t>(std::lround(length * rateHz)));
    for (RunningMean& m : means_) m = RunningMean(n);
    delay_ = 1.5 * static_cast<double>(n - 1);
    rise_ = 1.37 * static_cast<double>(n) / rateHz;  // of the quadratic spline the three means make
    if (two) {
        const auto lag = std::max<std::size_t>(1, static_cast<std::size_t>(std::lround(0.15 * rateHz / shift)));
        lag_.assign(lag, {});
        delay_ += 0.5 * static_cast<double>(lag);
        follow_ = 1.0 / (kStrengthSeconds * rateHz);
        const auto early = std::max<std::size_t>(1, static_cast<std::size_t>(std::lround(half * rateHz)));
        for (RunningMean& m : early_) m = RunningMean(early);
        delay_ += static_cast<double>(early - 1);
    }
}

ToneDemodulator::Complex ToneDemodulator::evened(Complex mixed) {
    for (RunningMean& m : early_) mixed = m.push(mixed);
    const double strength = std::abs(mixed);
    strength_ += follow_ * (strength - strength_);
    return mixed / std::max(strength, kFaint * strength_ + 1e-12);
}

float ToneDemodulator::level(Complex baseband) {
    if (lag_.empty()) return static_cast<float>(2.0 * std::abs(baseband));
    const Complex before = std::exchange(lag_[lagAt_], baseband);
    lagAt_ = (lagAt_ + 1) % lag_.size();
    return static_cast<float>((std::conj(before) * baseband).imag());
}

void ToneDemodulator::push(std::span<const float> heard, std::vector<float>& line) {
    line.reserve(line.size() + heard.size());
    for (const float sample : heard) {
        const double x = std::isfinite(sample) ? std::clamp(static_cast<double>(sample), -8.0, 8.0) : 0.0;
        Complex v = x * oscillator_;
        oscillator_ *= turn_;
        if (++turns_ % 256 == 0) oscillator_ /= std::abs(oscillator_);
        if (!lag_.empty()) v = evened(v);
        for (RunningMean& m : means_) v = m.push(v);
        line.push_back(level(v));
    }
}

}  // namespace trueunit
