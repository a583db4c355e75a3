// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording_run.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <random>
#include <span>
#include <vector>

#include "core/acquire/recording_writer.h"
#include "core/pipeline.h"
#include "core/report/reading_json.h"
#include "core/simulate/scenario_signal.h"
#include "tests/support/keyed_tones.h"
#include "tests/support/plain_sender.h"
#include "tests/support/temporary_folder.h"
#include "tests/support/texts.h"

using namespace trueunit;
using trueunit::test::TemporaryFolder;

namespace {

std::string writeSamples(const TemporaryFolder& folder, std::span<const float> samples, double rateHz) {
    const std::string path = folder.file("a.wav");
    Result<RecordingWriter> writer = RecordingWriter::create(path, rateHz, 1, SampleFormat::float32);
    EXPECT_TRUE(writer && writer->write(samples) && writer->finish());
    return path;
}

std::vector<float> samplesOf(const Scenario& scenario) {
    ScenarioSignal signal(scenario);
    std::vector<float> samples(static_cast<std::size_t>(scenario.seconds * scenario.card.rateHz) + 1);
    samples.resize(signal.read(samples));
    return samples;
}

// The second side of a stereo file, whatever came over its cable.
std::string writeStereo(const TemporaryFolder& folder, std::span<const float> left, std::span<const float> right) {
    const std::string path = folder.file("s.wav");
    std::vector<float> both;
    for (std::size_t i = 0; i < left.size(); ++i) {
        both.push_back(left[i]);
        both.push_back(right[i]);
    }
    Result<RecordingWriter> writer = RecordingWriter::create(path, 48000.0, 2, SampleFormat::float32);
    EXPECT_TRUE(writer && writer->write(both) && writer->finish());
    return path;
}

std::vector<float> sine(double hz, double amplitude, std::size_t samples) {
    std::vector<float> out;
    for (std::size_t i = 0; i < samples; ++i)
        out.push_back(
            static_cast<float>(amplitude * std::sin(2.0 * std::numbers::pi * hz * static_cast<double>(i) / 48000.0)));
    return out;
}

std::vector<float> hiss(double rms, std::size_t samples) {
    std::mt19937 random(3);
    std::normal_distribution<float> one(0.0F, static_cast<float>(rms));
    std::vector<float> out;
    for (std::size_t i = 0; i < samples; ++i) out.push_back(one(random));
    return out;
}

std::string writeScenario(const TemporaryFolder& folder, const Scenario& scenario) {
    return writeSamples(folder, samplesOf(scenario), scenario.card.rateHz);
}

// Keyed at random: not start-stop.
std::vector<float> keyedAtRandom(double seconds, double rateHz) {
    std::vector<float> samples;
    std::minstd_rand random(7);
    std::uniform_real_distribution<double> held(0.005, 0.04);
    for (float level = 0.2F; static_cast<double>(samples.size()) < seconds * rateHz; level = -level)
        samples.insert(samples.end(), static_cast<std::size_t>(held(random) * rateHz), level);
    return samples;
}

// The same two passes through one pipeline after the other, on this thread alone.
std::string readWithoutHelp(std::span<const float> samples, double rateHz) {
    Pipeline learner(rateHz, {}, {});
    learner.push(samples.first(std::min(samples.size(), static_cast<std::size_t>(60.0 * rateHz) + 1)));
    learner.finish();
    Pipeline pipeline(rateHz, {}, {});
    EXPECT_TRUE(learner.learned());
    pipeline.startFrom(learner.learned());
    pipeline.push(samples);
    pipeline.finish();
    return readingJson(pipeline.reading());
}

Scenario biased() {
    Scenario s;
    s.machine.baud = 50.0;
    s.text.send = "RYRYRY SKERRY LIGHT ";
    s.seconds = 20.0;
    s.faults.biasPercent = 6.0;
    s.faults.endPercent = -3.0;
    s.card.couplingHz = {12.0};
    s.card.snrDb = 45.0;
    return s;
}

// The issue asks bias and end within 0.1 % of a unit at 45 dB and one pole up to 20 Hz, speed within 0.02 %.
constexpr double kBiasWithin = 0.1;
constexpr double kSpeedWithin = 0.02;
constexpr double kTonesWithin = 0.5;  // where a front end has a rise of its own

}  // namespace

TEST(RecordingRun, MeasuresWhatTheScenarioImposed) {
    const TemporaryFolder folder;
    Result<Recording> recording = Recording::open(writeScenario(folder, biased()));
    ASSERT_TRUE(recording);
    const Snapshot s = measureRecording(*recording, {}, {});
    ASSERT_TRUE(s.reading.valid());
    EXPECT_NEAR(s.reading.distortion.biasPercent->value, 6.0, kBiasWithin);
    EXPECT_NEAR(s.reading.distortion.endPercent->value, -3.0, kBiasWithin);
    EXPECT_NEAR(s.reading.speed.errorPercent->value, 0.0, kSpeedWithin);
    EXPECT_EQ(s.reading.text.decoded.substr(0, 20), "RYRYRY SKERRY LIGHT ");
    EXPECT_NEAR(s.seconds, 20.0, 0.01);
}

TEST(RecordingRun, ReadsAheadToTheLastDigitWhatOneThreadReadsByItself) {
    const std::vector<float> samples = samplesOf(biased());
    const TemporaryFolder folder;
    Result<Recording> recording = Recording::open(writeSamples(folder, samples, 48000.0));
    ASSERT_TRUE(recording);
    const std::string alone = readWithoutHelp(samples, 48000.0);
    EXPECT_EQ(readingJson(readRecording(*recording, {}, {})), alone);
    EXPECT_EQ(readingJson(measureRecording(*recording, {}, {}).reading), alone);
}

