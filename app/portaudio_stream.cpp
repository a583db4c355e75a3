// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/portaudio_stream.h"

#include <algorithm>
#include <chrono>

#include "app/quiet_stderr.h"
#include "app/time_limit.h"
#include "core/acquire/sample_block.h"

namespace trueunit {

namespace {

constexpr std::chrono::milliseconds kStreamOpenLimit{5000};
constexpr std::chrono::milliseconds kCloseLimit{1000};
constexpr double kNativeRateHz = 48000.0;  // of most cards and servers; the library's default is often 44.1, resampled

// At once: a stop would wait for a device that may be gone. To end so the library cancels its thread, which the thread
// sanitizer cannot follow; under it the device is always there, and waited for.
void endStream(PaStream* stream) {
#ifdef __SANITIZE_THREAD__
    Pa_StopStream(stream);
#else
    Pa_AbortStream(stream);
#endif
}

}  // namespace

Outcome PortAudioStream::start(const std::shared_ptr<PortAudioStream>& stream, const SoundDevice& device,
                               const Order& order) {
    const std::string which =
        std::string("The sound ") + (order.input ? "input" : "output") + " \"" + device.title() + "\"";
    const QuietStderr quiet;
    const bool answered = finishesWithin(kStreamOpenLimit, [stream, device, order] {
        stream->open(device, order);
        if (stream->settled_.exchange(true)) stream->close();  // nobody waits any more
    });
    if (!answered && !stream->settled_.exchange(true)) {
        stream->release();
        return Error{which + " does not answer."};
    }
    if (stream->error_ != paNoError)
        return Error{which + " cannot be opened: " + SoundLibrary::errorText(stream->error_) + "."};
    stream->startedNs_ = stampNow();
    return done();
}

void PortAudioStream::stop(std::shared_ptr<PortAudioStream> stream) {
    if (!stream) return;
    stream->release();
    finishesWithin(kCloseLimit, [stream] { stream->close(); });  // a hanging one is abandoned
}

bool PortAudioStream::silentFor(std::int64_t lastCallNs, std::int64_t longestNs) const {
    return stampNow() - std::max(lastCallNs, startedNs_) > longestNs;
}

void PortAudioStream::open(const SoundDevice& device, const Order& order) {
    const PaDeviceInfo* info = Pa_GetDeviceInfo(device.index);
    error_ = info ? paNoError : paInvalidDevice;
    if (!info) {
        counted_.reset();
        return;
    }
    const double least = order.input ? info->defaultLowInputLatency : info->defaultLowOutputLatency;
    const PaStreamParameters side{device.index, order.channels, paFloat32, std::max(least, order.latencySeconds),
                                  nullptr};
    for (const double rate : {kNativeRateHz, device.defaultRateHz, 44100.0}) {
        error_ = Pa_OpenStream(&handle_, order.input ? &side : nullptr, order.input ? nullptr : &side, rate,
                               paFramesPerBufferUnspecified, order.flags, order.callback, this);
        if (error_ != paNoError) continue;
        rateHz_ = rate;
        useRate(rate);
        error_ = Pa_StartStream(handle_);
        if (error_ == paNoError) return;
        Pa_CloseStream(handle_);
        handle_ = nullptr;
    }
    counted_.reset();
}

void PortAudioStream::close() {
    if (!handle_) return;
    endStream(handle_);
    Pa_CloseStream(handle_);
    handle_ = nullptr;
    counted_.reset();
}

}  // namespace trueunit
