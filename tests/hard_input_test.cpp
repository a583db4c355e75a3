// SPDX-License-Identifier: GPL-3.0-or-later
// Whole path on inputs that leave little to go by: cut off, slow edges behind a high corner, data that are no
// characters.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>
#include <string>

#include "core/frame/code_table.h"
#include "core/normal_equations.h"
#include "tests/support/keyed_tones.h"
#include "tests/support/measure_twice.h"
#include "tests/support/plain_sender.h"
#include "tests/support/texts.h"

namespace trueunit {
namespace {

using test::PlainSender;

Reading clippedReading(double swing, std::vector<double> poles) {
    PlainSender sender;
    sender.swing = swing;
    sender.polesHz = std::move(poles);
    sender.biasPercent = 5.0;
    sender.snrDb = 45.0;
    std::vector<float> heard = sender.send(test::mixedText(80, 4));
    for (float& v : heard) v = std::clamp(v, -1.0F, 1.0F);
    return test::measureTwice(heard, sender.rateHz).reading();
}

TEST(HardInput, ALineAlwaysAtTheRailsIsReadByThem) {
    const Reading r = clippedReading(2.1, {});
    ASSERT_TRUE(r.distortion.biasPercent);
    EXPECT_NEAR(r.distortion.biasPercent->value, 5.0, 0.1);
    EXPECT_GT(r.input.clippedPercent, 90.0);
}

TEST(HardInput, ABadlyClippedCoupledLineIsReadWithinWhatIsStated) {
    for (const double swing : {1.9, 2.5, 3.0}) {
        const Reading r = clippedReading(swing, {8.0});
        ASSERT_TRUE(r.distortion.biasPercent) << swing;
        EXPECT_GT(r.distortion.biasPercent->uncertainty, 0.2);
        EXPECT_NEAR(r.distortion.biasPercent->value, 5.0, r.distortion.biasPercent->uncertainty) << swing;
        EXPECT_TRUE(std::any_of(r.notes.begin(), r.notes.end(),
                                [](const std::string& n) { return n.find("clipped") != std::string::npos; }));
    }
}

TEST(HardInput, ACoupledLineCutOffBelowFullScaleIsReadAndToldAsClipped) {
    for (const double pole : {2.0, 20.0})
        for (const float rail : {0.5F, 0.7F})
            for (const double snr : {30.0, 80.0}) {
                PlainSender sender;
                sender.swing = 1.6;
                sender.polesHz = {pole};
                sender.biasPercent = 5.0;
                sender.snrDb = snr;
                std::vector<float> heard = sender.send(test::mixedText(80, 4));
                for (float& v : heard) v = 0.9F * std::clamp(v, -rail, rail);  // turned down behind the stage that cuts
                const Reading r = test::measureTwice(heard, sender.rateHz).reading();
                SCOPED_TRACE(std::to_string(pole) + " Hz, " + std::to_string(rail) + ", " + std::to_string(snr) +
                             " dB");
                ASSERT_TRUE(r.distortion.biasPercent);
                EXPECT_NEAR(r.distortion.biasPercent->value, 5.0, 0.3);
                EXPECT_NEAR(r.distortion.endPercent->value, 0.0, 0.3);
                EXPECT_GT(r.input.clippedPercent, 5.0);
                ASSERT_TRUE(r.findings);
                EXPECT_TRUE(std::any_of(r.findings->begin(), r.findings->end(),
                                        [](const Finding& f) { return f.id == "clipped"; }));
                EXPECT_TRUE(std::none_of(r.findings->begin(), r.findings->end(),
                                         [](const Finding& f) { return f.id == "slow-rise"; }));
            }
}

TEST(HardInput, FloatingPointBeyondFullScaleIsReadAsItIs) {
    for (const double swing : {1.9, 2.4, 6.0})
        for (const std::vector<double>& poles : {std::vector<double>{}, {8.0}}) {
            PlainSender sender;
            sender.swing = swing;
            sender.polesHz = poles;
            sender.biasPercent = 5.0;
            sender.snrDb = 40.0;
            const Reading r = test::measureTwice(sender.send(test::mixedText(80, 4)), sender.rateHz).reading();
            ASSERT_TRUE(r.distortion.biasPercent && r.distortion.fortuitousRmsPercent);
            EXPECT_NEAR(r.distortion.biasPercent->value, 5.0, 0.05) << swing;
            EXPECT_LT(*r.distortion.fortuitousRmsPercent, 0.05) << swing;
            EXPECT_LT(r.distortion.biasPercent->uncertainty, 0.1) << swing;
            EXPECT_EQ(r.input.clippedPercent, 0.0) << swing;
        }
}

// The tone comes and goes with the sender's line, so many times too strong.
std::vector<float> overdrivenTone(double times, double rise, PlainSender& sender) {
    sender.rise = rise;
    sender.snrDb = 120.0;
    std::vector<float> heard = sender.send(test::mixedText(80, 4));
    std::mt19937 random(4);
    std::normal_distribution<double> noise(0.0, 0.005);
    for (std::size_t i = 0; i < heard.size(); ++i) {
        const double strength = times * (static_cast<double>(heard[i]) / sender.swing + 0.5);
        const double turn = 2.0 * std::numbers::pi * 1500.0 * static_cast<double>(i) / sender.rateHz;
        heard[i] = static_cast<float>(std::clamp(strength * std::sin(turn + 0.4) + noise(random), -1.0, 1.0));
    }
    return heard;
}

TEST(HardInput, AnOverdrivenToneIsReadWithinWhatIsStated) {
    for (const double rise : {300e-6, 1200e-6})
        for (const double times : {1.05, 1.5, 4.0}) {
            PlainSender sender;
            sender.biasPercent = 5.0;
            const std::vector<float> heard = overdrivenTone(times, rise, sender);
            const Reading r = test::measureTwice(heard, sender.rateHz).reading();
            ASSERT_TRUE(r.distortion.biasPercent) << times;
            const Measured& bias = *r.distortion.biasPercent;
            EXPECT_EQ(r.input.kind, InputKind::tone);
            EXPECT_NEAR(bias.value, 5.0, bias.uncertainty) << times << " times, " << rise;
            EXPECT_TRUE(times > 1.1 || std::abs(bias.value - 5.0) < 0.15) << bias.value << ", " << rise;
            EXPECT_TRUE(std::any_of(r.notes.begin(), r.notes.end(),
                                    [](const std::string& n) { return n.find("less certain") != std::string::npos; }));
        }
}

// A tone of few turns in a unit, and two tones of few turns against each other: where in its turn it is keyed tells,
// and the uncertainty says so. Imposed by hand; keyed at the same turn each time, which no average takes away.
TEST(HardInput, ATurnOfTheToneThatTellsIsInTheUncertainty) {
    const auto check = [](test::KeyedTones tones, double baud, const std::vector<unsigned>& codes) {
        PlainSender sender;
        sender.unit = sender.nominal = 1.0 / baud;
        sender.biasPercent = 4.0;
        sender.scatterPercent = 0.4;
        tones.snrDb = 40.0;
        const Reading r = test::measureTwice(tones.send(sender, codes), sender.rateHz).reading();
        ASSERT_TRUE(r.distortion.biasPercent) << tones.markHz << ", " << baud;
        EXPECT_NEAR(r.distortion.biasPercent->value, 4.0, 1.2 * r.distortion.biasPercent->uncertainty)
            << tones.markHz << ", " << baud;
    };
    for (const double hz : {300.0, 350.0, 450.0, 700.0, 1500.0})
        for (const double baud : {45.45, 50.0, 75.0}) check({.markHz = hz}, baud, test::mixedText(120, 3));
    const auto reversals = encode(*findCode("ita2"), "RYRYRYRYRYRYRYRYRYRYRYRYRYRYRYRYRYRYRYRYRYRYRYRYRYRYRYRYRYRY");
    for (const double baud : {50.0, 100.0, 110.0})
        check({.markHz = 1275.0, .spaceHz = 1445.0}, baud, {reversals.begin(), reversals.end()});
}

// No sample of the edge lies between the rails; the noise that does must not tell its time.
TEST(HardInput, ASteepEdgeFromRailToRailIsTimedByTheSidesOfItsSamples) {
    for (const double pole : {25.0, 35.0}) {
        PlainSender sender;
        sender.rise = 20e-6;
        sender.swing = 2.4;
        sender.polesHz = {pole};
        sender.biasPercent = 5.0;
        sender.snrDb = 17.0;
        const Reading r = test::measureTwice(sender.send(test::mixedText(100, 3)), sender.rateHz).reading();
        ASSERT_TRUE(r.distortion.biasPercent) << pole;
        EXPECT_NEAR(r.distortion.biasPercent->value, 5.0, 0.5) << pole;
        EXPECT_LT(*r.distortion.fortuitousRmsPercent, 1.0) << pole;
    }
}

TEST(HardInput, ASlowRiseBehindAHighCornerIsRead) {
    for (const double tau : {0.002, 0.003})
        for (const double pole : {8.0, 25.0}) {
            PlainSender sender;
            sender.edge = PlainSender::Edge::exponential;
            sender.rise = tau * std::log(9.0);
            sender.fall = 200e-6;
            sender.polesHz = {pole};
            sender.snrDb = 40.0;
            const std::vector<float> heard = sender.send(test::mixedText(80, 3));
            const Reading r = test::measureTwice(heard, sender.rateHz).reading();
            ASSERT_TRUE(r.distortion.biasPercent) << tau << " s, " << pole << " Hz";
            EXPECT_NEAR(r.distortion.biasPercent->value, 0.0, 0.3) << tau << " s, " << pole << " Hz";
        }
}

// Where the line without noise crosses the middle of its swing, and what bias that makes: the definition, worked out
// beside the instrument by least squares over t - s = k T + a [to mark] + b [to space].
double biasOfCrossings(PlainSender sender, const std::vector<unsigned>& codes) {
    sender.snrDb = 200.0;
    const std::vector<float> line = sender.send(codes);
    const auto crossing = [&](const PlainSender::Instant& i) {
        auto at = static_cast<std::size_t>((i.seconds - 0.4 * sender.unit) * sender.rateHz);
        while ((line[at + 1] > 0.0F) != i.toMark) ++at;
        while ((line[at] > 0.0F) == i.toMark) --at;
        const double here = line[at], next = line[at + 1];
        return (static_cast<double>(at) + here / (here - next)) / sender.rateHz;
    };
    NormalEquations<3> equations;
    double start = -1.0, nominal = -1.0;
    for (const PlainSender::Instant& i : sender.instants) {
        if (nominal < 0.0 || i.seconds - nominal > 6.5 * sender.unit) {
            nominal = i.seconds;
            start = crossing(i);
            continue;
        }
        const double mark = i.toMark ? 1.0 : 0.0;
        equations.add({std::round((i.seconds - nominal) / sender.unit), mark, 1.0 - mark}, crossing(i) - start);
    }
    return -100.0 * (*equations.solve())[1] / sender.nominal;
}

// Low loop voltage, or many magnets in series: the current takes half a unit and more, and has not come to rest when
// the next element begins.
TEST(HardInput, ACurrentThatHardlyComesToRestIsTimedByTheWholeSwing) {
    for (const auto& [rise, fall] : {std::pair{0.001, 0.005}, {0.005, 0.001}, {0.005, 0.005}, {0.003, 0.005}}) {
        PlainSender sender;
        sender.edge = PlainSender::Edge::exponential;
        sender.rise = rise * std::log(9.0);
        sender.fall = fall * std::log(9.0);
        sender.snrDb = 45.0;
        const auto codes = test::mixedText(160, 3);
        const Reading r = test::measureTwice(sender.send(codes), sender.rateHz).reading();
        ASSERT_TRUE(r.distortion.biasPercent) << rise << ", " << fall;
        EXPECT_NEAR(r.distortion.biasPercent->value, biasOfCrossings(sender, codes), 0.15) << rise << ", " << fall;
        EXPECT_NEAR(*r.input.riseToMarkMs, 1e3 * sender.rise, 0.08 * 1e3 * sender.rise) << rise << ", " << fall;
        EXPECT_NEAR(*r.input.riseToSpaceMs, 1e3 * sender.fall, 0.08 * 1e3 * sender.fall) << rise << ", " << fall;
    }
}

// A plug half out, a gain turned down while the tape runs.
TEST(HardInput, WhatFollowsASuddenFallOfTheLevelIsReadToo) {
    for (const double pole : {0.0, 2.0, 8.0, 30.0})
        for (const float left : {0.7F, 0.5F, 0.3F, 0.1F}) {
            PlainSender sender;
            sender.polesHz = pole > 0.0 ? std::vector{pole} : std::vector<double>{};
            sender.snrDb = 50.0;
            std::vector<float> heard = sender.send(test::mixedText(200, 3));
            const std::size_t at = heard.size() / 3;
            for (std::size_t i = at; i < heard.size(); ++i) heard[i] *= left;
            const Reading r = test::measureOnce(heard, sender.rateHz).reading();
            EXPECT_GE(r.text.characters, 200 - 16) << pole << " Hz, " << left;
            const bool all = r.text.characters + r.text.framingErrors >= 200 - 1;
            EXPECT_EQ(r.input.levelSteps, all ? 0 : 1) << pole << " Hz, " << left;
            ASSERT_TRUE(r.distortion.grossPercent) << pole << " Hz, " << left;
            EXPECT_LT(*r.distortion.grossPercent, 4.0) << pole << " Hz, " << left;
        }
}

// A driver that puts zeros for what it lost, a plug without contact for a moment: no fault of the feed or of a contact.
TEST(HardInput, SamplesThatAreMissingInTheMidstAreAGap) {
    for (const double pole : {0.0, 8.0, 30.0})
        for (const double seconds : {0.005, 0.05, 0.6}) {
            PlainSender sender;
            sender.polesHz = pole > 0.0 ? std::vector{pole} : std::vector<double>{};
            sender.snrDb = 45.0;
            std::vector<float> heard = sender.send(test::mixedText(200, 3));
            const std::size_t at = heard.size() / 2 + 777;
            std::fill_n(heard.begin() + static_cast<std::ptrdiff_t>(at), static_cast<std::size_t>(seconds * 48000.0),
                        0.0F);
            const Reading r = test::measureOnce(heard, sender.rateHz).reading();
            EXPECT_EQ(r.input.gaps, 1) << pole << " Hz, " << seconds;
            EXPECT_TRUE(std::any_of(r.notes.begin(), r.notes.end(), [](const std::string& note) {
                return note.starts_with("Samples are missing in the midst, so often: 1.");
            }));
            EXPECT_EQ(r.text.framingErrors, 0) << pole << " Hz, " << seconds;
            EXPECT_GE(r.text.characters, 200 - 4 - static_cast<long>(seconds / 0.15)) << pole << " Hz, " << seconds;
            ASSERT_TRUE(r.distortion.grossPercent);
            EXPECT_LT(*r.distortion.grossPercent, 2.0) << pole << " Hz, " << seconds;
        }
}

// No noise, and no current where there is space: zeros are a condition of the line.
TEST(HardInput, ALineWhoseSpaceIsExactlyNothingHasNoGaps) {
    for (const float offset : {0.0F, 1.0F, -1.0F}) {
        PlainSender sender;
        sender.snrDb = 200.0;
        std::vector<float> heard = sender.send(test::mixedText(60, 3));
        const std::vector<float> again = heard;
        const float most = *std::max_element(heard.begin(), heard.end());
        heard.insert(heard.end(), 3 * 48000, heard.back());
        heard.insert(heard.end(), again.begin(), again.end());
        for (float& v : heard) v = std::abs(v + offset * most) < 1e-4F ? 0.0F : v + offset * most;
        const Reading r = test::measureTwice(heard, sender.rateHz).reading();
        EXPECT_EQ(r.input.gaps, 0) << offset;
        EXPECT_EQ(r.text.characters, 120) << offset;
    }
}

TEST(HardInput, ALineThatRestsInHumHasNotLostItsLevel) {
    for (const float hum : {0.02F, 0.06F, 0.12F}) {
        PlainSender sender;
        sender.polesHz = {8.0};
        sender.snrDb = 40.0;
        std::vector<float> heard = sender.send(test::mixedText(60, 3));
        const std::vector<float> again = heard;
        heard.insert(heard.end(), 20 * 48000, heard.back());
        heard.insert(heard.end(), again.begin(), again.end());
        for (std::size_t i = 0; i < heard.size(); ++i)
            heard[i] += hum * 0.25F * std::sin(static_cast<float>(i % 960) * 6.2832F / 960.0F);
        const Reading r = test::measureOnce(heard, sender.rateHz).reading();
        EXPECT_EQ(r.input.levelSteps, 0) << hum;
        EXPECT_EQ(r.text.framingErrors, 0) << hum;
        EXPECT_GE(r.text.characters, 118) << hum;
    }
}

// An exponential comes to the fraction f of its way after -tau ln(1 - f), whatever the sampling; so the bias that the
// slice itself makes follows from the two time constants.
TEST(HardInput, ASlowEdgeIsSlicedWhereItIs) {
    for (const auto& [rise, fall] : {std::pair{0.001, 0.003}, {0.002, 0.001}, {0.002, 0.002}, {0.003, 0.001}}) {
        PlainSender sender;
        sender.edge = PlainSender::Edge::exponential;
        sender.rise = rise * std::log(9.0);
        sender.fall = fall * std::log(9.0);
        sender.snrDb = 50.0;
        const std::vector<float> heard = sender.send(test::mixedText(160, 3));
        const auto biasAt = [&](double percent) {
            Options options;
            options.slicePercent = percent;
            return *test::measureTwice(heard, sender.rateHz, options).reading().distortion.biasPercent;
        };
        const double middle = biasAt(50.0).value;
        for (const double f : {0.1, 0.2, 0.8, 0.9}) {
            const double later = fall * std::log(0.5 / f) - rise * std::log(0.5 / (1.0 - f));
            const Measured read = biasAt(100.0 * f);
            const double expected = middle + 100.0 * later / sender.nominal;
            EXPECT_NEAR(read.value, expected, 0.3) << rise << ", " << fall << " at " << f;
            EXPECT_NEAR(read.value, expected, 1.5 * read.uncertainty) << rise << ", " << fall << " at " << f;
        }
    }
}

// Each bit a change in its middle, 50 bits a second. A fair part of it looks like characters of 100 baud.
TEST(HardInput, SplitPhaseDataGiveNoReading) {
    for (const unsigned seed : {5U, 18U}) {
        std::mt19937_64 random(seed);
        Pipeline pipeline(48000.0, Options{}, Limits{});
        std::vector<float> block(4800);
        bool high = true;
        for (std::size_t n = 0; n < 18 * 48000;) {
            for (float& v : block) {
                if (n % 960 == 0) high = (random() & 1U) != 0;
                v = high == (n % 960 < 480) ? 0.4F : -0.4F;
                ++n;
            }
            pipeline.push(block);
            if (n % 48000 != 0) continue;
            EXPECT_FALSE(pipeline.reading().valid()) << seed << ", " << n / 48000 << " s";
        }
    }
}

// 50 bits a second without start or stop. Here and there some of it looks like characters, of that speed or another.
TEST(HardInput, SynchronousDataGiveNoReading) {
    constexpr std::size_t kBit = 160;  // samples
    constexpr std::size_t kSecond = 50 * kBit;
    std::mt19937_64 random(5);
    Pipeline pipeline(kSecond, Options{}, Limits{});
    std::vector<float> bit(kBit);
    for (std::size_t n = 0; n < 110 * 50; ++n) {
        std::fill(bit.begin(), bit.end(), (random() & 1U) != 0 ? 0.4F : -0.4F);
        pipeline.push(bit);
        if (n % 50 != 0) continue;
        EXPECT_FALSE(pipeline.reading().valid()) << n / 50 << " s";
    }
}

}  // namespace
}  // namespace trueunit
