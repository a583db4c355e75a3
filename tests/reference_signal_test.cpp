// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/simulate/reference_signal.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "tests/support/measure_twice.h"

using namespace trueunit;

namespace {

constexpr double kWithin = 0.1;      // percent, as a reference must be
constexpr double kToneWithin = 0.1;  // of a demodulated tone, while its form is being learned

std::vector<float> samplesOf(const SenderSettings& settings, double rate, std::size_t chunk = 4096) {
    ReferenceSignal signal(settings, rate);
    std::vector<float> all;
    std::vector<float> some(chunk);
    while (const std::size_t got = signal.read(some))
        all.insert(all.end(), some.begin(), some.begin() + static_cast<std::ptrdiff_t>(got));
    return all;
}

SenderSettings settings(double bias) {
    SenderSettings s;
    s.biasPercent = bias;
    s.seconds = 15.0;
    return s;
}

}  // namespace

TEST(ReferenceSignal, IsReadBackAsItWasSetOverTheWholeRange) {
    for (const double bias : {-20.0, -7.5, 0.0, 12.0, 20.0}) {
        SenderSettings s = settings(bias);
        s.endPercent = -0.2 * bias;
        s.speedPercent = 0.5;
        const Reading r = test::measureOnce(samplesOf(s, 48000.0), 48000.0).reading();
        ASSERT_TRUE(r.distortion.biasPercent && r.speed.errorPercent) << bias;
        EXPECT_NEAR(r.distortion.biasPercent->value, bias, kWithin);
        EXPECT_NEAR(r.distortion.endPercent->value, s.endPercent, kWithin);
        EXPECT_NEAR(r.speed.errorPercent->value, 0.5, 0.01);
    }
}

TEST(ReferenceSignal, OnAToneItIsReadBackAsWell) {
    for (const double bias : {-20.0, 0.0, 20.0}) {
        SenderSettings s = settings(bias);
        s.keying = SenderSettings::Keying::tone;
        s.toneHz = 2125.0;
        const std::vector<float> samples = samplesOf(s, 48000.0);
        const Reading r = test::measureOnce(samples, 48000.0).reading();
        ASSERT_TRUE(r.distortion.biasPercent) << bias;
        EXPECT_EQ(r.input.kind, InputKind::tone);
        EXPECT_NEAR(r.distortion.biasPercent->value, bias, kToneWithin);
    }
}

TEST(ReferenceSignal, DoesNotDependOnHowItIsAskedForAndStaysBelowItsLevel) {
    SenderSettings s = settings(5.0);
    s.seconds = 3.0;
    s.levelDbfs = -20.0;
    s.scatterPercent = 1.0;
    const std::vector<float> whole = samplesOf(s, 44100.0);
    EXPECT_EQ(whole, samplesOf(s, 44100.0, 77));
    EXPECT_EQ(whole.size(), 132300U);
    const float peak = *std::max_element(whole.begin(), whole.end());
    EXPECT_NEAR(peak, std::pow(10.0, -1.0), 1e-4);
}

TEST(ReferenceSignal, BeginsSoftlyOutOfSilence) {
    const std::vector<float> samples = samplesOf(settings(0.0), 48000.0);
    float furthest = 0.0F;  // from one sample to the next
    for (std::size_t i = 1; i < 4800; ++i) furthest = std::max(furthest, std::abs(samples[i] - samples[i - 1]));
    EXPECT_LT(std::abs(samples[0]), 1e-4F);
    EXPECT_LT(furthest, 1e-3F * samples[4800]);
    EXPECT_NEAR(samples[2400], 0.5F * samples[4800], 1e-3);
}

TEST(ReferenceSignal, ATextSentOnceComesToItsEnd) {
    SenderSettings s;
    s.text = "RY";
    s.repeat = false;
    const std::vector<float> samples = samplesOf(s, 48000.0);
    EXPECT_GT(samples.size(), 48000U);
    EXPECT_LT(samples.size(), 4U * 48000U);
}

TEST(ReferenceSignal, WhatCannotBeSentIsRefusedInOneSentence) {
    const auto refusal = [](auto change) {
        SenderSettings s;
        change(s);
        const auto problem = s.problem();
        return problem ? problem->text : "";
    };
    EXPECT_EQ(refusal([](SenderSettings&) {}), "");
    EXPECT_NE(refusal([](SenderSettings& s) { s.text = ""; }), "");
    EXPECT_NE(refusal([](SenderSettings& s) { s.code = "none"; }), "");
    EXPECT_NE(refusal([](SenderSettings& s) { s.baud = 5.0; }), "");
    EXPECT_NE(refusal([](SenderSettings& s) { s.biasPercent = std::nan(""); }), "");
    EXPECT_NE(refusal([](SenderSettings& s) { s.endPercent = 60.0; }), "");
    EXPECT_NE(refusal([](SenderSettings& s) { s.levelDbfs = 0.0; }), "");
    EXPECT_NE(refusal([](SenderSettings& s) { s.scatterPercent = -1.0; }), "");
}
