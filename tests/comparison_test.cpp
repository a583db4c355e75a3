// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/comparison.h"

#include <gtest/gtest.h>

#include <random>

#include "core/report/compose_reading.h"
#include "tests/support/steady_sender.h"

namespace trueunit {
namespace {

Reading with(std::optional<Measured> bias) {
    Reading r;
    r.distortion.biasPercent = bias;
    return r;
}

const Difference& of(const Comparison& c, const std::string& key) {
    for (const Difference& d : c.readings)
        if (d.key == key) return d;
    return c.readings.front();
}

TEST(Comparison, ADifferenceCarriesBothUncertainties) {
    const Difference bias = of(compareReadings(with(Measured{9.8, 0.3}), with(Measured{0.6, 0.4})), "bias_percent");
    ASSERT_TRUE(bias.change);
    EXPECT_NEAR(bias.change->value, -9.2, 1e-12);
    EXPECT_NEAR(bias.change->uncertainty, 0.5, 1e-12);  // 3, 4, 5
    EXPECT_EQ(bias.significant(), std::optional(true));
}

TEST(Comparison, WhatLiesWithinTheUncertaintyIsNotSignificant) {
    EXPECT_EQ(of(compareReadings(with(Measured{1.0, 0.3}), with(Measured{1.4, 0.4})), "bias_percent").significant(),
              std::optional(false));
}

TEST(Comparison, AReadingMissingOnOneSideHasNoDifference) {
    const Difference bias = of(compareReadings(with(std::nullopt), with(Measured{1.4, 0.4})), "bias_percent");
    EXPECT_FALSE(bias.change);
    EXPECT_FALSE(bias.significant());
}

Reading read(test::SteadySender& sender, int characters) {
    CharacterLog log;
    for (int i = 0; i < characters; ++i) log.add({sender.character(), "", ""});
    Options options;
    options.baud = 45.45;
    return composeReading({log.last(0), log.last(0), {}, {}}, options, Limits{}, {});
}

TEST(Comparison, OfUnchangedSendersFindsOneInTwentyDifferentAndOfAdjustedOnesAll) {
    int chance = 0, found = 0, instantsFound = 0, instants = 0;
    constexpr int kPairs = 300;
    for (int i = 0; i < kPairs; ++i) {
        test::SteadySender sender;
        sender.codes = test::codesOf(test::kFox);
        sender.random.seed(static_cast<std::uint64_t>(i));
        const Reading before = read(sender, 60), again = read(sender, 60);
        sender.biasPercent = [](std::uint64_t) { return 3.0; };
        const Reading after = read(sender, 60);
        chance += *of(compareReadings(before, again), "bias_percent").significant();
        found += *of(compareReadings(before, after), "bias_percent").significant();
        for (const Difference& d : compareReadings(before, again).instants)
            if (d.significant()) {
                ++instants;
                instantsFound += *d.significant();
            }
    }
    EXPECT_LE(chance, 27);  // 15 stated; more has one chance in a thousand
    EXPECT_EQ(found, kPairs);
    EXPECT_LT(instantsFound, 0.075 * instants);
    EXPECT_GT(instants, 2000);
}

}  // namespace
}  // namespace trueunit
