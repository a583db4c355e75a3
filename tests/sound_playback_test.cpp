// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/sound_playback.h"

#include <gtest/gtest.h>

#include <vector>

using namespace trueunit;

namespace {

void push(SampleRing& ring, int blocks) {
    SampleBlock block;
    for (int b = 0; b < blocks; ++b) {
        for (std::size_t i = 0; i < SampleBlock::kSamples; ++i)
            block.samples[i] = static_cast<float>(1 + block.firstSample + i);
        ring.tryPush(block);
        block.firstSample += SampleBlock::kSamples;
    }
}

}  // namespace

TEST(SoundPlayback, PlaysTheRingInOrderOnEveryChannelHoweverItIsAskedFor) {
    SampleRing ring;
    push(ring, 4);
    SoundPlayback playback(ring, 2);
    float expected = 1.0F;
    for (const std::size_t frames : {1U, 300U, 255U, 400U}) {
        std::vector<float> out(2 * frames, -1.0F);
        EXPECT_TRUE(playback.play(out.data(), frames));
        for (std::size_t i = 0; i < frames; ++i, expected += 1.0F) {
            ASSERT_EQ(out[2 * i], expected);
            ASSERT_EQ(out[2 * i + 1], expected);
        }
    }
    EXPECT_EQ(playback.played.load(), 956U);
    EXPECT_EQ(playback.missed.load(), 0U);
}

TEST(SoundPlayback, AnEmptyRingIsSilenceWhichIsCountedOnceTheSignalHasBegun) {
    SampleRing ring;
    SoundPlayback playback(ring, 1);
    std::vector<float> out(100, -1.0F);
    playback.play(out.data(), 100);
    EXPECT_EQ(out, std::vector<float>(100, 0.0F));
    EXPECT_EQ(playback.missed.load(), 0U);
    push(ring, 1);
    out.resize(300);
    playback.play(out.data(), 300);
    EXPECT_EQ(out[255], 256.0F);
    EXPECT_EQ(out[256], 0.0F);
    EXPECT_EQ(playback.missed.load(), 44U);
}

TEST(SoundPlayback, AfterReleaseTheRingIsNotTouchedAndTheStreamIsToldToEnd) {
    SampleRing ring;
    push(ring, 2);
    SoundPlayback playback(ring, 1);
    playback.release();
    std::vector<float> out(64, -1.0F);
    EXPECT_FALSE(playback.play(out.data(), 64));
    EXPECT_EQ(out, std::vector<float>(64, 0.0F));
    EXPECT_EQ(ring.waitingBlocks(), 2U);
}
