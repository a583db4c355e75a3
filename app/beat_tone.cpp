// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/beat_tone.h"

#include <algorithm>
#include <cmath>

namespace trueunit {

namespace {

constexpr double kSettleSeconds = 0.05;
constexpr double kSidePercent = 0.5;  // from here on the timbre of its side is full
// Parts of the whole; the moved tone is weaker than the fixed one, so that no phase of theirs is silence.
constexpr double kFixedPart = 0.42, kMovedPart = 0.26, kOctavePart = 0.32;

double sine(double turns) { return std::sin(2.0 * std::numbers::pi * turns); }

}  // namespace

void BeatTone::render(float* out, unsigned long frames) noexcept {
    const bool silent = muted_.load(std::memory_order_relaxed) || !known_.load(std::memory_order_relaxed);
    const double loudness = silent ? 0.0 : std::clamp(volume_.load(std::memory_order_relaxed), 0.0, 1.0);
    const double bias = bias_.load(std::memory_order_relaxed);
    const double settle = 1.0 - std::exp(-1.0 / (kSettleSeconds * rateHz_));
    for (unsigned long n = 0; n < frames; ++n) {
        loudness_ += settle * (loudness - loudness_);
        shownBias_ += settle * (bias - shownBias_);
        const double difference = std::clamp(kHzPerPercent * shownBias_, -kMostHz, kMostHz);
        const double fixed = fixed_.advance(kFixedHz / rateHz_);
        const double before = moved_.turns;
        const double moved = moved_.advance((kFixedHz + difference) / rateHz_);
        if (moved < before) movedTurns_ = 1.0 - movedTurns_;
        const double side = std::clamp(shownBias_ / kSidePercent, -1.0, 1.0);
        const double octave = side > 0.0 ? side * sine(2.0 * moved) : -side * sine(0.5 * (moved + movedTurns_));
        out[n] = static_cast<float>(loudness_ *
                                    (kFixedPart * sine(fixed) + kMovedPart * sine(moved) + kOctavePart * octave));
    }
}

}  // namespace trueunit
