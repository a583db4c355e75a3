// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/finding_rules.h"

#include <gtest/gtest.h>

#include <cmath>
#include <string>

#include "core/report/find_faults.h"

using namespace trueunit;

namespace {

// A machine in order, 50 baud, 200 characters of RY, as the path would read it; the tests put one thing wrong.
struct Bench {
    Reading reading;
    Limits limits;
    Options options;
    std::optional<DisplacementPattern> pattern = DisplacementPattern{0.0, {0.3, 0.1}, {-0.2, 0.1}, {}, 0.05};
    std::optional<Steadiness> steadiness = Steadiness{199, 1.0, 0.004, 0.004, 0.02, 1.1, 25};
    std::optional<TapeStudy> tape;

    Bench() {
        reading.input.kind = InputKind::loop;
        reading.input.inverted = false;
        reading.input.rateHz = 48000.0;
        reading.input.snrDb = 40.0;
        reading.input.peakDbfs = -12.0;
        reading.input.riseToMarkMs = reading.input.riseToSpaceMs = 0.3;
        reading.text.characters = 200;
        reading.speed = {50.0, 20.0, 20.0, Measured{50.0, 0.01}, Measured{0.0, 0.02}, Measured{150.0, 0.02}, {}, {}};
        reading.speed.stopUnits = Measured{1.5, 0.001};
        reading.distortion.biasPercent = Measured{0.3, 0.1};
        reading.distortion.endPercent = Measured{-0.2, 0.1};
        reading.distortion.synchronousPercent = reading.distortion.grossPercent = 1.2;
        reading.distortion.fortuitousRmsPercent = 0.4;
        reading.distortion.fortuitousPeakPercent = 1.1;
        reading.distortion.characteristicPercent = 0.1;
        reading.distortion.cyclic.emplace();
        for (int k = 1; k <= 6; ++k) reading.instants.push_back({k, Condition::mark, 100, 0.0, 0.4, -1.0, 1.0});
        for (int k = 2; k <= 5; ++k) reading.instants.push_back({k, Condition::space, 100, 0.0, 0.4, -1.0, 1.0});
        reading.contact = ContactReading{0, 0.0};
        reading.verdict.within = true;
        TapeStudy study;
        study.source = TextSource::reversals;
        study.loopLength = 2;
        study.compared = 200;
        for (int level = 1; level <= 5; ++level) study.levels.push_back({level, 100, 0, 100, 0});
        tape = study;
    }

    // As read and by the account of all causes alike.
    void bias(Measured m) { reading.distortion.biasPercent = pattern->bias = m; }
    void end(Measured m) { reading.distortion.endPercent = pattern->end = m; }

    Symptoms symptoms() const { return {reading, limits, options, 5, pattern, steadiness, tape, {}}; }
    std::vector<Finding> findings() const { return findFaults(symptoms()); }
    std::string first() const {
        const auto found = findings();
        return found.empty() ? "none" : found.front().id;
    }
};

bool says(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

}  // namespace

TEST(FindingRules, AMachineInOrderIsCalledSoAndNothingElse) {
    const auto found = Bench{}.findings();
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].id, "in-order");
    EXPECT_TRUE(says(found[0].evidence, "200 characters"));
}

TEST(FindingRules, TooFewCharactersGiveNoFindingAtAll) {
    Bench b;
    b.reading.text.characters = 8;
    b.reading.distortion.biasPercent->value = 20.0;
    EXPECT_TRUE(b.findings().empty());
}

TEST(FindingRules, ABiasInTheSignOfTheTradePointsAtTheContact) {
    Bench b;
    b.bias({6.2, 0.1});
    b.reading.distortion.biasPercent = Measured{6.2, 0.1};
    b.reading.verdict.within = false;
    const auto found = contactOffset(b.symptoms());
    ASSERT_TRUE(found);
    EXPECT_EQ(found->finding.id, "contact-offset");
    EXPECT_TRUE(says(found->finding.title, "too long by 6.2 %"));
    EXPECT_TRUE(says(found->finding.evidence, "1.24 ms) early"));
    EXPECT_GT(found->severity, 1.0);
    b.bias({-6.2, 0.1});
    EXPECT_TRUE(says(contactOffset(b.symptoms())->finding.title, "too short"));
    EXPECT_TRUE(says(contactOffset(b.symptoms())->finding.evidence, "late"));
}

