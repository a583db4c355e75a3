// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/picture.h"

#include <gtest/gtest.h>

#include "core/pipeline.h"
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

}  // namespace
}  // namespace trueunit
