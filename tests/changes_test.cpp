// SPDX-License-Identifier: GPL-3.0-or-later
// What changes in the midst of a window is imposed, and must come back as that change and as nothing else.
#include "core/measure/changes.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <random>

#include "core/frame/unit_fit.h"
#include "core/measure/decomposition.h"
#include "tests/support/character_builder.h"
#include "tests/support/texts.h"

using namespace trueunit;
using namespace trueunit::test;

namespace {

constexpr std::size_t kCount = 400;
constexpr double kScatter = 0.3;  // percent of a unit

// late(part of the window gone by, place, direction), percent of a unit.
Decomposition partsOf(const std::function<double(double, int, Condition)>& late, const std::vector<unsigned>& codes,
                      unsigned seed = 1) {
    std::mt19937_64 random(seed);
    std::normal_distribution<double> normal(0.0, kScatter);
    CharacterBuilder builder;
    builder.extraPercent = [&](std::uint64_t number, int k, Condition to) {
        return late(static_cast<double>(number) / kCount, k, to) + normal(random);
    };
    const std::vector<Character> characters = builder.characters(codes);
    const auto window = pointersTo(characters);
    const auto fit = fitUnit(window);
    EXPECT_TRUE(fit);
    const auto parts = decompose(window, *fit);
    EXPECT_TRUE(parts);
    return *parts;
}

std::vector<unsigned> reversals() {
    std::vector<unsigned> codes;
    for (std::size_t i = 0; i < kCount; ++i) codes.push_back(i % 2 == 0 ? 10U : 21U);
    return codes;
}

}  // namespace

TEST(Changes, AScrewTurnedInTheMidstIsNoLineAndNoScatter) {
    for (const auto& codes : {mixedText(kCount, 3), reversals()})
        for (const auto& [before, after] : {std::pair{8.0, 0.0}, {4.0, 0.0}, {2.0, -2.0}, {1.5, 0.5}}) {
            const auto turned = [&](double gone, int, Condition to) {
                return to == Condition::mark ? -(gone < 0.5 ? before : after) : 0.0;
            };
            const Decomposition parts = partsOf(turned, codes);
            EXPECT_TRUE(parts.lines.empty()) << before << " to " << after;
            EXPECT_NEAR(parts.restRms, kScatter, 0.05) << before << " to " << after;
            ASSERT_TRUE(parts.biasChange) << before << " to " << after;
            EXPECT_NEAR(parts.biasChange->last - parts.biasChange->first, after - before, 0.2);
            EXPECT_NEAR(static_cast<double>(parts.biasChange->since), 0.5 * kCount, 3.0);
        }
}

// A speed e percent high brings the instant at k early by e k percent of a unit.
TEST(Changes, ASpeedThatStepsOrDriftsIsNoLineAndNoScatter) {
    for (const double percent : {0.5, 2.0, -4.0}) {
        const auto steps = [&](double gone, int k, Condition) { return gone < 0.4 ? 0.0 : -percent * k; };
        const auto drifts = [&](double gone, int k, Condition) { return -percent * k * gone; };
        for (const auto& speed : {std::function<double(double, int, Condition)>(steps), {drifts}}) {
            const Decomposition parts = partsOf(speed, mixedText(kCount, 3));
            EXPECT_TRUE(parts.lines.empty()) << percent;
            EXPECT_NEAR(parts.restRms, kScatter, 0.06) << percent;
            EXPECT_FALSE(parts.biasChange) << percent;
        }
    }
}

TEST(Changes, ASwingIsNotTakenForSteps) {
    constexpr double kSeconds = kCount * 7.42 * 0.022;
    for (const double turns : {5.0, 12.0, 40.0, 150.0}) {  // in the window
        const auto swings = [&](double gone, int k, Condition) {
            return 2.0 * std::sin(2.0 * std::numbers::pi * turns * (gone + k * 0.022 / kSeconds));
        };
        const Decomposition parts = partsOf(swings, mixedText(kCount, 3));
        ASSERT_EQ(parts.lines.size(), 1U) << turns;
        EXPECT_NEAR(parts.lines[0].hz, turns / kSeconds, 0.2 / kSeconds) << turns;
        EXPECT_FALSE(parts.biasChange) << turns;
    }
}

TEST(Changes, NothingChangedIsNoChange) {
    int changed = 0;
    for (unsigned seed = 1; seed <= 40; ++seed) {
        const auto steady = [](double, int k, Condition) { return k == 3 ? 4.0 : 0.0; };
        changed += partsOf(steady, mixedText(kCount, 100 + seed), seed).biasChange ? 1 : 0;
    }
    EXPECT_EQ(changed, 0);
}
