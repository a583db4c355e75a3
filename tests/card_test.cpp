// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/simulate/card.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <vector>

#include "support/scenario_builder.h"

namespace trueunit {
namespace {

constexpr double kTwoPi = 2.0 * std::numbers::pi;

double next(SimulatedCard& card, double level) { return static_cast<double>(card.next(level)); }

TEST(CardTest, HalfTheSwingStandsAtTheStatedLevel) {
    Scenario s = faultlessScenario();
    s.card.levelDbfs = -20.0;
    SimulatedCard card(s);
    EXPECT_NEAR(next(card, 1.0), 0.1, 1e-7);
    EXPECT_NEAR(next(card, 0.0), -0.1, 1e-7);
    EXPECT_NEAR(next(card, 0.5), 0.0, 1e-7);
    s.line.swing = 0.5;
    s.card.inverted = true;
    s.card.dcOffset = 0.02;
    SimulatedCard other(s);
    EXPECT_NEAR(next(other, 1.0), -0.05 + 0.02, 1e-7);
}

// One pole answers a step with exp(-2 pi f t): the first-order high-pass of any textbook on circuits. The step
// runs through one sample interval, so time counts from its middle.
TEST(CardTest, OneCouplingPoleAnswersAStepAsTheTextbookSays) {
    for (const double corner : {0.5, 8.0, 40.0}) {
        Scenario s = faultlessScenario();
        s.card.couplingHz = {corner};
        SimulatedCard card(s);
        const double swing = 2.0 * std::pow(10.0, s.card.levelDbfs / 20.0);
        for (int i = 0; i < 1000; ++i) ASSERT_EQ(next(card, 1.0), 0.0) << "at rest on mark";
        for (int n = 0; n < 48000; ++n) {
            const double t = (n + 0.5) / 48000.0;
            ASSERT_NEAR(next(card, 0.0), -swing * std::exp(-kTwoPi * corner * t), 1e-5 * swing);
        }
    }
}

// Two equal poles in a row: (1 - w t) exp(-w t), from the Laplace transform s / (s + w)^2.
TEST(CardTest, TwoCouplingPolesAnswerAStepAsTheTextbookSays) {
    Scenario s = faultlessScenario();
    s.card.couplingHz = {20.0, 20.0};
    SimulatedCard card(s);
    const double swing = 2.0 * std::pow(10.0, s.card.levelDbfs / 20.0);
    next(card, 1.0);
    for (int n = 0; n < 24000; ++n) {
        const double wt = kTwoPi * 20.0 * (n + 0.5) / 48000.0;
        ASSERT_NEAR(next(card, 0.0), -swing * (1.0 - wt) * std::exp(-wt), 2e-5 * swing);
    }
}

TEST(CardTest, NoiseHasTheStatedPowerAndIsWhite) {
    Scenario s = faultlessScenario();
    s.card.levelDbfs = -20.0;
    s.card.snrDb = 20.0;
    SimulatedCard card(s);
    constexpr int kCount = 200000;
    double squares = 0.0;
    double neighbours = 0.0;
    double before = 0.0;
    for (int i = 0; i < kCount; ++i) {
        const double noise = next(card, 0.5);
        squares += noise * noise;
        neighbours += noise * before;
        before = noise;
    }
    EXPECT_NEAR(std::sqrt(squares / kCount), 0.01, 0.01 * 4.0 / std::sqrt(2.0 * kCount));
    EXPECT_NEAR(neighbours / squares, 0.0, 4.0 / std::sqrt(kCount));
}

TEST(CardTest, HumHasTheStatedSizeFrequencyAndHarmonics) {
    Scenario s = faultlessScenario();
    s.card.hum = Scenario::Hum{60.0, 6.0, {0.0, 0.5}};
    SimulatedCard card(s);
    const double swing = 2.0 * std::pow(10.0, s.card.levelDbfs / 20.0);
    double fundamental = 0.0;
    double third = 0.0;
    double rest = 0.0;
    for (int n = 0; n < 48000; ++n) {
        const double t = n / 48000.0;
        const double value = next(card, 0.5);
        fundamental += value * std::sin(kTwoPi * 60.0 * t) * 2.0 / 48000.0;
        third += value * std::sin(kTwoPi * 180.0 * t) * 2.0 / 48000.0;
        rest += value * std::sin(kTwoPi * 120.0 * t) * 2.0 / 48000.0;
    }
    EXPECT_NEAR(2.0 * fundamental / swing, 0.06, 1e-6);
    EXPECT_NEAR(2.0 * third / swing, 0.03, 1e-6);
    EXPECT_NEAR(rest, 0.0, 1e-6);
}

TEST(CardTest, FlattensBeyondTheStatedShareAndAlwaysAtFullScale) {
    Scenario s = faultlessScenario();
    s.card.levelDbfs = -20.0;
    s.card.clip = 0.4;
    SimulatedCard clipped(s);
    EXPECT_NEAR(next(clipped, 1.0), 0.4 * 0.2, 1e-7);
    EXPECT_NEAR(next(clipped, 0.6), 0.1 * 0.2, 1e-7);
    s.card.clip.reset();
    s.card.levelDbfs = 6.0;
    SimulatedCard loud(s);
    EXPECT_EQ(next(loud, 1.0), 1.0);
    EXPECT_EQ(next(loud, 0.0), -1.0);
}

TEST(CardTest, AFastClockTakesMoreSamplesInASecond) {
    Scenario s = faultlessScenario();
    s.card.clockPpm = 100.0;
    const SimulatedCard card(s);
    EXPECT_DOUBLE_EQ(card.samplesPerSecond(), 48004.8);
    EXPECT_NEAR(card.secondsOf(480048), 10.0, 1e-12);
}

}  // namespace
}  // namespace trueunit
