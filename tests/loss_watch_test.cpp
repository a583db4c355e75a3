// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/loss_watch.h"

#include <gtest/gtest.h>

using namespace trueunit;

namespace {

constexpr double kCardRate = 48000.0;
constexpr std::uint64_t kFrames = 480;  // ten milliseconds
constexpr std::int64_t kMs = 1'000'000;

class LossWatchTest : public testing::Test {
protected:
    // Callbacks at their usual pace; the card's clock may be off. What was said to be missing.
    std::uint64_t run(double seconds, double clockPpm = 0.0) {
        std::uint64_t missing = 0;
        for (int i = 0; i < static_cast<int>(seconds * 100.0); ++i) {
            now_ += 10.0 * kMs * (1.0 - 1e-6 * clockPpm);
            missing += watch_.push(kFrames, static_cast<std::int64_t>(now_));
        }
        return missing;
    }
    // Nothing for a while, then all at once that the driver has kept.
    std::uint64_t stall(double seconds, double kept) {
        now_ += 1e3 * kMs * seconds;
        std::uint64_t missing = 0;
        for (int i = 0; i < static_cast<int>(kept * 100.0); ++i)
            missing += watch_.push(kFrames, static_cast<std::int64_t>(now_));
        return missing;
    }

    LossWatch watch_{kCardRate};
    double now_ = 1e15;
};

}  // namespace

TEST_F(LossWatchTest, AnHourWithACardTwoHundredPartsInAMillionOffLosesNothing) {
    EXPECT_EQ(run(3600.0, 200.0), 0U);
    EXPECT_EQ(run(3600.0, -200.0), 0U);
}

TEST_F(LossWatchTest, AStallWhoseSamplesAllArriveIsNoLoss) {
    run(5.0);
    EXPECT_EQ(stall(3.0, 3.0), 0U);
    EXPECT_EQ(run(10.0), 0U);
}

TEST_F(LossWatchTest, AStallThatLostSamplesIsToldOnceWithinASecondAndAHalf) {
    run(5.0);
    EXPECT_EQ(stall(30.0, 22.0), 0U);  // what a sound server did: eight seconds were gone, and no flag
    const std::uint64_t told = run(1.5);
    EXPECT_NEAR(static_cast<double>(told), 8.0 * kCardRate, 0.1 * kCardRate);
    EXPECT_EQ(run(60.0), 0U);
}

TEST_F(LossWatchTest, LittleDelaysThatComeAndGoAreNoLoss) {
    for (int i = 0; i < 50; ++i) {
        EXPECT_EQ(stall(0.15, 0.15), 0U);
        EXPECT_EQ(run(0.5), 0U);
    }
}
