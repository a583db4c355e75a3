// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/sound_capture.h"

#include <gtest/gtest.h>

#include <thread>
#include <vector>

using namespace trueunit;

namespace {

constexpr std::size_t kBlock = SampleBlock::kSamples;

// Stereo frames: left counts up from the given number, right counts down.
std::vector<float> stereo(std::size_t from, std::size_t frames) {
    std::vector<float> out(2 * frames);
    for (std::size_t i = 0; i < frames; ++i) {
        out[2 * i] = static_cast<float>(from + i);
        out[2 * i + 1] = -static_cast<float>(from + i);
    }
    return out;
}

}  // namespace

TEST(SoundCapture, GathersFramesIntoNumberedBlocksHoweverTheyCome) {
    SampleRing ring;
    SoundCapture capture(ring, 2);
    std::size_t sent = 0;
    for (const std::size_t frames : {1U, 255U, 100U, 700U, 3U, 221U}) {
        EXPECT_TRUE(capture.capture(stereo(sent, frames).data(), frames, false));
        sent += frames;
    }
    ASSERT_EQ(ring.waitingBlocks(), sent / kBlock);
    SampleBlock block;
    for (std::size_t number = 0; ring.tryPop(block); number += kBlock) {
        EXPECT_EQ(block.firstSample, number);
        EXPECT_GT(block.stampNs, 0);
        EXPECT_FALSE(block.lossBefore);
        for (std::size_t i = 0; i < kBlock; ++i) ASSERT_EQ(block.samples[i], static_cast<float>(number + i));
    }
}

TEST(SoundCapture, TakesTheChannelThatIsChosenAndTheFirstOfAMonoInput) {
    SampleRing ring;
    SoundCapture capture(ring, 2);
    capture.channel = 1;
    capture.capture(stereo(1, kBlock).data(), kBlock, false);
    SampleBlock block;
    ASSERT_TRUE(ring.tryPop(block));
    EXPECT_EQ(block.samples[0], -1.0F);

    SoundCapture mono(ring, 1);
    mono.channel = 1;  // there is no such side: the only one is taken
    const std::vector<float> samples(kBlock, 0.25F);
    mono.capture(samples.data(), kBlock, false);
    ASSERT_TRUE(ring.tryPop(block));
    EXPECT_EQ(block.samples[7], 0.25F);
}

TEST(SoundCapture, ADroppedBlockLeavesAStepInTheNumbers) {
    SampleRing ring;
    SoundCapture capture(ring, 2);
    const std::vector<float> frames = stereo(0, kBlock);
    for (std::uint64_t i = 0; i < SampleRing::kBlocks + 3; ++i) capture.capture(frames.data(), kBlock, false);
    EXPECT_EQ(ring.droppedBlocks(), 3U);
    SampleBlock block;
    while (ring.tryPop(block)) {
    }
    capture.capture(frames.data(), kBlock, false);
    ASSERT_TRUE(ring.tryPop(block));
    EXPECT_EQ(block.firstSample, (SampleRing::kBlocks + 3) * kBlock);
}

TEST(SoundCapture, TheDriversOverflowIsToldOnceInTheNextBlockThatArrives) {
    SampleRing ring;
    SoundCapture capture(ring, 2);
    const std::vector<float> frames = stereo(0, kBlock);
    for (std::uint64_t i = 0; i < SampleRing::kBlocks; ++i) capture.capture(frames.data(), kBlock, false);
    capture.capture(frames.data(), kBlock, true);  // no room: the mark must not be lost with the block
    SampleBlock block;
    while (ring.tryPop(block)) EXPECT_FALSE(block.lossBefore);
    capture.capture(frames.data(), kBlock, false);
    capture.capture(frames.data(), kBlock, false);
    ASSERT_TRUE(ring.tryPop(block));
    EXPECT_TRUE(block.lossBefore);
    ASSERT_TRUE(ring.tryPop(block));
    EXPECT_FALSE(block.lossBefore);
}

TEST(SoundCapture, WeighsEachSideByItsMovementNotByItsOffset) {
    SampleRing ring;
    SoundCapture capture(ring, 2);
    std::vector<float> frames(2 * kBlock);
    for (std::size_t i = 0; i < kBlock; ++i) {
        frames[2 * i] = 0.9F;
        frames[2 * i + 1] = i % 2 == 0 ? 0.1F : -0.1F;
    }
    capture.capture(frames.data(), kBlock, false);
    EXPECT_GT(capture.stepEnergy[1].load(), 2.0 * capture.stepEnergy[0].load());
}

TEST(SoundCapture, OnceReleasedTheRingIsNotTouched) {
    SampleRing ring;
    SoundCapture capture(ring, 2);
    const std::vector<float> frames = stereo(0, kBlock);
    std::jthread callback([&](const std::stop_token& stop) {
        while (!stop.stop_requested()) capture.capture(frames.data(), kBlock, false);
    });
    std::this_thread::sleep_for(std::chrono::milliseconds(5));
    capture.release();
    const std::uint64_t waiting = ring.waitingBlocks() + ring.droppedBlocks();
    std::this_thread::sleep_for(std::chrono::milliseconds(5));
    EXPECT_EQ(ring.waitingBlocks() + ring.droppedBlocks(), waiting);
    EXPECT_FALSE(capture.capture(frames.data(), kBlock, false));
}
