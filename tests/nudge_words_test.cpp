// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/nudge_words.h"

#include <gtest/gtest.h>

namespace trueunit {
namespace {

using Kind = NudgeAdvice::Kind;

NudgeAdvice after(double before, double now, std::optional<Measured> level = {}) {
    Nudge n;
    n.before = {before, 0.2};
    n.after = {now, 0.2};
    n.step = {now - before, 0.3};
    return adviceAfter(std::vector{n}, level, Limits{});  // bias limit 5 %
}

TEST(NudgeWords, SayNothingBeforeTheFirstNudge) { EXPECT_EQ(adviceAfter({}, {}, Limits{}).kind, Kind::none); }

TEST(NudgeWords, SayHowLongTheScatterIsStillLearned) {
    Snapshot s;
    EXPECT_EQ(learningWords(s), "");
    s.nudgesLearnedIn = 7;
    EXPECT_EQ(learningWords(s), "still learning the scatter: 7 more characters");
    s.nudgesLearnedIn = 1;
    EXPECT_EQ(learningWords(s), "still learning the scatter: 1 more character");
}

TEST(NudgeWords, SayWhatTheLastNudgeDid) {
    EXPECT_EQ(after(7.84, 5.1).did, "last nudge: +7.8 to +5.1");
    EXPECT_EQ(after(0.04, -7.0).did, "last nudge: 0.0 to \u22127.0");
}

TEST(NudgeWords, CountHowManyMoreOfTheSameItTakes) {
    EXPECT_EQ(after(7.8, 5.1).next, "go on the same way, about two more of the same");
    EXPECT_EQ(after(14.0, 7.5).next, "go on the same way, about one more of the same");
    EXPECT_EQ(after(18.0, 6.0).next, "go on the same way, about half of it");
    EXPECT_EQ(after(-14.0, -10.0).next, "go on the same way, about three more of the same");
    EXPECT_EQ(after(20.0, 19.0).next, "go on the same way, many more of the same; take larger ones");
    EXPECT_EQ(after(7.8, 5.1).kind, Kind::goOn);
}

TEST(NudgeWords, TurnTheHandBackWhenItMadeThingsWorse) {
    EXPECT_EQ(after(6.0, 9.0).next, "that made it worse; go back, about three of the same");
    EXPECT_EQ(after(-5.5, -11.0).next, "that made it worse; go back, about two of the same");
    EXPECT_EQ(after(6.0, -8.0).next, "that went too far; go back, about half of it");
    EXPECT_EQ(after(6.0, 9.0).kind, Kind::back);
}

TEST(NudgeWords, AskToTightenInLimitsAndCatchTighteningThatMovesIt) {
    EXPECT_EQ(after(6.0, 0.5).next, "in limits; tighten the screws and watch that it stays");
    EXPECT_EQ(after(4.0, 0.5).kind, Kind::inOrder);
    EXPECT_EQ(after(0.5, -2.5).kind, Kind::crept);
    EXPECT_NE(after(0.5, -2.5).next.find("still in limits"), std::string::npos);
    EXPECT_NE(after(0.5, 6.5).next.find("out of limits"), std::string::npos);
}

TEST(NudgeWords, NoticeThatItCreptOutOfLimitsWithoutAStep) {
    EXPECT_EQ(after(9.0, 4.0, Measured{4.3, 0.2}).kind, Kind::inOrder);
    const NudgeAdvice crept = after(9.0, 4.0, Measured{5.8, 0.2});
    EXPECT_EQ(crept.kind, Kind::crept);
    EXPECT_EQ(crept.next, "it crept out of limits to +5.8; is it tight?");
}

}  // namespace
}  // namespace trueunit
