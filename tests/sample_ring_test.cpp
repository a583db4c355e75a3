// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acquire/sample_ring.h"

#include <gtest/gtest.h>

namespace trueunit {
namespace {

SampleBlock numbered(std::uint64_t number) {
    SampleBlock block;
    block.firstSample = number * SampleBlock::kSamples;
    block.samples.fill(static_cast<float>(number % 4096));
    return block;
}

TEST(SampleRing, GivesBlocksBackInOrderWithEverythingTheyCarry) {
    SampleRing ring;
    SampleBlock in = numbered(7);
    in.stampNs = 123456789;
    in.lossBefore = true;
    ASSERT_TRUE(ring.tryPush(in));
    ASSERT_TRUE(ring.tryPush(numbered(8)));
    SampleBlock out;
    ASSERT_TRUE(ring.tryPop(out));
    EXPECT_EQ(out.firstSample, in.firstSample);
    EXPECT_EQ(out.stampNs, in.stampNs);
    EXPECT_TRUE(out.lossBefore);
    EXPECT_EQ(out.samples, in.samples);
    ASSERT_TRUE(ring.tryPop(out));
    EXPECT_EQ(out.firstSample, numbered(8).firstSample);
    EXPECT_FALSE(out.lossBefore);
}

TEST(SampleRing, AnEmptyRingGivesNothingAndLeavesTheCallersBlockAlone) {
    SampleRing ring;
    SampleBlock out = numbered(3);
    EXPECT_FALSE(ring.tryPop(out));
    EXPECT_EQ(out.firstSample, numbered(3).firstSample);
    EXPECT_EQ(ring.waitingBlocks(), 0U);
}

TEST(SampleRing, AFullRingDropsAndCountsAndKeepsWhatItHolds) {
    SampleRing ring;
    for (std::uint64_t i = 0; i < SampleRing::kBlocks; ++i) ASSERT_TRUE(ring.tryPush(numbered(i)));
    EXPECT_EQ(ring.waitingBlocks(), SampleRing::kBlocks);
    EXPECT_EQ(ring.droppedBlocks(), 0U);
    EXPECT_FALSE(ring.tryPush(numbered(SampleRing::kBlocks)));
    EXPECT_FALSE(ring.tryPush(numbered(SampleRing::kBlocks + 1)));
    EXPECT_EQ(ring.droppedBlocks(), 2U);
    SampleBlock out;
    ASSERT_TRUE(ring.tryPop(out));
    EXPECT_EQ(out.firstSample, 0U);
    EXPECT_TRUE(ring.tryPush(numbered(SampleRing::kBlocks + 2)));  // one slot is free again
    std::uint64_t last = 0;
    while (ring.tryPop(out)) last = out.firstSample;
    EXPECT_EQ(last, numbered(SampleRing::kBlocks + 2).firstSample);  // the dropped ones are missing by number
}

TEST(SampleRing, GoesRoundManyTimes) {
    SampleRing ring;
    SampleBlock out;
    for (std::uint64_t i = 0; i < 3 * SampleRing::kBlocks; ++i) {
        ASSERT_TRUE(ring.tryPush(numbered(i)));
        ASSERT_TRUE(ring.tryPop(out));
        ASSERT_EQ(out.firstSample, numbered(i).firstSample);
    }
}

TEST(SampleRing, HoldsTenSecondsAtFortyEightKilohertz) {
    EXPECT_GE(static_cast<double>(SampleRing::kBlocks * SampleBlock::kSamples) / 48000.0, 10.0);
}

}  // namespace
}  // namespace trueunit
