// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/reference_sender.h"

#include <algorithm>
#include <chrono>
#include <vector>

namespace trueunit {

namespace {
constexpr double kAheadSeconds = 0.7;  // kept in the ring: bridges a busy computer, and is forgotten when stopped
constexpr std::chrono::milliseconds kNap{20};
constexpr double kFileSeconds = 60.0;
}  // namespace

Outcome ReferenceSender::start(const SoundDevice& output, const SenderSettings& settings) {
    stop();
    if (const auto problem = settings.problem()) return *problem;
    auto ring = std::make_unique<SampleRing>();
    auto opened = std::make_unique<PortAudioOutput>(output);
    if (Outcome started = opened->start(*ring); !started) return started;
    settings_ = settings;
    ring_ = std::move(ring);
    output_ = std::move(opened);
    filled_ = false;
    thread_ = std::jthread([this, rate = output_->rateHz()](const std::stop_token& stop) { fill(stop, rate); });
    return done();
}

void ReferenceSender::stop() {
    if (thread_.joinable()) {
        thread_.request_stop();
        thread_.join();
    }
    output_.reset();
    ring_.reset();
}

void ReferenceSender::fill(const std::stop_token& stop, double rateHz) {
    ReferenceSignal signal(settings_, rateHz);
    const auto most = static_cast<std::uint64_t>(kAheadSeconds * rateHz / SampleBlock::kSamples);
    SampleBlock block;
    while (!stop.stop_requested()) {
        if (ring_->waitingBlocks() >= std::min(most, SampleRing::kBlocks - 1)) {
            std::this_thread::sleep_for(kNap);
            continue;
        }
        const std::size_t got = signal.read(block.samples);
        std::fill(block.samples.begin() + static_cast<std::ptrdiff_t>(got), block.samples.end(),
                  got > 0 ? block.samples[got - 1] : 0.0F);
        if (got > 0) ring_->tryPush(block);
        block.firstSample += SampleBlock::kSamples;
        if (got < block.samples.size()) break;
    }
    missed_ = output_->missedSamples();  // what is silent from here on is the end
    filled_ = true;
}

SourceState ReferenceSender::state() const {
    if (!output_) return SourceState::idle;
    if (filled_ && ring_->waitingBlocks() == 0) return SourceState::finished;
    return output_->state();
}

std::uint64_t ReferenceSender::missedSamples() const { return output_ && !filled_ ? output_->missedSamples() : 0; }

double ReferenceSender::sentSeconds() const {
    return output_ ? static_cast<double>(output_->playedSamples()) / output_->rateHz() : 0.0;
}

Outcome writeReference(SenderSettings settings, const std::string& path, double rateHz, SampleFormat format) {
    if (const auto problem = settings.problem()) return *problem;
    if (settings.seconds <= 0.0 && settings.repeat) settings.seconds = kFileSeconds;
    Result<RecordingWriter> writer = RecordingWriter::create(path, rateHz, 1, format);
    if (!writer) return writer.error();
    ReferenceSignal signal(settings, rateHz);
    std::vector<float> samples(16384);
    while (const std::size_t got = signal.read(samples))
        if (Outcome written = writer->write({samples.data(), got}); !written) return written;
    return writer->finish();
}

}  // namespace trueunit
