// SPDX-License-Identifier: GPL-3.0-or-later
// The reference sender through the real sound system back into the input, on a machine without sound hardware.
#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QElapsedTimer>
#include <cmath>
#include <functional>
#include <numbers>

#include "app/check_record.h"
#include "app/loopback_check.h"
#include "app/portaudio_source.h"
#include "app/reference_sender.h"
#include "app/session.h"
#include "tests/support/private_sound_server.h"
#include "tests/support/wave_bytes.h"

using namespace trueunit;
using namespace trueunit::test;

namespace {

constexpr double kPercentWithin = 0.1;  // what a reference must be read back within
constexpr double kEnd = 1.5;
constexpr long kCharacters = 60;

class LiveSender : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(server_.running()) << "the private sound server did not start";
        const Result<DeviceList> devices = PortAudioSource::devices();
        ASSERT_TRUE(devices) << devices.error().text;
        for (const SoundDevice& d : *devices)
            if (d.name == "benchmon") input_ = d;
        const Result<SoundDevice> output = soundOutput("");
        ASSERT_TRUE(output) << output.error().text;
        output_ = *output;
    }

    static bool waitUntil(const std::function<bool()>& holds, int ms) {
        QElapsedTimer timer;
        timer.start();
        while (!holds() && timer.elapsed() < ms) QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
        return holds();
    }

    // What came back, and whether the sound was whole: on a machine that is busy a card loses samples, which is said.
    struct Trial {
        Reading reading;
        bool whole = false;
    };

    void send(double bias, Trial& trial) {
        SenderSettings settings;
        settings.baud = 100.0;
        settings.biasPercent = bias;
        settings.endPercent = kEnd;
        ReferenceSender sender;
        const Outcome started = sender.start(output_, settings);
        ASSERT_TRUE(started) << started.error().text;
        ASSERT_TRUE(waitUntil([&] { return sender.sentSeconds() > 0.4; }, 5000));  // the line is at rest by then
        Session session;
        ASSERT_TRUE(session.listen(input_));
        const auto characters = [&] { return session.latest()->reading.text.characters; };
        ASSERT_TRUE(waitUntil([&] { return characters() >= kCharacters; }, 20000)) << session.latest()->stateText;
        trial.reading = session.latest()->reading;
        trial.whole = sender.missedSamples() == 0 && trial.reading.input.gaps == 0;
    }

    PrivateSoundServer server_;
    SoundDevice input_;
    SoundDevice output_;
};

}  // namespace

TEST_F(LiveSender, WhatIsSentIsReadBackOverTheWholeRangeOfBias) {
    for (const double bias : {-20.0, -10.0, 0.0, 10.0, 20.0}) {
        SCOPED_TRACE(bias);
        Trial trial;
        for (int attempt = 0; attempt < 3 && !trial.whole; ++attempt) ASSERT_NO_FATAL_FAILURE(send(bias, trial));
        ASSERT_TRUE(trial.whole) << "this machine is too busy: three times samples were lost, and said to be";
        const Reading& r = trial.reading;
        ASSERT_TRUE(r.distortion.biasPercent && r.distortion.endPercent && r.speed.errorPercent);
        EXPECT_NEAR(r.distortion.biasPercent->value, bias, kPercentWithin);
        EXPECT_NEAR(r.distortion.endPercent->value, kEnd, kPercentWithin);
        EXPECT_NEAR(r.speed.errorPercent->value, 0.0, 0.02);
    }
}

TEST_F(LiveSender, TheSelfCheckFindsTheCardTransparentAndItsClockRight) {
    std::vector<float> tone(48000 * 14);
    for (std::size_t i = 0; i < tone.size(); ++i)
        tone[i] = 0.3F * static_cast<float>(std::sin(2.0 * std::numbers::pi * static_cast<double>(i % 48) / 48.0));
    const TemporaryFolder folder;
    writeBytes(folder.file("tone.wav"), waveBytes(tone, 1, 48000, WaveFormat::pcm24));
    const auto devices = loopbackDevices("benchmon," + output_.name);
    ASSERT_TRUE(devices) << devices.error().text;
    std::optional<LoopbackResult> whole;  // on a machine that is busy a card loses samples, which is said
    for (int attempt = 0; attempt < 3 && !whole; ++attempt) {
        LoopbackCheck check(devices->first, devices->second, 1000.0);
        ASSERT_TRUE(server_.play(folder.file("tone.wav")));
        ASSERT_TRUE(check.start());
        ASSERT_TRUE(waitUntil([&] { return check.poll(); }, 70000)) << check.progress();
        ASSERT_TRUE(check.result()) << check.result().error().text;
        if (check.result()->gaps == 0) whole = *check.result();
    }
    ASSERT_TRUE(whole) << "this machine is too busy: three times samples were lost, and said to be";
    const LoopbackResult& r = *whole;
    ASSERT_TRUE(r.clock) << r.clockWords;
    EXPECT_NEAR(r.clock->ppm.value, 0.0, 1.0);  // the server's sink and its monitor share one clock
    EXPECT_TRUE(r.couplingHz.empty());
    ASSERT_TRUE(r.delayMs);
    EXPECT_GT(*r.delayMs, -6.0);  // nothing to speak of through a monitor; both stamps are of whole blocks of 5.3 ms
    EXPECT_LT(*r.delayMs, 2500.0);
    EXPECT_EQ(r.rows.size(), 3U);
    EXPECT_TRUE(summaryOf(r.rows).passed()) << checkText({0, "", {}, r}, true).toStdString();
}

TEST_F(LiveSender, ATextSentOnceEndsAndAServerThatDiesIsNoticed) {
    SenderSettings settings;
    settings.text = "RY";
    settings.repeat = false;
    ReferenceSender sender;
    EXPECT_EQ(sender.state(), SourceState::idle);
    ASSERT_TRUE(sender.start(output_, settings));
    EXPECT_TRUE(waitUntil([&] { return sender.state() == SourceState::finished; }, 8000));
    settings.repeat = true;
    ASSERT_TRUE(sender.start(output_, settings));
    ASSERT_TRUE(waitUntil([&] { return sender.sentSeconds() > 0.5; }, 5000));
    server_.kill();
    QElapsedTimer timer;
    timer.start();
    EXPECT_TRUE(waitUntil([&] { return sender.state() == SourceState::lost; }, 8000));
    sender.stop();
    EXPECT_LT(timer.elapsed(), 6000);
    EXPECT_FALSE(sender.start(output_, settings));
}
