// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acquire/level_meter.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

namespace trueunit {
namespace {

constexpr double kRate = 48000.0;

TEST(LevelMeter, KeepsTheLargestSampleOfEitherSign) {
    LevelMeter meter;
    meter.push(std::vector<float>{0.1F, -0.4F, 0.3F}, kRate);
    EXPECT_FLOAT_EQ(meter.peak(), 0.4F);
    meter.push(std::vector<float>{0.2F}, kRate);
    EXPECT_FLOAT_EQ(meter.peak(), 0.4F);
    EXPECT_EQ(meter.count(), 4U);
}

TEST(LevelMeter, TheRecentLevelFadesWithinSomeTenthsOfASecond) {
    LevelMeter meter;
    meter.push(std::vector<float>{0.5F}, kRate);
    const std::vector<float> quiet(256, 0.001F);
    for (int i = 0; i < 19; ++i) meter.push(quiet, kRate);  // 101 ms: one time constant
    EXPECT_NEAR(meter.recent(), 0.5 / std::exp(1.0), 0.01);
    for (int i = 0; i < 200; ++i) meter.push(quiet, kRate);
    EXPECT_FLOAT_EQ(meter.recent(), 0.001F);
    EXPECT_FLOAT_EQ(meter.peak(), 0.5F);
}

TEST(LevelMeter, CountsClippedSamplesOfAll) {
    LevelMeter meter;
    EXPECT_EQ(meter.clippedPercent(), 0.0);
    meter.push(std::vector<float>{1.0F, -1.0F, 0.5F, 0.99F}, kRate);
    EXPECT_DOUBLE_EQ(meter.clippedPercent(), 50.0);
    EXPECT_TRUE(meter.clippingNow());
    for (int i = 0; i < 300; ++i) meter.push(std::vector<float>(256, 0.1F), kRate);
    EXPECT_FALSE(meter.clippingNow());
}

TEST(LevelMeter, CountsWhatReachesTheRailsItIsTold) {
    LevelMeter meter;
    meter.setRails({-0.3F, 0.5F});
    meter.push(std::vector<float>{0.5F, -0.3F, 0.4F, -0.2F}, kRate);
    EXPECT_DOUBLE_EQ(meter.clippedPercent(), 50.0);
    EXPECT_TRUE(meter.clippingNow());
}

TEST(LevelMeter, FloatingPointBeyondFullScaleIsNotClipped) {
    LevelMeter meter;
    meter.push(std::vector<float>{0.1F, 1.0F, -1.0F, 0.9F}, kRate);
    meter.push(std::vector<float>{1.0F, 1.2F, -1.3F, 1.1F}, kRate);
    EXPECT_EQ(meter.clippedPercent(), 0.0);
    EXPECT_FALSE(meter.clippingNow());
    EXPECT_FLOAT_EQ(meter.peak(), 1.3F);
}

TEST(LevelMeter, HearsNothingBelowMinusNinetyDecibels) {
    LevelMeter meter;
    meter.push(std::vector<float>{2e-5F}, kRate);
    EXPECT_FALSE(meter.everHeard());
    meter.push(std::vector<float>{4e-5F}, kRate);
    EXPECT_TRUE(meter.everHeard());
    EXPECT_TRUE(meter.hearing());
    meter.forgetRecent();
    EXPECT_FALSE(meter.hearing());
    EXPECT_TRUE(meter.everHeard());
}

TEST(LevelMeter, ASampleThatIsNoNumberIsSilence) {
    LevelMeter meter;
    meter.push(std::vector<float>{std::nanf(""), INFINITY, 0.2F}, kRate);
    EXPECT_FLOAT_EQ(meter.peak(), 0.2F);
    EXPECT_EQ(meter.clippedPercent(), 0.0);
}

}  // namespace
}  // namespace trueunit
