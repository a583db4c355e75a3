// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/condition/coupling_regression.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "tests/support/plain_sender.h"
#include "tests/support/texts.h"

namespace trueunit {
namespace {

// As the study of a line would have it, with every transition where it was sent.
Stretch stretchOf(test::PlainSender& sender) {
    constexpr std::size_t kThinned = 16;
    const std::vector<float> heard = sender.send(test::mixedText(20, 3));
    Stretch s;
    s.rateHz = sender.rateHz / kThinned;
    for (std::size_t i = 0; i + kThinned <= heard.size(); i += kThinned) {
        double sum = 0.0;
        for (std::size_t j = 0; j < kThinned; ++j) sum += static_cast<double>(heard[i + j]);
        s.heard.push_back(sum / kThinned);
        s.clipped.push_back(0);
    }
    for (const auto& i : sender.instants) s.transitions.push_back({i.seconds * s.rateHz - 0.5, i.toMark});
    return s;
}

class CouplingRegression : public ::testing::TestWithParam<std::vector<double>> {};

// Rise time constants of a loop with magnets in series; falling at once.
TEST_P(CouplingRegression, FindsThePolesWhateverFormTheEdgesHave) {
    for (const double tau : {0.0001, 0.001, 0.002, 0.004})
        for (const double snr : {60.0, 30.0}) {
            test::PlainSender sender;
            sender.edge = test::PlainSender::Edge::exponential;
            sender.rise = tau * std::log(9.0);
            sender.fall = 200e-6;
            sender.polesHz = GetParam();
            sender.snrDb = snr;
            const HighPass truth = HighPass::ofCorners(GetParam()[0], GetParam().size() > 1 ? GetParam()[1] : 0.0);
            const auto found = regressCoupling(stretchOf(sender));
            ASSERT_TRUE(found) << tau;
            EXPECT_NEAR(found->a, truth.a, 0.02 * truth.a) << tau << ", " << snr;
            EXPECT_NEAR(found->b, truth.b, 0.02 * truth.b + 1e-9) << tau << ", " << snr;
        }
}

// A current that takes half a unit is not taken for a second pole.
TEST(CouplingRegression, ACurrentThatHardlyComesToRestLeavesThePoleAsItIs) {
    test::PlainSender sender;
    sender.edge = test::PlainSender::Edge::exponential;
    sender.rise = sender.fall = 0.0055 * std::log(9.0);
    sender.polesHz = {5.0};
    sender.snrDb = 45.0;
    const auto found = regressCoupling(stretchOf(sender));
    ASSERT_TRUE(found);
    EXPECT_NEAR(found->a, HighPass::ofCorners(5.0, 0.0).a, 1.0);
    EXPECT_NEAR(found->b, 0.0, 5.0);
}

INSTANTIATE_TEST_SUITE_P(Poles, CouplingRegression,
                         ::testing::Values(std::vector<double>{0.5}, std::vector<double>{8.0},
                                           std::vector<double>{40.0}, std::vector<double>{25.0, 8.0},
                                           std::vector<double>{40.0, 40.0}));

TEST(CouplingRegression, AnUncoupledLineHasNoPole) {
    test::PlainSender sender;
    sender.snrDb = 30.0;
    const auto found = regressCoupling(stretchOf(sender));
    ASSERT_TRUE(found);
    EXPECT_EQ(found->a, 0.0);
}

TEST(CouplingRegression, WhatIsCutOffCannotBeIntegrated) {
    test::PlainSender sender;
    sender.polesHz = {8.0};
    Stretch s = stretchOf(sender);
    for (std::size_t i = 0; i < s.clipped.size(); i += 50) s.clipped[i] = 1;
    EXPECT_FALSE(regressCoupling(s));
}

// Hum taken for a line whose two levels come out the same: what explains it is given up in turn, each once. The step
// was sought until the search would not have come to its end in hours.
TEST(CouplingRegression, ALineWithoutLevelsIsSearchedToTheEnd) {
    constexpr int kSamples = 12000;
    Stretch s;
    s.rateHz = 3000;
    double u = 11;
    for (double t = 20; t < kSamples - 10; t += 3.0 + 0.04 * u) {
        u = std::fmod(421 * u + 1663, 1000);
        s.transitions.push_back({t, s.transitions.size() % 2 == 0});
    }
    std::size_t passed = 0;
    for (int i = 0; i < kSamples; ++i) {
        while (passed < s.transitions.size() && s.transitions[passed].time <= i) ++passed;
        const double step = 5.2551145662591667e-05 * (passed % 2 == 1 ? 0.5 : -0.5);
        const double p = 2 * std::numbers::pi * 50 * i / s.rateHz;
        s.heard.push_back(0.01 * std::sin(p) + 0.005 * std::sin(3 * p + 1) + step);
        s.clipped.push_back(0);
    }
    (void)regressCoupling(s);
}

}  // namespace
}  // namespace trueunit
