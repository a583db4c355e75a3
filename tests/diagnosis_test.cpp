// SPDX-License-Identifier: GPL-3.0-or-later
// From the samples of an independent sender to the finding that comes first.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>
#include <string>

#include "core/frame/code_table.h"
#include "core/pipeline.h"
#include "core/report/judge.h"
#include "core/report/speed_swing.h"
#include "core/simulate/scenario_signal.h"
#include "tests/support/plain_sender.h"
#include "tests/support/scenario_builder.h"
#include "tests/support/steady_sender.h"
#include "tests/support/texts.h"

using namespace trueunit;
using trueunit::test::PlainSender;

namespace {

std::vector<unsigned> reversals(std::size_t n) {
    const auto ry = encode(*findCode("ita2"), "RY");
    std::vector<unsigned> codes;
    for (std::size_t i = 0; i < n; ++i) codes.push_back(ry[i % 2]);
    return codes;
}

Snapshot measured(PlainSender& sender, const std::vector<unsigned>& codes, const Options& options = {}) {
    sender.snrDb = 40.0;
    sender.polesHz = {8.0};
    sender.scatterPercent = 0.4;
    Pipeline pipeline(sender.rateHz, options, {});
    pipeline.push(sender.send(codes));
    pipeline.finish();
    return pipeline.snapshot();
}

std::string first(const Snapshot& s) {
    return s.reading.findings && !s.reading.findings->empty() ? s.reading.findings->front().id : "none";
}

}  // namespace

TEST(Diagnosis, ASoundSenderIsInOrder) {
    PlainSender sender;
    EXPECT_EQ(first(measured(sender, reversals(150))), "in-order");
}

TEST(Diagnosis, MissedMarksAreCountedToTheLastOneAndShownOnTheTape) {
    for (int level = 1; level <= 5; ++level) {
        std::vector<unsigned> codes = reversals(150);
        std::mt19937_64 random(static_cast<std::uint64_t>(level));
        long lost = 0;
        for (unsigned& c : codes) {
            const unsigned bit = 1U << (level - 1);
            if ((c & bit) == 0 || random() % 5 != 0) continue;
            c &= ~bit;
            ++lost;
        }
        PlainSender sender;
        const Snapshot s = measured(sender, codes);
        EXPECT_EQ(first(s), "level-dropout") << level;
        ASSERT_TRUE(s.reading.levels);
        for (const LevelReading& l : *s.reading.levels) {
            EXPECT_EQ(l.marksMissed, l.level == level ? lost : 0);
            EXPECT_EQ(l.spacesFilled, 0);
        }
        const auto ry = encode(*findCode("ita2"), "RY");
        for (const TapeCharacter& c : s.tape) {
            ASSERT_TRUE(c.due);
            EXPECT_EQ(*c.due, ry[c.number % 2]);
        }
    }
}

TEST(Diagnosis, TheTextThePersonGivesIsHeldAgainstTheTape) {
    const std::string text = "keeper of the light 1911 ";
    const auto loop = encode(*findCode("ita2"), text + text);
    std::vector<unsigned> codes;
    for (std::size_t i = 0; i < 160; ++i) codes.push_back(loop[(i + 7) % (loop.size() / 2)]);
    codes.insert(codes.begin() + 40, codes[39]);
    codes.insert(codes.begin() + 90, codes[89]);
    PlainSender sender;
    Options options;
    options.expect = text;
    const Snapshot s = measured(sender, codes, options);
    EXPECT_EQ(first(s), "feed-slip");
    ASSERT_TRUE(s.reading.levels);
    for (const LevelReading& l : *s.reading.levels) EXPECT_EQ(l.marksMissed + l.spacesFilled, 0);
}

TEST(Diagnosis, ATextThatIsNotKnownIsSaidToBe) {
    std::mt19937_64 random(5);
    std::vector<unsigned> codes(120);
    for (unsigned& c : codes) c = static_cast<unsigned>(random() % 32);
    PlainSender sender;
    const Snapshot s = measured(sender, codes);
    EXPECT_FALSE(s.reading.levels);
    EXPECT_EQ(first(s), "in-order");
    bool said = false;
    for (const std::string& note : s.reading.notes) said |= note.find("text of the tape") != std::string::npos;
    EXPECT_TRUE(said);
}

