// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/beat_tone.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <vector>

#include "app/steady_tone.h"

namespace trueunit {
namespace {

constexpr double kRate = 48000.0;

std::vector<float> play(BeatTone& tone, double seconds) {
    std::vector<float> out(static_cast<std::size_t>(seconds * kRate));
    for (std::size_t i = 0; i < out.size(); i += 480) tone.render(&out[i], std::min<std::size_t>(480, out.size() - i));
    return out;
}

BeatTone& prepared(BeatTone& tone, double bias) {
    tone.setRate(kRate);
    tone.setVolume(0.5);
    tone.setKnown(true);
    tone.setBias(bias);
    play(tone, 1.0);  // settled
    return tone;
}

// Amplitude at one frequency, by the sum that defines it.
double amplitudeAt(const std::vector<float>& x, double hz) {
    double re = 0.0, im = 0.0;
    for (std::size_t n = 0; n < x.size(); ++n) {
        const double turn = 2.0 * std::numbers::pi * hz * static_cast<double>(n) / kRate;
        re += static_cast<double>(x[n]) * std::cos(turn);
        im += static_cast<double>(x[n]) * std::sin(turn);
    }
    return 2.0 * std::hypot(re, im) / static_cast<double>(x.size());
}

// Least and largest loudness over stretches of a fiftieth of a second.
std::pair<double, double> loudnessRange(const std::vector<float>& x) {
    double least = 1e9, largest = 0.0;
    for (std::size_t i = 0; i + 960 <= x.size(); i += 960) {
        double squares = 0.0;
        for (std::size_t n = i; n < i + 960; ++n) squares += static_cast<double>(x[n]) * static_cast<double>(x[n]);
        least = std::min(least, squares);
        largest = std::max(largest, squares);
    }
    return {std::sqrt(least / 960.0), std::sqrt(largest / 960.0)};
}

TEST(BeatTone, ZeroBiasIsOneToneThatDoesNotBeatAndIsNeverSilent) {
    BeatTone tone;
    prepared(tone, 5.0);
    tone.setBias(0.0);  // wherever the two tones stood to each other
    play(tone, 1.0);
    const auto [least, largest] = loudnessRange(play(tone, 4.0));
    EXPECT_GT(least, 0.02);
    EXPECT_LT(largest / least, 1.05);
}

TEST(BeatTone, BeatsOncePerSecondForEachPercentAndSideIsHeard) {
    for (const double bias : {4.0, -4.0}) {
        BeatTone tone;
        const std::vector<float> x = play(prepared(tone, bias), 2.0);
        EXPECT_NEAR(amplitudeAt(x, BeatTone::kFixedHz), 0.21, 0.005);
        EXPECT_NEAR(amplitudeAt(x, BeatTone::kFixedHz + bias), 0.13, 0.005);
        EXPECT_LT(amplitudeAt(x, BeatTone::kFixedHz - bias), 0.005);
        const double above = amplitudeAt(x, 2.0 * (BeatTone::kFixedHz + bias));
        const double below = amplitudeAt(x, 0.5 * (BeatTone::kFixedHz + bias));
        EXPECT_NEAR(bias > 0.0 ? above : below, 0.16, 0.005);
        EXPECT_LT(bias > 0.0 ? below : above, 0.005);
    }
}

TEST(BeatTone, IsSilentWithoutAReadingAndWhenMutedAndNeverBeyondItsVolume) {
    BeatTone tone;
    prepared(tone, 12.0);
    for (const float v : play(tone, 2.0)) EXPECT_LE(std::abs(v), 0.5F);
    tone.setMuted(true);
    play(tone, 1.0);
    EXPECT_LT(loudnessRange(play(tone, 0.5)).second, 1e-6);
    tone.setMuted(false);
    tone.setKnown(false);
    play(tone, 1.0);
    EXPECT_LT(loudnessRange(play(tone, 0.5)).second, 1e-6);
}

TEST(BeatTone, ChangesWithoutAClick) {
    BeatTone tone;
    prepared(tone, 10.0);
    double steepest = 0.0, last = static_cast<double>(play(tone, 0.1).back());
    for (const double bias : {-20.0, 3.0, -0.4}) {
        tone.setBias(bias);
        tone.setMuted(bias < -1.0);
        for (const float v : play(tone, 0.3)) {
            steepest = std::max(steepest, std::abs(static_cast<double>(v) - last));
            last = static_cast<double>(v);
        }
    }
    // The steepest a sum of sines of these parts can be: 2 pi f a / rate.
    const double bound = 2.0 * std::numbers::pi * 0.5 * (0.42 * 657.0 + 0.26 * 717.0 + 0.32 * 1434.0) / kRate;
    EXPECT_LT(steepest, bound);
}

TEST(SteadyTone, IsOneSineOfHalfOfFullScaleThatSwellsWithoutAClick) {
    SteadyTone tone;
    tone.setRate(kRate);
    std::vector<float> x(static_cast<std::size_t>(kRate));
    tone.render(x.data(), x.size());
    double step = 0.0;
    for (std::size_t n = 1; n < x.size(); ++n) step = std::max(step, std::abs(static_cast<double>(x[n] - x[n - 1])));
    EXPECT_LT(std::abs(x.front()), 0.001);
    EXPECT_LT(step, 1.01 * 0.5 * 2.0 * std::numbers::pi * SteadyTone::kHz / kRate);
    x.erase(x.begin(), x.begin() + 2400);
    EXPECT_NEAR(amplitudeAt(x, SteadyTone::kHz), SteadyTone::kAmplitude, 0.001);
    double squares = 0.0;
    for (const float v : x) squares += static_cast<double>(v) * static_cast<double>(v);
    EXPECT_NEAR(squares / static_cast<double>(x.size()), 0.5 * 0.25, 0.001) << "and nothing beside it";
}

}  // namespace
}  // namespace trueunit
