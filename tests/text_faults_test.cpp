// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/text_faults.h"

#include <gtest/gtest.h>

#include "core/report/judge.h"

using namespace trueunit;

namespace {

// Timed well within limits; the tests put the characters wrong.
Reading wellTimed() {
    Reading r;
    r.text.characters = 200;
    r.text.wrongCharacters = 0;
    r.text.feedSlips = 0;
    r.distortion.biasPercent = Measured{0.5, 0.1};
    r.speed.baud = Measured{50.0, 0.01};
    r.speed.errorPercent = Measured{0.0, 0.02};
    r.levels.emplace();
    for (int level = 1; level <= 5; ++level) r.levels->push_back({level, 100, 0, 100, 0});
    return r;
}

Verdict verdictOf(const Reading& r) { return judgeReading(r, Limits{}, {}, {200, 200}); }

}  // namespace

TEST(TextFaults, ASenderThatLosesMarksIsOutOfLimitsHoweverWellItTimesThem) {
    Reading r = wellTimed();
    EXPECT_EQ(verdictOf(r).within, std::optional(true));
    (*r.levels)[2].marksMissed = 7;
    r.text.wrongCharacters = 7;
    EXPECT_EQ(verdictOf(r).within, std::optional(false));
    EXPECT_EQ(verdictOf(r).exceeded, (std::vector<std::string>{"wrong_characters", "marks_missed"}));
    EXPECT_EQ(textFaultWords(r),
              (std::vector<std::string>{"7 of 100 marks of level 3 lost", "7 characters are wrong"}));
}

TEST(TextFaults, AFewSpacesFilledOnALevelThatLosesManyMarksProveNothing) {
    Reading r = wellTimed();
    (*r.levels)[3].marksMissed = 14;
    (*r.levels)[3].spacesFilled = 2;
    EXPECT_EQ(textFaults(r), std::vector<std::string>{"marks_missed"});
    EXPECT_EQ(textFaultWords(r), std::vector<std::string>{"14 of 100 marks of level 4 lost"});
    (*r.levels)[3].spacesFilled = 5;
    EXPECT_EQ(textFaults(r), (std::vector<std::string>{"marks_missed", "spaces_filled"}));
}

TEST(TextFaults, SlipsOfTheFeedAndMissingStopsAreNamed) {
    Reading r = wellTimed();
    r.text.feedSlips = 1;
    EXPECT_EQ(textFaults(r), std::vector<std::string>{"feed_slips"});
    r.text.wrongCharacters = 1;  // one that is not told for a slip yet
    EXPECT_EQ(textFaults(r), std::vector<std::string>{"feed_slips"});
    r.text.wrongCharacters = 0;
    r.text.framingErrors = 3;  // each may pass for a slip
    EXPECT_TRUE(textFaults(r).empty());
    r.text.framingErrors = 5;
    EXPECT_EQ(textFaults(r), std::vector<std::string>{"framing_errors"});
}

TEST(TextFaults, AnUnknownTextIsNoFault) {
    Reading r = wellTimed();
    r.levels.reset();
    r.text.wrongCharacters.reset();
    r.text.feedSlips.reset();
    EXPECT_TRUE(textFaults(r).empty());
    EXPECT_TRUE(textFaultWords(r).empty());
}
