// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/frame/unit_fit.h"

#include <gtest/gtest.h>

#include <random>

#include "tests/support/character_builder.h"
#include "tests/support/texts.h"

namespace trueunit {
namespace {

using test::CharacterBuilder;
using test::pointersTo;

TEST(UnitFit, TellsUnitBiasAndEndApart) {
    CharacterBuilder builder;
    builder.unit = 0.0201;
    builder.nominal = 0.020;
    builder.biasPercent = 12.0;
    builder.endPercent = -5.0;
    const auto characters = builder.characters(test::allCodes());
    const auto fit = fitUnit(pointersTo(characters));
    ASSERT_TRUE(fit && fit->toMark && fit->toSpace);
    EXPECT_NEAR(fit->unit.value, 0.0201, 1e-12);
    EXPECT_NEAR(fit->toMark->value, -0.12 * 0.020, 1e-12);
    EXPECT_NEAR(fit->toSpace->value, -0.05 * 0.020, 1e-12);
    EXPECT_NEAR(fit->rms, 0.0, 1e-12);
    EXPECT_EQ(fit->characters, 32U);
    std::size_t instants = 0;
    for (const Character& c : characters) instants += c.instants.size();
    EXPECT_EQ(fit->instants, instants);
}

TEST(UnitFit, ACharacterWithoutStopOrWithMisplacedInstantsDoesNotEnter) {
    CharacterBuilder builder;
    auto characters = builder.characters(test::allCodes());
    for (Instant& i : characters[3].instants) i.seconds += 0.004;
    for (Instant& i : characters[4].instants) i.seconds -= 0.004;
    characters[3].stopPresent = false;
    characters[4].regular = false;
    const auto fit = fitUnit(pointersTo(characters));
    ASSERT_TRUE(fit);
    EXPECT_EQ(fit->characters, 30U);
    EXPECT_NEAR(fit->unit.value, 0.022, 1e-12);
    EXPECT_NEAR(fit->toMark->value, 0.0, 1e-12);
}

TEST(UnitFit, WithTheUnitGivenOneCharacterTellsItsDelays) {
    CharacterBuilder builder;
    builder.biasPercent = 7.0;
    const auto characters = builder.characters({0x0A});  // R: to mark at 2, to space at 3
    const auto fit = fitUnit(pointersTo(characters), 0.022);
    ASSERT_TRUE(fit && fit->toMark && fit->toSpace);
    EXPECT_NEAR(fit->unit.value, 0.022, 1e-9);
    EXPECT_NEAR(fit->toMark->value, -0.07 * 0.022, 1e-9);
    EXPECT_NEAR(fit->toSpace->value, 0.0, 1e-9);
}

TEST(UnitFit, ADirectionThatNeverOccursIsEmpty) {
    CharacterBuilder builder;
    const auto characters =
        builder.characters({0x00, 0x10, 0x18, 0x00});  // all rise once and stay: no instant to space
    const auto fit = fitUnit(pointersTo(characters));
    ASSERT_TRUE(fit);
    EXPECT_TRUE(fit->toMark);
    EXPECT_FALSE(fit->toSpace);
}

TEST(UnitFit, InstantsThatCannotTellUnitFromBiasGiveNothing) {
    CharacterBuilder builder;
    EXPECT_FALSE(fitUnit(pointersTo(builder.characters({0x00, 0x00, 0x00}))));  // one instant each, always at 6
    EXPECT_FALSE(fitUnit({}));
    auto broken = builder.characters({0x0A, 0x15});
    for (Character& c : broken) c.stopPresent = false;
    EXPECT_FALSE(fitUnit(pointersTo(broken)));
}

TEST(UnitFit, TheUncertaintyHoldsTheTruthAlsoWhenStartsScatter) {
    // A late start moves all instants of its character alike; an uncertainty from single instants would be too small.
    // Of 200 windows, fewer than 178 held would come by chance once in 1000 (binomial distribution, 95 %).
    int bias = 0;
    int unit = 0;
    for (unsigned seed = 1; seed <= 200; ++seed) {
        std::mt19937_64 random(seed);
        std::normal_distribution<double> normal;
        std::vector<double> late(40);
        for (double& v : late) v = normal(random);
        CharacterBuilder builder;
        builder.biasPercent = 3.0;
        builder.extraPercent = [&](std::uint64_t number, int, Condition) {
            return 0.5 * normal(random) - 2.0 * late[number];
        };
        const auto characters = builder.characters(test::mixedText(40, seed));
        const auto fit = fitUnit(pointersTo(characters));
        ASSERT_TRUE(fit && fit->toMark);
        bias += std::abs(fit->toMark->value + 0.03 * 0.022) <= fit->toMark->uncertainty;
        unit += std::abs(fit->unit.value - 0.022) <= fit->unit.uncertainty;
    }
    EXPECT_GE(bias, 178);
    EXPECT_GE(unit, 178);
}

TEST(StudentFactor, IsThatOfTheTables) {
    // Two-sided 95 % points of Student's distribution: Abramowitz and Stegun, table 26.10, from memory.
    EXPECT_NEAR(studentFactor(1), 12.706, 0.01);
    EXPECT_NEAR(studentFactor(2), 4.303, 0.01);
    EXPECT_NEAR(studentFactor(3), 3.182, 0.032);
    EXPECT_NEAR(studentFactor(5), 2.571, 0.01);
    EXPECT_NEAR(studentFactor(10), 2.228, 0.005);
    EXPECT_NEAR(studentFactor(30), 2.042, 0.001);
    EXPECT_NEAR(studentFactor(1e6), 1.960, 0.001);
}

}  // namespace
}  // namespace trueunit
