// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/comparison.h"

#include <gtest/gtest.h>

#include <algorithm>
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
    EXPECT_EQ(bias.seen(), Seen::changed);
}

TEST(Comparison, OnlyWhatIsLargerThanTwiceItsUncertaintyIsCalledChanged) {
    const auto seen = [](double after) {
        return of(compareReadings(with(Measured{1.0, 0.3}), with(Measured{after, 0.4})), "bias_percent").seen();
    };
    EXPECT_EQ(seen(1.49), Seen::none);  // of an uncertainty of 0.5
    EXPECT_EQ(seen(0.51), Seen::none);
    EXPECT_EQ(seen(1.51), Seen::unsure);
    EXPECT_EQ(seen(1.99), Seen::unsure);
    EXPECT_EQ(seen(2.01), Seen::changed);
    EXPECT_EQ(seen(-0.01), Seen::changed);
}

TEST(Comparison, AnInstantThatCannotTellFivePercentOfAUnitIsNotWorthARow) {
    Difference instant;
    EXPECT_FALSE(tells(instant));
    instant.change = Measured{11.0, 5.1};
    EXPECT_FALSE(tells(instant));
    instant.change = Measured{11.0, 4.9};
    EXPECT_TRUE(tells(instant));
}

// Of means that are truly zero, about one in twenty lies further off than its uncertainty: what 95 % says.
TEST(Comparison, AMeanOfAFewInstantsIsAsSureAsItSays) {
    std::mt19937_64 random(17);
    std::normal_distribution<double> scatter(0.0, 4.0);
    long beyond = 0, means = 0;
    for (int trial = 0; trial < 1000; ++trial) {
        std::vector<InstantReading> all;
        for (int k = 1; k <= 6; ++k) {
            InstantReading i;
            i.count = 1 + k % 3;
            double sum = 0.0, squares = 0.0;
            for (long n = 0; n < i.count; ++n) {
                const double d = scatter(random);
                sum += d;
                squares += d * d;
            }
            const auto n = static_cast<double>(i.count);
            i.meanPercent = sum / n;
            i.rmsPercent = std::sqrt(std::max(0.0, squares / n - i.meanPercent * i.meanPercent));
            all.push_back(i);
        }
        for (const InstantReading& i : all) {
            const auto mean = meanAmong(i, all);
            ASSERT_TRUE(mean);
            beyond += std::abs(mean->value) > mean->uncertainty ? 1 : 0;
            ++means;
        }
    }
    EXPECT_NEAR(static_cast<double>(beyond) / static_cast<double>(means), 0.05, 0.01);
    EXPECT_FALSE(meanAmong(InstantReading{}, {}));
}

TEST(Comparison, AReadingMissingOnOneSideHasNoDifference) {
    const Difference bias = of(compareReadings(with(std::nullopt), with(Measured{1.4, 0.4})), "bias_percent");
    EXPECT_FALSE(bias.change);
    EXPECT_EQ(bias.seen(), Seen::notKnown);
}

Reading read(test::SteadySender& sender, int characters) {
    CharacterLog log;
    for (int i = 0; i < characters; ++i) log.add({sender.character(), "", ""});
    Options options;
    options.baud = 45.45;
    return composeReading({log.last(0), log.last(0), {}, {}}, options, Limits{}, {});
}

// One report in a hundred may call something changed that is not: the report's footnote says so.
TEST(Comparison, OfUnchangedSendersHardlyOneIsCalledChangedAndOfAdjustedOnesAll) {
    int beyond = 0, reports = 0, found = 0, instants = 0;
    constexpr int kPairs = 300;
    for (int i = 0; i < kPairs; ++i) {
        test::SteadySender sender;
        sender.codes = test::codesOf(test::kFox);
        sender.random.seed(static_cast<std::uint64_t>(i));
        const Reading before = read(sender, 32), again = read(sender, 32);
        sender.biasPercent = [](std::uint64_t) { return 5.0; };
        const Reading after = read(sender, 32);
        const Comparison unchanged = compareReadings(before, again);
        beyond += of(unchanged, "bias_percent").seen() != Seen::none;
        const auto changed = [](const Difference& d) { return d.seen() == Seen::changed; };
        const auto changedInstant = [&](const Difference& d) { return tells(d) && changed(d); };
        reports +=
            std::ranges::any_of(unchanged.readings, changed) || std::ranges::any_of(unchanged.instants, changedInstant);
        instants += static_cast<int>(std::ranges::count_if(unchanged.instants, tells));
        found += changed(of(compareReadings(before, after), "bias_percent"));
    }
    EXPECT_LE(beyond, 27);  // 15 stated; more has one chance in a thousand
    EXPECT_LE(reports, 9);  // 3 stated, likewise
    EXPECT_EQ(found, kPairs);
    EXPECT_GT(instants, 2000);
}

}  // namespace
}  // namespace trueunit
