// SPDX-License-Identifier: GPL-3.0-or-later
// How long after its end a character is published, in the live path: private sound server, sound input, analysis
// thread. Budget: every character within 250 ms. Prints the distribution; fails beyond the budget.
#include <QCoreApplication>
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <thread>
#include <vector>

#include "app/analysis_thread.h"
#include "app/portaudio_source.h"
#include "core/acquire/recording_writer.h"
#include "core/simulate/scenario_signal.h"
#include "tests/support/private_sound_server.h"

using namespace trueunit;
using namespace trueunit::test;
using Clock = std::chrono::steady_clock;

namespace {

constexpr double kBudgetMs = 250.0;
constexpr double kSeconds = 40.0;
constexpr std::size_t kLeastCharacters = 150;

bool render(const std::string& path) {
    Scenario s;
    s.machine.baud = 45.45;
    s.machine.stopUnits = 1.42;
    s.text.send = "RYRYRY THE LAMP IS LIT ";
    s.seconds = kSeconds;
    s.faults.biasPercent = 5.0;
    s.card.couplingHz = {8.0};
    s.card.snrDb = 45.0;
    ScenarioSignal signal(s);
    std::vector<float> samples(static_cast<std::size_t>(kSeconds * s.card.rateHz));
    samples.resize(signal.read(samples));
    Result<RecordingWriter> writer = RecordingWriter::create(path, s.card.rateHz, 1, SampleFormat::float32);
    return writer && writer->write(samples) && writer->finish();
}

double millisecondsSince(std::int64_t stampNs) {
    const auto now = std::chrono::duration_cast<std::chrono::nanoseconds>(Clock::now().time_since_epoch()).count();
    return 1e-6 * static_cast<double>(now - stampNs);
}

// The wait of each new character between the arrival of its last sample and its being there for the window.
std::vector<double> watch(const LatestSnapshot& latest) {
    std::vector<double> waits;
    std::uint64_t newest = 0;
    const auto end = Clock::now() + std::chrono::duration<double>(kSeconds + 1.0);
    while (Clock::now() < end) {
        std::this_thread::sleep_for(std::chrono::milliseconds(1));
        const auto s = latest.take();
        if (!s || s->traces.empty() || s->traces.back()->number == newest || s->newestStampNs == 0) continue;
        newest = s->traces.back()->number;
        waits.push_back(millisecondsSince(s->newestStampNs));
    }
    return waits;
}

}  // namespace

int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    PrivateSoundServer server;
    const TemporaryFolder folder;
    const std::string path = folder.file("signal.wav");
    const Result<DeviceList> devices = PortAudioSource::devices();
    if (!server.running() || !devices || !render(path)) return 2;
    const auto device = findDevice(*devices, "benchmon", "ALSA");
    if (!device) return 2;
    SampleRing ring;
    LatestSnapshot latest;
    PortAudioSource source(*device);
    if (!source.start(ring)) return 2;
    AnalysisThread analysis(ring, latest, source.rateHz(), {}, {});
    server.play(path);
    std::vector<double> waits = watch(latest);
    if (waits.size() < kLeastCharacters) {
        std::printf("latency: only %zu characters were seen\n", waits.size());
        return 1;
    }
    std::sort(waits.begin(), waits.end());
    const double before = source.inputLatencyMs();
    const double worst = waits.back() + before;
    std::printf("latency of %zu characters: input %.1f ms (as the sound library reports it) before the block arrives\n",
                waits.size(), before);
    std::printf("block to snapshot: median %.1f ms, 99 %% %.1f ms, largest %.1f ms\n", waits[waits.size() / 2],
                waits[waits.size() * 99 / 100], waits.back());
    std::printf("character's end to snapshot, largest: %.1f ms, budget %.0f ms: %s\n", worst, kBudgetMs,
                worst <= kBudgetMs ? "held" : "EXCEEDED");
    return worst <= kBudgetMs ? 0 : 1;
}
