// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/portaudio_output.h"

#include <algorithm>
#include <chrono>

#include "app/portaudio_library.h"
#include "app/quiet_stderr.h"
#include "app/sound_playback.h"
#include "app/time_limit.h"

namespace trueunit {

namespace {

constexpr std::chrono::milliseconds kOpenLimit{5000};
constexpr std::chrono::milliseconds kCloseLimit{1000};
constexpr std::int64_t kSilenceNs = 1'500'000'000;  // a callback older than this: the device is gone
constexpr double kLatencySeconds = 0.1;             // asked of the driver: nobody waits for it, and it must not run dry
constexpr double kNativeRateHz = 48000.0;           // of most cards and servers

std::int64_t nowNs() { return std::chrono::steady_clock::now().time_since_epoch() / std::chrono::nanoseconds(1); }

}  // namespace

// Owned jointly by the output and whichever helper thread opens or closes it, so that a hanging one harms nobody.
struct PortAudioOutput::Stream {
    Stream(SampleRing& ring, int count) : playback(ring, count), channels(count) {}

    SoundPlayback playback;
    const int channels;
    double rateHz = 0.0;
    PaStream* handle = nullptr;
    PaError error = paNoError;
    std::int64_t startedNs = 0;
    std::atomic<bool> settled{false};  // set by whoever is first: the helper that has opened, or the owner giving up
    std::optional<SoundLibrary::OpenStream> counted{std::in_place};

    static int callback(const void*, void* output, unsigned long frames, const PaStreamCallbackTimeInfo*,
                        PaStreamCallbackFlags, void* self) noexcept {
        if (!output) return paContinue;
        return static_cast<Stream*>(self)->playback.play(static_cast<float*>(output), frames) ? paContinue : paAbort;
    }

    void open(const SoundDevice& device) {
        const PaDeviceInfo* info = Pa_GetDeviceInfo(device.index);
        error = info ? paNoError : paInvalidDevice;
        if (info) {
            const double latency = std::max(info->defaultLowOutputLatency, kLatencySeconds);
            const PaStreamParameters parameters{device.index, channels, paFloat32, latency, nullptr};
            for (const double rate : {kNativeRateHz, device.defaultRateHz, 44100.0}) {
                error = Pa_OpenStream(&handle, nullptr, &parameters, rate, paFramesPerBufferUnspecified, paClipOff,
                                      &Stream::callback, this);
                if (error != paNoError) continue;
                rateHz = rate;
                error = Pa_StartStream(handle);
                if (error == paNoError) return;
                Pa_CloseStream(handle);
                handle = nullptr;
            }
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

PortAudioOutput::PortAudioOutput(SoundDevice device) : device_(std::move(device)) {}

PortAudioOutput::~PortAudioOutput() { stop(); }

Outcome PortAudioOutput::start(SampleRing& ring) {
    stop();
    const Result<DeviceList> list = SoundLibrary::instance().devices();
    if (!list) return list.error();
    const std::optional<SoundDevice> present = findDevice(*list, device_.name, device_.hostApi);
    if (!present || present->outputChannels < 1)
        return Error{"The sound output \"" + device_.title() + "\" is not there any more."};
    device_ = *present;

    auto stream = std::make_shared<Stream>(ring, std::min(device_.outputChannels, 2));
    const QuietStderr quiet;
    const bool answered = finishesWithin(kOpenLimit, [stream, device = device_] {
        stream->open(device);
        if (stream->settled.exchange(true)) stream->close();  // nobody waits any more
    });
    if (!answered && !stream->settled.exchange(true)) {
        stream->playback.release();
        return Error{"The sound output \"" + device_.title() + "\" does not answer."};
    }
    if (stream->error != paNoError)
        return Error{"The sound output \"" + device_.title() +
                     "\" cannot be opened: " + SoundLibrary::errorText(stream->error) + "."};
    stream->startedNs = nowNs();
    stream_ = std::move(stream);
    return done();
}

void PortAudioOutput::stop() {
    if (!stream_) return;
    stream_->playback.release();
    finishesWithin(kCloseLimit, [stream = stream_] { stream->close(); });  // a hanging one is abandoned
    stream_.reset();
}

SourceState PortAudioOutput::state() const {
    if (!stream_) return SourceState::idle;
    const std::int64_t lastCall = stream_->playback.lastCallNs.load(std::memory_order_relaxed);
    const bool silent = nowNs() - std::max(lastCall, stream_->startedNs) > kSilenceNs;
    return silent || Pa_IsStreamActive(stream_->handle) != 1 ? SourceState::lost : SourceState::running;
}

double PortAudioOutput::rateHz() const { return stream_ ? stream_->rateHz : device_.defaultRateHz; }

std::int64_t PortAudioOutput::firstSampleNs() const {
    return stream_ ? stream_->playback.firstSampleNs.load(std::memory_order_relaxed) : 0;
}

std::uint64_t PortAudioOutput::playedSamples() const {
    return stream_ ? stream_->playback.played.load(std::memory_order_relaxed) : 0;
}

std::uint64_t PortAudioOutput::missedSamples() const {
    return stream_ ? stream_->playback.missed.load(std::memory_order_relaxed) : 0;
}

Result<SoundDevice> soundOutput(const std::string& name) {
    const Result<DeviceList> all = SoundLibrary::instance().devices();
    if (!all) return all.error();
    std::optional<SoundDevice> first;
    for (const SoundDevice& d : *all) {
        if (d.outputChannels < 1) continue;
        if (!name.empty() ? d.name == name || d.title() == name : d.defaultOutput) return d;
        if (!first) first = d;
    }
    if (!name.empty()) return Error{"There is no sound output \"" + name + "\"; trueunit inputs lists them."};
    if (first) return *first;
    return Error{"There is no sound output."};
}

}  // namespace trueunit
