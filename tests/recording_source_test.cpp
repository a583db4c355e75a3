// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acquire/recording_source.h"

#include <gtest/gtest.h>

#include <chrono>
#include <vector>

#include "core/acquire/recording_writer.h"
#include "tests/support/temporary_folder.h"

using namespace trueunit;
using trueunit::test::TemporaryFolder;
using namespace std::chrono_literals;

namespace {

constexpr double kRate = 48000.0;

// Each sample tells its own number, so that a block out of place shows.
void writeNumbered(const std::string& path, std::size_t samples) {
    std::vector<float> numbered(samples);
    for (std::size_t i = 0; i < samples; ++i) numbered[i] = static_cast<float>(i % 4096) / 4096.0F;
    Result<RecordingWriter> writer = RecordingWriter::create(path, kRate, 1, SampleFormat::float32);
    ASSERT_TRUE(writer);
    ASSERT_TRUE(writer->write(numbered));
    ASSERT_TRUE(writer->finish());
}

bool waitFor(const SampleSource& source, SourceState state) {
    const auto limit = std::chrono::steady_clock::now() + 10s;
    while (source.state() != state && std::chrono::steady_clock::now() < limit) std::this_thread::sleep_for(1ms);
    return source.state() == state;
}

}  // namespace

TEST(RecordingSource, PlaysEveryBlockInOrderAtItsOwnPaceThenFinishes) {
    const TemporaryFolder folder;
    constexpr std::size_t kBlocks = 100;  // 0.53 s
    writeNumbered(folder.file("a.wav"), kBlocks * SampleBlock::kSamples + 17);
    RecordingSource source(*Recording::open(folder.file("a.wav")));
    SampleRing ring;
    const auto begin = std::chrono::steady_clock::now();
    ASSERT_TRUE(source.start(ring));
    EXPECT_EQ(source.state(), SourceState::running);
    ASSERT_TRUE(waitFor(source, SourceState::finished));
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - begin;
    EXPECT_GE(took.count(), static_cast<double>(kBlocks * SampleBlock::kSamples) / kRate);

    SampleBlock block;
    std::int64_t stamp = 0;
    for (std::uint64_t b = 0; b < kBlocks; ++b) {
        ASSERT_TRUE(ring.tryPop(block)) << b;
        ASSERT_EQ(block.firstSample, b * SampleBlock::kSamples);
        ASSERT_EQ(block.samples[0], static_cast<float>(block.firstSample % 4096) / 4096.0F);
        EXPECT_GE(block.stampNs, stamp);
        stamp = block.stampNs;
    }
    EXPECT_FALSE(ring.tryPop(block));
}

TEST(RecordingSource, StopsInTheMiddleAndStartsAgainFromTheBeginning) {
    const TemporaryFolder folder;
    writeNumbered(folder.file("a.wav"), 480000);
    RecordingSource source(*Recording::open(folder.file("a.wav")));
    {
        SampleRing ring;
        ASSERT_TRUE(source.start(ring));
        std::this_thread::sleep_for(50ms);
        source.stop();
        EXPECT_EQ(source.state(), SourceState::idle);
        EXPECT_GT(ring.waitingBlocks(), 0U);
        EXPECT_LT(ring.waitingBlocks(), 1000U);
    }
    SampleRing ring;
    ASSERT_TRUE(source.start(ring));
    std::this_thread::sleep_for(50ms);
    source.stop();
    SampleBlock block;
    ASSERT_TRUE(ring.tryPop(block));
    EXPECT_EQ(block.firstSample, 0U);
    EXPECT_EQ(block.samples[1], 1.0F / 4096.0F);
}

TEST(RecordingSource, PlaysAsFastAsTheOtherEndTakesItAndLosesNothing) {
    const TemporaryFolder folder;
    constexpr std::uint64_t kBlocks = 5 * SampleRing::kBlocks;  // 54.6 s
    writeNumbered(folder.file("a.wav"), kBlocks * SampleBlock::kSamples);
    RecordingSource source(*Recording::open(folder.file("a.wav")));
    source.setFast(true);
    SampleRing ring;
    const auto begin = std::chrono::steady_clock::now();
    ASSERT_TRUE(source.start(ring));
    SampleBlock block;
    for (std::uint64_t b = 0; b < kBlocks;) {
        if (!ring.tryPop(block)) continue;
        ASSERT_EQ(block.firstSample, b * SampleBlock::kSamples);
        if (++b % 2000 == 0) std::this_thread::sleep_for(20ms);  // the other end is busy now and then
    }
    EXPECT_EQ(ring.droppedBlocks(), 0U);
    EXPECT_TRUE(waitFor(source, SourceState::finished));
    EXPECT_DOUBLE_EQ(source.playedSeconds(), source.seconds());
    EXPECT_LT(std::chrono::steady_clock::now() - begin, 20s);  // of 54.6
}

TEST(RecordingSource, StandsStillWhilePausedAndGoesOnAtItsPaceWhereItWas) {
    const TemporaryFolder folder;
    writeNumbered(folder.file("a.wav"), 480000);
    RecordingSource source(*Recording::open(folder.file("a.wav")));
    SampleRing ring;
    ASSERT_TRUE(source.start(ring));
    std::this_thread::sleep_for(60ms);
    source.setPaused(true);
    std::this_thread::sleep_for(30ms);  // the block that was on its way
    const double at = source.playedSeconds();
    EXPECT_GT(at, 0.0);
    std::this_thread::sleep_for(400ms);
    EXPECT_EQ(source.playedSeconds(), at);
    source.setPaused(false);
    const auto resumed = std::chrono::steady_clock::now();
    std::this_thread::sleep_for(100ms);
    source.setPaused(true);
    const std::chrono::duration<double> since = std::chrono::steady_clock::now() - resumed;
    EXPECT_GT(source.playedSeconds(), at);
    EXPECT_LT(source.playedSeconds(), at + since.count() + 0.02);  // the pause is not caught up
    source.stop();
    SampleBlock block;
    for (std::uint64_t b = 0; ring.tryPop(block); ++b) ASSERT_EQ(block.firstSample, b * SampleBlock::kSamples);
}

TEST(RecordingSource, IsNamedAfterItsFileAndSide) {
    const TemporaryFolder folder;
    Result<RecordingWriter> writer = RecordingWriter::create(folder.file("tape.wav"), kRate, 2, SampleFormat::pcm16);
    ASSERT_TRUE(writer);
    std::vector<float> right(2000, 0.0F);
    for (std::size_t i = 1; i < right.size(); i += 4) right[i] = 0.5F;  // only the right side moves
    ASSERT_TRUE(writer->write(right));
    ASSERT_TRUE(writer->finish());
    EXPECT_EQ(RecordingSource(*Recording::open(folder.file("tape.wav"))).description(), "tape.wav, right");
}
