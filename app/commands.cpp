// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands.h"

#include <QDateTime>
#include <QFileInfo>
#include <cmath>
#include <cstdio>
#include <vector>

#include "app/check_record.h"
#include "app/limit_sets.h"
#include "app/machine_cards.h"
#include "app/portaudio_source.h"
#include "app/progress_line.h"
#include "app/report_page.h"
#include "core/measure/clock_trim.h"
#include "core/recording_run.h"
#include "core/report/judge.h"
#include "core/report/reading_json.h"
#include "core/report/reading_text.h"
#include "core/simulate/scenario_signal.h"

namespace trueunit {

namespace {

constexpr int kInLimits = 0;
constexpr int kOutOfLimits = 1;
constexpr int kNoReading = 2;
constexpr double kEndlessSeconds = 60.0;  // what is rendered of a scenario without an end
constexpr std::size_t kFrames = 16384;

void print(const std::string& text) { std::fwrite(text.data(), 1, text.size(), stdout); }

int exitCode(const Reading& reading) {
    if (!reading.valid()) return kNoReading;
    return plainVerdict(reading).within.value_or(reading.verdict.judged.empty()) ? kInLimits : kOutOfLimits;
}

QString fileName(const std::string& path) { return QFileInfo(QString::fromStdString(path)).fileName(); }

// Either with a line of progress for the person who waits, who may stop it.
ProgressLine progressOf(const Recording& recording) {
    return {"measuring " + fileName(recording.path()).toStdString(), "Stopped; nothing was written."};
}

Snapshot measureWatched(Recording& recording, const Options& options, const Limits& limits) {
    ProgressLine line = progressOf(recording);
    return measureRecording(recording, options, limits, [&line](double done) { line.show(done); });
}

Reading readWatched(Recording& recording, const Options& options, const Limits& limits) {
    ProgressLine line = progressOf(recording);
    return readRecording(recording, options, limits, [&line](double done) { line.show(done); });
}

// The signal on one side of a stereo file, the other side silent; or mono as it is.
void spread(std::span<const float> mono, Scenario::Channel channel, std::vector<float>& out) {
    if (channel == Scenario::Channel::mono) {
        out.assign(mono.begin(), mono.end());
        return;
    }
    out.assign(2 * mono.size(), 0.0F);
    const std::size_t side = channel == Scenario::Channel::left ? 0 : 1;
    for (std::size_t i = 0; i < mono.size(); ++i) out[2 * i + side] = mono[i];
}

Outcome renderTo(Scenario scenario, const Command& command) {
    if (command.rateHz) scenario.card.rateHz = *command.rateHz;
    if (command.seconds) scenario.seconds = *command.seconds;
    if (scenario.seconds <= 0.0 && scenario.text.repeat) scenario.seconds = kEndlessSeconds;
    const Scenario::Channel channel = scenario.card.channel;
    const int channels = channel == Scenario::Channel::mono ? 1 : 2;
    Result<RecordingWriter> writer =
        RecordingWriter::create(command.out, scenario.card.rateHz, channels, command.format);
    if (!writer) return writer.error();
    ScenarioSignal signal(std::move(scenario));
    std::vector<float> mono(kFrames);
    std::vector<float> spreadOut;
    while (const std::size_t got = signal.read(mono)) {
        spread({mono.data(), got}, channel, spreadOut);
        if (Outcome written = writer->write(spreadOut); !written) return written;
    }
    return writer->finish();
}

}  // namespace

int refuse(const Error& error) {
    std::fprintf(stderr, "trueunit: %s\n", error.text.c_str());
    return kNoReading;
}

Outcome takeCard(Command& command) {
    if (command.card.empty()) return done();
    Result<MachineCard> card = machineCardNamed(command.card);
    if (!card) return card.error();
    command.options.card = std::move(*card);
    return done();
}

int runMeasure(const Command& given) {
    Command command = given;
    if (const Outcome taken = takeCard(command); !taken) return refuse(taken.error());
    const Result<Limits> chosen = limitSetNamed(command.limits.empty() ? "bench" : command.limits);
    if (!chosen) return refuse(chosen.error());
    const Limits& limits = *chosen;
    Result<Recording> recording = Recording::open(command.file);
    if (!recording) {
        if (command.json) print(readingJson(readingOfNothing(recording.error(), command.options, limits)) + "\n");
        return refuse(recording.error());
    }
    const Reading reading = readWatched(*recording, command.options, limits);
    print(command.json ? readingJson(reading) + "\n" : readingText(reading, limits));
    return exitCode(reading);
}

int runReport(const Command& given) {
    Command command = given;
    if (const Outcome taken = takeCard(command); !taken) return refuse(taken.error());
    const Result<Limits> limits = limitSetNamed(command.limits.empty() ? "bench" : command.limits);
    if (!limits) return refuse(limits.error());
    Result<Recording> recording = Recording::open(command.file);
    if (!recording) return refuse(recording.error());
    FrozenFrame frame;
    frame.snapshot = std::make_shared<const Snapshot>(measureWatched(*recording, command.options, *limits));
    frame.takenSecondsUtc = QDateTime::currentSecsSinceEpoch();
    frame.machine = command.machine;
    frame.selfCheck = lastCheckLine();
    frame.inputDescription = fileName(command.file).toStdString();
    frame.fileSecondsUtc = QFileInfo(QString::fromStdString(command.file)).lastModified().toSecsSinceEpoch();
    const Result<QStringList> written = writeReport(frame, QString::fromStdString(command.out));
    if (!written) return refuse(written.error());
    for (const QString& file : *written) print("written: " + file.toStdString() + "\n");
    if (!frame.snapshot->reading.valid())
        return refuse(Error{"The report was written, but there is no valid reading in \"" + command.file + "\"."});
    return 0;
}

int runRender(const Command& command) {
    Result<Scenario> scenario = readScenario(command.file);
    if (!scenario) return refuse(scenario.error());
    if (const Outcome rendered = renderTo(std::move(*scenario), command); !rendered) return refuse(rendered.error());
    return 0;
}

int runClock(const Command& command) {
    Result<Recording> recording = Recording::open(command.file);
    if (!recording) return refuse(recording.error());
    if (command.toneHz > 0.45 * recording->rateHz())
        return refuse(Error{"The recording's sample rate is too low for that tone."});
    ClockMeter meter(recording->rateHz(), command.toneHz);
    std::vector<float> samples(kFrames);
    while (const std::size_t got = recording->read(samples)) meter.push({samples.data(), got});
    const Result<ClockTrim> trim = meter.result();
    if (!trim) return refuse(trim.error());
    const double ppm = trim->ppm.value;
    char text[400];
    std::snprintf(text, sizeof text,
                  "The card's clock is %s by %.2f +- %.2f parts in a million, by %.1f s of %.6g Hz.\n"
                  "Give --clock-ppm %.2f when measuring with this card at this rate.\n",
                  ppm < 0.0 ? "slow" : "fast", std::abs(ppm), trim->ppm.uncertainty, trim->seconds, command.toneHz,
                  ppm);
    print(text);
    return 0;
}

int runInputs() {
    const Result<DeviceList> devices = PortAudioSource::devices();
    if (!devices) return refuse(devices.error());
    print(devicesText(*devices));
    return 0;
}

}  // namespace trueunit
