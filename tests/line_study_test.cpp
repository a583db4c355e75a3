// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/condition/line_study.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "tests/support/plain_sender.h"
#include "tests/support/texts.h"

namespace trueunit {
namespace {

struct Wiring {
    std::vector<double> polesHz;
    bool inverted;
    double offset;
    double rateHz;
};
void PrintTo(const Wiring& w, std::ostream* out) { *out << w.polesHz.size() << " poles, " << w.rateHz << " Hz"; }

class LineStudyOfKnownWiring : public ::testing::TestWithParam<Wiring> {};

TEST_P(LineStudyOfKnownWiring, FindsSwingOffsetAndCorners) {
    test::PlainSender sender;
    sender.polesHz = GetParam().polesHz;
    sender.inverted = GetParam().inverted;
    sender.offset = GetParam().offset;
    sender.rateHz = GetParam().rateHz;
    sender.snrDb = 45.0;
    sender.biasPercent = 8.0;
    const std::vector<float> heard = sender.send(test::mixedText(24, 3));
    const auto fit = studyLine(heard, sender.rateHz);
    ASSERT_TRUE(fit);
    EXPECT_NEAR(fit->swing, sender.swing, 0.02 * sender.swing);
    EXPECT_NEAR(fit->offset, sender.offset, 0.02 * sender.swing);
    EXPECT_EQ(fit->startsHigh, !sender.inverted);
    EXPECT_LT(fit->residual, 0.02);
    const std::vector<double> corners = fit->coupling.cornersHz();
    double expected = 0.0;
    double found = 0.0;
    for (const double hz : sender.polesHz) expected += hz;
    for (const double hz : corners) found += hz;
    EXPECT_NEAR(found, expected, 0.03 * expected + 0.05);  // the sum is what the droop begins with
    if (sender.polesHz.size() == 2) {
        ASSERT_EQ(corners.size(), 2U);
        EXPECT_NEAR(corners[0] * corners[1], sender.polesHz[0] * sender.polesHz[1],
                    0.1 * sender.polesHz[0] * sender.polesHz[1]);
    }
}

INSTANTIATE_TEST_SUITE_P(Wirings, LineStudyOfKnownWiring,
                         ::testing::Values(Wiring{{}, false, 0.0, 48000.0}, Wiring{{0.5}, false, 0.02, 48000.0},
                                           Wiring{{3.0}, true, 0.0, 44100.0}, Wiring{{8.0}, false, -0.05, 96000.0},
                                           Wiring{{20.0}, true, 0.0, 48000.0}, Wiring{{40.0}, false, 0.0, 48000.0},
                                           Wiring{{16.0, 16.0}, false, 0.0, 48000.0},
                                           Wiring{{20.0, 4.0}, true, 0.01, 44100.0}));

TEST(LineStudy, NothingIsFoundInSilenceNoiseHumOrARestingLine) {
    std::mt19937 random(9);
    std::normal_distribution<float> normal(0.0F, 0.05F);
    std::vector<float> silence(96000, 0.0F);
    std::vector<float> noise(96000);
    std::vector<float> rest(96000);
    for (std::size_t i = 0; i < noise.size(); ++i) {
        noise[i] = normal(random);
        rest[i] = 0.25F + 0.001F * normal(random);
    }
    EXPECT_FALSE(studyLine(silence, 48000.0));
    EXPECT_FALSE(studyLine(noise, 48000.0));
    EXPECT_FALSE(studyLine(rest, 48000.0));
}

// Most of the time of a keyboard is rest: the steps that are seen then are of noise, or of the coupling's droop.
TEST(LineStudy, KeysBetweenLongPausesAreTheSameLine) {
    for (const double pole : {5.0, 20.0, 30.0})
        for (const double pauseUnits : {40.0, 90.0}) {
            test::PlainSender sender;
            sender.polesHz = {pole};
            sender.stopUnits = pauseUnits;
            sender.snrDb = 30.0;
            const auto fit = studyLine(sender.send(test::mixedText(6, 3)), sender.rateHz);
            ASSERT_TRUE(fit) << pole << " Hz, " << pauseUnits;
            EXPECT_NEAR(fit->swing, sender.swing, 0.02 * sender.swing);
            ASSERT_EQ(fit->coupling.cornersHz().size(), 1U);
            EXPECT_NEAR(fit->coupling.cornersHz()[0], pole, 0.03 * pole);
            EXPECT_TRUE(fit->startsHigh);
        }
}

TEST(LineStudy, AFewKeysAmongNoiseAreNotTakenForALineOfAnotherHeight) {
    for (std::uint64_t seed = 1; seed <= 5; ++seed) {
        test::PlainSender sender;
        sender.polesHz = {20.0};
        sender.leadIn = 1.0;
        sender.snrDb = 30.0;
        sender.seed = seed;
        const auto fit = studyLine(sender.send({0x16, 0x12}, 0.7), sender.rateHz);
        EXPECT_NEAR(fit ? fit->swing : sender.swing, sender.swing, 0.05 * sender.swing) << "seed " << seed;
    }
}

TEST(LineStudy, ClicksAreNoLine) {
    std::mt19937 random(4);
    std::normal_distribution<float> normal(0.0F, 0.005F);
    std::vector<float> heard(10 * 48000);
    for (float& v : heard) v = normal(random);
    for (std::size_t click = 0; click < 12; ++click)
        for (std::size_t i = 0; i < 480; ++i)
            heard[(click * 38000) + i] += 0.4F * std::exp(-static_cast<float>(i) / 96.0F);
    EXPECT_FALSE(studyLine(heard, 48000.0));
}

TEST(LineStudy, FewerThanTenTransitionsProveNothing) {
    test::PlainSender sender;
    EXPECT_FALSE(studyLine(sender.send({0x0A}, 1.5), sender.rateHz));
}

TEST(LineStudy, TwiceTheSignalIsTwiceTheSwingAndNothingElse) {
    test::PlainSender sender;
    sender.polesHz = {8.0};
    std::vector<float> heard = sender.send(test::mixedText(16, 5));
    const auto once = studyLine(heard, sender.rateHz);
    for (float& v : heard) v *= 2.0F;
    const auto twice = studyLine(heard, sender.rateHz);
    ASSERT_TRUE(once && twice);
    EXPECT_NEAR(twice->swing, 2.0 * once->swing, 1e-4);
    EXPECT_NEAR(twice->coupling.a, once->coupling.a, 1e-2 * once->coupling.a);
}

TEST(LineStudy, IsEmptyForAnEmptyStretchAndForNumbersThatAreNone) {
    EXPECT_FALSE(studyLine({}, 48000.0));
    EXPECT_FALSE(studyLine(std::vector<float>(96000, std::nanf("")), 48000.0));
}

}  // namespace
}  // namespace trueunit