TEST(RecordingRun, ReadsAheadTheSameWhereASenderGivesWayToRandomKeying) {
    std::vector<float> samples = samplesOf(biased());
    const std::vector<float> sender = samples;
    const std::vector<float> random = keyedAtRandom(25.0, 48000.0);
    samples.insert(samples.end(), random.begin(), random.end());
    samples.insert(samples.end(), sender.begin(), sender.end());
    const TemporaryFolder folder;
    Result<Recording> recording = Recording::open(writeSamples(folder, samples, 48000.0));
    ASSERT_TRUE(recording);
    EXPECT_EQ(readingJson(readRecording(*recording, {}, {})), readWithoutHelp(samples, 48000.0));
}

TEST(RecordingRun, OfAStereoFileTheSideThatIsStartStopIsReadHoweverLoudTheOtherOneIs) {
    test::PlainSender sender;
    sender.biasPercent = 6.0;
    sender.polesHz = {8.0};
    const std::vector<unsigned> codes = test::mixedText(60, 2);
    test::KeyedTones tones{2125.0, 2295.0};
    const TemporaryFolder folder;
    for (const std::vector<float>& signal : {sender.send(codes), tones.send(sender, codes)}) {
        for (const std::vector<float>& other :
             {sine(50.0, 0.9, signal.size()), sine(1000.0, 0.9, signal.size()), hiss(0.5, signal.size())}) {
            for (const int side : {0, 1}) {
                const std::string path =
                    side == 0 ? writeStereo(folder, signal, other) : writeStereo(folder, other, signal);
                Result<Recording> recording = Recording::open(path);
                ASSERT_TRUE(recording);
                EXPECT_EQ(recording->channel(), 1 - side) << "the other side is to be the stronger one here";
                const Reading r = readRecording(*recording, {}, {});
                EXPECT_EQ(recording->channel(), side);
                ASSERT_TRUE(r.valid());
                EXPECT_NEAR(r.distortion.biasPercent->value, 6.0, kTonesWithin);
                EXPECT_EQ(r.text.decoded, test::printed(codes));
            }
        }
    }
}

TEST(RecordingRun, OfAStereoFileWithoutStartStopTheStrongerSideIsTold) {
    const TemporaryFolder folder;
    Result<Recording> recording =
        Recording::open(writeStereo(folder, sine(1000.0, 0.1, 480000), sine(50.0, 0.5, 480000)));
    ASSERT_TRUE(recording);
    EXPECT_FALSE(readRecording(*recording, {}, {}).valid());
    EXPECT_EQ(recording->channel(), 1);
}

// Before the speed is known bounce is waited out for less long: what the first pass learned holds from the beginning.
TEST(RecordingRun, ALongBounceInTheFirstCharactersIsNoInstant) {
    Scenario s = biased();
    s.faults.bounce = Scenario::Bounce{};
    s.faults.bounce->fraction = 0.3;
    s.faults.bounce->openings = 1;
    s.faults.bounce->ms = 4.5;
    const TemporaryFolder folder;
    Result<Recording> recording = Recording::open(writeScenario(folder, s));
    ASSERT_TRUE(recording);
    const Reading r = readRecording(*recording, {}, {});
    ASSERT_TRUE(r.valid());
    EXPECT_NEAR(r.distortion.biasPercent->value, 6.0, kBiasWithin);
    EXPECT_LT(r.distortion.fortuitousPeakPercent.value_or(100.0), 1.0);
    EXPECT_EQ(r.text.decoded.substr(0, 20), "RYRYRY SKERRY LIGHT ");
}

TEST(RecordingRun, GivesTheSameReadingTwice) {
    const TemporaryFolder folder;
    Result<Recording> recording = Recording::open(writeScenario(folder, biased()));
    ASSERT_TRUE(recording);
    const Reading first = measureRecording(*recording, {}, {}).reading;
    const Reading second = measureRecording(*recording, {}, {}).reading;
    ASSERT_TRUE(first.valid());
    EXPECT_EQ(first.distortion.biasPercent->value, second.distortion.biasPercent->value);
    EXPECT_EQ(first.text.decoded, second.text.decoded);
}

TEST(RecordingRun, AnEmptyRecordingHasNoReadingAndSaysWhy) {
    const TemporaryFolder folder;
    Result<RecordingWriter> writer = RecordingWriter::create(folder.file("a.wav"), 48000.0, 1, SampleFormat::pcm16);
    ASSERT_TRUE(writer && writer->finish());
    Result<Recording> recording = Recording::open(folder.file("a.wav"));
    ASSERT_TRUE(recording);
    const Reading r = measureRecording(*recording, {}, {}).reading;
    EXPECT_FALSE(r.valid());
    EXPECT_FALSE(r.notes.empty());
}

TEST(RecordingRun, TheReadingOfNothingCarriesTheReason) {
    Options options;
    options.slicePercent = 40.0;
    const Reading r = readingOfNothing(Error{"There is no such file."}, options, Limits{});
    EXPECT_FALSE(r.valid());
    EXPECT_FALSE(r.verdict.within.has_value());
    EXPECT_EQ(r.notes, std::vector<std::string>{"There is no such file."});
    EXPECT_EQ(r.input.slicePercent, 40.0);
}
