// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/detect/edge_timer.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "tests/support/plain_sender.h"
#include "tests/support/texts.h"

namespace trueunit {
namespace {

struct Timing {
    double mean = 0.0;  // seconds, measured less true
    double deviation = 0.0;
    std::size_t count = 0;
};

// Times every instant of a signal that needs no restoring, told of it a few samples off. `from` lets the form be
// learned first.
Timing timingOf(test::PlainSender& sender, std::size_t characters, bool toMark, double slice = 0.5) {
    std::vector<float> line = sender.send(test::mixedText(characters, 4));
    for (float& v : line) v = static_cast<float>((static_cast<double>(v) - sender.offset) / sender.swing + 0.5);
    EdgeTimer timer(sender.rateHz, slice);
    std::vector<Edge> edges;
    std::size_t next = 0;
    constexpr std::size_t kStep = 256;
    const auto at = [&](std::size_t i) { return sender.instants[i].seconds * sender.rateHz; };
    for (std::size_t i = 0; i < line.size(); i += kStep) {
        timer.push(std::span(line).subspan(i, std::min(kStep, line.size() - i)));
        for (; next < sender.instants.size() && at(next) + 300.0 < static_cast<double>(timer.end()); ++next) {
            HeldTransition held;
            held.first = {at(next) + 3.0 * std::sin(static_cast<double>(next)), sender.instants[next].toMark};
            held.clearBefore = next > 0 ? at(next) - at(next - 1) : 1e6;
            held.clearAfter = next + 1 < sender.instants.size() ? at(next + 1) - at(next) : 1e6;
            timer.time(held);
        }
        timer.advance(edges);
    }
    timer.finish(edges);
    EXPECT_EQ(edges.size(), sender.instants.size());
    Timing t;
    double squares = 0.0;
    for (std::size_t i = edges.size() / 3; i < edges.size(); ++i) {
        if (sender.instants[i].toMark != toMark) continue;
        const double error = edges[i].time / sender.rateHz - sender.instants[i].seconds;
        t.mean += error;
        squares += error * error;
        ++t.count;
    }
    t.mean /= static_cast<double>(t.count);
    t.deviation = std::sqrt(squares / static_cast<double>(t.count) - t.mean * t.mean);
    return t;
}

TEST(EdgeTimer, TimesAGaussianEdgeNearlyAsWellAsAnyoneCan) {
    // Smallest possible standard deviation (s/A) sqrt(2 sqrt(pi) tau / f): S. M. Kay, Estimation Theory, 1993, ch. 3,
    // from memory; tau is the deviation of the smoothing. The levels beside the edge are estimated too, which costs
    // some more.
    for (const double snrDb : {25.0, 35.0, 45.0}) {
        test::PlainSender sender;
        sender.snrDb = snrDb;
        sender.rise = 400e-6;
        const Timing t = timingOf(sender, 150, true);
        const double noise = 0.5 * std::pow(10.0, -snrDb / 20.0);  // of the swing
        const double tau = sender.rise / 2.5631;
        const double bound = noise * std::sqrt(2.0 * std::sqrt(std::numbers::pi) * tau / sender.rateHz);
        EXPECT_GT(t.deviation, 0.8 * bound) << snrDb << " dB: better than possible, so something is wrong";
        EXPECT_LT(t.deviation, 1.35 * bound) << snrDb << " dB";
        EXPECT_NEAR(t.mean, 0.0, 4.0 * t.deviation / std::sqrt(static_cast<double>(t.count)) + 1e-6) << snrDb << " dB";
    }
}

TEST(EdgeTimer, EveryShapeIsTimedWhereItCrossesTheMiddle) {
    using Edge = test::PlainSender::Edge;
    for (const Edge edge : {Edge::linear, Edge::gaussian, Edge::exponential})
        for (const double rise : {150e-6, 500e-6, 1500e-6})
            for (const bool toMark : {true, false}) {
                test::PlainSender sender;
                sender.snrDb = 50.0;
                sender.edge = edge;
                sender.rise = rise;
                const Timing t = timingOf(sender, 80, toMark);
                EXPECT_NEAR(t.mean, 0.0, 11e-6)
                    << "edge " << static_cast<int>(edge) << ", rise " << rise;  // 0.05 % of 22 ms
            }
}

TEST(EdgeTimer, TheSliceMovesTheInstantAlongTheEdge) {
    // A straight edge of 1 ms from 10 to 90 % takes 1.25 ms in all: 20 % of the swing are 250 us.
    test::PlainSender sender;
    sender.snrDb = 50.0;
    sender.edge = test::PlainSender::Edge::linear;
    sender.rise = 1e-3;
    EXPECT_NEAR(timingOf(sender, 80, true, 0.7).mean, 250e-6, 8e-6);
    EXPECT_NEAR(timingOf(sender, 80, false, 0.7).mean, -250e-6, 8e-6);
    EXPECT_NEAR(timingOf(sender, 80, true, 0.3).mean, -250e-6, 8e-6);
}

TEST(EdgeTimer, HumOfATenthOfTheSwingDoesNotMoveTheMean) {
    test::PlainSender sender;
    sender.snrDb = 45.0;
    sender.humPercent = 10.0;
    for (const bool toMark : {true, false}) {
        const Timing t = timingOf(sender, 120, toMark);
        EXPECT_NEAR(t.mean, 0.0, 3e-6);
        EXPECT_LT(t.deviation, 8e-6);  // 10 us would be a fixed threshold's, on the slope of this edge
    }
}

TEST(EdgeTimer, WaitsForTheLineAroundAnEdgeAndSaysSo) {
    EdgeTimer timer(48000.0, 0.5);
    std::vector<float> line(2000, 0.0F);
    std::fill(line.begin() + 1000, line.end(), 1.0F);
    timer.push(std::span(line).first(1100));
    HeldTransition held;
    held.first = {1000.0, true};
    held.clearBefore = held.clearAfter = 900.0;
    timer.time(held);
    std::vector<Edge> edges;
    timer.advance(edges);
    EXPECT_TRUE(edges.empty());
    EXPECT_TRUE(timer.waits());
    EXPECT_DOUBLE_EQ(timer.waitsSince(), 1000.0);
    timer.push(std::span(line).subspan(1100));
    timer.advance(edges);
    ASSERT_EQ(edges.size(), 1U);
    EXPECT_FALSE(timer.waits());
    EXPECT_NEAR(edges[0].time, 999.5, 0.3);  // between the last low and the first high sample
}

TEST(EdgeTimer, ASpikeIsPassedOnAsOne) {
    EdgeTimer timer(48000.0, 0.5);
    timer.push(std::vector<float>(4000, 0.0F));
    HeldTransition held;
    held.first = {1000.0, true};
    held.glitch = true;
    timer.time(held);
    std::vector<Edge> edges;
    timer.advance(edges);
    ASSERT_EQ(edges.size(), 1U);
    EXPECT_TRUE(edges[0].glitch);
}

TEST(EdgeTimer, AnExcerptIsTheLineThinnedToWhatWasAskedFor) {
    EdgeTimer timer(48000.0, 0.5, 100);
    std::vector<float> line(3000);
    for (std::size_t i = 0; i < line.size(); ++i) line[i] = static_cast<float>(i);
    timer.push(line);
    const EdgeTimer::Excerpt whole = timer.excerpt(200.0, 210.0, 480);
    EXPECT_DOUBLE_EQ(whole.firstAt, 200.0);
    EXPECT_DOUBLE_EQ(whole.spacing, 1.0);
    ASSERT_EQ(whole.line.size(), 11U);
    EXPECT_EQ(whole.line.front(), 100.0F);
    const EdgeTimer::Excerpt thin = timer.excerpt(200.0, 2200.0, 100);
    EXPECT_DOUBLE_EQ(thin.spacing, 20.0);
    EXPECT_EQ(thin.line[1], 120.0F);
    EXPECT_TRUE(timer.excerpt(5000.0, 6000.0, 10).line.empty());
}

TEST(EdgeTimer, TheNoiseItTellsIsTheNoiseThereIs) {
    for (const double snrDb : {25.0, 40.0}) {
        test::PlainSender sender;
        sender.snrDb = snrDb;
        std::vector<float> line = sender.send(test::mixedText(60, 4));
        for (float& v : line) v = static_cast<float>(static_cast<double>(v) / sender.swing + 0.5);
        EdgeTimer timer(sender.rateHz, 0.5);
        std::vector<Edge> edges;
        std::size_t pushed = 0;
        for (std::size_t i = 0; i < sender.instants.size(); ++i) {
            const double at = sender.instants[i].seconds * sender.rateHz;
            const auto upTo = std::min(line.size(), static_cast<std::size_t>(at + 1000.0));
            timer.push(std::span(line).subspan(pushed, upTo - pushed));
            pushed = upTo;
            HeldTransition held;
            held.first = {at, sender.instants[i].toMark};
            held.clearBefore = held.clearAfter = 1056.0;
            timer.time(held);
            timer.advance(edges);
        }
        EXPECT_NEAR(20.0 * std::log10(0.5 / timer.noiseRms()), snrDb, 1.0);
    }
}

// What an overdriven input leaves may be told to change although it rests at one rail. Only a sanitizer build sees the
// fault that this was.
TEST(EdgeTimer, WithoutAStepEdgesStayWhereTheyWereSeen) {
    constexpr double kSampleRate = 48000.0;
    constexpr double kApart = 0.03 * kSampleRate;
    EdgeTimer timer(kSampleRate, 0.5);
    timer.push(std::vector<float>(static_cast<std::size_t>(kSampleRate), 1.0F));
    for (int i = 1; i <= 12; ++i)
        timer.time({.first = {i * kApart, i % 2 == 0}, .clearBefore = kApart, .clearAfter = kApart});
    std::vector<Edge> edges;
    timer.advance(edges);
    timer.finish(edges);
    ASSERT_EQ(edges.size(), 12U);
    for (std::size_t i = 4; i < edges.size(); ++i)  // the first ones were still taken for steps
        EXPECT_NEAR(edges[i].time, static_cast<double>(i + 1) * kApart, 0.001 * kSampleRate);
}

}  // namespace
}  // namespace trueunit