TEST(FindingRules, AMildBiasIsToldAsWithinLimitsAndASmallOneNotAtAll) {
    Bench b;
    b.bias({3.0, 0.1});
    ASSERT_TRUE(contactOffset(b.symptoms()));
    EXPECT_TRUE(says(contactOffset(b.symptoms())->finding.title, "within limits"));
    EXPECT_LT(contactOffset(b.symptoms())->severity, 1.0);
    b.bias({1.5, 0.1});
    EXPECT_FALSE(contactOffset(b.symptoms()));
}

TEST(FindingRules, ABiasThatOneLeverMakesIsNotTheContacts) {
    Bench b;
    b.reading.distortion.biasPercent = Measured{-4.4, 0.5};  // as the least-squares fit reads it
    b.pattern->bias = {0.1, 0.1};
    b.pattern->out = {{1, StandingOut::Which::both, {8.0, 0.2}}};
    EXPECT_FALSE(contactOffset(b.symptoms()));
    EXPECT_EQ(b.first(), "level-late");
    EXPECT_TRUE(says(b.findings()[0].title, "Level 1 comes 8.0 % late"));
}

TEST(FindingRules, EachOfTwoLeversHasItsFinding) {
    Bench b;
    b.pattern->bias = {0.1, 0.1};
    b.pattern->out = {{4, StandingOut::Which::both, {-6.3, 0.2}}, {1, StandingOut::Which::both, {-5.9, 0.2}}};
    const auto findings = b.findings();
    ASSERT_GE(findings.size(), 2U);
    EXPECT_TRUE(says(findings[0].title, "Level 4 comes 6.3 % early"));
    EXPECT_TRUE(says(findings[0].evidence, "set aside too: instant 1"));
    EXPECT_TRUE(says(findings[1].title, "Level 1 comes 5.9 % early"));
    EXPECT_TRUE(says(findings[1].lookAt, "Level 1"));
    EXPECT_GT(findings[1].confidence, 0.9);
    EXPECT_EQ(findings[1].seenAt.level, 1);
}

TEST(FindingRules, AnEndOffsetIsTheOthers) {
    Bench b;
    b.end({-7.0, 0.1});
    EXPECT_EQ(b.first(), "end-offset");
    EXPECT_TRUE(says(b.findings()[0].title, "early"));
}

TEST(FindingRules, BiasAndEndAlikeLeaveTheStartInstantUnderSuspicion) {
    Bench b;
    b.bias({5.5, 0.1});
    b.end({-5.5, 0.1});
    EXPECT_TRUE(says(contactOffset(b.symptoms())->finding.evidence, "start instant"));
    EXPECT_LT(contactOffset(b.symptoms())->finding.confidence, 0.9);
}

TEST(FindingRules, ASlowRiseTakesTheBlameForTheBiasItMakes) {
    Bench b;
    b.reading.input.riseToMarkMs = 2.2;  // a time constant of 1 ms: the middle 0.69 ms late, 3.5 % of 20 ms
    b.reading.input.riseToSpaceMs = 0.1;
    b.bias({-3.5, 0.1});
    b.reading.distortion.biasPercent = Measured{-3.5, 0.1};
    EXPECT_FALSE(contactOffset(b.symptoms()));
    EXPECT_EQ(b.first(), "slow-rise");
    b.bias({6.0, 0.1});  // marks too long: no slow rise does that
    EXPECT_TRUE(contactOffset(b.symptoms()));
}

TEST(FindingRules, ScatterThatTheNoiseExplainsIsNotTheContacts) {
    Bench b;
    b.reading.distortion.fortuitousRmsPercent = 4.0;
    b.reading.distortion.fortuitousPeakPercent = 12.0;
    EXPECT_EQ(b.first(), "contact-scatter");
    b.reading.distortion.fortuitousRmsPercent = 2.0;
    b.reading.distortion.fortuitousPeakPercent = 6.0;
    EXPECT_TRUE(contactScatter(b.symptoms()));
    b.reading.input.snrDb = -5.0;  // and edges of 1.4 ms: the noise alone makes 1.7 %
    b.reading.input.riseToMarkMs = 1.4;
    EXPECT_FALSE(contactScatter(b.symptoms()));
}

