// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session.h"

#include "app/analysis_thread.h"
#include "app/demonstration.h"
#include "app/portaudio_source.h"
#include "core/acquire/recording_source.h"
#include "core/pipeline.h"
#include "core/recording_run.h"
#include "core/simulate/scenario_source.h"

namespace trueunit {

namespace {
constexpr int kWatchMs = 200;
constexpr double kAtWorkSeconds = 2.5;  // of a simulated machine: long enough for a reading as soon as one looks
}  // namespace

// A source that has been opened and is pushing into its own ring, not yet listened to.
struct Session::Opened {
    SourceKind kind = SourceKind::none;
    std::unique_ptr<SampleRing> ring = std::make_unique<SampleRing>();
    std::unique_ptr<SampleSource> source;
    PortAudioSource* soundInput = nullptr;
    RecordingSource* recording = nullptr;
    ScenarioSource* scenario = nullptr;
    std::unique_ptr<Scenario> scenarioPlayed;
    std::string origin;
    std::shared_ptr<const LineModel> learned;  // of a recording's wiring
};

Session::Session(Options options, Limits limits, QObject* parent)
    : QObject(parent), options_(std::move(options)), limits_(std::move(limits)) {
    connect(&watchTimer_, &QTimer::timeout, this, &Session::watch);
    watchTimer_.start(kWatchMs);
}

Session::~Session() {
    analysis_.reset();
    if (source_) source_->stop();
}

void Session::stop() {
    analysis_.reset();
    if (source_) source_->stop();
    source_.reset();
    ring_.reset();
    soundInput_ = nullptr;
    recording_ = nullptr;
    scenario_ = nullptr;
    scenarioPlayed_.reset();
    kind_ = SourceKind::none;
    emit sourceChanged();
}

// The new source is started before the old one is let go, so a refusal changes nothing.
Outcome Session::swap(Opened opened) {
    if (Outcome started = opened.source->start(*opened.ring); !started) return started;
    analysis_.reset();
    if (source_) source_->stop();
    source_ = std::move(opened.source);
    ring_ = std::move(opened.ring);
    kind_ = opened.kind;
    origin_ = std::move(opened.origin);
    soundInput_ = opened.soundInput;
    recording_ = opened.recording;
    scenario_ = opened.scenario;
    scenarioPlayed_ = std::move(opened.scenarioPlayed);
    learned_ = std::move(opened.learned);
    channelSaid_ = again_ = false;
    missed_.reset();
    measure();
    emit sourceChanged();
    return done();
}

void Session::measure() {
    endSaid_ = false;
    Snapshot empty;
    const auto before = latest_.take();
    empty.serial = before ? before->serial + 1 : 1;
    empty.options = options_;
    empty.limits = limits_;
    latest_.publish(std::move(empty));
    recent_ = std::make_shared<RecentInput>(source_->rateHz());
    analysis_ =
        std::make_unique<AnalysisThread>(*ring_, latest_, source_->rateHz(), options_, limits_, recent_, learned_);
    analysis_->expectTone(tonePlays_);
}

// The same source from its beginning; what the person has frozen, named or turned stays.
Outcome Session::measureAgain() {
    analysis_.reset();
    source_->stop();
    auto ring = std::make_unique<SampleRing>();
    if (recording_) {
        recording_->setFast(true);
        if (Result<Recording> anew = Recording::open(std::string(origin_)); anew) {
            learned_ = learnWiring(*anew, options_, limits_);
            recording_->setChannel(anew->channel());
        }
    }
    if (scenario_) scenario_->setFast(true);
    if (Outcome started = source_->start(*ring); !started) return started;
    ring_ = std::move(ring);
    again_ = true;
    measure();
    emit measuredAgain(QString::fromStdString(sourceDescription() + " is measured again with the new options."));
    return done();
}

Outcome Session::listen(const SoundDevice& device, int channel) {
    const auto open = [&](const SoundDevice& which, int side) {
        Opened opened;
        auto source = std::make_unique<PortAudioSource>(which, side);
        opened.kind = SourceKind::soundInput;
        opened.origin = which.hostApi + ": " + which.name;
        opened.soundInput = source.get();
        opened.source = std::move(source);
        return swap(std::move(opened));
    };
    Outcome outcome = open(device, channel);
    if (outcome || !soundInput_ || !soundInput_->device().sameAs(device)) return outcome;
    // Many devices open only once: let go of it, and take it back when that does not help.
    const SoundDevice before = soundInput_->device();
    const int sideBefore = soundInput_->channel();
    analysis_.reset();
    source_->stop();
    outcome = open(device, channel);
    if (!outcome && !open(before, sideBefore)) stop();
    return outcome;
}

Outcome Session::playRecording(const std::string& path) {
    Result<Recording> recording = Recording::open(path);
    if (!recording) return recording.error();
    Opened opened;
    opened.kind = SourceKind::recording;
    opened.origin = path;
    opened.learned = learnWiring(*recording, options_, limits_);  // its first character is then read like its last
    auto source = std::make_unique<RecordingSource>(std::move(*recording));
    source->setFast(fast_);
    opened.recording = source.get();
    opened.source = std::move(source);
    return swap(std::move(opened));
}

std::optional<Session::Playback> Session::playback() const {
    if (!recording_) return std::nullopt;
    return Playback{recording_->playedSeconds(), recording_->seconds(), recording_->paused()};
}

void Session::setPaused(bool paused) {
    if (!recording_) return;
    recording_->setPaused(paused);
    emit playbackMoved();
}

void Session::setFast(bool fast) {
    fast_ = fast;
    if (recording_) recording_->setFast(fast);
    emit playbackMoved();
}

Outcome Session::replay() { return recording_ ? playRecording(std::string(origin_)) : done(); }

Outcome Session::play(Result<Scenario> scenario, std::string origin) {
    if (!scenario) return scenario.error();
    Opened opened;
    opened.kind = SourceKind::scenario;
    opened.origin = std::move(origin);
    opened.scenarioPlayed = std::make_unique<Scenario>(*scenario);
    auto source = std::make_unique<ScenarioSource>(std::move(*scenario), kAtWorkSeconds);
    opened.scenario = source.get();
    opened.source = std::move(source);
    return swap(std::move(opened));
}

Outcome Session::playScenario(const std::string& path) { return play(readScenario(path), path); }

Outcome Session::playDemonstration() { return play(demonstrationScenario(), "demonstration"); }

SourceState Session::sourceState() const { return source_ ? source_->state() : SourceState::idle; }

std::string Session::sourceDescription() const { return source_ ? source_->description() : std::string(); }

Outcome Session::setOptions(const Options& options) {
    if (const auto problem = options.problem()) return *problem;
    const bool again = ended() && !Pipeline::sameRecord(options, options_);
    options_ = options;
    if (analysis_) analysis_->change(options_, limits_);
    emit optionsChanged();
    return again ? measureAgain() : done();
}

void Session::setLimits(const Limits& limits) {
    limits_ = limits;
    if (analysis_) analysis_->change(options_, limits_);
    emit optionsChanged();
}

void Session::turnEccentric(double biasPercent) {
    if (scenario_) scenario_->turnEccentric(biasPercent);
}

double Session::eccentricPercent() const { return scenario_ ? scenario_->eccentricPercent() : 0.0; }

void Session::expectTone(bool playing) {
    tonePlays_ = playing;
    if (analysis_) analysis_->expectTone(playing);
}

bool Session::toneHeard() const { return tonePlays_ && analysis_ && analysis_->toneHeard(); }

Result<DeviceList> Session::soundInputs() {
    const Result<DeviceList> all = PortAudioSource::devices();
    if (!all) return all.error();
    return inputsOf(*all);
}

Result<DeviceList> Session::rescanSoundInputs() {
    if (soundInput_) {
        missed_ = soundInput();
        missedChannel_ = channel();
        stop();
    }
    const Result<DeviceList> all = PortAudioSource::relist();
    if (const std::optional<SoundDevice> wanted = missed_; wanted && all)
        if (const Outcome again = listen(*wanted, missedChannel_); !again)
            emit sourceLost(QString::fromStdString(again.error().text));
    if (!all) return all.error();
    return inputsOf(*all);
}

std::optional<SoundDevice> Session::soundInput() const {
    if (!soundInput_) return std::nullopt;
    return soundInput_->device();
}

int Session::channels() const { return soundInput_ ? soundInput_->channels() : 0; }

int Session::channel() const { return soundInput_ ? soundInput_->channel() : 0; }

void Session::setChannel(int channel) {
    if (!soundInput_) return;
    soundInput_->setChannel(channel);
    channelSaid_ = true;  // the person has chosen
    if (analysis_) analysis_->restart();
    emit sourceChanged();
}

void Session::watch() {
    if (recording_ && !endSaid_) emit playbackMoved();
    const SourceState state = sourceState();
    if (!endSaid_ && (state == SourceState::finished || state == SourceState::lost)) {
        endSaid_ = true;
        const std::string what = sourceDescription();
        if (analysis_) analysis_->finish();
        if (state == SourceState::lost) source_->stop();
        if (state == SourceState::finished)
            emit sourceEnded(QString::fromStdString(
                what + (again_ ? " has been measured again with the new options." : " has come to its end.")));
        else
            emit sourceLost(QString::fromStdString("The sound input " + what +
                                                   " has stopped sending; F5 listens to it again when it is back."));
    }
    if (!soundInput_ || channelSaid_) return;
    if (const std::optional<int> stronger = soundInput_->strongerChannel()) {
        channelSaid_ = true;
        emit strongerChannel(*stronger);
    }
}

}  // namespace trueunit
