// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/restless_person.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QElapsedTimer>
#include <cstdlib>
#include <fstream>
#include <functional>

#include "core/acquire/recording_writer.h"
#include "core/report/reading_json.h"

namespace trueunit::test {

namespace {

constexpr std::size_t kRemembered = 4;
constexpr std::size_t kSoundSamples = 4096;

bool happens(const std::function<bool()>& it, int ms) {
    QElapsedTimer timer;
    timer.start();
    while (!it() && timer.elapsed() < ms) QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    return it();
}

void writeRecording(const std::string& path) {
    Result<RecordingWriter> writer = RecordingWriter::create(path, 48000.0, 1, SampleFormat::pcm16);
    const std::vector<float> samples(14400, 0.1F);
    EXPECT_TRUE(writer && writer->write(samples) && writer->finish());
}

}  // namespace

RestlessPerson::RestlessPerson(unsigned seed, std::vector<SoundDevice> inputs)
    : seed_(seed), inputs_(std::move(inputs)), random_(seed) {
    std::ofstream(folder_.file("a.json"))
        << R"({"title":"t","story":"","machine":{"name":"Skerry","baud":75},"text":{"send":"RY "},
               "card":{"rate_hz":44100,"snr_db":40,"gaps":[{"at_seconds":0.03,"samples":700}]}})";
    writeRecording(folder_.file("a.wav"));
}

void RestlessPerson::keepBusy(int rounds) {
    SCOPED_TRACE("seed=" + std::to_string(seed_));
    if (const char* wanted = std::getenv("TRUEUNIT_ROUNDS")) rounds = std::atoi(wanted);
    for (int i = 0; i < rounds && !testing::Test::HasFatalFailure(); ++i) {
        SCOPED_TRACE("round " + std::to_string(i));
        doSomething();
        happens([] { return false; }, static_cast<int>(random_() % 30));
        lookAround();
    }
}

void RestlessPerson::doSomething() {
    switch (random_() % (inputs_.empty() ? 10 : 12)) {
        case 0:
            ASSERT_TRUE(session.playDemonstration());
            break;
        case 1:
            ASSERT_TRUE(session.playScenario(folder_.file("a.json")));
            break;
        case 2:
            ASSERT_TRUE(session.playRecording(folder_.file("a.wav")));
            break;
        case 3:
            session.stop();
            break;
        case 4:
        case 5:
            ASSERT_TRUE(session.setOptions(otherOptions()));
            break;
        case 6:
            session.setLimits(otherLimits());
            break;
        case 7:
            session.turnEccentric(static_cast<double>(random_() % 9) - 4.0);
            break;
        case 8:
            session.expectTone(random_() % 2 == 0);
            break;
        case 9:
            freeze();
            break;
        default:
            listen();
    }
}

void RestlessPerson::listen() {
    const SoundDevice& input = inputs_[random_() % inputs_.size()];
    const Outcome listening = session.listen(input);
    ASSERT_TRUE(listening) << listening.error().text;
    if (random_() % 2 == 0) happens([this] { return session.latest()->seconds > 0.1; }, 3000);
}

Options RestlessPerson::otherOptions() {
    Options options;
    options.windowCharacters = random_() % 2 == 0 ? 8 : 0;  // goes on with the record
    if (random_() % 3 == 0) options.slicePercent = 40.0;    // begins it anew
    if (random_() % 3 == 0) options.code = "ita2-us";
    if (random_() % 3 == 0) options.baud = 75.0;
    return options;
}

Limits RestlessPerson::otherLimits() {
    Limits limits;
    limits.name = random_() % 2 == 0 ? "one" : "other";
    return limits;
}

void RestlessPerson::freeze() {
    const auto snapshot = session.latest();
    if (!snapshot || !session.recentInput()) return;
    Frozen frame{snapshot, readingJson(snapshot->reading), session.recentInput()->stretches(), {}};
    frame.samples = lastSamples(frame.sound, 0, kSoundSamples);
    frozen_.push_back(std::move(frame));
    if (frozen_.size() > kRemembered) frozen_.pop_front();
}

void RestlessPerson::lookAround() {
    if (const auto now = session.latest()) {
        EXPECT_GE(now->serial, serial_);
        serial_ = now->serial;
    }
    for (const Frozen& f : frozen_) {
        EXPECT_EQ(readingJson(f.snapshot->reading), f.reading);
        EXPECT_EQ(lastSamples(f.sound, 0, kSoundSamples), f.samples);
    }
}

void expectMeasuring(Session& session) {
    ASSERT_TRUE(session.setOptions(Options{}));
    ASSERT_TRUE(session.playDemonstration());
    const auto bias = [&] { return session.latest()->reading.distortion.biasPercent; };
    ASSERT_TRUE(happens([&] { return session.latest()->windowUsed >= 8 && bias(); }, 20000));
    EXPECT_NEAR(bias()->value, session.scenario()->faults.biasPercent, 1.5);  // few characters, 0.5 % scatter
}

}  // namespace trueunit::test