// Peaks that put the sender out of limits are not called minor, whatever the rms; the input's troubles do not make
// them.
TEST(FindingRules, WhatIsOutIsNotCalledMinor) {
    Bench b;
    b.reading.distortion.fortuitousRmsPercent = 2.9;
    b.reading.distortion.fortuitousPeakPercent = 12.0;
    b.reading.distortion.fortuitousOver = 200;
    EXPECT_TRUE(b.findings().front().minor);
    EXPECT_FALSE(says(b.findings().front().evidence, "of the last"));
    b.reading.verdict.within = false;
    b.reading.verdict.exceeded = {"gross_percent"};
    b.reading.text.characters = 900;
    EXPECT_EQ(b.first(), "contact-scatter");
    EXPECT_FALSE(b.findings().front().minor);
    EXPECT_TRUE(says(b.findings().front().evidence, "of the last 200 characters"));
    b.reading.distortion.fortuitousRmsPercent = 0.4;
    b.reading.distortion.fortuitousPeakPercent = 1.2;
    b.reading.input.inverted = true;
    for (const Finding& f : b.findings()) EXPECT_TRUE(f.minor) << f.id;
}

// S. M. Kay, Estimation Theory (1993), as tabulated for a Gaussian-smoothed step; from memory. An edge of 0.4 ms at
// 48 kHz and 20 dB: 0.05 sqrt(2 sqrt(pi) 7.49 samples) = 0.258 samples at best, a third more here, twice over two
// edges.
TEST(FindingRules, TheNoiseExplainsWhatTheBoundOfAnEdgeSays) {
    Bench b;
    b.reading.input.snrDb = 20.0;
    b.reading.input.riseToMarkMs = b.reading.input.riseToSpaceMs = 0.4;
    const double bound = 0.258 / 48000.0 / 0.020 * 100.0 * std::sqrt(2.0);
    EXPECT_NEAR(b.symptoms().noisePercent() / bound, 1.33, 0.02);
}

TEST(FindingRules, BounceIsToldWithItsCountAndLength) {
    Bench b;
    b.reading.contact = ContactReading{300, 1.8, 210, 600};
    EXPECT_EQ(b.first(), "contact-bounce");
    EXPECT_TRUE(says(b.findings()[0].evidence, "210 of 600 closures bounced, with 300 re-openings or halts in all"));
    b.reading.contact = ContactReading{2, 1.8};
    EXPECT_EQ(b.first(), "in-order");
}

TEST(FindingRules, ALevelThatLosesMarksIsNamedWithItsRate) {
    Bench b;
    b.tape->levels[2].marksMissed = 6;
    EXPECT_EQ(b.first(), "level-dropout");
    EXPECT_TRUE(says(b.findings()[0].title, "level 3"));
    EXPECT_TRUE(says(b.findings()[0].evidence, "95 % interval"));
    b.tape->levels[2].marksMissed = 1;
    EXPECT_EQ(b.first(), "level-dropout");
    EXPECT_LT(b.findings()[0].confidence, 0.8);
    b.tape->levels[3].marksMissed = 1;  // here and there: no level's own fault
    EXPECT_TRUE(says(b.findings()[0].title, "on several levels"));
    EXPECT_LT(b.findings()[0].confidence, 0.4);
}

TEST(FindingRules, ASingleMarkBesideAnotherFaultIsNotSaidOfSeveralLevels) {
    Bench b;
    b.tape->levels[2].marksMissed = 1;
    b.reading.text.framingErrors = 1;
    const auto found = levelDropout(b.symptoms());
    ASSERT_TRUE(found);
    EXPECT_EQ(found->finding.title, "A single mark is lost");
    EXPECT_FALSE(says(found->finding.evidence, "most of all"));
}

TEST(FindingRules, ACountOverMoreThanTheWindowSaysOverHowMuch) {
    Bench b;
    b.tape->levels[2].marksMissed = 6;
    b.tape->compared = b.reading.text.characters + 156;
    const std::string over = "over the last " + std::to_string(b.tape->compared) + " characters";
    EXPECT_TRUE(says(b.findings()[0].evidence, over));
}

TEST(FindingRules, MarksLostOnEveryLevelAlikeAreNoLevelsFault) {
    Bench b;
    for (LevelCount& l : b.tape->levels) l.marksMissed = 5;
    const auto found = levelDropout(b.symptoms());
    ASSERT_TRUE(found);
    EXPECT_TRUE(says(found->finding.title, "several levels"));
    EXPECT_LT(found->finding.confidence, 0.7);
}

TEST(FindingRules, FilledSpacesAreTheStuckLevels) {
    Bench b;
    b.tape->levels[4].spacesFilled = 20;
    EXPECT_EQ(b.first(), "level-stuck");
    EXPECT_TRUE(says(b.findings()[0].title, "level 5"));
}