TEST(Diagnosis, OneInstantOffEitherWayIsItsLeversFault) {
    for (int level = 1; level <= 5; ++level) {
        PlainSender sender;
        sender.extraPercent = [level](int k, bool, double) { return k == level ? 7.0 : 0.0; };
        const Snapshot s = measured(sender, reversals(150));
        ASSERT_EQ(first(s), "level-late") << level;
        EXPECT_NE(s.reading.findings->front().title.find("Level " + std::to_string(level)), std::string::npos);
    }
}

TEST(Diagnosis, AnIrregularStopIsNoScatterOfTheContact) {
    PlainSender sender;
    sender.stopScatterPercent = 20.0;
    EXPECT_EQ(first(measured(sender, reversals(150))), "trip-late");
}

TEST(Diagnosis, SilenceIsNoSignal) {
    Pipeline pipeline(48000.0, {}, {});
    pipeline.push(std::vector<float>(96000, 0.0F));
    pipeline.finish();
    EXPECT_EQ(first(pipeline.snapshot()), "no-signal");
}

// A text that nobody knows and that does not repeat: only what cannot be, or hardly can, tells on the level.
TEST(Diagnosis, LostMarksShowInAPlainTextThatIsNotKnown) {
    const std::string text =
        "THE KEEPER OF THE NORTH LIGHT REPORTS THAT THE WIND HAS GONE ROUND TO THE WEST SINCE MIDNIGHT AND THE SEA IS "
        "STILL RISING. TWO BOATS WERE SEEN BEFORE DAYBREAK, BOTH OF THEM MAKING FOR THE HARBOUR. THE LAMP BURNED WELL "
        "ALL NIGHT, THOUGH THE GLASS OF THE LANTERN WANTS CLEANING ON THE SEAWARD SIDE.";
    std::vector<unsigned> whole;
    for (const unsigned char c : encode(*findCode("ita2"), text)) whole.push_back(c);
    std::vector<unsigned> harmed = whole;
    std::mt19937_64 random(4);
    for (unsigned& c : harmed)
        if ((c & 4U) != 0 && random() % 4 == 0) c &= ~4U;
    PlainSender sound;
    EXPECT_EQ(first(measured(sound, whole)), "in-order");
    PlainSender sender;
    const Snapshot s = measured(sender, harmed);
    ASSERT_EQ(first(s), "level-dropout");
    EXPECT_EQ(s.reading.findings->front().seenAt.level, 3);
    EXPECT_FALSE(s.reading.levels) << "not counted: the text is not known";
    EXPECT_TRUE(std::any_of(s.tape.begin(), s.tape.end(), [](const TapeCharacter& c) { return c.presumed; }));
}

// Least squares gives a part of one lever's fault to the speed; what the reading states must cover the shaft's.
TEST(Diagnosis, OneLeverOutOfPlaceDoesNotPassForACertainSpeedError) {
    PlainSender sender;
    sender.extraPercent = [](int k, bool, double) { return k == 4 ? 7.0 : 0.0; };
    std::vector<unsigned> codes;
    for (const unsigned char c : encode(*findCode("ita2"),
                                        "THE QUICK BROWN FOX JUMPS OVER THE LAZY DOG THE QUICK BROWN "
                                        "FOX JUMPS OVER THE LAZY DOG THE QUICK BROWN FOX JUMPS"))
        codes.push_back(c);
    for (const int window : {0, 64, 32, 8}) {
        SCOPED_TRACE("window " + std::to_string(window));
        Options options;
        options.windowCharacters = window;
        const Reading r = measured(sender, codes, options).reading;
        ASSERT_TRUE(r.speed.errorPercent && r.speed.stopUnits);
        EXPECT_GT(std::abs(r.speed.errorPercent->value), 0.1);
        EXPECT_LT(std::abs(r.speed.errorPercent->value), r.speed.errorPercent->uncertainty);
        EXPECT_LT(std::abs(r.speed.stopUnits->value - 1.42), r.speed.stopUnits->uncertainty);
    }
}

