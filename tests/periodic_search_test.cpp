// SPDX-License-Identifier: GPL-3.0-or-later
// tests/crosscheck holds frequency and amplitude against a general-purpose library as well.
#include "core/measure/periodic_search.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <random>

using namespace trueunit;

namespace {

// Displacements at uneven times, as the instants of a text come; with a line in them and noise of one percent.
std::vector<Displaced> unevenly(double amplitude, double hz, bool withStart, unsigned seed) {
    std::mt19937_64 random(seed);
    std::normal_distribution<double> normal;
    std::vector<Displaced> out;
    const auto sine = [&](double t) { return amplitude * std::sin(2.0 * std::numbers::pi * hz * t + 0.4); };
    for (std::size_t c = 0; c < 200; ++c) {
        const double start = 0.163 * static_cast<double>(c);
        for (int k = 1; k <= 6; ++k) {
            if (random() % 2 == 0) continue;
            Displaced d;
            d.startSeconds = start;
            d.seconds = start + 0.022 * k;
            d.k = k;
            d.toMark = k % 2 == 0;
            d.character = c;
            d.left = sine(d.seconds) - (withStart ? sine(start) : 0.0) + normal(random);
            out.push_back(d);
        }
    }
    return out;
}

}  // namespace

TEST(PeriodicSearch, FindsALineInNoiseOfItsOwnSize) {
    for (const double hz : {0.7, 2.3, 6.13, 12.25}) {
        const auto displaced = unevenly(1.0, hz, false, 3);
        const auto line = strongestLine(displaced, 0.1, 20.0);
        ASSERT_TRUE(line) << hz;
        EXPECT_NEAR(line->hz, hz, 0.005);
        EXPECT_NEAR(line->amplitude, 1.0, 0.2) << hz;
        EXPECT_LT(line->falseAlarm, 1e-6) << hz;
        EXPECT_EQ(line->part.size(), displaced.size());
    }
}

TEST(PeriodicSearch, ALineThatMovesTheStartTooKeepsItsAmplitude) {
    const auto line = strongestLine(unevenly(2.0, 1.9, true, 5), 0.1, 20.0);
    ASSERT_TRUE(line);
    EXPECT_NEAR(line->hz, 1.9, 0.005);
    EXPECT_NEAR(line->amplitude, 2.0, 0.3);
}

TEST(PeriodicSearch, ChanceIsCalledChance) {
    int rare = 0;
    for (unsigned seed = 1; seed <= 40; ++seed)
        if (const auto line = strongestLine(unevenly(0.0, 1.0, false, seed), 0.1, 20.0);
            line && line->falseAlarm < 0.05)
            ++rare;
    EXPECT_LE(rare, 6);  // two are expected; more than six come once in two hundred times
}

TEST(PeriodicSearch, ThePartTakenAwayIsTheLine) {
    auto displaced = unevenly(3.0, 2.3, false, 9);
    double after = 0.0;
    const auto line = strongestLine(displaced, 0.1, 20.0);
    ASSERT_TRUE(line);
    for (std::size_t i = 0; i < displaced.size(); ++i) {
        const double left = displaced[i].left - line->part[i];
        after += left * left;
    }
    EXPECT_NEAR(after / static_cast<double>(displaced.size()), 1.0, 0.2) << "the noise alone";
}

TEST(PeriodicSearch, TooFewDisplacementsCarryNoLine) {
    auto displaced = unevenly(3.0, 2.3, false, 9);
    displaced.resize(20);
    EXPECT_FALSE(strongestLine(displaced, 0.1, 20.0));
    EXPECT_FALSE(strongestLine({}, 0.1, 20.0));
}
