// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acquire/recording_source.h"

#include <chrono>
#include <filesystem>

namespace trueunit {

Outcome RecordingSource::start(SampleRing& ring) {
    stop();
    recording_.rewind();
    state_ = SourceState::running;
    thread_ = std::jthread([this, &ring](const std::stop_token& stop) { play(stop, ring); });
    return done();
}

void RecordingSource::stop() {
    if (thread_.joinable()) {
        thread_.request_stop();
        thread_.join();
    }
    state_ = SourceState::idle;
}

std::string RecordingSource::description() const {
    std::string text = std::filesystem::path(recording_.path()).filename().string();
    if (recording_.channels() == 2) text += recording_.channel() == 0 ? ", left" : ", right";
    if (recording_.channels() > 2) text += ", channel " + std::to_string(recording_.channel() + 1);
    return text;
}

// The pace is kept against the start, so that a late wake-up is caught up and nothing drifts.
void RecordingSource::play(const std::stop_token& stop, SampleRing& ring) {
    using Clock = std::chrono::steady_clock;
    const Clock::time_point begin = Clock::now();
    const double rate = recording_.rateHz();
    SampleBlock block;
    for (std::uint64_t played = 0; !stop.stop_requested();) {
        const std::size_t got = recording_.read(block.samples);
        if (got < SampleBlock::kSamples) break;  // the last few milliseconds, less than a block, are left out
        block.firstSample = played;
        played += SampleBlock::kSamples;
        const std::chrono::duration<double> due(static_cast<double>(played) / rate);
        std::this_thread::sleep_until(begin + std::chrono::duration_cast<Clock::duration>(due));
        block.stampNs = Clock::now().time_since_epoch() / std::chrono::nanoseconds(1);
        ring.tryPush(block);
    }
    if (!stop.stop_requested()) state_ = SourceState::finished;
}

}  // namespace trueunit
