// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording_run.h"

#include <gtest/gtest.h>

#include <vector>

#include "core/acquire/recording_writer.h"
#include "core/simulate/scenario_signal.h"
#include "tests/support/temporary_folder.h"

using namespace trueunit;
using trueunit::test::TemporaryFolder;

namespace {

std::string writeScenario(const TemporaryFolder& folder, const Scenario& scenario) {
    ScenarioSignal signal(scenario);
    std::vector<float> samples(static_cast<std::size_t>(scenario.seconds * scenario.card.rateHz) + 1);
    samples.resize(signal.read(samples));
    const std::string path = folder.file("a.wav");
    Result<RecordingWriter> writer = RecordingWriter::create(path, scenario.card.rateHz, 1, SampleFormat::float32);
    EXPECT_TRUE(writer && writer->write(samples) && writer->finish());
    return path;
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
