// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/receiving_margin.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/support/character_builder.h"

namespace trueunit {
namespace {

using test::CharacterBuilder;

// What an ideal receiver of unit 22 ms reads that samples level i at (i + r) units, by looking up the line: shares
// nothing with the computation under test.
unsigned readBy(const Character& c, double r, int levels) {
    unsigned code = 0;
    for (int level = 1; level <= levels; ++level) {
        bool mark = false;
        for (const Instant& i : c.instants)
            if (i.seconds <= (level + r) * 0.022) mark = i.to == Condition::mark;
        if (mark) code |= 1U << (level - 1);
    }
    return code;
}

struct Row {
    const char* signal;
    double biasPercent, endPercent, slowPercent, low, high;
};

// Usable sampling range over all 32 codes with a sampling window of a fifth of a unit. The values follow from the
// definitions of Federal Standard 1037C (start-stop margin, individual distortion): the latest beginning and the
// earliest end of a level bound it, a relative error e of the period moves the instant at k by k e. Common practice of
// receiver handbooks states the first three rows.
constexpr Row kRows[] = {
    {"perfect", 0, 0, 0, 10, 90},
    {"20 % marking bias", 20, 0, 0, 10, 70},
    {"20 % spacing end", 0, -20, 0, 10, 70},
    {"20 % spacing bias", -20, 0, 0, 30, 90},
    {"20 % marking end", 0, 20, 0, 30, 90},
    {"1.5 % slow", 0, 0, 1.5, 17.5, 93},
    {"1.5 % fast", 0, 0, -1.5, 8.5, 81},
};

std::vector<Character> sent(const Row& row) {
    CharacterBuilder builder;
    builder.biasPercent = row.biasPercent;
    builder.endPercent = row.endPercent;
    builder.unit = 0.022 * (1.0 + 0.01 * row.slowPercent);
    return builder.characters(test::allCodes());
}

TEST(ReceivingMargin, TheHandbookRowsAreReproduced) {
    for (const Row& row : kRows) {
        const auto characters = sent(row);
        const auto all = samplingRange(test::pointersTo(characters), 0.022, 5);
        ASSERT_TRUE(all) << row.signal;
        const SamplingRange usable = withSamplingWindow(*all, 0.2);
        EXPECT_NEAR(100.0 * usable.low, row.low, 1e-6) << row.signal;
        EXPECT_NEAR(100.0 * usable.high, row.high, 1e-6) << row.signal;
    }
}

// 50 % less half the sampling window (Federal Standard 1037C, "start-stop margin", by arithmetic); with 40 % of
// distortion of either kind a receiver of that window begins to misprint (US Army signal course SS0031).
TEST(ReceivingMargin, FortyPercentOfBiasIsAllAReceiverWithAWindowOfAFifthStands) {
    for (const double bias : {40.0, -40.0}) {
        const auto characters = sent({"", bias, 0, 0, 0, 0});
        const SamplingRange usable = withSamplingWindow(*samplingRange(test::pointersTo(characters), 0.022, 5), 0.2);
        EXPECT_NEAR(bias > 0.0 ? usable.high : usable.low, 0.5, 1e-9);
    }
}

TEST(ReceivingMargin, ALevelsRangeIsWhereAReceiverReadsItRightlyAndTheNamedCharacterIsTheFirstMisread) {
    CharacterBuilder builder;
    builder.biasPercent = 6.0;
    builder.extraPercent = [](std::uint64_t n, int k, Condition) {
        return k == 3 && n == 9 ? 21.0 : std::sin(double(n));
    };
    const auto characters = builder.characters(test::allCodes());
    constexpr double kHair = 1e-6;
    int bounded = 0;
    for (const LevelRange& range : levelRanges(test::pointersTo(characters), 0.022, 5))
        for (const auto& [bound, inside] : {std::pair{range.low, kHair}, {range.high, -kHair}}) {
            ASSERT_TRUE(bound) << range.level;
            ++bounded;
            const unsigned bit = 1U << (range.level - 1);
            for (const Character& c : characters) {
                EXPECT_EQ(readBy(c, bound->fraction + inside, 5) & bit, c.code & bit) << range.level;
                if (&c != bound->character) continue;
                EXPECT_NE(readBy(c, bound->fraction - inside, 5) & bit, c.code & bit) << range.level;
            }
        }
    EXPECT_EQ(bounded, 10);
}

TEST(ReceivingMargin, TheWholeIsBoundedByItsTightestLevels) {
    const auto characters = sent({"", 7.0, 3.0, 0.4, 0, 0});
    const auto all = samplingRange(test::pointersTo(characters), 0.022, 5);
    double low = -1.0, high = 2.0;
    for (const LevelRange& l : levelRanges(test::pointersTo(characters), 0.022, 5)) {
        low = std::max(low, l.low->fraction);
        high = std::min(high, l.high->fraction);
    }
    EXPECT_DOUBLE_EQ(low, all->low);
    EXPECT_DOUBLE_EQ(high, all->high);
}

TEST(ReceivingMargin, ALevelWithoutAnInstantHasNoBoundThere) {
    CharacterBuilder builder;
    const auto characters = builder.characters({31});  // all marks: one instant, at the beginning of level 1
    const auto ranges = levelRanges(test::pointersTo(characters), 0.022, 5);
    EXPECT_TRUE(ranges[0].low);
    EXPECT_FALSE(ranges[0].high);
    EXPECT_FALSE(ranges[2].low);
}

}  // namespace
}  // namespace trueunit
