// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipeline.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>
#include <span>

#include "core/frame/code_table.h"
#include "tests/support/measure_twice.h"
#include "tests/support/plain_sender.h"
#include "tests/support/texts.h"

namespace trueunit {
namespace {

using test::PlainSender;

PlainSender coupledSender() {
    PlainSender sender;
    sender.polesHz = {8.0};
    sender.snrDb = 45.0;
    sender.biasPercent = 7.0;
    return sender;
}

bool noted(const Reading& r, const std::string& part) {
    return std::any_of(r.notes.begin(), r.notes.end(),
                       [&](const std::string& n) { return n.find(part) != std::string::npos; });
}

TEST(Pipeline, BeforeTheFirstSampleItWaits) {
    Pipeline pipeline(48000.0, Options{}, Limits{});
    const Snapshot s = pipeline.snapshot();
    EXPECT_EQ(s.state, SignalState::waiting);
    EXPECT_FALSE(s.stateText.empty());
    EXPECT_FALSE(s.reading.valid());
    EXPECT_TRUE(s.traces.empty());
    EXPECT_EQ(pipeline.learned(), nullptr);
}

TEST(Pipeline, SilenceIsCalledSilence) {
    const std::vector<float> silence(96000, 0.0F);
    Pipeline pipeline = test::measureOnce(silence, 48000.0);
    const Snapshot s = pipeline.snapshot();
    EXPECT_EQ(s.state, SignalState::silent);
    EXPECT_FALSE(s.reading.valid());
    EXPECT_TRUE(noted(s.reading, "silent"));
}

TEST(Pipeline, ASignalIsListenedToForSomeSecondsBeforeItIsCalledNoStartStopOne) {
    std::mt19937 random(7);
    Pipeline pipeline(48000.0, Options{}, Limits{});
    std::vector<float> level(48000);
    bool called = false;
    for (int second = 1; second <= 10; ++second) {  // keyed at random, 5 ms and more
        for (std::size_t i = 0; i < level.size(); ++i)
            level[i] = i % 240 == 0 ? (random() % 2 == 0 ? 0.5F : -0.5F) : level[i - 1];
        pipeline.push(std::span<const float>(level));
        const Snapshot s = pipeline.snapshot();
        called = s.reading.findings && !s.reading.findings->empty();
        EXPECT_TRUE(second >= 4 || (!called && noted(s.reading, "Listening"))) << second;
    }
    EXPECT_TRUE(called);
}

TEST(Pipeline, NoiseHumAndSquareWavesGiveNoReadingAndTheReason) {
    std::mt19937 random(3);
    std::normal_distribution<double> normal;
    for (const int kind : {0, 1, 2, 3}) {
        std::vector<float> x(48000 * 8);
        for (std::size_t i = 0; i < x.size(); ++i) {
            const double t = static_cast<double>(i) / 48000.0;
            const double square = std::sin(2.0 * std::numbers::pi * 25.0 * t) > 0.0 ? 0.3 : -0.3;
            const double hum = 0.3 * std::sin(2.0 * std::numbers::pi * 50.0 * t);
            const double value = kind == 0 ? 0.2 * normal(random) : kind == 1 ? hum : kind == 2 ? square : 0.5 * hum;
            x[i] = static_cast<float>(value + 0.001 * normal(random));
        }
        const Reading r = test::measureOnce(x, 48000.0).reading();
        EXPECT_FALSE(r.valid()) << "kind " << kind;
        EXPECT_EQ(r.text.characters, 0) << "kind " << kind;
        EXPECT_FALSE(r.notes.empty()) << "kind " << kind;
    }
}

TEST(Pipeline, LevelsFromFaintToFullScaleReadTheSame) {
    for (const double swing : {0.0063, 0.05, 1.9}) {  // half of it: -50, -32 and -0.4 dBFS
        PlainSender sender = coupledSender();
        sender.polesHz = {};
        sender.swing = swing;
        const auto codes = test::mixedText(30, 2);
        const Reading r = test::measureTwice(sender.send(codes), sender.rateHz).reading();
        EXPECT_EQ(r.text.decoded, test::printed(codes)) << swing;
        ASSERT_TRUE(r.distortion.biasPercent) << swing;
        EXPECT_NEAR(r.distortion.biasPercent->value, 7.0, 0.1) << swing;
    }
}

TEST(Pipeline, SaysWhatItFoundOfTheInput) {
    PlainSender sender = coupledSender();
    sender.snrDb = 35.0;
    sender.inverted = true;
    const Reading r = test::measureTwice(sender.send(test::mixedText(60, 2)), sender.rateHz).reading();
    EXPECT_EQ(r.input.kind, InputKind::loop);
    EXPECT_EQ(r.input.inverted, std::optional(true));
    EXPECT_EQ(r.input.rateHz, 48000.0);
    ASSERT_EQ(r.input.couplingHz.size(), 1U);
    EXPECT_NEAR(r.input.couplingHz[0], 8.0, 0.3);
    ASSERT_TRUE(r.input.snrDb && r.input.peakDbfs);
    EXPECT_NEAR(*r.input.snrDb, 35.0, 1.5);
    EXPECT_EQ(r.input.clippedPercent, 0.0);
    EXPECT_EQ(r.input.gaps, 0);
}

TEST(Pipeline, TheWindowHoldsTheLastCharactersOnly) {
    PlainSender sender = coupledSender();
    sender.biasPercent = 0.0;
    sender.extraPercent = [](int, bool toMark, double seconds) { return toMark && seconds > 6.5 ? -10.0 : 0.0; };
    const std::vector<float> heard = sender.send(test::mixedText(60, 2));
    const auto bias = [&](int window) {
        Options options;
        options.windowCharacters = window;
        Pipeline pipeline = test::measureTwice(heard, sender.rateHz, options);
        const Snapshot s = pipeline.snapshot();
        EXPECT_EQ(s.reading.text.characters, window > 0 ? window : 60);
        EXPECT_EQ(s.windowUsed, static_cast<std::size_t>(s.reading.text.characters));
        return s.reading.distortion.biasPercent ? s.reading.distortion.biasPercent->value : -1e9;
    };
    EXPECT_NEAR(bias(1), 10.0, 0.7);
    EXPECT_NEAR(bias(8), 10.0, 0.4);
    EXPECT_LT(bias(0), 8.0);
}

TEST(Pipeline, AClockTrimIsTakenOutOfTheSpeed) {
    PlainSender sender = coupledSender();
    const std::vector<float> heard = sender.send(test::mixedText(50, 2));
    Options options;
    options.clockPpm = 500.0;  // the card's seconds hold more samples than they should: true time is shorter
    const Reading plain = test::measureTwice(heard, sender.rateHz).reading();
    const Reading trimmed = test::measureTwice(heard, sender.rateHz, options).reading();
    ASSERT_TRUE(plain.speed.errorPercent && trimmed.speed.errorPercent);
    EXPECT_NEAR(trimmed.speed.errorPercent->value - plain.speed.errorPercent->value, 0.05, 0.001);
}

TEST(Pipeline, TheSliceLevelMovesTheInstantsAsTheSlopeSays) {
    // A straight edge of 1 ms from 10 to 90 %: 20 % of the swing are 250 us. At 70 % of the swing, counted from space
    // to mark, marks begin later and end earlier: start early, to mark late, to space early.
    PlainSender sender = coupledSender();
    sender.biasPercent = 0.0;
    sender.edge = PlainSender::Edge::linear;
    sender.rise = 1e-3;
    for (const bool inverted : {false, true}) {
        sender.inverted = inverted;
        Options options;
        options.slicePercent = 70.0;
        const Reading r = test::measureTwice(sender.send(test::mixedText(60, 2)), sender.rateHz, options).reading();
        ASSERT_TRUE(r.distortion.biasPercent && r.distortion.endPercent);
        EXPECT_NEAR(r.distortion.biasPercent->value, -100.0 * 0.0005 / 0.022, 0.15) << inverted;
        EXPECT_NEAR(r.distortion.endPercent->value, 0.0, 0.15) << inverted;  // start and to-space move alike
        EXPECT_EQ(r.input.slicePercent, 70.0);
    }
}

TEST(Pipeline, TracesShowEachCharacterBetweenSpaceAndMark) {
    for (const bool inverted : {false, true}) {
        PlainSender sender = coupledSender();
        sender.inverted = inverted;
        const auto codes = test::mixedText(50, 2);
        Pipeline pipeline = test::measureTwice(sender.send(codes), sender.rateHz);
        const Snapshot s = pipeline.snapshot();
        EXPECT_DOUBLE_EQ(s.gridUnitSeconds, 0.022);
        ASSERT_EQ(s.traces.size(), 50U);
        EXPECT_EQ(s.traces.back()->number, 49U);
        for (const auto& t : std::span(s.traces).last(40)) {  // the line was not heard whole before the first
            EXPECT_EQ(t->code, codes[t->number]);
            EXPECT_GT(t->level.size(), 100U);
            EXPECT_LT(t->level.size(), 1000U);
            EXPECT_LT(t->firstSampleSeconds, 0.0);
            const auto levelAt = [&](double seconds) {
                return t->level[static_cast<std::size_t>((seconds - t->firstSampleSeconds) / t->sampleSeconds)];
            };
            EXPECT_NEAR(levelAt(0.5 * 0.022), 0.0, 0.1);  // start
            for (int k = 1; k <= 5; ++k)
                EXPECT_NEAR(levelAt((k + 0.5) * 0.022), (t->code >> (k - 1)) & 1U ? 1.0 : 0.0, 0.1);
            EXPECT_NEAR(levelAt(6.5 * 0.022), 1.0, 0.1);  // stop
            for (const TraceInstant& i : t->instants)
                EXPECT_NEAR(i.displacementPercent, i.to == Condition::mark ? -7.0 : 0.0, 0.5);
        }
    }
}

TEST(Pipeline, DotsTrailAndTapeBelongToTheSameCharacters) {
    PlainSender sender = coupledSender();
    const auto codes = test::mixedText(60, 2);
    Pipeline pipeline = test::measureTwice(sender.send(codes), sender.rateHz);
    const Snapshot s = pipeline.snapshot();
    ASSERT_EQ(s.tape.size(), 60U);
    for (const TapeCharacter& t : s.tape) EXPECT_EQ(t.code, codes[t.number]);
    ASSERT_FALSE(s.dots.empty());
    EXPECT_LE(s.dots.size(), 2000U);
    for (const DisplacementDot& d : s.dots) EXPECT_NEAR(d.percent, d.to == Condition::mark ? -7.0 : 0.0, 0.5);
    ASSERT_FALSE(s.trail.empty());
    EXPECT_EQ(s.trail.back().number, 59U);
    EXPECT_NEAR(s.trail.back().biasPercent, 7.0, 0.2);
    EXPECT_EQ(pipeline.snapshot().serial, s.serial + 1);
}

TEST(Pipeline, SlipsOfTheFeedAreShownWhereTheyAre) {
    const auto text = encode(*findCode("ita2"), "THE QUICK BROWN FOX JUMPS OVER THE LAZY DOG ");
    std::vector<unsigned> codes;
    for (int round = 0; round < 3; ++round) codes.insert(codes.end(), text.begin(), text.end());
    codes.insert(codes.begin() + 60, codes[59]);  // number 60 comes again,
    codes.erase(codes.begin() + 90);              // and before number 90 one is passed over
    PlainSender sender = coupledSender();
    const Snapshot s = test::measureTwice(sender.send(codes), sender.rateHz).snapshot();
    for (const TapeCharacter& c : s.tape) {
        EXPECT_EQ(c.again, c.number == 60) << c.number;
        EXPECT_EQ(c.passed.size(), c.number == 90 ? 1U : 0U) << c.number;
        EXPECT_TRUE(!c.due || *c.due == c.code) << c.number;
    }
    EXPECT_EQ(s.reading.text.feedSlips, 2);
    ASSERT_TRUE(s.reading.findings && !s.reading.findings->empty());
    EXPECT_TRUE(std::any_of(s.reading.findings->begin(), s.reading.findings->end(),
                            [](const Finding& f) { return f.id == "feed-slip" && f.seenAt.slips && !f.minor; }));
}

TEST(Pipeline, WhereTheFeedSlipsANewestCharacterIsNotCalledWrong) {
    const auto text = encode(*findCode("ita2"), "THE QUICK BROWN FOX JUMPS OVER THE LAZY DOG ");
    std::vector<unsigned> codes;
    for (int round = 0; round < 3; ++round) codes.insert(codes.end(), text.begin(), text.end());
    for (const bool slips : {true, false}) {
        std::vector<unsigned> sent = codes;
        if (slips) sent.insert(sent.begin() + 60, sent[59]);
        ASSERT_NE(sent[sent.size() - 3] & 8U, 0U);  // the O of DOG
        sent[sent.size() - 3] &= ~8U;
        PlainSender sender = coupledSender();
        const Snapshot s = test::measureTwice(sender.send(sent), sender.rateHz).snapshot();
        const TapeCharacter& last = s.tape[s.tape.size() - 3];
        EXPECT_EQ(last.instead.has_value(), slips);
        EXPECT_EQ(last.due.has_value(), !slips);
        EXPECT_EQ(last.instead.value_or(last.due.value_or(0)), sent[sent.size() - 3] | 8U);
        EXPECT_EQ(s.reading.text.wrongCharacters, slips ? 0 : 1);
    }
}

TEST(Pipeline, AStopShorterThanTheOneSetIsNoted) {
    PlainSender sender = coupledSender();
    sender.stopUnits = 1.42;
    const std::vector<float> heard = sender.send(test::mixedText(60, 2));
    Options options;
    for (const double set : {1.42, 1.5, 2.0}) {
        options.stopUnits = set;
        const Reading r = test::measureTwice(heard, sender.rateHz, options).reading();
        EXPECT_EQ(noted(r, "The stop is 1.42 units, shorter than the"), set == 2.0) << set;
    }
}

TEST(Pipeline, ALineThatRestsIsIdleAndKeepsItsReadings) {
    PlainSender sender = coupledSender();
    const std::vector<float> heard = sender.send(test::mixedText(30, 2), 4.0);
    Pipeline pipeline(sender.rateHz, Options{}, Limits{});
    pipeline.push(heard);
    const Snapshot s = pipeline.snapshot();
    EXPECT_EQ(s.state, SignalState::idle);
    EXPECT_FALSE(s.stateText.empty());
    ASSERT_TRUE(s.reading.distortion.biasPercent);
    EXPECT_NEAR(s.reading.distortion.biasPercent->value, 7.0, 0.15);
}

TEST(Pipeline, TheStampIsThatOfTheBlockInWhichTheNewestCharacterEnded) {
    PlainSender sender = coupledSender();
    const std::vector<float> heard = sender.send(test::mixedText(40, 2));
    Pipeline pipeline(sender.rateHz, Options{}, Limits{});
    for (std::size_t i = 0; i + SampleBlock::kSamples <= heard.size(); i += SampleBlock::kSamples) {
        SampleBlock block;
        block.firstSample = i;
        block.stampNs = static_cast<std::int64_t>(i) + 1000000;
        std::copy_n(heard.begin() + static_cast<std::ptrdiff_t>(i), SampleBlock::kSamples, block.samples.begin());
        pipeline.push(block);
    }
    const Snapshot s = pipeline.snapshot();
    ASSERT_FALSE(s.traces.empty());
    const double ended = (s.traces.back()->startSeconds + 6.0 * 0.022) * sender.rateHz;
    const auto block = static_cast<std::int64_t>(ended) / 256 * 256;
    EXPECT_NEAR(static_cast<double>(s.newestStampNs - 1000000), static_cast<double>(block), 256.0);
}

TEST(Pipeline, ACharacterIsReadWithinAFifthOfASecondOfItsEnd) {
    PlainSender sender = coupledSender();
    const std::vector<float> heard = sender.send(test::mixedText(30, 2), 1.0);
    Pipeline pipeline(sender.rateHz, Options{}, Limits{});
    double last = 0.0;
    for (const PlainSender::Instant& i : sender.instants) last = std::max(last, i.seconds);
    const auto upTo = static_cast<std::size_t>((last + 0.2) * sender.rateHz);
    pipeline.push(std::span(heard).first(upTo));
    EXPECT_EQ(pipeline.snapshot().reading.text.characters, 30);
}

TEST(Pipeline, AWindowForAdjustingHasTheFindingsOfTheLastCharacters) {
    PlainSender sender = coupledSender();  // bias 7 %
    const std::vector<float> heard = sender.send(test::mixedText(60, 2));
    Options options;
    options.windowCharacters = 4;
    const Reading r = test::measureTwice(heard, sender.rateHz, options).reading();
    EXPECT_EQ(r.text.characters, 4);
    ASSERT_TRUE(r.findings && !r.findings->empty());
    EXPECT_EQ(r.findings->front().id, "contact-offset");
}

TEST(Pipeline, FromAHandfulOfCharactersNoCauseIsToldAndThatIsSaid) {
    PlainSender sender = coupledSender();
    const std::vector<float> heard = sender.send(test::mixedText(9, 2));
    const Reading r = test::measureOnce(heard, sender.rateHz).reading();
    ASSERT_TRUE(r.valid());
    EXPECT_FALSE(r.findings);
    EXPECT_TRUE(noted(r, "Too few characters"));
}

TEST(Pipeline, TooFewCharactersForAReadingAreCalledThat) {
    for (const double pole : {0.0, 8.0, 20.0})
        for (const std::size_t count : {std::size_t{1}, std::size_t{2}, std::size_t{3}, std::size_t{4}}) {
            PlainSender sender = coupledSender();
            sender.polesHz = pole > 0.0 ? std::vector{pole} : std::vector<double>{};
            const std::vector<float> heard = sender.send(test::codesOf(std::string("RYSD").substr(0, count)), 1.0);
            const Reading r = test::measureTwice(heard, sender.rateHz).reading();
            EXPECT_FALSE(r.valid());
            EXPECT_FALSE(r.findings) << count;
            EXPECT_TRUE(noted(r, "Too few characters for a reading")) << count << " behind " << pole << " Hz";
        }
}

TEST(Pipeline, AKeyWithOneStretchOfMarkHeldDownIsCalledThat) {
    for (const unsigned code : {0U, 0b11111U, 0b11100U, 0b10000U})  // blank, letters, M, T
        for (const std::size_t count : {std::size_t{14}, std::size_t{150}}) {
            PlainSender sender = coupledSender();
            const std::vector<float> heard = sender.send(std::vector<unsigned>(count, code), 1.0);
            const Reading r = test::measureTwice(heard, sender.rateHz).reading();
            EXPECT_FALSE(r.valid());
            EXPECT_TRUE(noted(r, "one mark and one space only repeat")) << code << ", " << count;
            ASSERT_TRUE(r.findings && !r.findings->empty());
            EXPECT_EQ(r.findings->front().id, "not-start-stop");
        }
}

TEST(Pipeline, NoiseHumAndARestingLineAreNotCalledTooFewCharacters) {
    std::mt19937 random(5);
    std::normal_distribution<float> normal(0.0F, 0.002F);
    for (const float hum : {0.0F, 0.02F, 0.2F})
        for (const double seconds : {0.5, 2.0, 7.0}) {
            std::vector<float> x(static_cast<std::size_t>(seconds * 48000.0));
            for (std::size_t i = 0; i < x.size(); ++i)
                x[i] = 0.1F + normal(random) + hum * std::sin(static_cast<float>(i) * 314.159F / 48000.0F);
            const Reading r = test::measureOnce(x, 48000.0).reading();
            EXPECT_FALSE(noted(r, "Too few characters for a reading")) << hum << ", " << seconds;
        }
}

TEST(Pipeline, WhatIsLearnedMakesTheFirstCharacterAsGoodAsTheLast) {
    PlainSender sender = coupledSender();
    sender.polesHz = {20.0};
    const std::vector<float> heard = sender.send(test::mixedText(40, 2));
    Pipeline second = test::measureTwice(heard, sender.rateHz);
    const Snapshot s = second.snapshot();
    ASSERT_EQ(s.reading.text.characters, 40);
    for (const DisplacementDot& d : s.dots)
        EXPECT_NEAR(d.percent, d.to == Condition::mark ? -7.0 : 0.0, 0.5) << "character " << d.number;
}

TEST(Pipeline, SamplesThatAreNoNumbersDoNotSpoilTheReading) {
    PlainSender sender = coupledSender();
    std::vector<float> heard = sender.send(test::mixedText(50, 2));
    heard[200000] = std::nanf("");
    heard[200001] = INFINITY;
    heard[250000] = -INFINITY;
    const Reading r = test::measureTwice(heard, sender.rateHz).reading();
    ASSERT_TRUE(r.distortion.biasPercent);
    EXPECT_TRUE(std::isfinite(r.distortion.biasPercent->value));
    EXPECT_NEAR(r.distortion.biasPercent->value, 7.0, 0.5);
}

// 3 % off 45.45 baud, where the last characters scatter about the bound: what is taken once, stays.
TEST(Pipeline, ASpeedThatScattersAboutTheBoundOfANominalOneDoesNotMakeTheReadingJump) {
    PlainSender sender;
    sender.unit = sender.nominal * 1.0299;
    sender.scatterPercent = 1.0;
    Options options;
    options.windowCharacters = 8;
    Pipeline pipeline(sender.rateHz, options, Limits{});
    const std::vector<float> samples = sender.send(test::mixedText(400, 3));
    int changes = 0, read = 0;
    bool had = false;
    for (std::size_t at = 0; at < samples.size(); at += 4800) {
        pipeline.push(std::span(samples).subspan(at, std::min<std::size_t>(4800, samples.size() - at)));
        const Reading r = pipeline.snapshot().reading;
        if (!r.speed.baud) continue;
        const bool has = r.speed.nominalBaud.has_value();
        changes += read++ > 0 && has != had;
        had = has;
    }
    EXPECT_GT(read, 300);
    EXPECT_TRUE(had);
    EXPECT_LE(changes, 1);
}

TEST(Pipeline, AnEmptyOrTinyInputIsNoSignal) {
    for (const std::size_t n : {std::size_t{0}, std::size_t{1}, std::size_t{1000}}) {
        const std::vector<float> x(n, 0.25F);
        Pipeline pipeline = test::measureOnce(x, 48000.0);
        EXPECT_FALSE(pipeline.reading().valid());
        EXPECT_FALSE(pipeline.reading().notes.empty());
    }
}

TEST(Pipeline, FiguresOfTheUsVariantAreReadWhenAskedFor) {
    PlainSender sender = coupledSender();
    std::vector<unsigned> codes(6, 0x1F);
    for (int i = 0; i < 5; ++i) codes.insert(codes.end(), {0x0A, 0x15, 0x1B, 0x14, 0x0D, 0x1F});
    Options options;
    options.code = "ita2-us";
    const std::vector<float> heard = sender.send(codes);
    EXPECT_NE(test::measureTwice(heard, sender.rateHz).reading().text.decoded,
              test::measureTwice(heard, sender.rateHz, options).reading().text.decoded);
}

// In units, of the intervals as they were sent.
double intervalSpread(const PlainSender& sender) {
    std::vector<double> starts;
    for (const PlainSender::Instant& i : sender.instants)
        if (!i.toMark && (starts.empty() || i.seconds > starts.back() + 6.7 * sender.unit)) starts.push_back(i.seconds);
    double sum = 0.0, squares = 0.0;
    for (std::size_t i = 1; i < starts.size(); ++i) {
        const double units = (starts[i] - starts[i - 1]) / sender.unit;
        sum += units;
        squares += units * units;
    }
    const auto n = static_cast<double>(starts.size() - 1);
    return std::sqrt(squares / n - sum * sum / n / n);
}

// A start that comes late makes the stop before it long and the one after it short. A few characters tell no spread.
TEST(Pipeline, TheStopHasItsSpread) {
    PlainSender sender;
    sender.startScatterPercent = 5.0;
    const auto samples = sender.send(test::mixedText(400, 6));
    for (const int window : {0, 8}) {
        Options options;
        options.windowCharacters = window;
        Pipeline pipeline(sender.rateHz, options, Limits{});
        pipeline.push(samples);
        const auto spread = pipeline.snapshot().reading.speed.stopSpreadUnits;
        EXPECT_EQ(spread.has_value(), window == 0);
        EXPECT_NEAR(spread.value_or(0.0), window == 0 ? intervalSpread(sender) : 0.0, 0.006);
    }
}

}  // namespace
}  // namespace trueunit
