// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/picture.h"

#include <gtest/gtest.h>

#include <span>

#include "core/pipeline.h"
#include "core/report/smoothing.h"
#include "core/report/trail_line.h"
#include "tests/support/plain_sender.h"
#include "tests/support/texts.h"

namespace trueunit {
namespace {

TEST(Picture, TheTrailEndsAtTheBiasThatIsRead) {
    test::PlainSender sender;
    sender.unit = 1.004 * sender.nominal;
    sender.biasPercent = 7.0;
    sender.scatterPercent = 1.0;
    const auto samples = sender.send(test::mixedText(60, 2));
    for (const int window : {1, 8, 32}) {
        Options options;
        options.windowCharacters = window;
        Pipeline pipeline(sender.rateHz, options, Limits{});
        pipeline.push(samples);
        pipeline.finish();
        const Snapshot s = pipeline.snapshot();
        ASSERT_TRUE(s.reading.distortion.biasPercent && !s.trail.empty()) << window;
        EXPECT_NEAR(s.trail.back().biasPercent, s.reading.distortion.biasPercent->value, 1e-9) << window;
        EXPECT_GT(s.trail.size(), 45U) << window;
    }
}

TEST(Picture, TheTrailTellsWhereItsWindowWasChanged) {
    test::PlainSender sender;
    sender.scatterPercent = 1.0;
    const auto samples = sender.send(test::mixedText(120, 2));
    Options options;
    options.windowCharacters = 8;
    Pipeline pipeline(sender.rateHz, options, Limits{});
    const std::span<const float> all(samples);
    const std::size_t half = all.size() / 2;
    pipeline.push(all.first(half));
    const double changed = pipeline.snapshot().seconds;
    options.windowCharacters = 541;  // of which the trail takes no more than 128
    ASSERT_TRUE(pipeline.adopt(options, Limits{}));
    pipeline.push(all.subspan(half));
    pipeline.finish();
    const auto changes = smoothingChanges(pipeline.snapshot().trail);
    ASSERT_EQ(changes.size(), 1U);
    EXPECT_EQ(changes[0].over, 128U);
    EXPECT_NEAR(changes[0].seconds, changed, 1.0);
}

// The uncertainty is of 95 in 100; neighbouring points share most of their characters, so of one run a little fewer.
TEST(Picture, TheTrailOfTheSpeedHoldsTheSpeedWhileTheBiasIsTurned) {
    test::PlainSender sender;
    sender.unit = 1.01 * sender.nominal;
    sender.biasPercent = 8.0;
    sender.scatterPercent = 1.0;
    sender.extraPercent = [](int, bool toMark, double seconds) { return toMark && seconds > 20.0 ? 8.0 : 0.0; };
    Options options;
    options.windowCharacters = 32;
    Pipeline pipeline(sender.rateHz, options, Limits{});
    pipeline.push(sender.send(test::mixedText(250, 2)));
    pipeline.finish();
    const TrailLine line = trailLine(pipeline.snapshot(), TrailOf::speed);
    ASSERT_GT(line.points.size(), 230U);
    EXPECT_FALSE(line.aboutMean);
    EXPECT_EQ(line.limit, Limits{}.speedPercent);
    std::size_t within = 0;
    double sum = 0.0;
    for (const TrailLine::Point& p : line.points) {
        const double off = p.percent - 100.0 * (1.0 / 1.01 - 1.0);
        within += std::abs(off) < p.uncertainty ? 1 : 0;
        sum += off;
        EXPECT_LT(p.uncertainty, 1.0);
    }
    EXPECT_GT(within, line.points.size() * 85 / 100);
    EXPECT_NEAR(sum / static_cast<double>(line.points.size()), 0.0, 0.05);
}

TEST(Picture, TheTrailOfTheSpeedFollowsASwing) {
    constexpr double kPercent = 1.5, kHz = 0.125;
    test::PlainSender sender;
    sender.scatterPercent = 0.3;
    // Of each character the speed is that at its start.
    sender.extraPercent = [](int k, bool, double start) {
        return k * kPercent * std::sin(2.0 * std::numbers::pi * kHz * start);
    };
    Pipeline pipeline(sender.rateHz, Options{}, Limits{});
    pipeline.push(sender.send(test::mixedText(250, 2)));
    pipeline.finish();
    const TrailLine line = trailLine(pipeline.snapshot(), TrailOf::speed, 10.0);
    ASSERT_FALSE(line.points.empty());
    EXPECT_GE(line.points.front().seconds, 10.0);
    // The mean over eight characters, 8 x 7.42 units, until the middle of the last.
    const double over = 8 * 7.42 * 0.022, phase = std::numbers::pi * kHz * over;
    const double smoothed = kPercent * std::sin(phase) / phase;
    for (const TrailLine::Point& p : line.points) {
        const double middle = p.seconds - 3.5 * 7.42 * 0.022;
        EXPECT_NEAR(p.percent, -smoothed * std::sin(2.0 * std::numbers::pi * kHz * middle), 0.35) << p.seconds;
    }
}

}  // namespace
}  // namespace trueunit
