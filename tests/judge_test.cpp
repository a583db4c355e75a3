// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/judge.h"

#include <gtest/gtest.h>

using namespace trueunit;

namespace {

constexpr InstrumentPart kNothing{};

Reading withBias(double value, double uncertainty) {
    Reading r;
    r.distortion.biasPercent = Measured{value, uncertainty};
    return r;
}

Verdict verdictOf(const Reading& r, long characters = 32, InstrumentPart part = kNothing, Limits limits = {}) {
    return judgeReading(r, limits, part, {characters, characters});
}

const JudgedReading& bias(const Verdict& v) { return *judged(v, "bias_percent"); }

}  // namespace

// The decision rule of ISO 14253-1 (from memory): the uncertainty counts against whoever has to prove something.
TEST(Judge, TheUncertaintyIsAGuardBandOnEitherSideOfTheLimit) {
    EXPECT_EQ(bias(verdictOf(withBias(4.5, 0.5))).judgement, Judgement::in);
    EXPECT_EQ(bias(verdictOf(withBias(4.6, 0.5))).judgement, Judgement::open);
    EXPECT_EQ(bias(verdictOf(withBias(-5.4, 0.5))).judgement, Judgement::open);
    EXPECT_EQ(bias(verdictOf(withBias(-5.6, 0.5))).judgement, Judgement::out);
}

TEST(Judge, WithinNeedsEveryReadingAndOneOutIsEnoughToBeOut) {
    Reading r = withBias(1.0, 0.1);
    r.distortion.endPercent = Measured{4.9, 0.5};
    EXPECT_EQ(verdictOf(r).within, std::nullopt);
    EXPECT_TRUE(verdictOf(r).exceeded.empty());
    r.distortion.biasPercent = Measured{7.0, 0.1};
    EXPECT_EQ(verdictOf(r).within, std::optional(false));
    EXPECT_EQ(verdictOf(r).exceeded, std::vector<std::string>{"bias_percent"});
    r = withBias(1.0, 0.1);
    EXPECT_EQ(verdictOf(r).within, std::optional(true));
}

// A sender that is 4 % off every usual speed is not in limits because nobody said which one is meant.
TEST(Judge, WithoutANominalSpeedNothingIsSaidToBeInLimits) {
    Reading r = withBias(1.0, 0.1);
    r.speed.baud = Measured{48.0, 0.01};
    EXPECT_EQ(verdictOf(r).within, std::nullopt);
    EXPECT_EQ(judgementWords(*judged(verdictOf(r), "error_percent")), "cannot tell: no nominal speed");
    EXPECT_TRUE(openNotes(verdictOf(r)).empty()) << "that there is none is noted with the reading";
    r.verdict = verdictOf(r);
    r.speed.unitMs = 1000.0 / 48.0;
    EXPECT_EQ(plainVerdict(r).within, std::nullopt);
    r.distortion.biasPercent = Measured{7.0, 0.1};
    EXPECT_EQ(verdictOf(r).within, std::optional(false)) << "what is out is out at any speed";
    Limits noSpeed;
    noSpeed.statesSpeed = false;
    EXPECT_EQ(verdictOf(withBias(1.0, 0.1), 32, kNothing, noSpeed).within, std::optional(true));
}

// The uncertainty of a mean falls with the root of the count: half of it asks for four times as many, 96 more than 32.
// To one figure, upwards: the value moves as well.
TEST(Judge, SaysHowManyCharactersMoreWouldSettleIt) {
    const Verdict v = verdictOf(withBias(4.5, 1.0), 32);
    EXPECT_EQ(bias(v).more, std::optional(100L));
    EXPECT_EQ(judgementWords(bias(v)), "cannot tell yet: 100 more characters");
    ASSERT_EQ(openNotes(v).size(), 1U);
    EXPECT_EQ(openNotes(v)[0],
              "Whether the bias is in limits cannot be told yet: about 100 more characters are wanted.");
}

// A window that takes no more of them never gets there.
TEST(Judge, AFullWindowSaysWhatWindowIsWanted) {
    Reading r = withBias(4.5, 1.0);
    r.verdict = judgeReading(r, Limits{}, kNothing, {8, 32, true});
    EXPECT_EQ(bias(r.verdict).more, std::optional(30L));  // 24, upwards
    EXPECT_EQ(judgementWords(bias(r.verdict)), "cannot tell over so few: take the window 128");
    EXPECT_EQ(openNotes(r.verdict).front(),
              "Whether the bias is in limits cannot be told over so few characters: take the window 128.");
}

