// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/picture.h"

#include <gtest/gtest.h>

#include <span>

#include "core/pipeline.h"
#include "core/report/smoothing.h"
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

}  // namespace
}  // namespace trueunit
