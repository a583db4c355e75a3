// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QSignalSpy>
#include <fstream>
#include <functional>

#include "app/demonstration.h"
#include "core/acquire/recording.h"
#include "core/acquire/recording_writer.h"
#include "core/recording_run.h"
#include "tests/support/keyed_tones.h"
#include "tests/support/plain_sender.h"
#include "tests/support/restless_person.h"
#include "tests/support/temporary_folder.h"
#include "tests/support/texts.h"

using namespace trueunit;
using namespace trueunit::test;

namespace {

bool waitUntil(const std::function<bool()>& holds, int ms = 20000) {
    QElapsedTimer timer;
    timer.start();
    while (!holds() && timer.elapsed() < ms) QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    return holds();
}

std::string writeSeconds(const TemporaryFolder& folder, double seconds) {
    const std::string path = folder.file("a.wav");
    Result<RecordingWriter> writer = RecordingWriter::create(path, 48000.0, 1, SampleFormat::pcm16);
    const std::vector<float> samples(static_cast<std::size_t>(48000.0 * seconds), 0.1F);
    EXPECT_TRUE(writer && writer->write(samples) && writer->finish());
    return path;
}

}  // namespace

TEST(Session, BeginsWithNoSourceAndNoSnapshot) {
    const Session session;
    EXPECT_EQ(session.sourceKind(), SourceKind::none);
    EXPECT_EQ(session.sourceState(), SourceState::idle);
    EXPECT_EQ(session.latest(), nullptr);
    EXPECT_FALSE(session.hasEccentric());
}

TEST(Session, TheDemonstrationIsBuiltInAndMeasured) {
    Session session;
    const QSignalSpy changed(&session, &Session::sourceChanged);
    ASSERT_TRUE(session.playDemonstration());
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(session.sourceKind(), SourceKind::scenario);
    ASSERT_NE(session.latest(), nullptr);  // at once, so that no window shows the source before
    ASSERT_TRUE(session.scenario());
    EXPECT_EQ(session.scenario()->title, demonstrationScenario()->title);
    ASSERT_TRUE(waitUntil([&] { return session.latest()->windowUsed >= 8; }));
    const double truth = session.scenario()->faults.biasPercent;
    ASSERT_TRUE(session.latest()->reading.distortion.biasPercent);
    EXPECT_NEAR(session.latest()->reading.distortion.biasPercent->value, truth, 1.5);  // few characters, 0.5 % scatter
}

TEST(Session, TurningTheEccentricMovesTheBias) {
    Options options;
    options.windowCharacters = 8;
    Session session(options);
    ASSERT_TRUE(session.playDemonstration());
    ASSERT_TRUE(session.hasEccentric());
    const auto bias = [&] { return session.latest()->reading.distortion.biasPercent; };
    ASSERT_TRUE(waitUntil([&] { return session.latest()->windowUsed >= 8 && bias(); }));
    const double before = bias()->value;
    session.turnEccentric(-6.0);
    EXPECT_EQ(session.eccentricPercent(), -6.0);
    EXPECT_TRUE(waitUntil([&] { return bias() && std::abs(bias()->value - (before - 6.0)) < 1.0; }));
}

TEST(Session, ARefusedSourceLeavesTheRunningOneAlone) {
    Session session;
    ASSERT_TRUE(session.playDemonstration());
    const QSignalSpy changed(&session, &Session::sourceChanged);
    const std::string description = session.sourceDescription();
    const Outcome recording = session.playRecording("/nowhere/a.wav");
    ASSERT_FALSE(recording);
    EXPECT_EQ(recording.error().text.back(), '.');
    ASSERT_FALSE(session.playScenario("/nowhere/a.json"));
    SoundDevice none;
    none.name = "no such input";
    const Outcome sound = session.listen(none);
    ASSERT_FALSE(sound);
    EXPECT_EQ(sound.error().text.back(), '.');
    EXPECT_EQ(changed.count(), 0);
    EXPECT_EQ(session.sourceDescription(), description);
    EXPECT_EQ(session.sourceState(), SourceState::running);
}

TEST(Session, SaysOnceThatARecordingHasEnded) {
    const TemporaryFolder folder;
    Session session;
    QSignalSpy ended(&session, &Session::sourceEnded);
    ASSERT_TRUE(session.playRecording(writeSeconds(folder, 0.4)));
    EXPECT_EQ(session.sourceKind(), SourceKind::recording);
    ASSERT_TRUE(waitUntil([&] { return ended.count() > 0; }));
    EXPECT_EQ(ended.front().front().toString(), "a.wav has come to its end.");
    waitUntil([] { return false; }, 600);
    EXPECT_EQ(ended.count(), 1);
    EXPECT_NEAR(session.latest()->seconds, 0.4, 0.01);
}

