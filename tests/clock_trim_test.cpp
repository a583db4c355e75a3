// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/clock_trim.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>

using namespace trueunit;

namespace {

struct Source {
    double toneHz = 1000.0;
    double cardPpm = 0.0;  // fast is positive: more samples in a true second
    double amplitude = 0.3;
    double noise = 0.0;
    double humAmplitude = 0.0;
    double wanderRadians = 0.0;  // of the phase, twice a second
    double seconds = 20.0;
    double rateHz = 48000.0;
    double silentFrom = 1e9;
    double silentTo = 1e9;

    std::vector<float> samples() const {
        constexpr double kTwoPi = 2.0 * std::numbers::pi;
        std::mt19937_64 random(3);
        std::normal_distribution<double> normal;
        std::vector<float> out(static_cast<std::size_t>(seconds * rateHz));
        for (std::size_t i = 0; i < out.size(); ++i) {
            const double t = static_cast<double>(i) / (rateHz * (1.0 + 1e-6 * cardPpm));
            const bool silent = t >= silentFrom && t < silentTo;
            const double phase = kTwoPi * toneHz * t + wanderRadians * std::sin(kTwoPi * 0.5 * t);
            out[i] = static_cast<float>((silent ? 0.0 : amplitude * std::sin(phase + 0.3)) + noise * normal(random) +
                                        humAmplitude * std::sin(kTwoPi * 50.0 * t));
        }
        return out;
    }
};

Result<ClockTrim> measured(const Source& source, double statedHz = 1000.0) {
    ClockMeter meter(source.rateHz, statedHz);
    meter.push(source.samples());
    return meter.result();
}

std::string refusal(const Source& source, double statedHz = 1000.0) {
    const auto trim = measured(source, statedHz);
    return trim ? "" : trim.error().text;
}

}  // namespace

TEST(ClockTrim, TellsHowFastTheClockRuns) {
    for (const double ppm : {-100.0, -12.3, 0.0, 37.0, 100.0, 800.0}) {
        const auto trim = measured({.cardPpm = ppm});
        ASSERT_TRUE(trim) << trim.error().text;
        EXPECT_NEAR(trim->ppm.value, ppm, 0.01);
        EXPECT_NEAR(trim->seconds, 20.0, 0.1);
    }
}

TEST(ClockTrim, NoiseAndHumWidenTheIntervalWhichHoldsTheTruth) {
    for (const double ppm : {-100.0, 100.0}) {
        const auto quiet = measured({.cardPpm = ppm, .noise = 0.003});
        const auto noisy = measured({.cardPpm = ppm, .noise = 0.1, .humAmplitude = 0.05});
        ASSERT_TRUE(quiet && noisy);
        EXPECT_NEAR(noisy->ppm.value, ppm, 1.5 * noisy->ppm.uncertainty + 0.01);
        EXPECT_NEAR(quiet->ppm.value, ppm, 1.5 * quiet->ppm.uncertainty + 0.01);
        EXPECT_LT(noisy->ppm.uncertainty, 1.0);
        EXPECT_GT(noisy->ppm.uncertainty, 5.0 * quiet->ppm.uncertainty);
    }
}

TEST(ClockTrim, AnyToneAndRateServe) {
    for (const double hz : {100.0, 440.0, 5000.0, 10000.0})
        for (const double rate : {44100.0, 96000.0}) {
            const auto trim = measured({.toneHz = hz, .cardPpm = 50.0, .noise = 0.001, .rateHz = rate}, hz);
            ASSERT_TRUE(trim) << hz << ": " << trim.error().text;
            EXPECT_NEAR(trim->ppm.value, 50.0, 0.5) << hz;
        }
}

TEST(ClockTrim, DoesNotDependOnHowTheSamplesAreChopped) {
    const auto samples = Source{.cardPpm = 20.0, .noise = 0.01, .seconds = 6.0}.samples();
    ClockMeter whole(48000.0, 1000.0);
    ClockMeter pieces(48000.0, 1000.0);
    whole.push(samples);
    for (std::size_t at = 0; at < samples.size(); at += 777)
        pieces.push(std::span(samples).subspan(at, std::min<std::size_t>(777, samples.size() - at)));
    EXPECT_EQ(whole.result()->ppm.value, pieces.result()->ppm.value);
}

TEST(ClockTrim, SilenceBeforeTheToneDoesNotCount) {
    const auto trim = measured({.cardPpm = 30.0, .noise = 0.0001, .silentFrom = 0.0, .silentTo = 4.0});
    ASSERT_TRUE(trim) << trim.error().text;
    EXPECT_NEAR(trim->ppm.value, 30.0, 0.1);
    EXPECT_NEAR(trim->seconds, 16.0, 0.2);
}

TEST(ClockTrim, WithoutASteadyToneItRefusesInOneSentence) {
    EXPECT_NE(refusal({.seconds = 3.0}).find("At least 5 seconds"), std::string::npos);
    EXPECT_NE(refusal({.amplitude = 0.0, .noise = 0.1}).find("no tone of 1000 Hz"), std::string::npos);
    EXPECT_NE(refusal({.amplitude = 0.0}).find("no tone of 1000 Hz"), std::string::npos);
    EXPECT_NE(refusal({.toneHz = 1500.0}).find("no tone of 1000 Hz"), std::string::npos);
    EXPECT_NE(refusal({.toneHz = 1004.0}).find("parts in a million beside"), std::string::npos);
    EXPECT_NE(refusal({.seconds = 18.0, .silentFrom = 7.0, .silentTo = 11.0}).find("comes and goes"),
              std::string::npos);
    EXPECT_NE(refusal({.wanderRadians = 1.5}).find("not steady enough"), std::string::npos);
}
