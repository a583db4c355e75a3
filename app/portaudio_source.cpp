// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/portaudio_source.h"

#include <algorithm>
#include <chrono>
#include <cmath>

#include "app/portaudio_library.h"
#include "app/quiet_stderr.h"
#include "app/sound_capture.h"
#include "app/time_limit.h"

namespace trueunit {

namespace {

constexpr std::chrono::milliseconds kOpenLimit{5000};
constexpr std::chrono::milliseconds kCloseLimit{1000};
constexpr std::int64_t kSilenceNs = 1'000'000'000;  // a callback older than this: the device is gone
constexpr double kLatencySeconds = 0.05;            // asked of the driver: short beside 250 ms, long enough not to lose
constexpr double kNativeRateHz = 48000.0;  // of most cards and servers; the library's default is often 44.1, resampled
constexpr double kStrongerBy = 30.0;       // in energy, 15 dB: no question of a little crosstalk

std::int64_t nowNs() { return std::chrono::steady_clock::now().time_since_epoch() / std::chrono::nanoseconds(1); }

}  // namespace

// Owned jointly by the source and whichever helper thread opens or closes it, so that a hanging one harms nobody.
struct PortAudioSource::Stream {
    Stream(SampleRing& ring, int captured) : capture(ring, captured), channels(captured) {}

    SoundCapture capture;
    const int channels;
    double rateHz = 0.0;
    PaStream* handle = nullptr;
    PaError error = paNoError;
    std::int64_t startedNs = 0;
    std::atomic<bool> settled{false};  // set by whoever is first: the helper that has opened, or the owner giving up
    std::optional<SoundLibrary::OpenStream> counted{std::in_place};

    static int callback(const void* input, void*, unsigned long frames, const PaStreamCallbackTimeInfo*,
                        PaStreamCallbackFlags flags, void* self) noexcept {
        if (!input) return paContinue;
        SoundCapture& capture = static_cast<Stream*>(self)->capture;
        const bool more = capture.capture(static_cast<const float*>(input), frames, (flags & paInputOverflow) != 0);
        return more ? paContinue : paAbort;
    }

    void open(const SoundDevice& device) {
        const PaDeviceInfo* info = Pa_GetDeviceInfo(device.index);
        if (!info) {
            error = paInvalidDevice;
            counted.reset();
            return;
        }
        const double latency = std::max(info->defaultLowInputLatency, kLatencySeconds);
        const PaStreamParameters parameters{device.index, channels, paFloat32, latency, nullptr};
        for (const double rate : {kNativeRateHz, device.defaultRateHz, 44100.0}) {
            error = Pa_OpenStream(&handle, &parameters, nullptr, rate, paFramesPerBufferUnspecified, paClipOff,
                                  &Stream::callback, this);
            if (error != paNoError) continue;
            rateHz = rate;
            capture.setRate(rate);
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

PortAudioSource::PortAudioSource(SoundDevice device, int channel) : device_(std::move(device)), channel_(channel) {}

PortAudioSource::~PortAudioSource() { stop(); }

Outcome PortAudioSource::start(SampleRing& ring) {
    stop();
    const Result<DeviceList> list = devices();
    if (!list) return list.error();
    const std::optional<SoundDevice> present = findDevice(*list, device_.name, device_.hostApi);
    if (!present || present->inputChannels < 1)
        return Error{"The sound input \"" + device_.title() + "\" is not there any more."};
    device_ = *present;

    auto stream = std::make_shared<Stream>(ring, std::min(device_.inputChannels, 2));
    stream->capture.channel = channel_;
    const QuietStderr quiet;
    const bool answered = finishesWithin(kOpenLimit, [stream, device = device_] {
        stream->open(device);
        if (stream->settled.exchange(true)) stream->close();  // nobody waits any more
    });
    if (!answered && !stream->settled.exchange(true)) {
        stream->capture.release();
        return Error{"The sound input \"" + device_.title() + "\" does not answer."};
    }
    if (stream->error != paNoError)
        return Error{"The sound input \"" + device_.title() +
                     "\" cannot be opened: " + SoundLibrary::errorText(stream->error) + "."};
    stream->startedNs = nowNs();
    energySeen_ = {};
    stream_ = std::move(stream);
    return done();
}

void PortAudioSource::stop() {
    if (!stream_) return;
    stream_->capture.release();
    finishesWithin(kCloseLimit, [stream = stream_] { stream->close(); });  // a hanging one is abandoned
    stream_.reset();
}

SourceState PortAudioSource::state() const {
    if (!stream_) return SourceState::idle;
    const std::int64_t lastCall = stream_->capture.lastCallNs.load(std::memory_order_relaxed);
    const bool silent = nowNs() - std::max(lastCall, stream_->startedNs) > kSilenceNs;
    return silent || Pa_IsStreamActive(stream_->handle) != 1 ? SourceState::lost : SourceState::running;
}

double PortAudioSource::rateHz() const { return stream_ ? stream_->rateHz : device_.defaultRateHz; }

double PortAudioSource::inputLatencyMs() const {
    const PaStreamInfo* info = stream_ ? Pa_GetStreamInfo(stream_->handle) : nullptr;
    return info ? 1e3 * info->inputLatency : 0.0;
}

std::string PortAudioSource::description() const {
    std::string side;
    if (channels() == 2) side = channel() == 0 ? ", left" : ", right";
    const long tenths = std::lround(rateHz() / 100.0);
    const std::string rate = std::to_string(tenths / 10) + (tenths % 10 ? "." + std::to_string(tenths % 10) : "");
    return device_.name + side + " (" + rate + " kHz)";
}

int PortAudioSource::channels() const { return stream_ ? stream_->channels : std::min(device_.inputChannels, 2); }

int PortAudioSource::channel() const { return std::clamp(channel_, 0, std::max(channels() - 1, 0)); }

void PortAudioSource::setChannel(int channel) {
    channel_ = channel;
    if (stream_) stream_->capture.channel.store(channel, std::memory_order_relaxed);
}

std::optional<int> PortAudioSource::strongerChannel() {
    if (!stream_ || stream_->channels < 2) return std::nullopt;
    std::array<double, 2> fresh{};
    for (std::size_t c = 0; c < 2; ++c) {
        const double total = stream_->capture.stepEnergy[c].load(std::memory_order_relaxed);
        fresh[c] = total - energySeen_[c];
        energySeen_[c] = total;
    }
    const auto heard = static_cast<std::size_t>(channel());
    if (fresh[1 - heard] > kStrongerBy * fresh[heard] && fresh[1 - heard] > 0.0) return 1 - channel();
    return std::nullopt;
}

Result<DeviceList> PortAudioSource::devices() { return SoundLibrary::instance().devices(); }

Result<DeviceList> PortAudioSource::relist() { return SoundLibrary::instance().relist(); }

}  // namespace trueunit