TEST(Session, ARecordingIsPausedPlayedFastAndFromItsBeginning) {
    const TemporaryFolder folder;
    Session session;
    EXPECT_FALSE(session.playback());
    ASSERT_TRUE(session.playRecording(writeSeconds(folder, 30.0)));
    session.setPaused(true);
    ASSERT_TRUE(session.playback());
    EXPECT_TRUE(session.playback()->paused);
    EXPECT_NEAR(session.playback()->seconds, 30.0, 0.01);
    session.setPaused(false);
    session.setFast(true);
    ASSERT_TRUE(waitUntil([&] { return session.ended(); }));
    ASSERT_TRUE(waitUntil([&] { return session.latest()->seconds > 29.9; }));
    EXPECT_EQ(session.latest()->lostSamples, 0U);
    session.setFast(false);
    ASSERT_TRUE(session.replay());
    EXPECT_FALSE(session.ended());
    EXPECT_LT(session.latest()->seconds, 1.0);
    EXPECT_LT(session.playback()->played, 1.0);
    ASSERT_TRUE(session.playDemonstration());
    EXPECT_FALSE(session.playback());
}

// What the card's coupling does is known from the first character on, as to the commands: all of it reads alike.
TEST(Session, ARecordingReadsAsTheCommandsReadIt) {
    const TemporaryFolder folder;
    PlainSender sender;
    sender.polesHz = {18.0, 25.0};
    sender.snrDb = 30.0;
    sender.biasPercent = 4.0;
    sender.scatterPercent = 0.5;
    const std::string path = folder.file("coupled.wav");
    Result<RecordingWriter> writer = RecordingWriter::create(path, 48000.0, 1, SampleFormat::pcm16);
    ASSERT_TRUE(writer && writer->write(sender.send(mixedText(60, 4))) && writer->finish());
    Result<Recording> recording = Recording::open(path);
    ASSERT_TRUE(recording);
    const Reading wanted = readRecording(*recording, Options{}, Limits{});
    Session session;
    session.setFast(true);
    ASSERT_TRUE(session.playRecording(path));
    ASSERT_TRUE(waitUntil([&] { return session.ended() && session.latest()->reading.text.characters == 60; }));
    waitUntil([] { return false; }, 300);  // the last of it
    const Reading read = session.latest()->reading;
    EXPECT_NEAR(read.distortion.biasPercent->value, wanted.distortion.biasPercent->value, 1e-6);
    EXPECT_NEAR(*read.distortion.grossPercent, *wanted.distortion.grossPercent, 1e-6);
    EXPECT_NEAR(read.distortion.biasPercent->value, 4.0, 0.3);
}

TEST(Session, AnotherSourceBeginsWithAnEmptySnapshotOfItsOwn) {
    const TemporaryFolder folder;
    Session session;
    ASSERT_TRUE(session.playDemonstration());
    ASSERT_TRUE(waitUntil([&] { return session.latest()->seconds > 1.0; }));
    const std::uint64_t serial = session.latest()->serial;
    ASSERT_TRUE(session.playRecording(writeSeconds(folder, 5.0)));
    EXPECT_GT(session.latest()->serial, serial);
    EXPECT_LT(session.latest()->seconds, 1.0);
    EXPECT_EQ(session.scenario(), nullptr);
    EXPECT_FALSE(session.hasEccentric());
}

// Marks of a line with slow edges are the longer the lower it is sliced: another slice reads another bias.
TEST(Session, ARecordingThatHasEndedIsMeasuredAgainWithOtherOptions) {
    const TemporaryFolder folder;
    PlainSender sender;
    sender.edge = PlainSender::Edge::linear;
    sender.rise = 0.004;
    const std::string path = folder.file("slow.wav");
    Result<RecordingWriter> writer = RecordingWriter::create(path, 48000.0, 1, SampleFormat::pcm16);
    ASSERT_TRUE(writer && writer->write(sender.send(std::vector<unsigned>(60, 0b01010))) && writer->finish());
    Session session;
    session.setFast(true);
    ASSERT_TRUE(session.playRecording(path));
    QSignalSpy ended(&session, &Session::sourceEnded), again(&session, &Session::measuredAgain);
    const QSignalSpy changed(&session, &Session::sourceChanged);
    const auto whole = [&] { return session.latest()->reading.text.characters >= 60; };
    ASSERT_TRUE(waitUntil([&] { return ended.count() == 1 && whole(); }));
    const double before = session.latest()->reading.distortion.biasPercent->value;
    session.setFast(false);  // would take ten seconds

    Options options = session.options();
    options.windowCharacters = 128;
    ASSERT_TRUE(session.setOptions(options));
    EXPECT_EQ(again.count(), 0);  // the readings only
    options.slicePercent = 40.0;
    ASSERT_TRUE(session.setOptions(options));
    ASSERT_EQ(again.count(), 1);
    EXPECT_EQ(again.front().front().toString(), "slow.wav is measured again with the new options.");
    ASSERT_TRUE(waitUntil([&] { return ended.count() == 2 && whole(); }, 8000));
    EXPECT_EQ(ended.back().front().toString(), "slow.wav has been measured again with the new options.");
    EXPECT_EQ(changed.count(), 0);  // the same input still
    EXPECT_EQ(session.latest()->reading.input.slicePercent, 40.0);
    // 10 to 90 % in 4 ms: 10 % of the swing are 0.5 ms at each end of a mark, 1 ms of 22.
    EXPECT_NEAR(session.latest()->reading.distortion.biasPercent->value - before, 100.0 * 1.0 / 22.0, 0.5);
}