// A governor that hunts: to a window of some seconds the speed is wrong now one way, now the other.
TEST(Diagnosis, ASpeedThatSwingsSlowlyIsNoWrongSpeedToAShortWindow) {
    for (const int window : {8, 32}) {
        SCOPED_TRACE("window " + std::to_string(window));
        Scenario scenario = faultlessScenario(std::string(test::kFox));
        scenario.seconds = 60.0;
        scenario.card.couplingHz = {8.0};
        scenario.card.snrDb = 45.0;
        scenario.faults.scatterPercent = 0.6;
        scenario.faults.speedWander = Scenario::SpeedWander{2.0, 0.11};
        ScenarioSignal signal(scenario);
        Options options;
        options.windowCharacters = window;
        Pipeline pipeline(signal.rateHz(), options, {});
        std::vector<float> block(static_cast<std::size_t>(0.2 * signal.rateHz()));
        int told = 0, unsteady = 0;
        while (signal.read(block) == block.size()) {
            pipeline.push(block);
            const Snapshot s = pipeline.snapshot();
            if (s.state != SignalState::reading || !s.reading.findings || s.reading.findings->empty()) continue;
            ++told;
            for (const Finding& f : *s.reading.findings)
                EXPECT_TRUE(f.id == "unsteady-speed" || f.confidence < 0.9) << s.seconds << ' ' << f.title;
            unsteady += first(s) == "unsteady-speed" ? 1 : 0;
            if (s.seconds < 20.0) continue;
            EXPECT_EQ(first(s), "unsteady-speed") << s.seconds;
            for (const CyclicLine& line : s.reading.distortion.cyclic.value_or(std::vector<CyclicLine>{}))
                EXPECT_FALSE(maySwingSlowly(line)) << s.seconds << ": " << line.hz << " Hz";
            if (window == 8) {  // what a few characters make of it is no bias
                EXPECT_EQ(judged(s.reading.verdict, "bias_percent")->judgement, Judgement::open) << s.seconds;
            }
            EXPECT_NEAR(s.reading.speed.wanderPercent.value_or(0.0), 2.0, 0.6) << s.seconds;
        }
        EXPECT_GT(told, 200);
        EXPECT_GT(unsteady, 0.8 * told);
    }
}

// The start alone moves all instants of its character together; a contact that scatters moves each by itself, its
// start as well.
TEST(Diagnosis, AScatteringStartIsToldFromAScatteringContact) {
    struct Case {
        double start, each;
        const char* title;
    };
    for (const Case& c : {Case{4.0, 0.6, "The start scatters by "},
                          {0.0, 3.5, "The instants scatter by "},
                          {2.5, 2.5, "The instants scatter by "}}) {
        SCOPED_TRACE(c.title + std::to_string(c.start));
        PlainSender sender;
        sender.startScatterPercent = c.start;
        sender.extraPercent = [random = std::mt19937_64(5), normal = std::normal_distribution<double>(), each = c.each](
                                  int, bool, double) mutable { return each * normal(random); };
        const Snapshot s = measured(sender, test::mixedText(300, 8));
        ASSERT_EQ(first(s), "contact-scatter");
        EXPECT_TRUE(s.reading.findings->front().title.starts_with(c.title)) << s.reading.findings->front().title;
        EXPECT_GT(s.reading.findings->front().confidence, 0.9);
    }
}