TEST(FindingRules, WithoutATextALevelNeverSeenIsSuspectedCautiously) {
    Bench b;
    b.tape.reset();
    Symptoms s = b.symptoms();
    for (int level = 1; level <= 5; ++level) s.shares.push_back({level, level == 2 ? 0 : 90, 200});
    const auto found = levelDropout(s);
    ASSERT_TRUE(found);
    EXPECT_TRUE(says(found->finding.title, "Level 2"));
    EXPECT_LE(found->finding.confidence, 0.8);
    s.shares[1].marks = 40;
    EXPECT_FALSE(levelDropout(s));
}

TEST(FindingRules, FeedSlipsAreToldApartFromLevels) {
    Bench b;
    b.tape->repeated = 4;
    EXPECT_EQ(b.first(), "feed-slip");
    EXPECT_TRUE(says(b.findings()[0].evidence, "RY"));
    b.reading.text.framingErrors = 5;  // characters lost on the way, not by the feed
    EXPECT_FALSE(feedSlip(b.symptoms()));
}

// A character in another's place reads as lost marks until it is told for a slip.
TEST(FindingRules, AFewCharactersBesideSlipsSayNothingOfTheLevels) {
    Bench b;
    b.tape->levels[0].marksMissed = 3;
    EXPECT_TRUE(levelDropout(b.symptoms()));
    b.tape->repeated = 2;
    EXPECT_TRUE(levelDropout(b.symptoms()));
    b.tape->skipped = 1;
    EXPECT_FALSE(levelDropout(b.symptoms()));
    b.tape->levels[0].marksMissed = 12;
    EXPECT_TRUE(levelDropout(b.symptoms()));
}

TEST(FindingRules, WhatIsLateAfterAShortElementSwingsPastAndWhatIsEarlyLags) {
    Bench b;
    b.reading.distortion.characteristicPercent = 12.0;
    b.pattern->afterShort = Measured{12.0, 0.2};
    ASSERT_TRUE(slowRise(b.symptoms()));
    EXPECT_TRUE(says(slowRise(b.symptoms())->finding.lookAt, "swings past its place"));
    b.pattern->afterShort->value = -12.0;
    EXPECT_TRUE(says(slowRise(b.symptoms())->finding.lookAt, "has not arrived"));
}

TEST(FindingRules, ALevelThatHidesBehindTheBiasIsSaidTo) {
    Bench b;
    b.pattern = DisplacementPattern{0.0, {10.0, 0.1}, {0.0, 0.1}, {{4, StandingOut::Which::both, {11.7, 0.1}}}, 0.05};
    const auto evidence = [&] { return levelLate(b.symptoms())->finding.evidence; };
    EXPECT_TRUE(says(evidence(), "there it stands at +1.7 % and looks right"));
    b.pattern->out[0].percent.value = -11.7;  // both the same way: seen by anyone
    EXPECT_FALSE(says(evidence(), "hides"));
    b.pattern->out[0] = {4, StandingOut::Which::toSpace, {11.7, 0.1}};
    EXPECT_FALSE(says(evidence(), "hides"));
}

TEST(FindingRules, WhatFeedsTheTapeFollowsFromWhichWayItSlips) {
    Bench b;
    b.tape->repeated = 8;
    b.tape->skipped = 2;  // a feed that slips either way does so often enough
    EXPECT_TRUE(says(feedSlip(b.symptoms())->finding.lookAt, "The tape itself"));
    b.tape->repeated = 12;
    EXPECT_TRUE(says(feedSlip(b.symptoms())->finding.lookAt, "then what moves it"));
    std::swap(b.tape->repeated, b.tape->skipped);
    EXPECT_TRUE(says(feedSlip(b.symptoms())->finding.lookAt, "What holds the tape"));
    b.tape->repeated = b.tape->skipped;
    EXPECT_TRUE(says(feedSlip(b.symptoms())->finding.lookAt, "The tape itself"));
    b.tape->slipPlaces = SlipPlaces{12, 9, "BROWN FO", false};
    const Finding torn = feedSlip(b.symptoms())->finding;
    EXPECT_TRUE(says(torn.lookAt, "The tape at that place"));
    EXPECT_TRUE(says(torn.evidence, "9 of them come at one place of the tape, behind \u201cBROWN FO\u201d."));
}

