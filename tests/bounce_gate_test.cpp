// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/detect/bounce_gate.h"

#include <gtest/gtest.h>

namespace trueunit {
namespace {

std::vector<HeldTransition> gated(const std::vector<Transition>& raw, double hold = 150.0) {
    BounceGate gate(hold);
    for (const Transition& t : raw) gate.push(t);
    std::vector<HeldTransition> out;
    gate.advance(1e9, out);
    return out;
}

TEST(BounceGate, CleanTransitionsPassWithTheWayToTheirNeighbours) {
    const auto held = gated({{1000.0, true}, {2056.5, false}, {3000.0, true}});
    ASSERT_EQ(held.size(), 3U);
    EXPECT_DOUBLE_EQ(held[1].first.time, 2056.5);
    EXPECT_FALSE(held[1].first.up);
    EXPECT_EQ(held[1].bounces, 0);
    EXPECT_FALSE(held[1].glitch);
    EXPECT_DOUBLE_EQ(held[1].settleSamples, 0.0);
    EXPECT_DOUBLE_EQ(held[1].clearBefore, 1056.5);
    EXPECT_DOUBLE_EQ(held[1].clearAfter, 943.5);
}

TEST(BounceGate, BounceIsTimedFromTheFirstClosureToSteady) {
    // EIA-448-1, Method 15: bounce counts from first closure to the steady state.
    const auto held =
        gated({{1000.0, true}, {1020.0, false}, {1030.0, true}, {1080.0, false}, {1096.0, true}, {2500.0, false}});
    ASSERT_EQ(held.size(), 2U);
    EXPECT_DOUBLE_EQ(held[0].first.time, 1000.0);
    EXPECT_TRUE(held[0].first.up);
    EXPECT_EQ(held[0].bounces, 2);
    EXPECT_DOUBLE_EQ(held[0].settleSamples, 96.0);
    EXPECT_FALSE(held[0].glitch);
    EXPECT_DOUBLE_EQ(held[1].clearBefore, 2500.0 - 1096.0);
    EXPECT_EQ(held[1].bounces, 0);
}

TEST(BounceGate, ASpikeThatGoesBackIsNoInstant) {
    const auto held = gated({{1000.0, true}, {1010.0, false}, {3000.0, true}});
    ASSERT_EQ(held.size(), 2U);
    EXPECT_TRUE(held[0].glitch);
    EXPECT_FALSE(held[1].glitch);
    EXPECT_DOUBLE_EQ(held[1].first.time, 3000.0);
}

TEST(BounceGate, TheHoldTimeDecidesBetweenBounceAndElement) {
    const std::vector<Transition> raw = {{1000.0, true}, {1200.0, false}, {1400.0, true}};
    EXPECT_EQ(gated(raw, 150.0).size(), 3U);
    const auto held = gated(raw, 450.0);
    ASSERT_EQ(held.size(), 1U);
    EXPECT_EQ(held[0].bounces, 1);
}

TEST(BounceGate, NothingIsLetGoBeforeItsHoldTimeIsOver) {
    BounceGate gate(150.0);
    gate.push({1000.0, true});
    std::vector<HeldTransition> out;
    gate.advance(1150.0, out);
    EXPECT_TRUE(out.empty());
    gate.advance(1150.5, out);
    ASSERT_EQ(out.size(), 1U);
    EXPECT_GE(out[0].clearAfter, 150.0);
}

TEST(BounceGate, TheResultDoesNotDependOnHowOftenItIsAdvanced) {
    const std::vector<Transition> raw = {{100.0, true},  {110.0, false},  {118.0, true},  {1200.0, false},
                                         {1205.0, true}, {2300.0, false}, {3400.0, true}, {3460.0, false},
                                         {3500.0, true}, {4600.0, false}};
    BounceGate gate(150.0);
    std::vector<HeldTransition> out;
    std::size_t next = 0;
    for (double now = 0.0; now < 6000.0; now += 1.0) {
        while (next < raw.size() && raw[next].time <= now) gate.push(raw[next++]);
        gate.advance(now, out);
    }
    const auto whole = gated(raw);
    ASSERT_EQ(out.size(), whole.size());
    for (std::size_t i = 0; i < out.size(); ++i) {
        EXPECT_EQ(out[i].first.time, whole[i].first.time);
        EXPECT_EQ(out[i].bounces, whole[i].bounces);
        EXPECT_EQ(out[i].glitch, whole[i].glitch);
        EXPECT_EQ(out[i].clearBefore, whole[i].clearBefore);
    }
}

TEST(BounceGate, WhatIsAroundATransitionDoesNotDependOnHowTheInputIsCut) {
    for (const double late : {901.0, 1200.0, 5000.0}) {
        BounceGate gate(150.0, 900.0);
        gate.push({1000.0, true});
        std::vector<HeldTransition> out;
        gate.advance(1900.0, out);
        EXPECT_TRUE(out.empty());
        gate.advance(1000.0 + late, out);
        ASSERT_EQ(out.size(), 1U);
        EXPECT_DOUBLE_EQ(out[0].clearAfter, 900.0) << late;
    }
}

}  // namespace
}  // namespace trueunit
