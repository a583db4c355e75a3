// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/portaudio_source.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "app/portaudio_stream.h"
#include "app/sound_capture.h"

namespace trueunit {

namespace {

constexpr std::int64_t kSilenceNs = 1'000'000'000;  // a callback older than this: the device is gone
constexpr double kLatencySeconds = 0.05;            // short beside 250 ms, long enough not to lose
constexpr double kStrongerBy = 30.0;                // in energy, 15 dB: no question of a little crosstalk

}  // namespace

struct PortAudioSource::Stream : PortAudioStream {
    Stream(SampleRing& ring, int captured) : capture(ring, captured), channels(captured) {}

    SoundCapture capture;
    const int channels;

    // The library hands back what it was given: the stream.
    static int callback(const void* input, void*, unsigned long frames, const PaStreamCallbackTimeInfo*,
                        PaStreamCallbackFlags flags, void* self) noexcept {
        if (!input) return paContinue;
        SoundCapture& capture = static_cast<Stream*>(static_cast<PortAudioStream*>(self))->capture;
        const bool more = capture.capture(static_cast<const float*>(input), frames, (flags & paInputOverflow) != 0);
        return more ? paContinue : paAbort;
    }

protected:
    void useRate(double rate) override { capture.setRate(rate); }
    void release() override { capture.release(); }
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
    const PortAudioStream::Order order{true, stream->channels, kLatencySeconds, paClipOff, &Stream::callback};
    if (Outcome started = PortAudioStream::start(stream, device_, order); !started) return started;
    energySeen_ = {};
    stream_ = std::move(stream);
    return done();
}

void PortAudioSource::stop() { PortAudioStream::stop(std::exchange(stream_, nullptr)); }

SourceState PortAudioSource::state() const {
    if (!stream_) return SourceState::idle;
    const bool silent = stream_->silentFor(stream_->capture.lastCallNs.load(std::memory_order_relaxed), kSilenceNs);
    return silent || !stream_->active() ? SourceState::lost : SourceState::running;
}

double PortAudioSource::rateHz() const { return stream_ ? stream_->rateHz() : device_.defaultRateHz; }

double PortAudioSource::inputLatencyMs() const {
    const PaStreamInfo* info = stream_ ? stream_->info() : nullptr;
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
