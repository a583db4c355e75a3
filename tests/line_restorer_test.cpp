// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/condition/line_restorer.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/support/plain_sender.h"

namespace trueunit {
namespace {

const std::vector<unsigned> kCodes = {0x0A, 0x15, 0x1F, 0x00, 0x04, 0x0E, 0x01, 0x10, 0x0A, 0x15};

struct Restored {
    std::vector<float> line;
    std::vector<Transition> transitions;
};

// The wiring as it is: what remains is the restorer's own doing.
LineFit knownFit(const test::PlainSender& sender) {
    LineFit fit;
    fit.swing = sender.swing;
    fit.offset = sender.offset;
    fit.startsHigh = !sender.inverted;
    const double rest = sender.inverted ? -0.5 : 0.5;
    if (sender.polesHz.size() == 1) {
        fit.coupling = HighPass::ofCorners(sender.polesHz[0]);
        fit.lossAtStart = {rest, 0.0};
    } else if (sender.polesHz.size() == 2) {
        fit.coupling = HighPass::ofCorners(sender.polesHz[0], sender.polesHz[1]);
        fit.lossAtStart = {0.0, rest};
    }
    return fit;
}

Restored restore(const test::PlainSender& sender, const std::vector<float>& heard, std::size_t step) {
    LineRestorer restorer(knownFit(sender), sender.rateHz);
    Restored r;
    for (std::size_t i = 0; i < heard.size(); i += step)
        restorer.push(std::span(heard).subspan(i, std::min(step, heard.size() - i)), r.line, r.transitions);
    restorer.finish(r.line);
    return r;
}

class LineRestorerCoupling : public ::testing::TestWithParam<std::vector<double>> {};

TEST_P(LineRestorerCoupling, GivesEveryElementItsLevelBackWhateverTheTextSentBefore) {
    test::PlainSender sender;
    sender.polesHz = GetParam();
    sender.snrDb = 55.0;
    const std::vector<float> heard = sender.send(kCodes);
    const Restored r = restore(sender, heard, 256);
    ASSERT_EQ(r.line.size(), heard.size());
    ASSERT_EQ(r.transitions.size(), sender.instants.size());
    std::size_t next = 0;
    double level = 1.0;
    double lastEdge = 0.0;
    double worst = 0.0;
    for (std::size_t n = 0; n < heard.size(); ++n) {
        const double t = static_cast<double>(n) / sender.rateHz;
        while (next < sender.instants.size() && sender.instants[next].seconds <= t) {
            level = sender.instants[next].toMark ? 1.0 : 0.0;
            lastEdge = sender.instants[next++].seconds;
        }
        const bool clear =
            t - lastEdge > 0.002 && (next == sender.instants.size() || sender.instants[next].seconds - t > 0.002);
        if (clear) worst = std::max(worst, std::abs(static_cast<double>(r.line[n]) - level));
    }
    EXPECT_LT(worst, 0.025);  // noise of 0.0009 of the swing, five deviations, and the levels' own following
}

TEST_P(LineRestorerCoupling, SeesEachTransitionWithinATenthOfAMillisecond) {
    test::PlainSender sender;
    sender.polesHz = GetParam();
    sender.snrDb = 45.0;
    sender.inverted = true;
    const std::vector<float> heard = sender.send(kCodes);
    const Restored r = restore(sender, heard, 1000);
    ASSERT_EQ(r.transitions.size(), sender.instants.size());
    for (std::size_t i = 0; i < r.transitions.size(); ++i) {
        EXPECT_NEAR(r.transitions[i].time / sender.rateHz, sender.instants[i].seconds, 1e-4);
        EXPECT_EQ(r.transitions[i].up, !sender.instants[i].toMark);
    }
}

INSTANTIATE_TEST_SUITE_P(Poles, LineRestorerCoupling,
                         ::testing::Values(std::vector<double>{}, std::vector<double>{0.5}, std::vector<double>{8.0},
                                           std::vector<double>{40.0}, std::vector<double>{8.0, 20.0}));

TEST(LineRestorer, TheLineIsBitForBitTheSameHoweverTheSamplesCome) {
    test::PlainSender sender;
    sender.polesHz = {20.0};
    sender.snrDb = 30.0;
    const std::vector<float> heard = sender.send({0x0A, 0x15, 0x0A});
    const Restored whole = restore(sender, heard, heard.size());
    for (const std::size_t step : {std::size_t{1}, std::size_t{7}, std::size_t{256}}) {
        const Restored chopped = restore(sender, heard, step);
        EXPECT_EQ(whole.line, chopped.line);
        ASSERT_EQ(whole.transitions.size(), chopped.transitions.size());
        for (std::size_t i = 0; i < whole.transitions.size(); ++i)
            EXPECT_EQ(whole.transitions[i].time, chopped.transitions[i].time);
    }
}

TEST(LineRestorer, ATransitionIsToldBeforeTheSamplesAroundItAreLetGo) {
    test::PlainSender sender;
    const std::vector<float> heard = sender.send({0x0A, 0x15});
    LineRestorer restorer(knownFit(sender), sender.rateHz);
    std::vector<float> line;
    std::vector<Transition> transitions;
    std::size_t told = 0;
    for (const float v : heard) {
        restorer.push({&v, 1}, line, transitions);
        for (; told < transitions.size(); ++told) EXPECT_GT(transitions[told].time, static_cast<double>(line.size()));
    }
    EXPECT_EQ(told, sender.instants.size());
}

TEST(LineRestorer, FollowsALevelThatIsNotWhatItWasTold) {
    test::PlainSender sender;
    sender.offset = 0.1;
    std::vector<unsigned> codes;
    for (int i = 0; i < 12; ++i) codes.insert(codes.end(), {0x0A, 0x15});
    const std::vector<float> heard = sender.send(codes);
    LineFit fit = knownFit(sender);
    fit.offset = 0.08;
    fit.swing = 0.9 * sender.swing;
    LineRestorer restorer(fit, sender.rateHz);
    Restored r;
    restorer.push(heard, r.line, r.transitions);
    EXPECT_NEAR(restorer.offset(), sender.offset, 0.005);
    EXPECT_NEAR(restorer.swing(), sender.swing, 0.02);
}

TEST(LineRestorer, WhatTheLineWasFromTheStartIsNoTransition) {
    const test::PlainSender sender;
    std::vector<float> heard(2000, static_cast<float>(sender.offset - 0.5 * sender.swing));  // space
    test::PlainSender then = sender;
    const std::vector<float> sent = then.send({0x0A, 0x15});
    heard.insert(heard.end(), sent.begin(), sent.end());
    const Restored r = restore(then, heard, 256);  // told that it starts at mark
    ASSERT_EQ(r.transitions.size(), then.instants.size() + 1);
    EXPECT_TRUE(r.transitions.front().up);
    EXPECT_NEAR(r.transitions.front().time, 2000.0, 5.0);
    EXPECT_NEAR(r.line[1000], 0.0F, 0.02F);
}

TEST(LineRestorer, SamplesThatAreNoNumbersDoNoHarm) {
    test::PlainSender sender;
    std::vector<float> heard = sender.send(kCodes);
    heard[5000] = std::nanf("");
    heard[5001] = INFINITY;
    const Restored r = restore(sender, heard, 256);
    for (const float v : r.line) ASSERT_TRUE(std::isfinite(v));
    EXPECT_GE(r.transitions.size(), sender.instants.size());
}

}  // namespace
}  // namespace trueunit
