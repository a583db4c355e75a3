// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acquire/tone_watch.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace trueunit {

namespace {

constexpr double kFrameSeconds = 0.5;
constexpr std::array kBesideHz = {-91.0, -77.0, 77.0, 91.0};  // beyond the reach of the tone that beats with it
constexpr double kStandsOut = 10.0;                           // in power, against beside and against before
constexpr double kFaintest = 1e-5;                            // amplitude of full scale, -100 dB
constexpr double kForget = 0.9;                               // of the quiet power, each frame

}  // namespace

ToneWatch::ToneWatch(double rateHz, double toneHz) : frame_(static_cast<std::size_t>(kFrameSeconds * rateHz)) {
    const auto coefficient = [rateHz](double hz) { return 2.0 * std::cos(2.0 * std::numbers::pi * hz / rateHz); };
    resonances_[0].coefficient = coefficient(toneHz);
    for (std::size_t i = 0; i < kBesideHz.size(); ++i)
        resonances_[i + 1].coefficient = coefficient(toneHz + kBesideHz[i]);
}

void ToneWatch::push(std::span<const float> samples, bool playing) {
    for (const float s : samples) {
        const double turn = 2.0 * std::numbers::pi * static_cast<double>(filled_) / static_cast<double>(frame_);
        const double windowed = static_cast<double>(s) * 0.5 * (1.0 - std::cos(turn));
        for (Resonance& r : resonances_) r.push(windowed);
        if (++filled_ == frame_) judge(playing);
    }
}

void ToneWatch::judge(bool playing) {
    const double tone = resonances_[0].power();
    double beside = 0.0;
    for (std::size_t i = 1; i < resonances_.size(); ++i) beside = std::max(beside, resonances_[i].power());
    const double faintest = kFaintest * 0.25 * static_cast<double>(frame_);  // of a tone through the window
    if (!playing) {
        quiet_ = std::max(tone, kForget * quiet_.value_or(0.0));
        times_ = 0;
    } else {
        const bool stands = tone > kStandsOut * std::max(beside, quiet_.value_or(0.0)) && tone > faintest * faintest;
        times_ = stands ? times_ + 1 : 0;
    }
    filled_ = 0;
    for (Resonance& r : resonances_) r.last = r.beforeLast = 0.0;
}

}  // namespace trueunit
