// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/condition/coupling_loss.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <numbers>

namespace trueunit {
namespace {

constexpr double kTwoPi = 2.0 * std::numbers::pi;
constexpr double kRate = 48000.0;

// What passes of a unit step, by the Laplace transform: the inverse of 1/s times the high-pass.
using StepResponse = std::function<double(double seconds)>;

void expectStepResponse(const HighPass& highPass, const StepResponse& passed) {
    CouplingLoss loss(highPass, kRate);
    for (int n = 0; n < 20000; ++n) ASSERT_NEAR(1.0 - loss.step(1.0), passed(n / kRate), 1e-9) << "sample " << n;
}

TEST(CouplingLoss, OnePoleDecaysExponentially) {
    for (const double hz : {0.5, 8.0, 40.0})
        expectStepResponse(HighPass::ofCorners(hz), [hz](double t) { return std::exp(-kTwoPi * hz * t); });
}

TEST(CouplingLoss, TwoPolesApartFollowThePartialFractions) {
    const double w1 = kTwoPi * 20.0;
    const double w2 = kTwoPi * 3.0;
    expectStepResponse(HighPass::ofCorners(20.0, 3.0),
                       [=](double t) { return (w1 * std::exp(-w1 * t) - w2 * std::exp(-w2 * t)) / (w1 - w2); });
}

TEST(CouplingLoss, TwoEqualPolesCrossZeroOnce) {
    const double w = kTwoPi * 8.0;
    expectStepResponse(HighPass::ofCorners(8.0, 8.0), [w](double t) { return std::exp(-w * t) * (1.0 - w * t); });
}

TEST(CouplingLoss, AComplexPairRings) {
    // s^2 + a s + b with damping 0.5: e^(-a t/2) (cos d t - a/(2 d) sin d t), d^2 = b - a^2/4.
    const double w = kTwoPi * 10.0;
    const HighPass highPass{w, w * w};
    const double d = std::sqrt(0.75) * w;
    expectStepResponse(
        highPass, [=](double t) { return std::exp(-0.5 * w * t) * (std::cos(d * t) - 0.5 * w / d * std::sin(d * t)); });
}

TEST(CouplingLoss, WithoutAPoleNothingIsLost) {
    expectStepResponse(HighPass{}, [](double) { return 1.0; });
}

TEST(CouplingLoss, AStepBetweenSamplesIsPlacedWhereItWas) {
    for (const double second : {0.0, 5.0}) {
        const HighPass highPass = HighPass::ofCorners(12.0, second);
        CouplingLoss whole(highPass, kRate * 8.0);  // eight times as fine: the step falls on a sample
        for (int n = 0; n < 5; ++n) whole.step(1.0);
        CouplingLoss loss(highPass, kRate);
        loss.stepWasEarlier(1.0, 5.0 / 8.0);
        EXPECT_NEAR(loss.state()[0], whole.state()[0], 1e-12);
        EXPECT_NEAR(loss.state()[1], whole.state()[1], 1e-12);
    }
}

TEST(CouplingLoss, ALevelThatRestsIsLostWholly) {
    for (const double second : {0.0, 8.0}) {
        CouplingLoss loss(HighPass::ofCorners(20.0, second), kRate);
        double lost = 0.0;
        for (int n = 0; n < 48000; ++n) lost = loss.step(0.5);
        EXPECT_NEAR(lost, 0.5, 1e-9);
    }
}

TEST(HighPass, GivesItsCornersBackLargestFirst) {
    EXPECT_TRUE(HighPass{}.cornersHz().empty());
    const auto one = HighPass::ofCorners(8.1).cornersHz();
    ASSERT_EQ(one.size(), 1U);
    EXPECT_NEAR(one[0], 8.1, 1e-9);
    const auto two = HighPass::ofCorners(0.5, 40.0).cornersHz();
    ASSERT_EQ(two.size(), 2U);
    EXPECT_NEAR(two[0], 40.0, 1e-9);
    EXPECT_NEAR(two[1], 0.5, 1e-9);
}

TEST(HighPass, AComplexPairIsNamedTwiceByItsNaturalFrequency) {
    const double w = kTwoPi * 10.0;
    const auto pair = HighPass{w, w * w}.cornersHz();
    ASSERT_EQ(pair.size(), 2U);
    EXPECT_NEAR(pair[0], 10.0, 1e-9);
    EXPECT_NEAR(pair[1], 10.0, 1e-9);
}

}  // namespace
}  // namespace trueunit
