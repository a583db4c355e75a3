// SPDX-License-Identifier: GPL-3.0-or-later
// Tones through the sound library.
#include <algorithm>
#include <iterator>
#include <utility>

#include "app/beat_tone.h"
#include "app/portaudio_stream.h"
#include "app/steady_tone.h"
#include "app/tone_player.h"

namespace trueunit {

namespace {

constexpr double kToneLatencySeconds = 0.08;

std::optional<SoundDevice> chosenOutput(const DeviceList& outputs, const std::optional<SoundDevice>& wanted) {
    if (wanted) return findDevice(outputs, wanted->name, wanted->hostApi);
    for (const SoundDevice& d : outputs)
        if (d.defaultOutput) return d;
    if (outputs.empty()) return std::nullopt;
    return outputs.front();
}

}  // namespace

struct TonePlayer::Stream : PortAudioStream {
    explicit Stream(Voice chosen) : voice(chosen) {}

    const Voice voice;
    BeatTone beats;
    SteadyTone steady;

    // The library hands back what it was given: the stream.
    static int callback(const void*, void* output, unsigned long frames, const PaStreamCallbackTimeInfo*,
                        PaStreamCallbackFlags, void* self) noexcept {
        auto& stream = *static_cast<Stream*>(static_cast<PortAudioStream*>(self));
        auto* out = static_cast<float*>(output);
        if (stream.voice == Voice::steady)
            stream.steady.render(out, frames);
        else
            stream.beats.render(out, frames);
        return paContinue;
    }

protected:
    void useRate(double rate) override {
        beats.setRate(rate);
        steady.setRate(rate);
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
    auto stream = std::make_shared<Stream>(voice_);
    hand(*stream);
    const PortAudioStream::Order order{false, 1, kToneLatencySeconds, paNoFlag, &Stream::callback};
    if (Outcome started = PortAudioStream::start(stream, *device, order); !started) return started;
    stop();
    device_ = *device;
    stream_ = std::move(stream);
    return done();
}

void TonePlayer::stop() { PortAudioStream::stop(std::exchange(stream_, nullptr)); }

bool TonePlayer::lost() const { return stream_ && !stream_->active(); }

std::string TonePlayer::outputTitle() const { return device_.title(); }

void TonePlayer::hand(Stream& stream) const {
    stream.beats.setBias(bias_.value_or(0.0));
    stream.beats.setKnown(bias_.has_value());
    stream.beats.setVolume(volume_);
    stream.beats.setMuted(muted_);
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
