// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/nudge_finder.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/measure/nudge_contrast.h"
#include "tests/support/steady_sender.h"

namespace trueunit {
namespace {

using test::SteadySender;

NudgeFinder listen(SteadySender& sender, std::uint64_t characters) {
    NudgeFinder finder;
    for (std::uint64_t i = 0; i < characters; ++i) finder.push(sender.character(), sender.unit, sender.nominal);
    return finder;
}

class NudgeFinderTest : public ::testing::Test {
protected:
    NudgeFinderTest() {
        sender.codes = test::codesOf(test::kFox);
        sender.scatterPercent = 0.5;
    }
    void stepAt(std::uint64_t at, double before, double after) {
        sender.biasPercent = [=](std::uint64_t n) { return n < at ? before : after; };
    }
    SteadySender sender;
};

TEST_F(NudgeFinderTest, AStepOfAFewPercentIsFoundWithinThreeCharactersWhereItWas) {
    int inTime = 0, placed = 0, held = 0;
    constexpr int kTrials = 40;
    for (int t = 0; t < kTrials; ++t) {
        sender.random.seed(static_cast<std::uint64_t>(t));
        sender.next = 0;
        const std::uint64_t at = 90 + static_cast<std::uint64_t>(t);
        stepAt(at, 7.8, 4.8);
        const NudgeFinder finder = listen(sender, at + 40);
        ASSERT_EQ(finder.nudges().size(), 1U) << "seed=" << t;
        const Nudge& n = finder.nudges().front();
        inTime += n.foundBy < at + 3;
        placed += n.number + 1 >= at && n.number <= at + 1;
        held += std::abs(n.step.value + 3.0) <= n.step.uncertainty;
        EXPECT_NEAR(n.before.value, 7.8, 0.6) << "seed=" << t;
        EXPECT_NEAR(n.after.value, 4.8, 0.6) << "seed=" << t;
    }
    EXPECT_GE(inTime, 38);
    EXPECT_GE(placed, 38);
    EXPECT_GE(held, 33);  // 95 % stated; 33 of 40 or fewer has one chance in a hundred
}

TEST_F(NudgeFinderTest, TenMinutesOfASteadySenderWithOnePercentScatterHaveNoNudge) {
    sender.scatterPercent = 1.0;
    EXPECT_TRUE(listen(sender, 3700).nudges().empty());
}

TEST_F(NudgeFinderTest, ASlowDriftIsNoNudge) {
    sender.biasPercent = [](std::uint64_t n) { return 0.003 * static_cast<double>(n); };  // 1 % in a minute
    EXPECT_TRUE(listen(sender, 2000).nudges().empty());
}

TEST_F(NudgeFinderTest, ALateLevelIsAPatternAndNotTheScatterThatHidesANudge) {
    sender.extraPercent = [](int k, bool mark, double) { return k == 4 && mark ? 9.0 : 0.0; };
    stepAt(150, 6.0, 3.0);
    const NudgeFinder finder = listen(sender, 190);
    ASSERT_EQ(finder.nudges().size(), 1U);
    EXPECT_LT(finder.nudges()[0].foundBy, 153U);
    EXPECT_NEAR(finder.nudges()[0].step.value, -3.0, 0.5);
}

TEST_F(NudgeFinderTest, AChangeOfSpeedIsNoNudge) {
    sender.extraPercent = [](int k, bool, double seconds) { return seconds < 25.0 ? 0.0 : 0.8 * k; };
    EXPECT_TRUE(listen(sender, 300).nudges().empty());
}

TEST_F(NudgeFinderTest, OneWildCharacterIsNoNudge) {
    stepAt(150, 2.0, 2.0);
    sender.biasPercent = [](std::uint64_t n) { return n == 150 ? 32.0 : 2.0; };
    EXPECT_TRUE(listen(sender, 200).nudges().empty());
}

TEST_F(NudgeFinderTest, CharactersThatStrayTogetherAreTakenBackOnceOthersHaveFollowed) {
    sender.biasPercent = [](std::uint64_t n) { return n >= 120 && n < 124 ? -1.0 : 1.2; };
    EXPECT_EQ(listen(sender, 126).nudges().size(), 1U) << "it looks like a step";
    sender.next = 0;
    EXPECT_TRUE(listen(sender, 190).nudges().empty());
    sender.next = 0;
    sender.biasPercent = [](std::uint64_t n) { return n >= 120 && n < 124 ? -1.0 : n < 200 ? 1.2 : 3.2; };
    const NudgeFinder finder = listen(sender, 260);
    ASSERT_EQ(finder.nudges().size(), 1U) << "the one that followed is found";
    EXPECT_NEAR(finder.nudges().front().step.value, 2.0, 0.6);
}

TEST_F(NudgeFinderTest, OneTurnOverSeveralCharactersIsOneNudge) {
    sender.biasPercent = [](std::uint64_t n) {  // a second by hand
        return n < 100 ? 9.0 : n < 106 ? 9.0 - static_cast<double>(n - 99) : 3.0;
    };
    const NudgeFinder finder = listen(sender, 150);
    ASSERT_EQ(finder.nudges().size(), 1U);
    EXPECT_NEAR(finder.nudges()[0].before.value, 9.0, 0.4);
    EXPECT_NEAR(finder.nudges()[0].after.value, 3.0, 0.4);
}

// The characters between two turns are the "after" of one and the "before" of the other.
TEST_F(NudgeFinderTest, TurnsCloseTogetherJoin) {
    sender.biasPercent = [](std::uint64_t n) { return n < 100 ? 9.0 : 9.0 - 3.0 * static_cast<double>((n - 84) / 16); };
    const NudgeFinder finder = listen(sender, 160);
    ASSERT_EQ(finder.nudges().size(), 4U);
    for (std::size_t i = 0; i + 1 < finder.nudges().size(); ++i) {
        EXPECT_EQ(finder.nudges()[i].after.value, finder.nudges()[i + 1].before.value);
        EXPECT_NEAR(finder.nudges()[i].step.value, -3.0, 0.4);
    }
}

TEST_F(NudgeFinderTest, ATurnInFiveMovesOverFourSecondsIsOneNudge) {
    sender.biasPercent = [](std::uint64_t n) {
        return n < 100 ? 9.0 : 9.0 - 2.0 * static_cast<double>(std::min<std::uint64_t>(5, 1 + (n - 100) / 6));
    };
    const NudgeFinder finder = listen(sender, 160);
    ASSERT_EQ(finder.nudges().size(), 1U);
    EXPECT_NEAR(finder.nudges()[0].before.value, 9.0, 0.4);
    EXPECT_NEAR(finder.nudges()[0].after.value, -1.0, 0.4);
}

TEST_F(NudgeFinderTest, AnErrorOfTheUnitIsNotTakenForBias) {
    sender.unit = 0.0221;  // slow against the nominal one
    stepAt(120, 5.0, 1.0);
    const NudgeFinder finder = listen(sender, 160);
    ASSERT_EQ(finder.nudges().size(), 1U);
    EXPECT_NEAR(finder.nudges()[0].before.value, 5.0, 0.4);
    EXPECT_NEAR(finder.nudges()[0].after.value, 1.0, 0.4);
}

// Two-sided points of Student's distribution at 2.6e-6, from a general-purpose library:
// scipy.stats.t.isf(scipy.stats.norm.sf(4.7), v).
TEST(NormalDeviate, AgreesWithAGeneralPurposeLibraryFarOutInTheTails) {
    constexpr std::pair<double, double> kPoints[] = {{8.0, 11.6987}, {20.0, 6.4729}, {60.0, 5.1927}, {127.0, 4.9224}};
    for (const auto& [v, t] : kPoints) EXPECT_NEAR(normalDeviateOf(t, v), 4.7, 0.05) << v;
}

TEST_F(NudgeFinderTest, ItSaysHowManyCharactersItStillLearnsFor) {
    NudgeFinder finder;
    std::size_t left = finder.charactersToLearn();
    EXPECT_GE(left, 12U);
    for (; left > 0; --left) {
        EXPECT_EQ(finder.charactersToLearn(), left);
        finder.push(sender.character(), sender.unit, sender.nominal);
    }
    EXPECT_EQ(finder.charactersToLearn(), 0U);
}

// The bias is in the beginnings of marks; when their ends move together it stays what it was.
TEST_F(NudgeFinderTest, AStepOfTheEndsOfMarksIsNoNudgeOfTheBias) {
    sender.extraPercent = [this](int, bool toMark, double) { return toMark || sender.next < 120 ? 0.0 : 4.0; };
    EXPECT_TRUE(listen(sender, 200).nudges().empty());
}

}  // namespace
}  // namespace trueunit
