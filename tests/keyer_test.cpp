// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/simulate/keyer.h"

#include <gtest/gtest.h>

#include <cmath>
#include <map>

#include "support/scenario_builder.h"

namespace trueunit {
namespace {

constexpr double kUnit = 0.022;  // seconds; 45.45 baud

// Displacement from the nominal grid of the character's own start, in percent of the nominal unit, late positive.
double grossPercent(const KeyedCharacter& c, const TrueInstant& i) {
    return 100.0 * ((i.seconds - c.instants[0].seconds) / kUnit - i.k);
}

double largestGross(const std::vector<KeyedCharacter>& characters) {
    double largest = 0.0;
    for (const auto& c : characters)
        for (const auto& i : c.instants) largest = std::max(largest, std::abs(grossPercent(c, i)));
    return largest;
}

// ITU-T S.1: R is 01010, between a start that is space and a stop that is mark.
TEST(KeyerTest, AFaultlessMachineKeysTheElementsOfTheCharacter) {
    const auto all = keyed(faultlessScenario("R"), 1);
    const std::vector<std::pair<int, Condition>> expected = {{0, Condition::space}, {2, Condition::mark},
                                                             {3, Condition::space}, {4, Condition::mark},
                                                             {5, Condition::space}, {6, Condition::mark}};
    ASSERT_EQ(all[0].instants.size(), expected.size());
    for (std::size_t i = 0; i < expected.size(); ++i) {
        EXPECT_EQ(all[0].instants[i].k, expected[i].first);
        EXPECT_EQ(all[0].instants[i].to, expected[i].second);
        EXPECT_NEAR(grossPercent(all[0], all[0].instants[i]), 0.0, 1e-9);
    }
    EXPECT_DOUBLE_EQ(all[0].instants[0].seconds, 0.5);  // behind the lead-in
}

// US Army signal course SS0330: six units of 22 ms and a stop of 31 ms make 163 ms, 368 operations a minute.
TEST(KeyerTest, SixUnitsAndAStopOf31MsMake368OperationsAMinute) {
    Scenario s = faultlessScenario();
    s.machine.stopUnits = 31.0 / 22.0;
    const auto all = keyed(s, 369);
    const double period = all[1].sent.startSeconds - all[0].sent.startSeconds;
    EXPECT_NEAR(period, 0.163, 1e-9);
    EXPECT_EQ(std::lround(60.0 / period), 368);
    EXPECT_LT(all[368].sent.startSeconds - all[0].sent.startSeconds, 60.0);
}

// ITU-T S.3 (from memory) allows 0.75 %; by arithmetic that alone displaces the stop instant, 6 T, by 4.5 %.
TEST(KeyerTest, AThreeQuarterPercentPeriodErrorDisplacesTheStopInstantBy4Point5Percent) {
    Scenario s = faultlessScenario();
    s.faults.speedPercent = 100.0 / 1.0075 - 100.0;  // a unit 0.75 % long
    const auto all = keyed(s, 2);
    EXPECT_NEAR(largestGross(all), 4.5, 1e-9);
    for (const auto& i : all[1].instants)
        EXPECT_NEAR(i.displacementPercent, 0.0, 1e-9) << "in its own unit nothing is displaced";
}

// Bell System Technical Journal, October 1938, pp. 627-628: with the start instant as reference, marking bias makes
// the fronts of marks early and spacing bias late, and moves nothing else; marking end distortion makes the ends of
// marks inside the character late, spacing end distortion early, and moves nothing else.
TEST(KeyerTest, BiasAndEndMoveTheInstantsTheBellJournalSays) {
    struct Case {
        double bias, end, toMark, toSpace;
    };
    for (const Case& c : {Case{10, 0, -10, 0}, Case{-10, 0, 10, 0}, Case{0, 10, 0, 10}, Case{0, -10, 0, -10}}) {
        Scenario s = faultlessScenario("RYABCDEF");
        s.faults.biasPercent = c.bias;
        s.faults.endPercent = c.end;
        for (const auto& character : keyed(s, 8))
            for (const auto& i : character.instants) {
                const double expected = i.k == 0 ? 0.0 : i.to == Condition::mark ? c.toMark : c.toSpace;
                EXPECT_NEAR(grossPercent(character, i), expected, 1e-9);
                EXPECT_NEAR(i.displacementPercent, expected, 1e-9);
            }
    }
}

TEST(KeyerTest, OneInstantIsDisplacedInTheStatedDirectionOnly) {
    Scenario s = faultlessScenario("RYABCDEF");
    s.faults.instants = {{3, Condition::space, 5.0}, {4, std::nullopt, -2.0}};
    int seen = 0;
    for (const auto& character : keyed(s, 8))
        for (const auto& i : character.instants) {
            const double expected = i.k == 3 && i.to == Condition::space ? 5.0 : i.k == 4 ? -2.0 : 0.0;
            EXPECT_NEAR(i.displacementPercent, expected, 1e-9);
            seen += expected != 0.0 ? 1 : 0;
        }
    EXPECT_GT(seen, 5);
}

TEST(KeyerTest, CharacteristicDisplacementFollowsTheElementBefore) {
    Scenario s = faultlessScenario("OT");  // 00011 and 00001: four and five units of space, then marks
    s.faults.characteristic = {{4, 3.0}, {5, -1.0}};
    const auto all = keyed(s, 2);
    EXPECT_EQ(all[0].instants[1].k, 4);
    EXPECT_NEAR(all[0].instants[1].displacementPercent, 3.0, 1e-9);
    EXPECT_EQ(all[1].instants[1].k, 5);
    EXPECT_NEAR(all[1].instants[1].displacementPercent, -1.0, 1e-9);
}

TEST(KeyerTest, ScatterHasTheStatedDeviationAndSparesTheStart) {
    Scenario s = faultlessScenario();
    s.faults.scatterPercent = 2.0;
    double squares = 0.0;
    long count = 0;
    for (const auto& character : keyed(s, 4000)) {
        EXPECT_EQ(character.instants[0].displacementPercent, 0.0);
        for (std::size_t i = 1; i < character.instants.size(); ++i, ++count)
            squares += std::pow(character.instants[i].displacementPercent, 2);
    }
    EXPECT_NEAR(std::sqrt(squares / static_cast<double>(count)), 2.0,
                4.0 * 2.0 / std::sqrt(2.0 * static_cast<double>(count)));
}

TEST(KeyerTest, ScatterOfTheStartMovesAllInstantsOfItsCharacterTogether) {
    Scenario s = faultlessScenario();
    s.faults.startScatterPercent = 2.0;
    for (const auto& character : keyed(s, 50))
        for (std::size_t i = 1; i < character.instants.size(); ++i)
            EXPECT_NEAR(character.instants[i].displacementPercent, -character.instants[0].displacementPercent, 1e-9);
}

TEST(KeyerTest, CyclicDisplacementIsASineOfTheStatedSizeAndFrequency) {
    Scenario s = faultlessScenario();
    s.faults.cyclic = {{4.0, 2.3, std::nullopt, 0.1, false}};
    double largest = 0.0;
    for (const auto& character : keyed(s, 300))
        for (const auto& i : character.instants) {
            if (i.k == 0) continue;
            const double due = character.sent.startSeconds + i.k * kUnit;
            EXPECT_NEAR(i.displacementPercent, 4.0 * std::sin(2.0 * M_PI * (2.3 * due + 0.1)), 1e-6);
            largest = std::max(largest, i.displacementPercent);
        }
    EXPECT_NEAR(largest, 4.0, 0.01);
}

TEST(KeyerTest, APartBehindTheClutchRestsInAPause) {
    Scenario s = faultlessScenario("R");
    s.faults.cyclic = {{4.0, 0.0, 1.0, 0.05, false}};  // once round with each character: the same every time
    s.faults.pauses = {{3, 0.0, 0.377}};
    const auto all = keyed(s, 20);
    for (const auto& character : all)
        for (std::size_t i = 0; i < character.instants.size(); ++i)
            EXPECT_NEAR(character.instants[i].displacementPercent, all[0].instants[i].displacementPercent, 1e-6);
}

TEST(KeyerTest, MarksAreLostAndSpacesFilledInTheStatedShare) {
    Scenario s = faultlessScenario("ABCDEFGHIJKLMNOPQRSTUVWXYZ");
    s.faults.missingMarks = {{4, 0.3}};
    s.faults.filledSpaces = {{2, 0.15}};
    long marks = 0;
    long lost = 0;
    long spaces = 0;
    long filled = 0;
    for (const auto& c : keyed(s, 26000)) {
        const unsigned wrong = c.sent.tapeCode ^ c.sent.sentCode;
        EXPECT_EQ(wrong & ~0b01010U, 0U) << "no other level fails";
        if (c.sent.tapeCode & 0b01000U) ++marks;
        if (wrong & 0b01000U) ++lost;
        if (!(c.sent.tapeCode & 0b00010U)) ++spaces;
        if (wrong & 0b00010U) ++filled;
    }
    EXPECT_NEAR(static_cast<double>(lost) / static_cast<double>(marks), 0.3, 0.02);
    EXPECT_NEAR(static_cast<double>(filled) / static_cast<double>(spaces), 0.15, 0.015);
}

TEST(KeyerTest, ABounceEndsTheStatedTimeAfterTheFirstClosure) {
    Scenario s = faultlessScenario();
    s.faults.bounce = Scenario::Bounce{1.6, 2, 1.0};
    for (const auto& character : keyed(s, 4)) {
        const auto& all = character.instants;
        for (std::size_t i = 0; i < all.size(); ++i) {
            EXPECT_EQ(all[i].to, i % 2 == 0 ? Condition::space : Condition::mark) << "opening and closing take turns";
            EXPECT_TRUE(i == 0 || all[i].seconds > all[i - 1].seconds);
            if (all[i].bounce || all[i].to != Condition::mark) continue;
            ASSERT_LT(i + 4, all.size());
            for (std::size_t extra = 1; extra <= 4; ++extra) EXPECT_TRUE(all[i + extra].bounce);
            EXPECT_NEAR(all[i + 4].seconds - all[i].seconds, 0.0016, 1e-12);
        }
    }
}

TEST(KeyerTest, ALateTripLengthensStopsAndNothingElse) {
    Scenario s = faultlessScenario();
    s.faults.stopLatePercent = 20.0;
    s.faults.stopIrregularPercent = 10.0;
    s.faults.stopIrregularUniform = true;
    const auto all = keyed(s, 3000);
    double least = 9.0;
    double most = 0.0;
    double sum = 0.0;
    for (std::size_t i = 1; i < all.size(); ++i) {
        const double stop = (all[i].sent.startSeconds - all[i - 1].sent.startSeconds) / kUnit - 6.0;
        least = std::min(least, stop);
        most = std::max(most, stop);
        sum += stop;
    }
    EXPECT_NEAR(least, 1.42 + 0.2 - 0.1, 0.001);
    EXPECT_NEAR(most, 1.42 + 0.2 + 0.1, 0.001);
    EXPECT_NEAR(sum / 2999.0, 1.62, 0.005);
    EXPECT_NEAR(largestGross(all), 0.0, 1e-6);
}

TEST(KeyerTest, PausesComeAfterSoManyCharactersOrAtATime) {
    Scenario s = faultlessScenario();
    s.faults.pauses = {{5, 0.0, 2.0}, {0, 3.0, 7.0}};
    const auto all = keyed(s, 40);
    std::map<int, int> gaps;  // whole seconds beyond the period: how often
    for (std::size_t i = 1; i < all.size(); ++i)
        ++gaps[static_cast<int>(all[i].sent.startSeconds - all[i - 1].sent.startSeconds - 7.42 * kUnit + 0.001)];
    EXPECT_EQ(gaps[2] + gaps[9], 7);
    EXPECT_EQ(gaps[7] + gaps[9], 1);
}

TEST(KeyerTest, AMoveTakesEffectWithTheNextCharacter) {
    Scenario s = faultlessScenario();
    s.faults.biasPercent = 10.0;
    s.moves.push_back({2.0, true, std::nullopt, -4.0, std::nullopt, std::nullopt, std::nullopt});
    s.moves.push_back({4.0, false, 1.0, 0.5, std::nullopt, std::nullopt, std::nullopt});
    for (const auto& character : keyed(s, 40)) {
        const double start = character.sent.startSeconds;
        EXPECT_EQ(character.sent.biasPercent, start < 2.0 ? 10.0 : start < 4.0 ? 6.0 : 0.5);
        EXPECT_DOUBLE_EQ(character.sent.unitSeconds, start < 4.0 ? kUnit : kUnit / 1.01);
    }
}

TEST(KeyerTest, TheEccentricAddsToTheBiasFromTheNextCharacterOn) {
    Scenario s = faultlessScenario();
    s.faults.biasPercent = 9.8;
    Keyer keyer(s);
    KeyedCharacter c;
    ASSERT_TRUE(keyer.next(c));
    EXPECT_NEAR(c.instants[1].displacementPercent, -9.8, 1e-9);
    keyer.turnEccentric(-4.0);
    keyer.turnEccentric(-1.0);
    ASSERT_TRUE(keyer.next(c));
    EXPECT_NEAR(c.instants[1].displacementPercent, -4.8, 1e-9);
}

TEST(KeyerTest, AWanderingSpeedSwingsByTheStatedShare) {
    Scenario s = faultlessScenario();
    s.faults.speedWander = Scenario::SpeedWander{1.0, 0.2};
    double shortest = 1.0;
    double longest = 0.0;
    for (const auto& c : keyed(s, 400)) {
        shortest = std::min(shortest, c.sent.unitSeconds);
        longest = std::max(longest, c.sent.unitSeconds);
    }
    EXPECT_NEAR(shortest, kUnit / 1.01, kUnit * 1e-4);
    EXPECT_NEAR(longest, kUnit / 0.99, kUnit * 1e-4);
}

TEST(KeyerTest, HoweverLargeTheFaultsInstantsNeverChangePlaces) {
    Scenario s = faultlessScenario();
    s.faults.biasPercent = 60.0;
    s.faults.endPercent = -60.0;
    s.faults.scatterPercent = 20.0;
    s.faults.startScatterPercent = 20.0;
    s.faults.stopIrregularPercent = 200.0;
    s.faults.cyclic = {{40.0, 3.0, std::nullopt, 0.0, true}};
    s.faults.bounce = Scenario::Bounce{10.0, 10, 1.0};
    double before = 0.0;
    Condition last = Condition::mark;
    for (const auto& character : keyed(s, 3000))
        for (const auto& i : character.instants) {
            EXPECT_GT(i.seconds, before);
            EXPECT_NE(i.to, last);
            before = i.seconds;
            last = i.to;
        }
}

}  // namespace
}  // namespace trueunit
