// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acquire/recent_input.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace trueunit;

namespace {

// A sample that tells its own number, exact in 24 bits.
float numbered(std::uint64_t n) { return static_cast<float>(n % 1000000) / 8388608.0F; }

SampleBlock blockAt(std::uint64_t first) {
    SampleBlock block;
    block.firstSample = first;
    for (std::size_t i = 0; i < SampleBlock::kSamples; ++i) block.samples[i] = numbered(first + i);
    return block;
}

void pushBlocks(RecentInput& recent, std::uint64_t first, int blocks) {
    for (int i = 0; i < blocks; ++i)
        recent.push(blockAt(first + static_cast<std::uint64_t>(i) * SampleBlock::kSamples));
}

}  // namespace

TEST(RecentInput, GivesBackWhatWasPushedSampleForSample) {
    RecentInput recent(48000.0);
    EXPECT_TRUE(recent.stretches().empty());
    pushBlocks(recent, 0, 100);
    const auto all = recent.stretches();
    ASSERT_EQ(all.size(), 1U);
    ASSERT_EQ(all[0].samples(), 25600U);
    std::vector<float> out(30000);
    ASSERT_EQ(all[0].read(100, out), 25500U);
    for (std::size_t i = 0; i < 25500; ++i) ASSERT_EQ(out[i], numbered(100 + i)) << i;
}

TEST(RecentInput, KeepsTheLastMinutesAndNoMore) {
    RecentInput recent(48000.0, 1.0);
    pushBlocks(recent, 0, 2000);
    EXPECT_LT(recent.seconds(), 1.0 + 8192.0 / 48000.0);
    EXPECT_GT(recent.seconds(), 1.0 - 8192.0 / 48000.0);
    const KeptStretch last = recent.stretches().back();
    EXPECT_EQ(last.firstSample + last.samples(), 2000U * SampleBlock::kSamples);
    std::vector<float> one(1);
    ASSERT_EQ(last.read(0, one), 1U);
    EXPECT_EQ(one[0], numbered(last.firstSample));
}

TEST(RecentInput, AGapPartsTheStretchesAndNothingIsFilledIn) {
    RecentInput recent(48000.0);
    pushBlocks(recent, 0, 40);
    pushBlocks(recent, 20000, 10);
    SampleBlock marked = blockAt(20000 + 10 * SampleBlock::kSamples);
    marked.lossBefore = true;
    recent.push(marked);
    const auto all = recent.stretches();
    ASSERT_EQ(all.size(), 3U);
    EXPECT_EQ(all[0].samples(), 40U * SampleBlock::kSamples);
    EXPECT_EQ(all[1].firstSample, 20000U);
    EXPECT_EQ(all[1].samples(), 10U * SampleBlock::kSamples);
    EXPECT_EQ(all[2].samples(), SampleBlock::kSamples);
    std::vector<float> one(1);
    all[1].read(0, one);
    EXPECT_EQ(one[0], numbered(20000));
}

TEST(RecentInput, ManyGapsDoNotKeepTheMemoryFromBeingBounded) {
    RecentInput recent(48000.0, 0.5);
    for (std::uint64_t i = 0; i < 2000; ++i) pushBlocks(recent, i * 10000, 1);
    EXPECT_LE(recent.seconds(), 0.51);
    EXPECT_LE(recent.stretches().size(), 95U);
}

TEST(RecentInput, FullScaleAndBeyondIsFlattenedAsInASoundFile) {
    RecentInput recent(48000.0);
    SampleBlock block;
    block.samples = {1.5F, -1.5F, 1.0F, -1.0F};
    recent.push(block);
    std::vector<float> out(4);
    recent.stretches()[0].read(0, out);
    EXPECT_NEAR(out[0], 1.0F, 1e-6);
    EXPECT_EQ(out[1], -1.0F);
    EXPECT_NEAR(out[2], 1.0F, 1e-6);
    EXPECT_EQ(out[3], -1.0F);
}

TEST(RecentInput, WhatWasTakenOutStaysWhileMoreComesIn) {
    RecentInput recent(48000.0, 0.2);
    pushBlocks(recent, 0, 30);
    const KeptStretch before = recent.stretches()[0];
    pushBlocks(recent, 30 * SampleBlock::kSamples, 300);
    std::vector<float> out(7680);
    ASSERT_EQ(before.read(0, out), 7680U);
    EXPECT_EQ(out[7679], numbered(7679));
    recent.clear();
    EXPECT_EQ(recent.seconds(), 0.0);
}

TEST(RecentInput, AnExcerptEndsWhereItIsAskedToAndDoesNotReachOverAGap) {
    RecentInput recent(48000.0);
    pushBlocks(recent, 0, 10);      // 0 to 2,560
    pushBlocks(recent, 100096, 4);  // to 101,120
    const auto all = recent.stretches();
    std::vector<float> cut = lastSamples(all, 2000, 300);
    ASSERT_EQ(cut.size(), 300U);
    EXPECT_EQ(cut.front(), numbered(1700));
    EXPECT_EQ(cut.back(), numbered(1999));
    cut = lastSamples(all, 100500, 4000);
    ASSERT_EQ(cut.size(), 404U);
    EXPECT_EQ(cut.front(), numbered(100096));
    EXPECT_EQ(lastSamples(all, 0, 10).back(), numbered(101119));
    EXPECT_EQ(lastSamples(all, 999999, 10).back(), numbered(101119));
    EXPECT_TRUE(lastSamples({}, 10, 10).empty());
}
