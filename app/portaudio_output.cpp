// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/portaudio_output.h"

#include <algorithm>
#include <utility>

#include "app/portaudio_stream.h"
#include "app/sound_playback.h"

namespace trueunit {

namespace {

constexpr std::int64_t kOutputSilenceNs = 1'500'000'000;  // a callback older than this: the device is gone
constexpr double kOutputLatencySeconds = 0.1;             // nobody waits for it, and it must not run dry

}  // namespace

struct PortAudioOutput::Stream : PortAudioStream {
    Stream(SampleRing& ring, int count) : playback(ring, count) {}

    SoundPlayback playback;

    // The library hands back what it was given: the stream.
    static int callback(const void*, void* output, unsigned long frames, const PaStreamCallbackTimeInfo*,
                        PaStreamCallbackFlags, void* self) noexcept {
        if (!output) return paContinue;
        SoundPlayback& playback = static_cast<Stream*>(static_cast<PortAudioStream*>(self))->playback;
        return playback.play(static_cast<float*>(output), frames) ? paContinue : paAbort;
    }

protected:
    void release() override { playback.release(); }
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

    const int channels = std::min(device_.outputChannels, 2);
    auto stream = std::make_shared<Stream>(ring, channels);
    const PortAudioStream::Order order{false, channels, kOutputLatencySeconds, paClipOff, &Stream::callback};
    if (Outcome started = PortAudioStream::start(stream, device_, order); !started) return started;
    stream_ = std::move(stream);
    return done();
}

void PortAudioOutput::stop() { PortAudioStream::stop(std::exchange(stream_, nullptr)); }

SourceState PortAudioOutput::state() const {
    if (!stream_) return SourceState::idle;
    const bool silent =
        stream_->silentFor(stream_->playback.lastCallNs.load(std::memory_order_relaxed), kOutputSilenceNs);
    return silent || !stream_->active() ? SourceState::lost : SourceState::running;
}

double PortAudioOutput::rateHz() const { return stream_ ? stream_->rateHz() : device_.defaultRateHz; }

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
