// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/simulate/text_feed.h"

#include <gtest/gtest.h>

#include "core/frame/code_table.h"
#include "support/scenario_builder.h"

namespace trueunit {
namespace {

std::string printed(TextFeed& feed, int characters) {
    Decoder decoder(*findCode("ita2"));
    std::string text;
    for (int i = 0; i < characters; ++i)
        if (const auto code = feed.next()) text += decoder.text(*code);
    return text;
}

// ITU-T S.1: R = 01010 and Y = 10101, first level first.
TEST(TextFeedTest, SendsTheCombinationsOfTheAlphabet) {
    TextFeed feed(faultlessScenario("RY"));
    EXPECT_EQ(feed.next(), 0b01010U);
    EXPECT_EQ(feed.next(), 0b10101U);
    EXPECT_EQ(feed.next(), 0b01010U);
}

TEST(TextFeedTest, ATextThatEndsInFiguresBeginsTheNextRoundInLetters) {
    TextFeed feed(faultlessScenario("AB12"));
    EXPECT_EQ(printed(feed, 5 + 6 + 6), "AB12AB12AB12");  // figures shift; then letters shift as well
}

TEST(TextFeedTest, WithoutRepeatTheTapeRunsOut) {
    Scenario s = faultlessScenario("RY");
    s.text.repeat = false;
    TextFeed feed(s);
    EXPECT_TRUE(feed.next());
    EXPECT_TRUE(feed.next());
    EXPECT_FALSE(feed.next());
}

TEST(TextFeedTest, SlipsRepeatAndSkipTheStatedShare) {
    Scenario s = faultlessScenario("RY");
    s.faults.feedSlips.repeatFraction = 0.1;
    TextFeed repeating(s);
    int repeats = 0;
    auto before = repeating.next();
    constexpr int kCount = 20000;
    for (int i = 0; i < kCount; ++i) {
        const auto code = repeating.next();
        repeats += code == before ? 1 : 0;
        before = code;
    }
    EXPECT_NEAR(repeats / (kCount / 1.1), 0.1, 0.01);  // each tape character is sent 1.1 times

    s.faults.feedSlips = {0.0, 0.1};
    TextFeed skipping(s);
    int oneSkipped = 0;
    before = skipping.next();
    for (int i = 0; i < kCount; ++i) {
        const auto code = skipping.next();
        oneSkipped += code == before ? 1 : 0;  // an odd number passed over
        before = code;
    }
    EXPECT_NEAR(oneSkipped / static_cast<double>(kCount), 0.1 * 0.9 / (1.0 - 0.1 * 0.1), 0.01);
}

TEST(TextFeedTest, ARandomTextIsTheSameForTheSameSeed) {
    Scenario s = faultlessScenario("");
    s.text.randomCharacters = 50;
    s.text.randomSeed = 4;
    const std::string first = s.plainText();
    EXPECT_EQ(first, s.plainText());
    TextFeed feed(s);
    EXPECT_EQ(printed(feed, 50), first);
    s.text.randomSeed = 5;
    EXPECT_NE(first, s.plainText());
}

}  // namespace
}  // namespace trueunit
