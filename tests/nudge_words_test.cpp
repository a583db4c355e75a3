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

TEST(NudgeWords, MeasureWhatIsLeftByTheLastNudge) {
    EXPECT_EQ(after(9.6, 5.8).next, "go on the same way, about 1.5 times that nudge");
    EXPECT_EQ(after(7.8, 5.1).next, "go on the same way, about 2 times that nudge");
    EXPECT_EQ(after(14.0, 7.5).next, "go on the same way, about as much");
    EXPECT_EQ(after(18.0, 6.0).next, "go on the same way, about half of that nudge");
    EXPECT_EQ(after(30.0, 6.0).next, "go on the same way, about a quarter of that nudge");
    EXPECT_EQ(after(-18.0, -14.0).next, "go on the same way, about 4 times that nudge");
    EXPECT_EQ(after(20.0, 19.0).next, "go on the same way, much farther: take larger turns");
    EXPECT_EQ(after(7.8, 5.1).kind, Kind::goOn);
}

TEST(NudgeWords, TurnTheHandBackWhenItMadeThingsWorse) {
    EXPECT_EQ(after(6.0, 9.0).next, "that made it worse; go back, about 3 times that nudge");
    EXPECT_EQ(after(-5.5, -11.0).next, "that made it worse; go back, about 2 times that nudge");
    EXPECT_EQ(after(6.0, -8.0).next, "that went too far; go back, about half of that nudge");
    EXPECT_EQ(after(6.0, 9.0).kind, Kind::back);
}

TEST(NudgeWords, AskToTightenInLimitsAndCatchTighteningThatMovesIt) {
    EXPECT_EQ(after(6.0, 0.5).next, "in limits; tighten the screws and watch that it stays");
    EXPECT_EQ(after(4.0, 0.5).kind, Kind::inOrder);
    EXPECT_EQ(after(9.0, 4.1).next, "in limits, 4 % from zero; go on, or tighten the screws");
    EXPECT_EQ(after(9.0, -3.9).next, "in limits, 4 % past zero; go back, or tighten the screws");
    EXPECT_EQ(after(0.5, -2.5).kind, Kind::crept);
    EXPECT_NE(after(0.5, -2.5).next.find("still in limits"), std::string::npos);
    EXPECT_NE(after(0.5, 6.5).next.find("out of limits"), std::string::npos);
}

// 128 characters, the last 30 of them after a nudge from +9.8 to +0.3: together they still read +7.6.
Snapshot fillingWindow() {
    Snapshot s;
    s.options.windowCharacters = 128;
    s.windowUsed = 128;
    s.seconds = 60.0;
    s.reading.distortion.biasPercent = Measured{7.6, 1.0};
    Nudge n;
    n.number = 971;
    n.seconds = 55.0;
    n.before = {9.8, 0.2};
    n.after = {0.3, 0.2};
    n.step = {-9.5, 0.3};
    s.nudges = {n};
    CharacterTrace newest;
    newest.number = 1000;
    s.traces = {std::make_shared<const CharacterTrace>(newest)};
    return s;
}

TEST(NudgeWords, DoNotCallInOrderWhatTheReadingBesideThemCallsOut) {
    Snapshot s = fillingWindow();
    EXPECT_EQ(charactersSinceNudge(s), 30U);
    EXPECT_EQ(adviceAfter(s).next, "in limits since; the reading follows in 98 characters");
    s.options.windowCharacters = 0;
    EXPECT_EQ(adviceAfter(s).next, "in limits since; a shorter window (W) leaves out what was before");
    s.reading.distortion.biasPercent = Measured{3.0, 1.0};
    EXPECT_EQ(adviceAfter(s).next, "in limits; tighten the screws and watch that it stays");
    s.windowUsed = 8;  // all of them since, and yet beyond the limit by a little
    s.reading.distortion.biasPercent = Measured{5.1, 0.3};
    EXPECT_EQ(adviceAfter(s).next, "about at the limit; a little nearer to zero");
}

TEST(NudgeWords, AreDoneWithAnAdjustmentAMinuteAfterItCameIntoLimits) {
    Snapshot s = fillingWindow();
    s.seconds = 55.0 + 61.0;
    EXPECT_EQ(adviceAfter(s).did, "");
    s.nudges.back().after = {6.0, 0.2};  // not in limits: what is left to do still stands
    EXPECT_EQ(adviceAfter(s).kind, Kind::goOn);
    s.nudges.back().before = {1.0, 0.2};  // moved by the tightening, and yet in limits
    s.nudges.back().after = {3.0, 0.2};
    EXPECT_EQ(adviceAfter(s).kind, Kind::none);
    s.biasSinceNudge = Measured{5.6, 0.2};
    EXPECT_EQ(adviceAfter(s).kind, Kind::crept);
}

TEST(NudgeWords, NoticeThatSmallTurnsBroughtItIntoLimits) {
    EXPECT_EQ(after(9.8, 6.0, Measured{5.2, 0.3}).kind, Kind::goOn);
    EXPECT_EQ(after(9.8, 6.0, Measured{4.8, 0.3}).kind, Kind::goOn) << "its uncertainty reaches over the limit";
    EXPECT_EQ(after(9.8, 6.0, Measured{1.8, 0.3}).next, "in limits; tighten the screws and watch that it stays");
    EXPECT_EQ(after(6.0, -8.0, Measured{-1.8, 0.3}).kind, Kind::inOrder);
}

TEST(NudgeWords, NoticeThatItCreptOutOfLimitsWithoutAStep) {
    EXPECT_EQ(after(9.0, 4.0, Measured{4.3, 0.2}).kind, Kind::inOrder);
    const NudgeAdvice crept = after(9.0, 4.0, Measured{5.8, 0.2});
    EXPECT_EQ(crept.kind, Kind::crept);
    EXPECT_EQ(crept.next, "it crept out of limits to +5.8; is it tight?");
}

}  // namespace
}  // namespace trueunit
