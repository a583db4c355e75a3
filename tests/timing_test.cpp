// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/timing.h"

#include <gtest/gtest.h>

#include <random>

#include "core/measure/receiving_margin.h"
#include "tests/support/character_builder.h"
#include "tests/support/texts.h"

namespace trueunit {
namespace {

using test::CharacterBuilder;
using test::pointersTo;

Character withInstants(const Instants& instants) {
    Character c;
    c.instants = instants;
    return c;
}

TEST(Displacement, IsInPercentOfTheUnitAndPositiveWhenLate) {
    EXPECT_NEAR(displacementPercent({3, Condition::mark, 0.066 + 0.0022}, 0.022), 10.0, 1e-9);
    EXPECT_NEAR(displacementPercent({3, Condition::mark, 0.066 - 0.0011}, 0.022), -5.0, 1e-9);
}

TEST(StartStopDistortion, IsTheLargestEitherWayAndSkipsWhatProvesNothing) {
    std::vector<Character> characters = {
        withInstants({{1, Condition::mark, 0.021}, {6, Condition::mark, 0.120}}),    // 5 % late
        withInstants({{2, Condition::mark, 0.0386}, {5, Condition::space, 0.100}}),  // 7 % early
        withInstants({{1, Condition::mark, 0.030}})};                                // 50 % late, without a stop
    characters[2].stopPresent = false;
    EXPECT_NEAR(*startStopDistortion(pointersTo(characters), 0.020), 7.0, 1e-9);
    EXPECT_FALSE(startStopDistortion({}, 0.020));
    EXPECT_FALSE(startStopDistortion(pointersTo({characters[2]}), 0.020));
}

TEST(InstantStatistics, AreThoseOfTheTextbookForEachPlaceAndDirection) {
    // Displacements 1, 2, 3, 6 %: mean 3, sample variance (4 + 1 + 0 + 9) / 3.
    std::vector<Character> characters;
    for (const double percent : {1.0, 2.0, 3.0, 6.0})
        characters.push_back(
            withInstants({{2, Condition::mark, 0.040 + 0.0002 * percent}, {4, Condition::space, 0.080}}));
    const auto statistics = instantStatistics(pointersTo(characters), 0.020);
    ASSERT_EQ(statistics.size(), 2U);
    EXPECT_EQ(statistics[0].k, 2);
    EXPECT_EQ(statistics[0].to, Condition::mark);
    EXPECT_EQ(statistics[0].count, 4);
    EXPECT_NEAR(statistics[0].mean, 3.0, 1e-9);
    EXPECT_NEAR(statistics[0].rms, std::sqrt(14.0 / 3.0), 1e-9);
    EXPECT_NEAR(statistics[0].least, 1.0, 1e-9);
    EXPECT_NEAR(statistics[0].largest, 6.0, 1e-9);
    EXPECT_EQ(statistics[1].k, 4);
    EXPECT_EQ(statistics[1].to, Condition::space);
    EXPECT_NEAR(statistics[1].rms, 0.0, 1e-9);
}

TEST(InstantStatistics, StandInOrderOfPlaceAndToMarkFirst) {
    const auto statistics = instantStatistics(pointersTo(CharacterBuilder{}.characters(test::allCodes())), 0.022);
    ASSERT_EQ(statistics.size(), 10U);  // to mark at 1 to 6, to space at 2 to 5
    for (std::size_t i = 1; i < statistics.size(); ++i) {
        const auto& a = statistics[i - 1];
        const auto& b = statistics[i];
        EXPECT_TRUE(a.k < b.k || (a.k == b.k && a.to == Condition::mark && b.to == Condition::space));
    }
}

TEST(CharacterPeriod, IsStartToStartWhileTheTapeRuns) {
    const auto characters = CharacterBuilder{}.characters(test::mixedText(20, 1));
    const auto period = characterPeriod(pointersTo(characters), 0.022, 5);
    ASSERT_TRUE(period);
    EXPECT_NEAR(period->value, 7.42 * 0.022, 1e-12);
    EXPECT_NEAR(period->uncertainty, 0.0, 1e-12);
}

TEST(CharacterPeriod, APauseAGapAndAMissingNumberDoNotEnter) {
    auto characters = CharacterBuilder{}.characters(test::mixedText(30, 1));
    for (std::size_t i = 10; i < characters.size(); ++i) characters[i].start += 3.0;    // the tape rested
    for (std::size_t i = 15; i < characters.size(); ++i) characters[i].start += 0.011;  // samples were lost
    characters[15].afterGap = true;
    for (std::size_t i = 20; i < characters.size(); ++i) characters[i].number += 1;  // one was not received
    for (std::size_t i = 20; i < characters.size(); ++i) characters[i].start += 0.007;
    const auto period = characterPeriod(pointersTo(characters), 0.022, 5);
    ASSERT_TRUE(period);
    EXPECT_NEAR(period->value, 7.42 * 0.022, 1e-9);
}

TEST(CharacterPeriod, BelowTwoIntervalsThereIsNone) {
    const auto characters = CharacterBuilder{}.characters({0x0A, 0x15});
    EXPECT_FALSE(characterPeriod(pointersTo(characters), 0.022, 5));
    EXPECT_FALSE(characterPeriod({}, 0.022, 5));
}

TEST(CharacterPeriod, ScatterOfTheStartsAloneAlmostCancels) {
    // The beat holds and only the instants of start scatter: the mean interval is (last - first) / n, and its
    // uncertainty must not be that of independent intervals. Of 200 tapes the truth lies outside in about 10.
    int held = 0;
    double widest = 0.0;
    for (unsigned seed = 1; seed <= 200; ++seed) {
        std::mt19937_64 random(seed);
        std::normal_distribution<double> normal(0.0, 0.0004);
        auto characters = CharacterBuilder{}.characters(test::mixedText(60, seed));
        for (Character& c : characters) c.start += normal(random);
        const auto period = characterPeriod(pointersTo(characters), 0.022, 5);
        ASSERT_TRUE(period);
        held += std::abs(period->value - 7.42 * 0.022) <= period->uncertainty;
        widest = std::max(widest, period->uncertainty);
    }
    EXPECT_GE(held, 178);
    EXPECT_LT(widest, 2.0 * 0.0004 * std::sqrt(2.0 / 59.0));  // that of independent intervals
}

TEST(SamplingRange, OfAPerfectSignalIsTheWholeUnit) {
    const auto characters = CharacterBuilder{}.characters(test::allCodes());
    const auto range = samplingRange(pointersTo(characters), 0.022, 5);
    ASSERT_TRUE(range);
    EXPECT_NEAR(range->low, 0.0, 1e-9);
    EXPECT_NEAR(range->high, 1.0, 1e-9);
}

// 2.2 ms of a unit of 22: a tenth of it is not to be sampled, on the one level alone.
TEST(SamplingRange, AContactThatBouncesIsNotSampledBeforeItIsSteady) {
    auto characters = CharacterBuilder{}.characters(test::allCodes());
    for (Character& c : characters)
        for (Instant& i : c.instants)
            if (i.k == 3 && i.to == Condition::mark) i.steadySeconds = 0.0022;
    const auto range = samplingRange(pointersTo(characters), 0.022, 5);
    EXPECT_NEAR(range->low, 0.1, 1e-9);
    EXPECT_NEAR(range->high, 1.0, 1e-9);
    const auto levels = levelRanges(pointersTo(characters), 0.022, 5);
    EXPECT_NEAR(levels[2].low->fraction, 0.1, 1e-9);
    EXPECT_NEAR(levels[3].low->fraction, 0.0, 1e-9);
}

TEST(SamplingRange, TheBeginningOfStopBoundsTheLastLevelFromAboveOnly) {
    CharacterBuilder builder;
    builder.extraPercent = [](std::uint64_t, int k, Condition) { return k == 6 ? 30.0 : 0.0; };
    const auto late = builder.characters(test::allCodes());
    EXPECT_NEAR(samplingRange(pointersTo(late), 0.022, 5)->low, 0.0, 1e-9);
    builder.extraPercent = [](std::uint64_t, int k, Condition) { return k == 6 ? -30.0 : 0.0; };
    const auto early = builder.characters(test::allCodes());
    EXPECT_NEAR(samplingRange(pointersTo(early), 0.022, 5)->high, 0.7, 1e-9);
}

TEST(SamplingRange, IsEmptyWithoutInstants) { EXPECT_FALSE(samplingRange({}, 0.022, 5)); }

}  // namespace
}  // namespace trueunit