TEST(FindingRules, AWrongSpeedIsTheShaftsWhenTheStopKeepsItsUnits) {
    Bench b;
    b.reading.speed.errorPercent = Measured{-1.5, 0.02};
    b.reading.speed.characterMs = Measured{150.0 * 1.01523, 0.02};
    b.reading.verdict.within = false;
    EXPECT_EQ(b.first(), "wrong-speed");
    EXPECT_TRUE(says(b.findings()[0].evidence, "whole shaft"));
    b.reading.speed.characterMs = Measured{150.0, 0.02};
    EXPECT_TRUE(says(b.findings()[0].evidence, "elements alone"));
    EXPECT_TRUE(says(b.findings()[0].lookAt, "Cam sleeve and cams"));
    EXPECT_LT(b.findings()[0].confidence, 0.7);
}

TEST(FindingRules, ASpeedThatNobodySetIsSaidToBePresumed) {
    Bench b;
    b.reading.speed.errorPercent = Measured{-2.8, 0.04};
    b.reading.speed.characterMs = Measured{150.0 / 0.972, 0.02};
    EXPECT_TRUE(says(b.findings()[0].title, "slow by 2.8"));
    EXPECT_TRUE(says(b.findings()[0].title, "if it is meant for 50 baud"));
    EXPECT_TRUE(says(b.findings()[0].confirm, "plate"));
    EXPECT_TRUE(says(b.findings()[0].lookAt, "slipping belt"));
    b.options.baud = 50.0;
    EXPECT_FALSE(says(b.findings()[0].title, "meant"));
    EXPECT_FALSE(says(b.findings()[0].confirm, "plate"));
    b.reading.speed.errorPercent = Measured{2.8, 0.04};
    b.reading.speed.characterMs = Measured{150.0 / 1.028, 0.02};
    EXPECT_TRUE(says(b.findings()[0].lookAt, "Governor"));
    EXPECT_FALSE(says(b.findings()[0].lookAt, "slipping belt"));
}

TEST(FindingRules, ASpeedErrorThatOneLeverMakesIsNone) {
    Bench b;
    b.reading.speed.errorPercent = Measured{0.9, 0.1};
    b.pattern->unitPercent = 0.9;  // the fitted unit is too short by that
    b.pattern->out.push_back({4, StandingOut::Which::both, {7.0, 0.3}});
    EXPECT_FALSE(wrongSpeed(b.symptoms()));
    b.reading.speed.errorPercent = Measured{3.4, 0.1};
    EXPECT_TRUE(says(wrongSpeed(b.symptoms())->finding.evidence, "pulls the speed as read to +3.40 %"));
    b.pattern->out.clear();
    EXPECT_TRUE(says(wrongSpeed(b.symptoms())->finding.title, "3.40 %")) << "the reading's own figure otherwise";
}

// 50 Hz mains under a machine for 60 Hz: 5/6 of the speed (US Army signal course SS0330 gives the motor speeds).
TEST(FindingRules, TheWrongMainsIsNamed) {
    Bench b;
    b.options.baud = 45.45;
    b.reading.speed.errorPercent = Measured{100.0 * (5.0 / 6.0 - 1.0), 0.02};
    EXPECT_TRUE(says(wrongSpeed(b.symptoms())->finding.evidence, "60 Hz on 50 Hz mains"));
}

TEST(FindingRules, AWanderingSpeedIsUnsteady) {
    Bench b;
    b.steadiness->wander = 0.5;
    b.steadiness->wanderRatio = 20.0;
    EXPECT_EQ(b.first(), "unsteady-speed");
    b.steadiness->blocks = 3;
    EXPECT_EQ(b.first(), "in-order");
}

TEST(FindingRules, ALineInTheDisplacementIsAShafts) {
    Bench b;
    b.reading.distortion.cyclic->push_back({4.0, 1.667, 0.25});
    EXPECT_EQ(b.first(), "cyclic-drive");
    EXPECT_TRUE(says(b.findings()[0].evidence, "once in 4.00 characters"));
    EXPECT_TRUE(says(b.findings()[0].lookAt, "100.0 turns a minute"));
    EXPECT_TRUE(says(b.findings()[0].evidence, "not the speed of the drive"));
    EXPECT_FALSE(says(b.findings()[0].lookAt, "governor"));
    b.reading.distortion.cyclic->front().shiftsStart = true;
    EXPECT_TRUE(says(b.findings()[0].evidence, "As a swing of the speed that is"));
    EXPECT_TRUE(says(b.findings()[0].lookAt, "governor"));
    b.reading.distortion.cyclic = {{4.0, 13.33, 2.0}};  // the same in each character: nothing a shaft can do
    EXPECT_EQ(b.first(), "in-order");
}