TEST(Judge, OfAWindowThatIsNotOfferedAllIsWanted) {
    Reading r = withBias(4.5, 1.0);
    r.verdict = judgeReading(r, Limits{}, kNothing, {128, 128, true});  // 384 more
    EXPECT_EQ(bias(r.verdict).window, std::optional(0));
    EXPECT_EQ(judgementWords(bias(r.verdict)), "cannot tell over so few: take the window all");
}

TEST(Judge, MinutesOfTapeAreNotAskedFor) {
    const Verdict v = verdictOf(withBias(4.8, 1.0), 32);  // 32 x 24 = 768
    EXPECT_FALSE(bias(v).more);
    EXPECT_EQ(judgementWords(bias(v)), "cannot tell: too near the limit");
}

TEST(Judge, WhatTheInstrumentItselfAddsIsNotLessenedByMoreCharacters) {
    const InstrumentPart part{0.0, 0.3, 0.0};
    EXPECT_FALSE(bias(verdictOf(withBias(4.8, 0.5), 32, part)).more);
    EXPECT_EQ(judgementWords(bias(verdictOf(withBias(4.8, 0.5), 32, part))), "cannot tell: too near the limit");
    EXPECT_EQ(bias(verdictOf(withBias(4.5, 0.6), 32, part)).more, std::optional(30L));  // 32 (0.27 / 0.16 - 1) = 22
}

TEST(Judge, ALargestValueIsHeldWithTheInstrumentsPartAlone) {
    Reading r = withBias(1.0, 0.1);
    r.distortion.grossPercent = 10.05;
    const InstrumentPart part{0.0, 0.0, 0.1};
    EXPECT_EQ(judged(verdictOf(r, 32, part), "gross_percent")->judgement, Judgement::open);
    EXPECT_FALSE(judged(verdictOf(r, 32, part), "gross_percent")->more);
    r.distortion.grossPercent = 10.2;
    EXPECT_EQ(judged(verdictOf(r, 32, part), "gross_percent")->judgement, Judgement::out);
}

TEST(Judge, ALargestValueBeyondItsLimitIsOutWhateverTheScatterAndWithinItWantsRoomForOthers) {
    const auto gross = [](double value) {
        Reading r = withBias(0.5, 0.1);
        r.distortion.grossPercent = value;
        r.distortion.fortuitousRmsPercent = 3.3;
        InstrumentPart part;
        part.peakPercent = 0.1;
        return judged(verdictOf(r, 600, part), "gross_percent")->judgement;  // limit 10
    };
    EXPECT_EQ(gross(11.8), Judgement::out) << "more characters could only make it larger";
    EXPECT_EQ(gross(10.05), Judgement::open) << "the instrument's own part";
    EXPECT_EQ(gross(8.5), Judgement::open) << "the largest of 600 others might be beyond";
    EXPECT_EQ(gross(7.5), Judgement::in);
}

TEST(Judge, ALimitThatTheSetDoesNotStateIsNotJudged) {
    Limits limits;
    limits.statesBias = false;
    const Verdict v = verdictOf(withBias(30.0, 0.1), 32, kNothing, limits);
    EXPECT_EQ(judged(v, "bias_percent"), nullptr);
    EXPECT_EQ(v.within, std::nullopt);
    EXPECT_EQ(limitsText(limits).find("bias 5"), std::string::npos);
    EXPECT_NE(limitsText(limits).find("Origin: common practice."), std::string::npos);
}

TEST(Judge, ASpeedThatAFaultPullsAtAwaitsItsMendingAndNoMoreCharacters) {
    Reading r = withBias(1.0, 0.1);
    r.speed.baud = Measured{74.7, 0.3};
    r.speed.errorPercent = Measured{-0.36, 0.45};
    EXPECT_TRUE(judged(verdictOf(r), "error_percent")->more);
    r.setAside = SetAsideReading{1.0, 0.0, 0.0};
    const Verdict v = verdictOf(r);
    EXPECT_FALSE(judged(v, "error_percent")->more);
    EXPECT_TRUE(judged(v, "error_percent")->pulled);
    ASSERT_EQ(openNotes(v).size(), 1U);
    EXPECT_NE(openNotes(v)[0].find("before the fault that pulls at it is mended"), std::string::npos);
}
