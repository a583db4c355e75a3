// SPDX-License-Identifier: GPL-3.0-or-later
// The beat tone through the sound library; beside portaudio_source the only place that opens a stream.
#include <algorithm>
#include <chrono>

#include "app/beat_tone.h"
#include "app/portaudio_library.h"
#include "app/quiet_stderr.h"
#include "app/time_limit.h"
#include "app/tone_player.h"

namespace trueunit {

namespace {

constexpr std::chrono::milliseconds kOpenLimit{5000};
constexpr std::chrono::milliseconds kCloseLimit{1000};
constexpr double kLatencySeconds = 0.08;

std::optional<SoundDevice> chosenOutput(const DeviceList& outputs, const std::optional<SoundDevice>& wanted) {
    if (wanted) return findDevice(outputs, wanted->name, wanted->hostApi);
    for (const SoundDevice& d : outputs)
        if (d.defaultOutput) return d;
    if (outputs.empty()) return std::nullopt;
    return outputs.front();
}

}  // namespace

// Owned jointly by the player and whichever helper thread opens or closes it, so that a hanging one harms nobody.
struct TonePlayer::Stream {
    BeatTone tone;
    PaStream* handle = nullptr;
    PaError error = paNoError;
    std::atomic<bool> settled{false};  // set by whoever is first: the helper that has opened, or the owner giving up
    std::optional<SoundLibrary::OpenStream> counted{std::in_place};

    static int callback(const void*, void* output, unsigned long frames, const PaStreamCallbackTimeInfo*,
                        PaStreamCallbackFlags, void* self) noexcept {
        static_cast<Stream*>(self)->tone.render(static_cast<float*>(output), frames);
        return paContinue;
    }

    void open(const SoundDevice& device) {
        const PaStreamParameters parameters{device.index, 1, paFloat32, kLatencySeconds, nullptr};
        for (const double rate : {48000.0, device.defaultRateHz, 44100.0}) {
            tone.setRate(rate);
            error = Pa_OpenStream(&handle, nullptr, &parameters, rate, paFramesPerBufferUnspecified, paNoFlag,
                                  &Stream::callback, this);
            if (error != paNoError) continue;
            error = Pa_StartStream(handle);
            if (error == paNoError) return;
            Pa_CloseStream(handle);
            handle = nullptr;
        }
        counted.reset();
    }

    void close() {
        if (!handle) return;
        Pa_AbortStream(handle);  // never stop: it waits for a device that may be gone
        Pa_CloseStream(handle);
        handle = nullptr;
        counted.reset();
    }
};

TonePlayer::~TonePlayer() { stop(); }

Result<DeviceList> TonePlayer::outputs() {
    const Result<DeviceList> all = SoundLibrary::instance().devices();
    if (!all) return all.error();
    DeviceList out;
    std::copy_if(all->begin(), all->end(), std::back_inserter(out), [](const auto& d) { return d.outputChannels > 0; });
    return out;
}

Outcome TonePlayer::start(const std::optional<SoundDevice>& output) {
    const Result<DeviceList> list = outputs();
    if (!list) return list.error();
    const std::optional<SoundDevice> device = chosenOutput(*list, output);
    if (!device) return Error{"There is no sound output to play the tone on."};
    auto stream = std::make_shared<Stream>();
    hand(*stream);
    const QuietStderr quiet;
    const bool answered = finishesWithin(kOpenLimit, [stream, device = *device] {
        stream->open(device);
        if (stream->settled.exchange(true)) stream->close();  // nobody waits any more
    });
    if (!answered && !stream->settled.exchange(true))
        return Error{"The sound output \"" + device->title() + "\" does not answer."};
    if (stream->error != paNoError)
        return Error{"The sound output \"" + device->title() +
                     "\" cannot be opened: " + SoundLibrary::errorText(stream->error) + "."};
    stop();
    device_ = *device;
    stream_ = std::move(stream);
    return done();
}

void TonePlayer::stop() {
    if (!stream_) return;
    finishesWithin(kCloseLimit, [stream = stream_] { stream->close(); });  // a hanging one is abandoned
    stream_.reset();
}

bool TonePlayer::lost() const { return stream_ && Pa_IsStreamActive(stream_->handle) != 1; }

std::string TonePlayer::outputTitle() const { return device_.title(); }

void TonePlayer::hand(Stream& stream) const {
    stream.tone.setBias(bias_.value_or(0.0));
    stream.tone.setKnown(bias_.has_value());
    stream.tone.setVolume(volume_);
    stream.tone.setMuted(muted_);
}

void TonePlayer::setBias(std::optional<double> percent) {
    bias_ = percent;
    if (stream_) hand(*stream_);
}

void TonePlayer::setVolume(double volume) {
    volume_ = std::clamp(volume, 0.0, 1.0);
    if (stream_) hand(*stream_);
}

void TonePlayer::setMuted(bool muted) {
    muted_ = muted;
    if (stream_) hand(*stream_);
}

}  // namespace trueunit