TEST(FindingRules, AnIrregularStopIsTheTripsAndALongOneNeedsANominal) {
    Bench b;
    b.steadiness->stopScatter = 0.15;
    EXPECT_EQ(b.first(), "trip-late");
    b.steadiness->stopScatter = 0.004;
    b.reading.speed.stopUnits = Measured{1.75, 0.001};
    EXPECT_EQ(b.first(), "in-order");
    b.options.stopUnits = 1.5;
    EXPECT_EQ(b.first(), "trip-late");
    EXPECT_TRUE(says(b.findings()[0].evidence, "1.75 units, nominal 1.50, and steady"));
}

TEST(FindingRules, TypingByHandIsNoIrregularTrip) {
    Bench b;
    b.steadiness->stopScatter = 0.4;
    b.steadiness->runningShare = 0.2;
    EXPECT_FALSE(tripLate(b.symptoms()));
}

TEST(FindingRules, TheCardsOwnTroublesAreNamed) {
    Bench noisy, faint, humming, loud, turned;
    noisy.reading.input.snrDb = 14.0;
    EXPECT_EQ(noisy.first(), "weak-signal");
    faint.reading.input.peakDbfs = -48.0;
    EXPECT_EQ(faint.first(), "weak-signal");
    humming.reading.input.humPercent = 10.0;
    EXPECT_EQ(humming.first(), "hum");
    loud.reading.input.clippedPercent = 8.0;
    loud.reading.input.couplingHz = {8.0};
    loud.bias({15.0, 0.1});
    EXPECT_EQ(loud.first(), "clipped");
    EXPECT_LT(loud.findings()[1].confidence, 0.6);  // the bias may come of it
    turned.reading.input.inverted = true;
    EXPECT_EQ(turned.first(), "in-order");
    EXPECT_EQ(turned.findings().back().id, "reversed");
}

TEST(FindingRules, TheWorstComesFirst) {
    Bench b;
    b.bias({6.0, 0.1});
    b.end({-15.0, 0.1});
    b.reading.input.humPercent = 5.0;
    const auto found = b.findings();
    ASSERT_EQ(found.size(), 3U);
    EXPECT_EQ(found[0].id, "end-offset");
    EXPECT_EQ(found[1].id, "contact-offset");
    EXPECT_EQ(found[2].id, "hum");
}

TEST(FindingRules, NothingReadIsSaidWithWhatToDo) {
    const InputReading in;
    EXPECT_EQ(findingsOfNothing(NoReading::silent, in)[0].id, "no-signal");
    EXPECT_EQ(findingsOfNothing(NoReading::steady, in)[0].id, "no-signal");
    EXPECT_EQ(findingsOfNothing(NoReading::notStartStop, in)[0].id, "not-start-stop");
    EXPECT_TRUE(findingsOfNothing(NoReading::tooFew, in).empty());
    InputReading loud;
    loud.clippedPercent = 50.0;
    EXPECT_EQ(findingsOfNothing(NoReading::notStartStop, loud)[0].id, "clipped");
}

TEST(FindingRules, EveryHandOnTheMachineIsToldToUnplugIt) {
    Bench b;
    b.pattern = DisplacementPattern{0.0, {9.0, 0.1}, {4.0, 0.1}, {{2, StandingOut::Which::both, {7.0, 0.1}}}, 0.05};
    b.steadiness = Steadiness{199, 1.0, 0.2, 0.6, 20.0, 25};
    b.reading.distortion.fortuitousRmsPercent = 5.0;
    b.reading.distortion.cyclic->push_back({4.0, 1.6, 0.25});
    b.reading.contact = ContactReading{300, 1.8};
    b.reading.speed.errorPercent = Measured{2.0, 0.02};
    b.tape->levels[0].marksMissed = b.tape->levels[1].spacesFilled = 30;
    b.tape->repeated = 5;
    const auto found = b.findings();
    EXPECT_GE(found.size(), 10U);
    for (const Finding& f : found) {
        EXPECT_TRUE(says(f.confirm, "Unplug the machine")) << f.id;
        EXPECT_GT(f.confidence, 0.0) << f.id;
        EXPECT_LT(f.confidence, 1.0) << f.id;
        EXPECT_FALSE(f.title.empty() || f.evidence.empty() || f.lookAt.empty()) << f.id;
    }
}
