// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/loopback_check.h"

#include <QCoreApplication>
#include <algorithm>
#include <chrono>
#include <cmath>
#include <numbers>

#include "app/analysis_thread.h"
#include "app/portaudio_source.h"
#include "app/reference_sender.h"

namespace trueunit {

namespace {

using Clock = std::chrono::steady_clock;

constexpr double kLoopbackBiases[] = {0.0, -15.0, 15.0};
constexpr int kCharacters = 48;          // that are judged
constexpr std::uint64_t kSettling = 24;  // before them: while the wiring is being learned
constexpr double kBaud = 100.0;
constexpr double kMostSeconds = 25.0;  // for one bias; otherwise nothing comes back
constexpr double kRestSeconds = 1.0;
constexpr double kToneSeconds = 12.0;
constexpr double kMostToneSeconds = 120.0;  // for changing the cable
constexpr double kSilentDbfs = -60.0;
constexpr float kOnset = 0.4F;  // of the peak

double secondsSince(Clock::time_point then) { return std::chrono::duration<double>(Clock::now() - then).count(); }

std::uint64_t charactersIn(const Snapshot* snapshot) {
    return snapshot && !snapshot->traces.empty() ? snapshot->traces.back()->number : 0;
}

// The place of the first sample of the reference, which rises softly out of silence: from where it reaches a part of
// its size.
std::optional<double> onsetSample(const KeptStretch& stretch, double rateHz) {
    std::vector<float> all(stretch.samples());
    all.resize(stretch.read(0, all));
    float peak = 0.0F;
    for (const float v : all) peak = std::max(peak, std::abs(v));
    const auto found = std::find_if(all.begin(), all.end(), [&](float v) { return std::abs(v) > kOnset * peak; });
    if (found == all.end() || peak <= 0.0F) return std::nullopt;
    const double rise = std::acos(1.0 - 2.0 * static_cast<double>(kOnset)) / std::numbers::pi;
    return static_cast<double>(stretch.firstSample) + static_cast<double>(found - all.begin()) -
           rise * ReferenceSignal::kRampSeconds * rateHz;
}

}  // namespace

struct LoopbackCheck::Bench {
    Bench(SoundDevice in, SoundDevice out, std::optional<double> tone)
        : source(std::move(in)), output(std::move(out)), toneHz(tone) {}

    void listenAnew();
    void rest();
    Outcome startBias();
    void measureTone();
    bool stepTone();
    bool hears();
    bool stepBias();
    void take(const Snapshot& snapshot);
    void takeDelay(const Snapshot& snapshot);
    bool fail(const Error& error);
    bool finish();

