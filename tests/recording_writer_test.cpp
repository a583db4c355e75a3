// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acquire/recording_writer.h"

#include <gtest/gtest.h>
#include <sndfile.h>

#include <vector>

#include "core/acquire/recording.h"
#include "tests/support/temporary_folder.h"

using namespace trueunit;
using trueunit::test::TemporaryFolder;

namespace {

SF_INFO writeRamp(const std::string& path, SampleFormat format, std::vector<float>& samples) {
    samples.resize(1000);
    for (std::size_t i = 0; i < samples.size(); ++i) samples[i] = 0.9F * (static_cast<float>(i) / 500.0F - 1.0F);
    Result<RecordingWriter> writer = RecordingWriter::create(path, 48000.0, 1, format);
    EXPECT_TRUE(writer) << writer.error().text;
    EXPECT_TRUE(writer->write(samples));
    EXPECT_TRUE(writer->finish());
    SF_INFO info{};
    SNDFILE* file = sf_open(path.c_str(), SFM_READ, &info);
    EXPECT_NE(file, nullptr);
    sf_close(file);
    return info;
}

float largestDifference(const std::string& path, const std::vector<float>& samples) {
    Result<Recording> back = Recording::open(path);
    std::vector<float> read(samples.size() + 10);
    EXPECT_EQ(back->read(read), samples.size());
    float most = 0.0F;
    for (std::size_t i = 0; i < samples.size(); ++i) most = std::max(most, std::abs(read[i] - samples[i]));
    return most;
}

}  // namespace

TEST(RecordingWriter, WavKeepsFloatSamplesExactly) {
    const TemporaryFolder folder;
    std::vector<float> samples;
    const SF_INFO info = writeRamp(folder.file("a.wav"), SampleFormat::float32, samples);
    EXPECT_EQ(info.format, SF_FORMAT_WAV | SF_FORMAT_FLOAT);
    EXPECT_EQ(info.samplerate, 48000);
    EXPECT_EQ(largestDifference(folder.file("a.wav"), samples), 0.0F);
}

TEST(RecordingWriter, FlacKeeps24BitsEvenWhenFloatIsAsked) {
    const TemporaryFolder folder;
    std::vector<float> samples;
    const SF_INFO info = writeRamp(folder.file("a.FLAC"), SampleFormat::float32, samples);
    EXPECT_EQ(info.format, SF_FORMAT_FLAC | SF_FORMAT_PCM_24);
    EXPECT_LE(largestDifference(folder.file("a.FLAC"), samples), 1.0F / (1 << 23));
}

TEST(RecordingWriter, SamplesBeyondFullScaleFlattenInsteadOfWrapping) {
    const TemporaryFolder folder;
    Result<RecordingWriter> writer = RecordingWriter::create(folder.file("a.wav"), 8000.0, 1, SampleFormat::pcm16);
    ASSERT_TRUE(writer);
    ASSERT_TRUE(writer->write(std::vector<float>{1.5F, -1.5F}));
    ASSERT_TRUE(writer->finish());
    std::vector<float> read(2);
    ASSERT_EQ(Recording::open(folder.file("a.wav"))->read(read), 2U);
    EXPECT_GT(read[0], 0.99F);
    EXPECT_LT(read[1], -0.99F);
}

TEST(RecordingWriter, RefusesOtherEndingsAndFoldersThatAreNotThere) {
    const TemporaryFolder folder;
    EXPECT_FALSE(RecordingWriter::create(folder.file("a.txt"), 48000.0, 1, SampleFormat::pcm16));
    EXPECT_FALSE(RecordingWriter::create(folder.file("none/a.wav"), 48000.0, 1, SampleFormat::pcm16));
}