// A loop on the left, louder tones on the right: which of them is read depends on what is asked for.
TEST(Session, MeasuredAgainARecordingIsReadOnTheChannelThatTheNewOptionsFind) {
    const TemporaryFolder folder;
    PlainSender sender;
    const std::vector<unsigned> codes = mixedText(40, 3);
    const std::vector<float> tones = KeyedTones{2125.0, 2295.0, 1.0, true, 0.7}.send(sender, codes);
    sender.biasPercent = 6.0;
    const std::vector<float> loop = sender.send(codes);
    std::vector<float> both;
    for (std::size_t i = 0; i < loop.size(); ++i) {
        both.push_back(loop[i]);
        both.push_back(tones[i]);
    }
    const std::string path = folder.file("two.wav");
    Result<RecordingWriter> writer = RecordingWriter::create(path, 48000.0, 2, SampleFormat::pcm16);
    ASSERT_TRUE(writer && writer->write(both) && writer->finish());
    Session session;
    session.setFast(true);
    ASSERT_TRUE(session.playRecording(path));
    const auto whole = [&] { return session.latest()->reading.text.characters >= 40; };
    ASSERT_TRUE(waitUntil([&] { return session.sourceState() == SourceState::finished && whole(); }));
    EXPECT_EQ(session.sourceDescription(), "two.wav, right");
    EXPECT_EQ(session.latest()->reading.input.kind, InputKind::twoTone);

    ASSERT_TRUE(waitUntil([&] { return session.ended(); }));
    Options options = session.options();
    options.input = InputKind::loop;
    ASSERT_TRUE(session.setOptions(options));
    EXPECT_EQ(session.sourceDescription(), "two.wav, left");
    ASSERT_TRUE(waitUntil([&] { return session.ended() && whole(); }));
    EXPECT_NEAR(session.latest()->reading.distortion.biasPercent->value, 6.0, 0.1);
}

TEST(Session, AScenarioThatHasEndedIsMeasuredAgainWithOtherOptions) {
    const TemporaryFolder folder;
    const std::string path = folder.file("short.json");
    std::ofstream(path) << R"({"title": "Short", "seconds": 5, "text": {"send": "RYRYRY"}})";
    Session session;
    const Outcome playing = session.playScenario(path);
    ASSERT_TRUE(playing) << playing.error().text;
    QSignalSpy ended(&session, &Session::sourceEnded);
    const auto whole = [&] { return session.latest()->reading.text.characters >= 20; };
    ASSERT_TRUE(waitUntil([&] { return ended.count() == 1 && whole(); }));
    Options options = session.options();
    options.slicePercent = 45.0;
    ASSERT_TRUE(session.setOptions(options));
    EXPECT_EQ(session.latest()->reading.text.characters, 0);
    ASSERT_TRUE(waitUntil([&] { return ended.count() == 2 && whole(); }, 8000));
    EXPECT_EQ(session.latest()->reading.input.slicePercent, 45.0);
    EXPECT_TRUE(session.hasEccentric());
}

TEST(Session, StoppingKeepsTheLastSnapshot) {
    Session session;
    ASSERT_TRUE(session.playDemonstration());
    ASSERT_TRUE(waitUntil([&] { return session.latest()->seconds > 0.5; }));
    session.stop();
    EXPECT_EQ(session.sourceKind(), SourceKind::none);
    EXPECT_EQ(session.sourceDescription(), "");
    EXPECT_GT(session.latest()->seconds, 0.5);
}

TEST(Session, RefusesOptionsOutOfRangeAndKeepsTheOldOnes) {
    Session session;
    const QSignalSpy changed(&session, &Session::optionsChanged);
    Options options;
    options.baud = 5.0;
    ASSERT_FALSE(session.setOptions(options));
    EXPECT_FALSE(session.options().baud.has_value());
    EXPECT_EQ(changed.count(), 0);
    options.baud = 50.0;
    ASSERT_TRUE(session.setOptions(options));
    EXPECT_EQ(session.options().baud, 50.0);
    EXPECT_EQ(changed.count(), 1);
}

TEST(Session, StartsStopsChangesAndFreezesAtRandomLeaveItMeasuringAndWhatWasFrozenAsItWas) {
    RestlessPerson person(20, {});
    person.keepBusy(40);
    if (!HasFatalFailure()) expectMeasuring(person.session);
}
