// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/simulate/seeded_random.h"

#include <gtest/gtest.h>

#include <cmath>

namespace trueunit {
namespace {

// ISO C++, [rand.predef]: the 10,000th value of the engine we build on, with its default seed.
TEST(SeededRandomTest, TheEngineIsTheOneOfTheStandard) {
    std::mt19937_64 engine;
    engine.discard(9999);
    EXPECT_EQ(engine(), 9981545732273789042ULL);
}

TEST(SeededRandomTest, TheSameSeedAndStreamGiveTheSameValues) {
    SeededRandom a(5, 1);
    SeededRandom b(5, 1);
    for (int i = 0; i < 1000; ++i) {
        EXPECT_EQ(a.gaussian(), b.gaussian());
        EXPECT_EQ(a.uniform(), b.uniform());
    }
}

TEST(SeededRandomTest, StreamsAndSeedsAreIndependent) {
    SeededRandom a(5, 1);
    SeededRandom otherStream(5, 2);
    SeededRandom otherSeed(6, 1);
    constexpr int kCount = 20000;
    double withStream = 0.0;
    double withSeed = 0.0;
    for (int i = 0; i < kCount; ++i) {
        const double x = a.gaussian();
        withStream += x * otherStream.gaussian();
        withSeed += x * otherSeed.gaussian();
    }
    const double fourSigma = 4.0 / std::sqrt(kCount);  // of a correlation of independent values
    EXPECT_NEAR(withStream / kCount, 0.0, fourSigma);
    EXPECT_NEAR(withSeed / kCount, 0.0, fourSigma);
}

// Shares beyond 1, 2 and 3 standard deviations: tables of the normal distribution, 31.73, 4.55 and 0.27 %.
TEST(SeededRandomTest, GaussianValuesFollowTheTables) {
    SeededRandom random(1, 1);
    constexpr int kCount = 400000;
    double sum = 0.0;
    double squares = 0.0;
    int beyond[4] = {};
    for (int i = 0; i < kCount; ++i) {
        const double x = random.gaussian();
        sum += x;
        squares += x * x;
        for (int s = 1; s <= 3; ++s) beyond[s] += std::abs(x) > s ? 1 : 0;
    }
    EXPECT_NEAR(sum / kCount, 0.0, 4.0 / std::sqrt(kCount));
    EXPECT_NEAR(squares / kCount, 1.0, 4.0 * std::sqrt(2.0 / kCount));
    EXPECT_NEAR(100.0 * beyond[1] / kCount, 31.73, 0.30);
    EXPECT_NEAR(100.0 * beyond[2] / kCount, 4.55, 0.14);
    EXPECT_NEAR(100.0 * beyond[3] / kCount, 0.27, 0.04);
}

TEST(SeededRandomTest, AChanceComesUpAsOftenAsItSays) {
    SeededRandom random(1, 1);
    int hits = 0;
    for (int i = 0; i < 100000; ++i) hits += random.chance(0.3) ? 1 : 0;
    EXPECT_NEAR(hits / 100000.0, 0.3, 0.006);
    EXPECT_FALSE(random.chance(0.0));
    EXPECT_TRUE(random.chance(1.0));
}

}  // namespace
}  // namespace trueunit
