// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/condition/high_pass_search.h"

#include <gtest/gtest.h>

#include <cmath>

namespace trueunit {
namespace {

// Steps of a line through a high-pass, by the exact model the loss is tested against; no noise.
Stretch stretchThrough(const HighPass& highPass, double swing, double offset) {
    Stretch s;
    s.rateHz = 3000.0;
    CouplingLoss loss(highPass, s.rateHz);
    double level = 0.5;
    std::size_t next = 40;
    unsigned state = 12345;
    for (std::size_t i = 0; i < 12000; ++i) {
        if (i == next) {
            level = -level;
            s.transitions.push_back({static_cast<double>(i), level > 0.0});
            state = state * 1103515245U + 12345U;
            next += 66U * (1U + (state >> 16U) % 4U);  // elements of one to four units of 22 ms
        }
        s.heard.push_back(swing * (level - loss.step(level)) + offset);
    }
    s.clipped.assign(s.heard.size(), 0);
    s.blind.assign(s.heard.size(), 0);
    return s;
}

TEST(LineTrial, WithTheTrueHighPassNothingIsLeftAndTheLevelsAreExact) {
    for (const HighPass& h : {HighPass{}, HighPass::ofCorners(8.0), HighPass::ofCorners(20.0, 3.0)}) {
        const Trial t = tryHighPass(stretchThrough(h, 0.4, 0.03), h);
        EXPECT_NEAR(t.fit.swing, 0.4, 1e-4);
        // Without a pole an offset and a loss that never fades are the same; only their sum is told.
        const double lasting = h.a > 0.0 ? 0.0 : t.fit.swing * (t.fit.lossAtStart[0] + t.fit.lossAtStart[1]);
        EXPECT_NEAR(t.fit.offset - lasting, 0.03, 1e-4);
        EXPECT_LT(t.fit.residual, 1e-3);
        EXPECT_TRUE(t.fit.startsHigh);
    }
}

TEST(LineTrial, WithAWrongHighPassMuchIsLeft) {
    const Trial t = tryHighPass(stretchThrough(HighPass::ofCorners(20.0), 0.4, 0.0), HighPass::ofCorners(5.0));
    EXPECT_GT(t.fit.residual, 0.05);
}

TEST(LineTrial, BlindSamplesDoNotEnter) {
    const HighPass h = HighPass::ofCorners(8.0);
    Stretch s = stretchThrough(h, 0.4, 0.0);
    for (std::size_t i = 500; i < 700; ++i) {
        s.heard[i] = 9.0;
        s.blind[i] = 1;
    }
    EXPECT_NEAR(tryHighPass(s, h).fit.swing, 0.4, 1e-4);
}

TEST(HighPassSearch, OnePoleIsFoundFromATenthOfAHertzToFifty) {
    for (const double hz : {0.3, 1.0, 5.0, 16.0, 40.0, 50.0}) {
        const Trial t = bestOnePole(stretchThrough(HighPass::ofCorners(hz), 0.4, 0.01));
        const auto corners = t.fit.coupling.cornersHz();
        ASSERT_EQ(corners.size(), 1U) << hz;
        EXPECT_NEAR(corners[0], hz, 0.01 * hz) << hz;
        EXPECT_NEAR(t.fit.swing, 0.4, 0.002) << hz;
    }
}

TEST(HighPassSearch, TwoPolesAreFoundApartAlikeAndAsAPair) {
    const auto found = [](const HighPass& h) { return bestTwoPoles(stretchThrough(h, 0.4, 0.0), 8).fit; };
    for (const auto& [first, second] : {std::pair{8.0, 8.0}, std::pair{20.0, 4.0}, std::pair{40.0, 40.0},
                                        std::pair{30.0, 10.0}, std::pair{16.0, 16.0}, std::pair{2.0, 1.0}}) {
        const HighPass h = HighPass::ofCorners(first, second);
        const LineFit fit = found(h);
        EXPECT_NEAR(fit.coupling.a, h.a, 0.01 * h.a) << first << " and " << second;
        EXPECT_NEAR(fit.coupling.b, h.b, 0.03 * h.b) << first << " and " << second;
        EXPECT_NEAR(fit.swing, 0.4, 0.005) << first << " and " << second;
    }
}

TEST(HighPassSearch, WhatIsNoLineEndsWithALargeRest) {
    Stretch s = stretchThrough(HighPass{}, 0.4, 0.0);
    for (std::size_t i = 0; i < s.heard.size(); ++i) s.heard[i] = std::sin(0.05 * static_cast<double>(i));
    for (const Trial& t : {bestOnePole(s), bestTwoPoles(s, 2)})
        EXPECT_TRUE(!(t.fit.swing > 0.0) || t.fit.residual > 0.2);
}

}  // namespace
}  // namespace trueunit
