// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "tests/support/measure_twice.h"
#include "tests/support/plain_sender.h"
#include "tests/support/texts.h"

namespace trueunit {
namespace {

using test::PlainSender;

// What the instrument promises at 45 dB of signal to noise: bias and end within 0.1 % of a unit with one coupling pole
// up to 20 Hz, within 0.3 % at 40 Hz or with two poles; speed within 0.02 %; every character right.
constexpr double kOnePolePercent = 0.1;
constexpr double kHardPercent = 0.3;
constexpr double kSpeedPercent = 0.02;
constexpr int kCharacters = 48;

struct Case {
    const char* name;
    double unit;
    double stopUnits;
    double biasPercent;
    double endPercent;
    double speedPercent;
    std::vector<double> polesHz;
    double rateHz = 48000.0;
    bool inverted = false;
    PlainSender::Edge edge = PlainSender::Edge::gaussian;
    double rise = 300e-6;
    std::optional<double> baud = {};  // told to the instrument; otherwise it finds the standard speed by itself
};
void PrintTo(const Case& c, std::ostream* out) { *out << c.name; }

PlainSender senderOf(const Case& c, std::uint64_t seed) {
    PlainSender sender;
    sender.nominal = c.unit;
    sender.unit = c.unit / (1.0 + 0.01 * c.speedPercent);
    sender.stopUnits = c.stopUnits;
    sender.biasPercent = c.biasPercent;
    sender.endPercent = c.endPercent;
    sender.polesHz = c.polesHz;
    sender.rateHz = c.rateHz;
    sender.inverted = c.inverted;
    sender.edge = c.edge;
    sender.rise = c.rise;
    sender.snrDb = 45.0;
    sender.seed = seed;
    return sender;
}

class Accuracy : public ::testing::TestWithParam<Case> {};

TEST_P(Accuracy, ReadingsAndTextAreThoseOfTheIndependentSender) {
    const Case& c = GetParam();
    const bool hard = c.polesHz.size() > 1 || (c.polesHz.size() == 1 && c.polesHz[0] > 20.0);
    const double within = hard ? kHardPercent : kOnePolePercent;
    for (const unsigned seed : {1U, 2U}) {
        SCOPED_TRACE("seed=" + std::to_string(seed));
        const std::vector<unsigned> codes = test::mixedText(kCharacters, seed);
        PlainSender sender = senderOf(c, seed);
        Options options;
        options.baud = c.baud;
        const Reading r = test::measureTwice(sender.send(codes), c.rateHz, options).reading();
        EXPECT_EQ(r.text.characters, kCharacters);
        EXPECT_EQ(r.text.framingErrors, 0);
        EXPECT_EQ(r.text.decoded, test::printed(codes));
        EXPECT_EQ(r.input.inverted, std::optional(c.inverted));
        ASSERT_TRUE(r.distortion.biasPercent && r.distortion.endPercent && r.speed.errorPercent && r.speed.stopUnits);
        EXPECT_NEAR(r.distortion.biasPercent->value, c.biasPercent, within);
        EXPECT_NEAR(r.distortion.endPercent->value, c.endPercent, within);
        EXPECT_NEAR(r.speed.errorPercent->value, c.speedPercent, kSpeedPercent);
        EXPECT_NEAR(r.speed.stopUnits->value, c.stopUnits, 0.005);
    }
}

using Edge = PlainSender::Edge;
INSTANTIATE_TEST_SUITE_P(
    Signals, Accuracy,
    ::testing::Values(
        Case{"DirectCoupled", 0.022, 1.42, 5.0, 0.0, 0.0, {}}, Case{"HalfHertz", 0.022, 1.42, -8.0, 3.0, 0.0, {0.5}},
        Case{"EightHertz", 0.020, 1.5, 12.0, -4.0, 0.4, {8.0}, 44100.0},
        Case{"TwentyHertz", 0.022, 1.0, -3.0, 6.0, -0.9, {20.0}, 48000.0, true},
        Case{"TwentyHertzLinear", 0.020, 2.0, 18.0, 0.0, 0.0, {20.0}, 48000.0, false, Edge::linear},
        Case{
            "FastAndLargeBias", 0.1 / 7.42, 1.42, 20.0, 5.0, 1.0, {10.0}, 96000.0, false, Edge::gaussian, 300e-6, 74.2},
        Case{"HundredBaud", 0.010, 1.5, -10.0, 0.0, 0.0, {5.0}},
        Case{"Exponential", 0.022, 1.42, 4.0, -2.0, 0.2, {8.0}, 48000.0, true, Edge::exponential, 600e-6},
        Case{"SharpEdges", 0.020, 1.5, 1.0, 1.0, 0.0, {15.0}, 44100.0, false, Edge::linear, 60e-6},
        Case{"FortyHertz", 0.022, 1.42, 9.0, -3.0, 0.0, {40.0}},
        Case{"FortyHertzInverted", 0.020, 1.5, -9.0, 3.0, 0.6, {40.0}, 44100.0, true},
        Case{"TwoPoles", 0.022, 1.42, 7.0, 2.0, 0.0, {20.0, 5.0}},
        Case{"TwoEqualPoles", 0.020, 1.5, -14.0, 0.0, -0.5, {8.0, 8.0}, 48000.0, true},
        Case{"TwoHighPoles", 0.022, 1.42, 3.0, -3.0, 0.0, {40.0, 40.0}},
        Case{"TwoPolesHighRate", 0.020, 1.5, 5.0, 5.0, 0.0, {30.0, 1.0}, 96000.0}),
    [](const auto& i) { return std::string(i.param.name); });

TEST(Accuracy, TheStatedUncertaintyHoldsTheTruthAboutAsOftenAsItSays) {
    // 95 of 100 are promised; of 30 signals, fewer than 25 would come by chance once in 300 (binomial distribution).
    int biasHeld = 0;
    int endHeld = 0;
    int speedHeld = 0;
    for (unsigned seed = 1; seed <= 30; ++seed) {
        PlainSender sender;
        sender.biasPercent = 4.0;
        sender.endPercent = -2.0;
        sender.scatterPercent = 1.0;
        sender.startScatterPercent = 0.5;
        sender.polesHz = {8.0};
        sender.snrDb = 45.0;
        sender.rateHz = 16000.0;
        sender.seed = seed;
        const Reading r = test::measureOnce(sender.send(test::mixedText(40, seed)), sender.rateHz).reading();
        ASSERT_TRUE(r.distortion.biasPercent && r.distortion.endPercent && r.speed.errorPercent) << "seed=" << seed;
        const auto holds = [](const Measured& m, double truth) { return std::abs(m.value - truth) <= m.uncertainty; };
        biasHeld += holds(*r.distortion.biasPercent, 4.0);
        endHeld += holds(*r.distortion.endPercent, -2.0);
        speedHeld += holds(*r.speed.errorPercent, 0.0);
    }
    EXPECT_GE(biasHeld, 25);
    EXPECT_GE(endHeld, 25);
    EXPECT_GE(speedHeld, 25);
}

TEST(Accuracy, EightLevelsAtElevenUnitsAreReadAsWell) {
    std::vector<unsigned> codes;
    for (const unsigned char c : encode(*findCode("ita5"), "The quick brown fox jumps over the lazy dog. 1234567890"))
        codes.push_back(c);
    PlainSender sender;
    sender.levels = 8;
    sender.unit = sender.nominal = 1.0 / 110.0;
    sender.stopUnits = 2.0;
    sender.biasPercent = -6.0;
    sender.endPercent = 2.0;
    sender.polesHz = {8.0};
    sender.snrDb = 45.0;
    Options options;
    options.code = "ita5";
    const Reading r = test::measureTwice(sender.send(codes), sender.rateHz, options).reading();
    EXPECT_EQ(r.text.decoded, "The quick brown fox jumps over the lazy dog. 1234567890");
    ASSERT_TRUE(r.distortion.biasPercent && r.distortion.endPercent && r.speed.operationsPerMinute);
    EXPECT_NEAR(r.distortion.biasPercent->value, -6.0, kOnePolePercent);
    EXPECT_NEAR(r.distortion.endPercent->value, 2.0, kOnePolePercent);
    EXPECT_NEAR(r.speed.operationsPerMinute->value, 600.0, 0.2);
}

TEST(Accuracy, NoiseWithinTenDecibelsIsStillRead) {
    for (const unsigned seed : {1U, 2U, 3U}) {
        PlainSender sender;
        sender.snrDb = 10.0;
        sender.biasPercent = 6.0;
        sender.polesHz = {5.0};
        sender.seed = seed;
        const std::vector<unsigned> codes = test::mixedText(80, seed);
        const Reading r = test::measureTwice(sender.send(codes), sender.rateHz).reading();
        EXPECT_EQ(r.text.decoded, test::printed(codes)) << "seed=" << seed;
        ASSERT_TRUE(r.distortion.biasPercent) << "seed=" << seed;
        EXPECT_NEAR(r.distortion.biasPercent->value, 6.0, 1.0) << "seed=" << seed;
    }
}

}  // namespace
}  // namespace trueunit