    SampleRing ring;
    PortAudioSource source;
    SoundDevice output;
    std::optional<double> toneHz;     // until it has been dealt with
    std::optional<double> toneLevel;  // dBFS; empty: not measured yet
    ReferenceSender sender;
    std::unique_ptr<LatestSnapshot> latest;
    std::shared_ptr<RecentInput> recent;
    std::unique_ptr<AnalysisThread> analysis;  // after what it uses
    LoopbackResult found;
    Result<LoopbackResult> result = Error{"The check has not been made."};
    Clock::time_point since;
    std::size_t bias = 0;
    std::optional<double> onset;  // number of the first sample of the first signal
    std::optional<Clock::time_point> heardSince;
    bool begun = false;    // the signal has been heard
    bool resting = false;  // nothing is sent; the next bias is due
    bool over = false;
};

void LoopbackCheck::Bench::listenAnew() {
    analysis.reset();
    latest = std::make_unique<LatestSnapshot>();
    recent = std::make_shared<RecentInput>(source.rateHz(), 60.0);
    Options options;
    options.windowCharacters = kCharacters;
    analysis = std::make_unique<AnalysisThread>(ring, *latest, source.rateHz(), options, Limits{}, recent);
    since = Clock::now();
}

// What is still on its way of the signal before would be taken for the beginning of the next.
void LoopbackCheck::Bench::rest() {
    sender.stop();
    since = Clock::now();
    resting = true;
}

Outcome LoopbackCheck::Bench::startBias() {
    resting = begun = false;
    heardSince.reset();
    listenAnew();
    SenderSettings settings;
    settings.baud = kBaud;
    settings.biasPercent = kLoopbackBiases[bias];
    return sender.start(output, settings);
}

bool LoopbackCheck::Bench::fail(const Error& error) {
    result = error;
    return finish();
}

bool LoopbackCheck::Bench::finish() {
    over = true;
    sender.stop();
    analysis.reset();
    source.stop();
    return true;
}

void LoopbackCheck::Bench::measureTone() {
    ClockMeter meter(source.rateHz(), *toneHz);
    if (const auto stretches = recent->stretches(); !stretches.empty()) {
        std::vector<float> samples(stretches.back().samples());
        samples.resize(stretches.back().read(0, samples));
        meter.push(samples);
    }
    const Result<ClockTrim> trim = meter.result();
    if (trim)
        found.clock = *trim;
    else
        found.clockWords = trim.error().text;
}

// Measures the tone, then waits until it is gone: it would be heard together with the reference signal.
bool LoopbackCheck::Bench::stepTone() {
    if (secondsSince(since) < kToneSeconds) return false;
    const auto snapshot = latest->take();
    const double level = snapshot ? snapshot->levelDbfs : kSilentDbfs;
    if (!toneLevel) {
        measureTone();
        toneLevel = level;
    }
    if (level > std::max(*toneLevel - 20.0, kSilentDbfs)) {
        if (secondsSince(since) < kToneSeconds + kMostToneSeconds) return false;
        return fail(Error{"The reference tone did not end, so that nothing could be sent: take it off the input."});
    }
    toneHz.reset();
    rest();
    return false;
}

void LoopbackCheck::Bench::takeDelay(const Snapshot& s) {
    const std::int64_t began = sender.firstSampleNs();
    if (began == 0 || !onset || s.traces.empty() || !s.reading.speed.unitMs) return;
    const double ended = s.traces.back()->startSeconds + (s.levels + 1) * 1e-3 * *s.reading.speed.unitMs;
    const double onsetNs = static_cast<double>(s.newestStampNs) - 1e9 * (ended - *onset / source.rateHz());
    found.delayMs = 1e-6 * (onsetNs - static_cast<double>(began));
}

void LoopbackCheck::Bench::take(const Snapshot& s) {
    const Reading& r = s.reading;
    CheckRow row{QT_TRANSLATE_NOOP("CheckWords", "100 baud through the card"), kLoopbackBiases[bias], {0.0, -1.0}};
    if (r.distortion.biasPercent) row.read = *r.distortion.biasPercent;
    found.rows.push_back(row);
    found.gaps += r.input.gaps + static_cast<long>(sender.missedSamples() > 0);
    if (bias > 0) return;
    found.couplingHz = r.input.couplingHz;
    found.snrDb = r.input.snrDb;
    found.riseMs = r.input.riseToMarkMs;
    takeDelay(s);
}

// The measuring begins when the signal is there: silence before it is a level that is neither mark nor space.
bool LoopbackCheck::Bench::hears() {
    if (begun) return true;
    const auto snapshot = latest->take();
    if (!snapshot || snapshot->levelDbfs < kSilentDbfs) return false;
    if (!heardSince) heardSince = Clock::now();
    if (secondsSince(*heardSince) < 2.0 * ReferenceSignal::kRampSeconds) return false;  // until it has its full size
    if (const auto stretches = recent->stretches(); bias == 0 && !stretches.empty())
        onset = onsetSample(stretches.back(), source.rateHz());
    analysis->restart();
    begun = true;
    return true;
}

bool LoopbackCheck::Bench::stepBias() {
    if (resting) {
        if (secondsSince(since) < kRestSeconds) return false;
        if (const Outcome started = startBias(); !started) return fail(started.error());
    }
    const auto snapshot = latest->take();
    if (!hears() || charactersIn(snapshot.get()) < kCharacters + kSettling) {
        if (secondsSince(since) < kMostSeconds) return false;
        return fail(
            Error{snapshot && snapshot->state == SignalState::silent
                      ? "Nothing comes back from the output: is the cable in, and are both levels up?"
                      : "What comes back could not be read: check the cable, the levels and the devices chosen."});
    }
    take(*snapshot);
    if (++bias == std::size(kLoopbackBiases)) {
        result = found;
        return finish();
    }
    rest();
    return false;
}

LoopbackCheck::LoopbackCheck(SoundDevice input, SoundDevice output, std::optional<double> toneHz)
    : bench_(std::make_unique<Bench>(std::move(input), std::move(output), toneHz)) {}

LoopbackCheck::~LoopbackCheck() { bench_->finish(); }

Outcome LoopbackCheck::start() {
    Bench& b = *bench_;
    if (Outcome opened = b.source.start(b.ring); !opened) return opened;
    b.found.input = b.source.device().title();
    b.found.output = b.output.title();
    b.found.rateHz = b.source.rateHz();
    b.listenAnew();
    if (!b.toneHz) b.rest();
    return done();
}

bool LoopbackCheck::poll() {
    Bench& b = *bench_;
    if (b.over) return true;
    if (b.source.state() == SourceState::lost) return b.fail(Error{"The sound input has stopped sending."});
    if (b.toneHz) return b.stepTone();
    if (b.sender.state() == SourceState::lost) return b.fail(Error{"The sound output has stopped taking the signal."});
    return b.stepBias();
}

double LoopbackCheck::progress() const {
    if (bench_->over) return 1.0;
    if (bench_->toneHz) return 0.3 * secondsSince(bench_->since) / kToneSeconds;
    const auto snapshot = bench_->latest ? bench_->latest->take() : nullptr;
    const double part = static_cast<double>(charactersIn(snapshot.get())) / (kCharacters + kSettling);
    const double begun = bench_->found.clock || !bench_->found.clockWords.empty() ? 0.3 : 0.0;
    return begun +
           (1.0 - begun) * (static_cast<double>(bench_->bias) + std::min(part, 1.0)) / std::size(kLoopbackBiases);
}

const Result<LoopbackResult>& LoopbackCheck::result() const { return bench_->result; }

Result<std::pair<SoundDevice, SoundDevice>> loopbackDevices(const std::string& names) {
    const Result<DeviceList> all = PortAudioSource::devices();
    if (!all) return all.error();
    const auto find = [&](const std::string& name, bool output) -> const SoundDevice* {
        for (const SoundDevice& d : *all) {
            if ((output ? d.outputChannels : d.inputChannels) < 1) continue;
            if (!name.empty() ? d.name == name || d.title() == name : output ? d.defaultOutput : d.defaultInput)
                return &d;
        }
        return nullptr;
    };
    for (std::size_t comma = names.find(','); comma != std::string::npos; comma = names.find(',', comma + 1)) {
        const SoundDevice* input = find(names.substr(0, comma), false);
        const SoundDevice* output = find(names.substr(comma + 1), true);
        if (input && output) return std::pair{*input, *output};
    }
    return Error{"--loopback wants an input and an output with a comma between, as trueunit inputs lists them."};
}

}  // namespace trueunit
