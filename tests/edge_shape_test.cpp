// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/detect/edge_shape.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <numbers>
#include <random>

namespace trueunit {
namespace {

constexpr double kRate = 48000.0;

// Shows the form some hundred edges, each sampled at its own phase.
EdgeShape learned(const std::function<double(double samples)>& form, double noise, double slice = 0.5) {
    EdgeShape shape(kRate, slice);
    std::mt19937_64 random(11);
    std::uniform_real_distribution<double> phase(0.0, 1.0);
    std::normal_distribution<double> normal;
    for (int edge = 0; edge < 400; ++edge) {
        const double first = std::floor(-shape.reach()) + phase(random);
        std::vector<double> scaled;
        for (double t = first; t < shape.reach(); t += 1.0) scaled.push_back(form(t) + noise * normal(random));
        shape.learn(first, scaled, noise);
    }
    return shape;
}

double gaussianStep(double t, double deviation) { return 0.5 * std::erfc(-t / deviation / std::numbers::sqrt2); }

TEST(EdgeShape, BeforeAnyEdgeItIsASmoothStep) {
    const EdgeShape shape(kRate, 0.5);
    EXPECT_NEAR(shape.value(0.0), 0.5, 0.02);
    EXPECT_NEAR(shape.value(-shape.reach()), 0.0, 1e-3);
    EXPECT_NEAR(shape.value(shape.reach()), 1.0, 1e-3);
    EXPECT_NEAR(shape.sliceOffset(), 0.0, 0.05);
    EXPECT_EQ(shape.edges(), 0);
}

TEST(EdgeShape, LearnsAGaussianEdgeItsRiseAndItsSlope) {
    // The 10 to 90 % rise of a Gaussian step is 2.5631 deviations (quantile of the normal distribution at 0.9).
    const double deviation = 8.0;
    const EdgeShape shape = learned([&](double t) { return gaussianStep(t, deviation); }, 0.003);
    EXPECT_EQ(shape.edges(), 400);
    EXPECT_NEAR(shape.riseSamples(), 2.5631 * deviation, 0.5);
    EXPECT_NEAR(shape.sliceOffset(), 0.0, 0.05);
    for (double t = -24.0; t <= 24.0; t += 3.0) EXPECT_NEAR(shape.value(t), gaussianStep(t, deviation), 0.01) << t;
    EXPECT_NEAR(shape.slope(0.0), 1.0 / (deviation * std::sqrt(2.0 * std::numbers::pi)), 0.003);
}

TEST(EdgeShape, TheSliceOffsetIsWhereTheFormCrossesTheSlice) {
    const auto ramp = [](double t) { return std::clamp(0.5 + t / 40.0, 0.0, 1.0); };
    for (const double slice : {0.3, 0.5, 0.8})
        EXPECT_NEAR(learned(ramp, 0.002, slice).sliceOffset(), 40.0 * (slice - 0.5), 0.3) << slice;
}

TEST(EdgeShape, ASliceSetLaterCountsAtOnce) {
    EdgeShape shape = learned([](double t) { return std::clamp(0.5 + t / 40.0, 0.0, 1.0); }, 0.002);
    shape.setSlice(0.25);
    EXPECT_NEAR(shape.sliceOffset(), -10.0, 0.3);
}

TEST(EdgeShape, AnExponentialEdgeKeepsItsCorner) {
    // i = 1 - exp(-t / tau); the rise from 10 to 90 % takes tau ln 9.
    const double tau = 10.0;
    const EdgeShape shape = learned(
        [&](double t) {
            const double late = t + tau * std::numbers::ln2;
            return late > 0.0 ? 1.0 - std::exp(-late / tau) : 0.0;
        },
        0.003);
    EXPECT_NEAR(shape.riseSamples(), tau * std::log(9.0), 1.0);
    EXPECT_NEAR(shape.sliceOffset(), 0.0, 0.15);
    EXPECT_NEAR(shape.value(-tau * std::numbers::ln2 - 3.0), 0.0, 0.01);
}

TEST(EdgeShape, TheZoneHoldsAllOfTheEdgeAndNotMuchMore) {
    const EdgeShape shape = learned([](double t) { return gaussianStep(t, 8.0); }, 0.003);
    for (const double side : {shape.before(), shape.after()}) {
        EXPECT_GT(side, 2.2 * 8.0);
        EXPECT_LT(side, 4.0 * 8.0);
    }
}

}  // namespace
}  // namespace trueunit
