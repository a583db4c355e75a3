// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/displacement_pattern.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <functional>
#include <random>

using namespace trueunit;
using Which = StandingOut::Which;

namespace {

// The ten places of five levels, each met a hundred times, displaced as said, with scatter.
std::vector<InstantStatistics> places(const std::function<double(int k, bool mark)>& displaced, double scatter = 0.3,
                                      std::uint64_t seed = 1) {
    std::mt19937_64 random(seed);
    std::normal_distribution<double> normal(0.0, scatter / 10.0);
    std::vector<InstantStatistics> out;
    for (int k = 1; k <= 6; ++k)
        for (const bool mark : {true, false}) {
            if (!mark && (k == 1 || k == 6)) continue;  // the start is space, the stop is mark
            const double mean = displaced(k, mark) + normal(random);
            out.push_back({k, mark ? Condition::mark : Condition::space, 100, mean, scatter, mean, mean});
        }
    return out;
}

constexpr double kWithin = 0.25;  // percent; five times what the scatter leaves of a mean

}  // namespace

TEST(DisplacementPattern, AccountsForSpeedBiasAndEndWithoutBlamingALever) {
    const auto p = displacementPattern(places([](int k, bool mark) { return 0.8 * k + (mark ? -6.0 : 3.0); }), 5);
    ASSERT_TRUE(p);
    EXPECT_TRUE(p->out.empty());
    EXPECT_NEAR(p->unitPercent, 0.8, kWithin);
    EXPECT_NEAR(p->bias.value, 6.0, kWithin);
    EXPECT_NEAR(p->end.value, 3.0, kWithin);
}

TEST(DisplacementPattern, FindsTheInstantThatMovesEitherWayAndClearsBiasAndSpeedOfIt) {
    for (int level = 1; level <= 5; ++level)
        for (const double late : {5.0, -9.0}) {
            const auto p = displacementPattern(places([&](int k, bool) { return k == level ? late : 0.0; }), 5);
            ASSERT_TRUE(p && p->out.size() == 1) << level;
            EXPECT_EQ(p->out[0].k, level);
            EXPECT_EQ(p->out[0].which, Which::both);
            EXPECT_NEAR(p->out[0].percent.value, late, kWithin);
            EXPECT_NEAR(p->bias.value, 0.0, kWithin);
            EXPECT_NEAR(p->end.value, 0.0, kWithin);
            EXPECT_NEAR(p->unitPercent, 0.0, kWithin);
        }
}

TEST(DisplacementPattern, TellsTheMarksOfALevelFromItsInstant) {
    for (int level = 2; level <= 4; ++level) {
        const auto moved = [&](int k, bool mark) {
            return mark ? (k == level ? 7.0 : 0.0) : (k == level + 1 ? 7.0 : 0.0);
        };
        const auto p = displacementPattern(places(moved), 5);
        ASSERT_TRUE(p && p->out.size() == 1) << level;
        EXPECT_EQ(p->out[0].which, Which::marks);
        EXPECT_EQ(p->out[0].k, level);
    }
}

TEST(DisplacementPattern, FindsALeverBesideABias) {
    const auto p =
        displacementPattern(places([](int k, bool mark) { return (mark ? 8.0 : 0.0) + (k == 4 ? -6.0 : 0.0); }), 5);
    ASSERT_TRUE(p && p->out.size() == 1);
    EXPECT_EQ(p->out[0].k, 4);
    EXPECT_NEAR(p->bias.value, -8.0, kWithin);
}

// Neither lever need be the best account when taken alone: equal ones lean on speed, bias and end between them.
TEST(DisplacementPattern, FindsAnyTwoLevelsThatMoveAndClearsSpeedBiasAndEndOfThem) {
    struct Sizes {
        double first, second, bias;
    };
    for (const Sizes& by : {Sizes{6, 6, 0},
                            {-6, -6, 0},
                            {3, 3, 0},
                            {8, 5, 0},
                            {5, 8, 0},
                            {10, 10, 0},
                            {6, -6, 0},
                            {6, 6, 8},
                            {6, 6, -4},
                            {-9, -4, 6}})
        for (int one = 1; one < 5; ++one)
            for (int other = one + 1; other <= 5; ++other) {
                SCOPED_TRACE(testing::Message() << one << " by " << by.first << ", " << other << " by " << by.second
                                                << ", bias " << by.bias);
                const auto moved = [&](int k, bool mark) {
                    return (k == one ? by.first : k == other ? by.second : 0.0) - (mark ? by.bias : 0.0);
                };
                const auto p = displacementPattern(places(moved), 5);
                ASSERT_TRUE(p && p->out.size() == 2);
                for (const StandingOut& o : p->out) {
                    EXPECT_EQ(o.which, Which::both);
                    EXPECT_TRUE(o.k == one || o.k == other) << o.k;
                    EXPECT_NEAR(o.percent.value, o.k == one ? by.first : by.second, kWithin);
                }
                EXPECT_NE(p->out[0].k, p->out[1].k);
                EXPECT_NEAR(p->bias.value, by.bias, kWithin);
                EXPECT_NEAR(p->end.value, 0.0, kWithin);
                EXPECT_NEAR(p->unitPercent, 0.0, 0.1);
            }
}

TEST(DisplacementPattern, BlamesNoPairOfLeversForPlacesThatAreAllALittleUneven) {
    std::mt19937_64 random(1);
    std::normal_distribution<double> uneven(0.0, 0.3);
    for (std::uint64_t seed = 1; seed <= 300; ++seed) {
        std::array<double, 7> of{};
        for (double& each : of) each = uneven(random);
        const auto p = displacementPattern(
            places([&](int k, bool) { return of[static_cast<std::size_t>(k)] + (k == 3 ? 8.0 : 0.0); }, 0.3, seed), 5);
        ASSERT_TRUE(p && !p->out.empty()) << "seed " << seed;
        EXPECT_EQ(p->out[0].k, 3) << "seed " << seed;
        for (std::size_t more = 1; more < p->out.size(); ++more)
            EXPECT_LT(std::abs(p->out[more].percent.value), 2.0) << "seed " << seed;
    }
}

TEST(DisplacementPattern, BlamesNoLeverForWhatScatterMakes) {
    for (std::uint64_t seed = 1; seed <= 300; ++seed) {
        const auto p = displacementPattern(places([](int, bool) { return 0.0; }, 7.0, seed), 5);
        ASSERT_TRUE(p);
        EXPECT_TRUE(p->out.empty()) << "seed " << seed;
    }
}

TEST(DisplacementPattern, SaysNothingOfTooFewInstants) {
    auto few = places([](int, bool) { return 5.0; });
    for (InstantStatistics& i : few) i.count = 3;
    EXPECT_FALSE(displacementPattern(few, 5));
    few = places([](int, bool) { return 5.0; });
    few.resize(4);
    EXPECT_FALSE(displacementPattern(few, 5));
}