// A hand on the eccentric is no fault of the machine: once the step is found nothing is made of it.
TEST(Diagnosis, AStepOfTheBiasIsNotTakenForScatterOrForAShaft) {
    for (const int window : {8, 32, 128}) {
        SCOPED_TRACE("window " + std::to_string(window));
        PlainSender sender;
        sender.biasPercent = 10.0;
        sender.scatterPercent = 0.4;
        sender.snrDb = 45.0;
        sender.polesHz = {8.0};
        sender.extraPercent = [](int, bool toMark, double start) {  // four turns within a second
            const double turns = start < 11.0 ? 0.0 : std::min(4.0, std::floor(1.0 + (start - 11.0) / 0.33));
            return toMark ? 2.5 * turns : 0.0;
        };
        Options options;
        options.windowCharacters = window;
        const std::vector<float> sent =
            sender.send(test::codesOf(std::string(test::kFox) + std::string(test::kFox) + std::string(test::kFox)));
        Pipeline pipeline(sender.rateHz, options, {});
        int looked = 0, told = 0;
        const auto block = static_cast<std::size_t>(0.1 * sender.rateHz);
        for (std::size_t at = 0; at + block <= sent.size(); at += block) {
            pipeline.push(std::span(sent).subspan(at, block));
            const Snapshot s = pipeline.snapshot();
            if (s.nudges.empty() || s.seconds < 13.0) continue;
            ++looked;
            EXPECT_LT(s.reading.distortion.fortuitousRmsPercent.value_or(0.0), 0.8) << s.seconds;
            if (!s.reading.findings) continue;
            ++told;
            EXPECT_LE(s.findingsUsed, static_cast<std::size_t>(1 + (s.seconds - 11.0) / (7.42 * 0.022)));
            for (const Finding& f : *s.reading.findings)
                EXPECT_TRUE(f.id == "in-order" || f.confidence < 0.5) << s.seconds << ' ' << f.id << ' ' << f.title;
        }
        EXPECT_GT(looked, 100);
        EXPECT_GT(told, 80);
    }
}

// An imposed swing of all instants but the start, as no swing of the speed can make it.
TEST(Diagnosis, APartThatSwingsEveryInstantAlikeAgainstTheStartIsNotCalledASwingOfTheSpeed) {
    for (const double hz : {0.7, 2.2}) {
        SCOPED_TRACE(hz);
        PlainSender sender;
        sender.extraPercent = [unit = sender.unit, hz](int k, bool, double start) {
            return 5.0 * std::sin(2.0 * std::numbers::pi * hz * (start + k * unit));
        };
        const Snapshot s = measured(sender, reversals(250));
        EXPECT_EQ(first(s), "cyclic-drive");
        const Finding& f = s.reading.findings->front();
        EXPECT_TRUE(f.evidence.find("not the speed of the drive") != std::string::npos) << f.evidence;
    }
}

// What is periodic looks random to a window that holds less than its period some times over.
TEST(Diagnosis, APeriodicDriveIsNotTakenForContactsThatScatterHoweverShortTheWindowAndFastTheSender) {
    for (const double baud : {45.45, 75.0, 100.0})
        for (const int window : {8, 16, 24, 64}) {
            SCOPED_TRACE(std::to_string(baud) + " baud, window " + std::to_string(window));
            PlainSender sender;
            const double unit = sender.unit = sender.nominal = 1.0 / baud;
            sender.extraPercent = [unit](int k, bool, double start) {
                const auto swing = [](double t) { return 4.5 * std::sin(2.0 * std::numbers::pi * 2.2 * t); };
                return swing(start + k * unit) - swing(start);
            };
            Options options;
            options.windowCharacters = window;
            const Snapshot s = measured(sender, reversals(250), options);
            EXPECT_EQ(first(s), "cyclic-drive");
            EXPECT_TRUE(s.reading.findings->front().evidence.find("As a swing of the speed") != std::string::npos);
            EXPECT_GE(static_cast<double>(s.findingsUsed) * 7.42 * unit, 4.4) << "and so many are said";
            EXPECT_LT(s.reading.distortion.fortuitousRmsPercent.value_or(9.0), 0.6) << "the swing is no scatter";
            for (const Finding& f : *s.reading.findings)
                EXPECT_TRUE(f.id != "contact-scatter" || f.confidence < 0.6) << f.confidence;
        }
}
