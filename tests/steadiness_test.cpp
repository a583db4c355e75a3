// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/steadiness.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <random>

#include "tests/support/character_builder.h"

using namespace trueunit;
using namespace trueunit::test;

namespace {

// Characters one after the other, each with its own unit (percent longer) and its own stop (units longer).
struct Tape {
    double scatterPercent = 0.3;
    std::function<double(double seconds)> unitPercent;
    std::function<double(std::mt19937_64&)> stopUnits;

    std::vector<Character> characters(std::size_t n) const {
        std::mt19937_64 random(7);
        std::normal_distribution<double> normal;
        std::vector<Character> out;
        double start = 1.0;
        const auto codes = allCodes(static_cast<int>(n / 32 + 1));
        for (std::size_t i = 0; i < n; ++i) {
            CharacterBuilder builder;
            builder.unit = builder.nominal * (1.0 + 0.01 * (unitPercent ? unitPercent(start) : 0.0));
            builder.extraPercent = [&](std::uint64_t, int, Condition) { return scatterPercent * normal(random); };
            Character c = builder.character(i, codes[i]);
            c.start = start;
            start += (7.42 + (stopUnits ? stopUnits(random) : 0.0)) * builder.unit;
            out.push_back(c);
        }
        return out;
    }
};

constexpr double kUnit = 0.022;

Steadiness of(const std::vector<Character>& characters, const std::vector<PeriodicLine>& lines = {}) {
    const auto pointers = pointersTo(characters);
    return *steadinessOf(pointers, kUnit, 5, lines);
}

}  // namespace

TEST(Steadiness, AnEvenMachineIsSteady) {
    const Steadiness s = of(Tape{}.characters(200));
    EXPECT_LT(s.stopScatter, 1e-9);
    EXPECT_LT(s.wanderRatio, 3.0);
    EXPECT_EQ(s.intervals, 199);
    EXPECT_EQ(s.runningShare, 1.0);
}

TEST(Steadiness, MeasuresHowIrregularTheStopIs) {
    for (const double sigma : {0.05, 0.15, 0.5}) {
        Tape tape;
        std::normal_distribution<double> normal(0.0, sigma);
        tape.stopUnits = [&](std::mt19937_64& random) { return std::max(normal(random), -1.3); };
        // 400 differences: a standard deviation within some 5 %; the clamp takes a little of the widest.
        EXPECT_NEAR(of(tape.characters(400)).stopScatter, sigma, 0.12 * sigma);
    }
}

TEST(Steadiness, MeasuresHowFarTheSpeedWanders) {
    Tape tape;
    tape.unitPercent = [](double t) { return 0.8 * std::sin(2.0 * std::numbers::pi * 0.1 * t); };
    const Steadiness s = of(tape.characters(300));
    EXPECT_NEAR(s.wander, 0.8 / std::numbers::sqrt2, 0.08);
    EXPECT_GT(s.wanderRatio, 10.0);
    EXPECT_LT(s.stopScatter, 0.02);
}

TEST(Steadiness, ScatterAloneIsNoWander) {
    Tape tape;
    tape.scatterPercent = 7.0;
    EXPECT_LT(of(tape.characters(400)).wanderRatio, 3.0);
}

TEST(Steadiness, AContactBeingAdjustedIsNoWander) {
    std::vector<Character> characters;
    for (std::size_t i = 0; i < 256; ++i) {
        CharacterBuilder builder;
        builder.biasPercent = i < 128 ? 12.0 : 0.0;
        characters.push_back(builder.character(i, allCodes(8)[i]));
    }
    EXPECT_LT(of(characters).wander, 0.1);
}

TEST(Steadiness, APauseIsNoIrregularStop) {
    std::vector<Character> characters = Tape{}.characters(100);
    for (std::size_t i = 50; i < characters.size(); ++i) characters[i].start += 3.0;
    const Steadiness s = of(characters);
    EXPECT_LT(s.stopScatter, 1e-9);
    EXPECT_NEAR(s.runningShare, 98.0 / 99.0, 1e-9);
}

TEST(Steadiness, TakesKnownLinesOutOfTheIntervals) {
    Tape tape;
    tape.stopUnits = [t = 1.0](std::mt19937_64&) mutable {
        t += 7.42 * kUnit;
        return 0.1 * std::sin(2.0 * std::numbers::pi * 1.3 * t);
    };
    const auto characters = tape.characters(300);
    EXPECT_GT(of(characters).stopScatter, 0.05);
    EXPECT_LT(of(characters, {{1.3, 5.0, 0.0}}).stopScatter, 0.02);
}

TEST(Steadiness, SaysNothingOfTooFewIntervals) {
    const auto characters = Tape{}.characters(8);
    const auto pointers = pointersTo(characters);
    EXPECT_FALSE(steadinessOf(pointers, kUnit, 5, {}));
}
