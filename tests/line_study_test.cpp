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
