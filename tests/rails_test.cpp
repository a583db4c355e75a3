// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acquire/rails.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/condition/line_study.h"
#include "tests/support/plain_sender.h"
#include "tests/support/texts.h"

namespace trueunit {
namespace {

using test::PlainSender;

PlainSender coupledSender(double snrDb) {
    PlainSender sender;
    sender.swing = 1.6;
    sender.polesHz = {10.0};
    sender.snrDb = snrDb;
    return sender;
}

// As a converter of 16 bits writes it.
std::vector<float> cutOff(std::vector<float> heard, float low, float high) {
    for (float& v : heard) v = std::round(std::clamp(v, low, high) * 32768.0F) / 32768.0F;
    return heard;
}

std::vector<float> sentBy(PlainSender sender) { return sender.send(test::mixedText(40, 5)); }

TEST(Rails, AreAtFullScaleUnlessMoreIsKnown) {
    EXPECT_TRUE(Rails{}.reached(1.0F));
    EXPECT_TRUE(Rails{}.reached(-1.0F));
    EXPECT_FALSE(Rails{}.reached(0.99F));
    EXPECT_FALSE(Rails{}.reached(std::nanf("")));
    EXPECT_FALSE(Rails::none().reached(7.0F));
    EXPECT_TRUE(beyondFullScale(-1.2F));
    EXPECT_FALSE(beyondFullScale(1.0F));
    EXPECT_FALSE(beyondFullScale(std::nanf("")));
    EXPECT_FALSE(beyondFullScale(1e9F));  // no sample at all
}

TEST(Rails, AreFoundWhereManySamplesLieAtOneLevel) {
    const std::vector<float> heard = sentBy(coupledSender(45.0));
    EXPECT_FALSE(flatTops(heard, 48000.0));
    const auto both = flatTops(cutOff(heard, -0.5F, 0.6F), 48000.0);
    ASSERT_TRUE(both);
    EXPECT_NEAR(both->low, -0.5, 0.003);
    EXPECT_NEAR(both->high, 0.6, 0.003);
    const auto one = flatTops(cutOff(heard, -1.0F, 0.6F), 48000.0);
    ASSERT_TRUE(one);
    EXPECT_NEAR(one->high, 0.6, 0.003);
    EXPECT_EQ(one->low, Rails{}.low);
}

TEST(Rails, AreNotFoundInEmptyStretchesOrNumbersThatAreNone) {
    EXPECT_FALSE(flatTops({}, 48000.0));
    EXPECT_FALSE(flatTops(std::vector<float>(48000, std::nanf("")), 48000.0));
    EXPECT_FALSE(flatTops(std::vector<float>(48000, 0.3F), 48000.0));  // one level alone
}

TEST(Rails, NoiseBetweenThemSaysThatTheyAreNoLevels) {
    for (const double snr : {20.0, 30.0, 40.0}) {
        const std::vector<float> cut = cutOff(sentBy(coupledSender(snr)), -0.5F, 0.5F);
        EXPECT_TRUE(noisyBetween(*flatTops(cut, 48000.0), cut)) << snr;
    }
    for (const double tau : {0.0005, 0.003}) {
        PlainSender sender = coupledSender(120.0);
        sender.polesHz = {};
        sender.edge = PlainSender::Edge::exponential;
        sender.rise = tau * std::log(9.0);
        const std::vector<float> levels = cutOff(sentBy(sender), -1.0F, 1.0F);
        const auto flat = flatTops(levels, 48000.0);
        EXPECT_FALSE(flat && noisyBetween(*flat, levels)) << tau;
    }
}

TEST(Rails, OfALineCutOffBelowFullScaleDoNotSpoilWhatTheStudyFinds) {
    for (const double snr : {120.0, 45.0, 30.0, 20.0})
        for (const float rail : {0.5F, 0.7F}) {
            const auto fit = studyLine(cutOff(sentBy(coupledSender(snr)), -rail, rail), 48000.0);
            ASSERT_TRUE(fit) << snr << ", " << rail;
            EXPECT_NEAR(fit->rails.high, rail, 0.003) << snr;
            EXPECT_NEAR(fit->rails.low, -rail, 0.003) << snr;
            EXPECT_NEAR(fit->swing, 1.6, 0.05) << snr << ", " << rail;
            EXPECT_NEAR(fit->coupling.cornersHz().front(), 10.0, 0.3) << snr << ", " << rail;
        }
}

TEST(Rails, TheLevelsOfALineWithoutCouplingAreNone) {
    for (const double swing : {1.6, 0.1})
        for (const double rise : {50e-6, 300e-6, 2000e-6}) {
            PlainSender sender = coupledSender(120.0);
            sender.swing = swing;
            sender.polesHz = {};
            sender.rise = rise;
            const auto fit = studyLine(cutOff(sentBy(sender), -1.0F, 1.0F), 48000.0);
            ASSERT_TRUE(fit);
            EXPECT_EQ(fit->rails, Rails{}) << swing << ", " << rise;
        }
}

TEST(Rails, ThereAreNoneWhereFloatingPointGoesBeyondFullScale) {
    PlainSender sender = coupledSender(45.0);
    sender.swing = 2.6;
    const auto fit = studyLine(sentBy(sender), 48000.0);
    ASSERT_TRUE(fit);
    EXPECT_EQ(fit->rails, Rails::none());
    EXPECT_NEAR(fit->swing, 2.6, 0.03);
}

}  // namespace
}  // namespace trueunit
