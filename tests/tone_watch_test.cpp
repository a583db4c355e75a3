// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acquire/tone_watch.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <random>
#include <vector>

#include "tests/support/plain_sender.h"

namespace trueunit {
namespace {

constexpr double kRate = 48000.0, kTone = 657.0;

std::vector<float> loopSignal() {
    test::PlainSender sender;
    sender.polesHz = {8.0};
    sender.biasPercent = 6.0;
    std::vector<unsigned> codes;
    for (int i = 0; i < 40; ++i) codes.push_back(i % 2 == 0 ? 10U : 21U);  // RY: a comb of lines
    return sender.send(codes);
}

std::vector<float> withTone(std::vector<float> samples, double amplitude) {
    for (std::size_t n = 0; n < samples.size(); ++n)
        samples[n] +=
            static_cast<float>(amplitude * std::sin(2.0 * std::numbers::pi * kTone * static_cast<double>(n) / kRate));
    return samples;
}

TEST(ToneWatch, HearsATonePlayedIntoAnotherwiseSilentInput) {
    ToneWatch watch(kRate, kTone);
    watch.push(std::vector<float>(48000, 0.0F), false);
    watch.push(withTone(std::vector<float>(96000, 0.0F), 0.001), true);
    EXPECT_TRUE(watch.heard());
}

TEST(ToneWatch, HearsItWellBelowTheLoop) {
    ToneWatch watch(kRate, kTone);
    watch.push(loopSignal(), false);
    watch.push(withTone(loopSignal(), 0.04), true);
    EXPECT_TRUE(watch.heard());
}

TEST(ToneWatch, DoesNotTakeTheLoopForTheTone) {
    ToneWatch watch(kRate, kTone);
    watch.push(loopSignal(), false);
    watch.push(loopSignal(), true);
    EXPECT_FALSE(watch.heard());
}

TEST(ToneWatch, DoesNotTakeNoiseForTheTone) {
    std::mt19937 random(3);
    std::normal_distribution<float> noise(0.0F, 0.1F);
    ToneWatch watch(kRate, kTone);
    std::vector<float> samples(24000);
    for (int i = 0; i < 40; ++i) {
        for (float& s : samples) s = noise(random);
        watch.push(samples, true);
        EXPECT_FALSE(watch.heard());
    }
}

TEST(ToneWatch, AToneThatWasThereBeforeIsNotOurs) {
    ToneWatch watch(kRate, kTone);
    watch.push(withTone(std::vector<float>(96000, 0.0F), 0.2), false);
    watch.push(withTone(std::vector<float>(96000, 0.0F), 0.2), true);
    EXPECT_FALSE(watch.heard());
}

}  // namespace
}  // namespace trueunit
