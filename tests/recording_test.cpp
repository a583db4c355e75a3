// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acquire/recording.h"

#include <gtest/gtest.h>

#include <cctype>
#include <cmath>
#include <numbers>
#include <random>

#include "core/acquire/recording_writer.h"
#include "tests/support/temporary_folder.h"
#include "tests/support/wave_bytes.h"

namespace trueunit {
namespace {

using test::TemporaryFolder;
using test::waveBytes;
using test::WaveFormat;
using test::writeBytes;

std::vector<float> tone(std::size_t n, double amplitude = 0.5) {
    std::vector<float> out(n);
    for (std::size_t i = 0; i < n; ++i)
        out[i] =
            static_cast<float>(amplitude * std::sin(2.0 * std::numbers::pi * 440.0 * static_cast<double>(i) / 48000.0));
    return out;
}

std::vector<float> readAll(Recording& recording, std::size_t step = 4096) {
    std::vector<float> all;
    std::vector<float> part(step);
    while (const std::size_t got = recording.read(part))
        all.insert(all.end(), part.begin(), part.begin() + static_cast<std::ptrdiff_t>(got));
    return all;
}

void expectNear(const std::vector<float>& a, const std::vector<float>& b, float within) {
    ASSERT_EQ(a.size(), b.size());
    for (std::size_t i = 0; i < a.size(); ++i) ASSERT_NEAR(a[i], b[i], within) << "sample " << i;
}

void expectSentence(const std::string& text, const std::string& fileName) {
    EXPECT_NE(text.find(fileName), std::string::npos) << text;
    EXPECT_TRUE(std::isupper(static_cast<unsigned char>(text.front())) || text.front() == '"') << text;
    EXPECT_EQ(text.back(), '.') << text;
    EXPECT_EQ(text.find('\n'), std::string::npos) << text;
    EXPECT_EQ(text.find("System error"), std::string::npos) << text;
}

struct Depth {
    WaveFormat format;
    float step;  // half the smallest step, full scale = 1
    const char* name;
};

class RecordingDepth : public ::testing::TestWithParam<Depth> {};

TEST_P(RecordingDepth, SamplesComeBackAtTheirSizeToHalfAStep) {
    TemporaryFolder folder;
    const std::vector<float> sent = tone(5000, 0.9);
    writeBytes(folder.file("a.wav"), waveBytes(sent, 1, 48000, GetParam().format));
    Result<Recording> recording = Recording::open(folder.file("a.wav"));
    ASSERT_TRUE(recording);
    EXPECT_DOUBLE_EQ(recording->rateHz(), 48000.0);
    EXPECT_DOUBLE_EQ(recording->seconds(), 5000.0 / 48000.0);
    EXPECT_EQ(recording->channels(), 1);
    expectNear(readAll(*recording), sent, GetParam().step);
}

INSTANTIATE_TEST_SUITE_P(Recording, RecordingDepth,
                         ::testing::Values(Depth{WaveFormat::pcm16, 1.6e-5F, "Pcm16"},
                                           Depth{WaveFormat::pcm24, 1.2e-7F, "Pcm24"},
                                           Depth{WaveFormat::pcm32, 6.0e-8F, "Pcm32"},
                                           Depth{WaveFormat::float32, 0.0F, "Float"}),
                         [](const auto& i) { return std::string(i.param.name); });

TEST(Recording, FlacComesBackToHalfAStepOfItsDepth) {
    TemporaryFolder folder;
    const std::vector<float> sent = tone(20000, 0.7);
    Result<RecordingWriter> writer = RecordingWriter::create(folder.file("a.flac"), 96000.0, 1, SampleFormat::pcm24);
    ASSERT_TRUE(writer);
    ASSERT_TRUE(writer->write(sent));
    ASSERT_TRUE(writer->finish());
    Result<Recording> recording = Recording::open(folder.file("a.flac"));
    ASSERT_TRUE(recording);
    EXPECT_DOUBLE_EQ(recording->rateHz(), 96000.0);
    expectNear(readAll(*recording), sent, 1.3e-7F);
}

TEST(Recording, OfAStereoFileTheSideThatCarriesTheSignalIsRead) {
    TemporaryFolder folder;
    const std::vector<float> signal = tone(30000);
    for (const int side : {0, 1}) {
        std::vector<float> both(2 * signal.size());
        for (std::size_t i = 0; i < signal.size(); ++i) {
            both[2 * i + static_cast<std::size_t>(side)] = signal[i];
            both[2 * i + static_cast<std::size_t>(1 - side)] = i % 2 ? 0.001F : -0.001F;  // a little hiss
        }
        writeBytes(folder.file("s.wav"), waveBytes(both, 2, 48000, WaveFormat::float32));
        Result<Recording> recording = Recording::open(folder.file("s.wav"));
        ASSERT_TRUE(recording);
        EXPECT_EQ(recording->channels(), 2);
        EXPECT_EQ(recording->channel(), side);
        EXPECT_EQ(readAll(*recording, 999), signal);
    }
}

TEST(Recording, ASideThatHoldsASteadyVoltageIsNotTakenForTheSignal) {
    TemporaryFolder folder;
    const std::vector<float> signal = tone(30000, 0.05);
    std::vector<float> both(2 * signal.size());
    for (std::size_t i = 0; i < signal.size(); ++i) {
        both[2 * i] = 0.9F;
        both[2 * i + 1] = signal[i];
    }
    writeBytes(folder.file("s.wav"), waveBytes(both, 2, 48000, WaveFormat::float32));
    Result<Recording> recording = Recording::open(folder.file("s.wav"));
    ASSERT_TRUE(recording);
    EXPECT_EQ(recording->channel(), 1);
}

TEST(Recording, HissOnTheUnusedSideIsNotTakenForAKeyedSignal) {
    TemporaryFolder folder;
    std::mt19937 random(5);
    std::normal_distribution<float> hiss(0.0F, 0.01F);
    std::vector<float> both;
    for (int i = 0; i < 48000; ++i) {
        both.push_back(hiss(random));
        both.push_back((i / 1056) % 2 ? 0.1F : -0.1F);  // 22 ms marks and spaces
    }
    writeBytes(folder.file("s.wav"), waveBytes(both, 2, 48000, WaveFormat::float32));
    Result<Recording> recording = Recording::open(folder.file("s.wav"));
    ASSERT_TRUE(recording);
    EXPECT_EQ(recording->channel(), 1);
}

TEST(Recording, RewindBeginsAtTheFirstSampleAgain) {
    TemporaryFolder folder;
    writeBytes(folder.file("a.wav"), waveBytes(tone(3000), 1, 48000, WaveFormat::float32));
    Result<Recording> recording = Recording::open(folder.file("a.wav"));
    ASSERT_TRUE(recording);
    const std::vector<float> first = readAll(*recording);
    EXPECT_TRUE(readAll(*recording).empty());
    recording->seek(0);
    EXPECT_EQ(readAll(*recording, 77), first);
}

TEST(Recording, AMissingFileGivesOneSentenceThatNamesIt) {
    TemporaryFolder folder;
    const Result<Recording> recording = Recording::open(folder.file("nowhere.wav"));
    ASSERT_FALSE(recording);
    expectSentence(recording.error().text, "nowhere.wav");
}

TEST(Recording, AFileThatIsNoSoundGivesOneSentenceThatNamesIt) {
    TemporaryFolder folder;
    writeBytes(folder.file("letter.wav"), "This is a letter and not a recording. It goes on for a while, in words.");
    const Result<Recording> recording = Recording::open(folder.file("letter.wav"));
    ASSERT_FALSE(recording);
    expectSentence(recording.error().text, "letter.wav");
}

TEST(Recording, AnEmptyFileAndAFolderGiveOneSentenceEach) {
    TemporaryFolder folder;
    writeBytes(folder.file("empty.wav"), "");
    const Result<Recording> empty = Recording::open(folder.file("empty.wav"));
    ASSERT_FALSE(empty);
    expectSentence(empty.error().text, "empty.wav");
    const Result<Recording> asFolder = Recording::open(folder.file(""));
    ASSERT_FALSE(asFolder);
    expectSentence(asFolder.error().text, "trueunit-test-");
}

TEST(Recording, AFileCutShortIsReadAsFarAsItGoes) {
    TemporaryFolder folder;
    const std::vector<float> sent = tone(3000);
    const std::string whole = waveBytes(sent, 1, 48000, WaveFormat::float32);
    writeBytes(folder.file("cut.wav"), whole.substr(0, 44 + 4 * 1000));
    Result<Recording> recording = Recording::open(folder.file("cut.wav"));
    ASSERT_TRUE(recording);
    const std::vector<float> got = readAll(*recording);
    ASSERT_EQ(got.size(), 1000U);
    EXPECT_TRUE(std::equal(got.begin(), got.end(), sent.begin()));
    EXPECT_NEAR(recording->seconds(), 1000.0 / 48000.0, 1e-9);
}

TEST(Recording, ASampleRateTooLowToTimeAnythingIsRefusedInWords) {
    TemporaryFolder folder;
    writeBytes(folder.file("slow.wav"), waveBytes(tone(3000), 1, 4000, WaveFormat::pcm16));
    const Result<Recording> recording = Recording::open(folder.file("slow.wav"));
    ASSERT_FALSE(recording);
    expectSentence(recording.error().text, "slow.wav");
    EXPECT_NE(recording.error().text.find("4000"), std::string::npos);
}

}  // namespace
}  // namespace trueunit
