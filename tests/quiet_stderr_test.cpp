// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/quiet_stderr.h"

#include <gtest/gtest.h>

#include <cstdio>

using namespace trueunit;

TEST(QuietStderr, SilencesWhileItLivesAndGivesItBack) {
    testing::internal::CaptureStderr();
    std::fputs("before ", stderr);
    {
        const QuietStderr quiet;
        std::fputs("during ", stderr);
    }
    std::fputs("after", stderr);
    EXPECT_EQ(testing::internal::GetCapturedStderr(), "before after");
}
