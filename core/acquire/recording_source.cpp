// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acquire/recording_source.h"

#include <filesystem>

namespace trueunit {

namespace {
constexpr std::chrono::milliseconds kNap{2};
}

Outcome RecordingSource::start(SampleRing& ring) {
    stop();
    recording_.seek(0);
    played_ = 0;
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

// Until the next block may go; false: stopped meanwhile. Paused is not running late: the pace begins anew behind it.
bool RecordingSource::waitForTurn(const std::stop_token& stop, const SampleRing& ring) {
    const bool fast = fast_;
    bool waited = fast;
    while (!stop.stop_requested() && (paused_ || (fast && ring.waitingBlocks() > SampleRing::kBlocks / 2))) {
        waited = true;
        std::this_thread::sleep_for(kNap);
    }
    if (waited) due_ = Clock::now();
    if (!fast) {
        due_ += std::chrono::duration_cast<Clock::duration>(
            std::chrono::duration<double>(SampleBlock::kSamples / recording_.rateHz()));
        std::this_thread::sleep_until(due_);
    }
    return !stop.stop_requested();
}

// The pace is kept against when each block was due, so that a late wake-up is caught up; what the clock's nanosecond
// takes off a block is less than any sound card's error.
void RecordingSource::play(const std::stop_token& stop, SampleRing& ring) {
    due_ = Clock::now();
    SampleBlock block;
    for (;;) {
        const std::size_t got = recording_.read(block.samples);
        if (got < SampleBlock::kSamples) break;  // the last few milliseconds, less than a block, are left out
        if (!waitForTurn(stop, ring)) return;
        block.firstSample = played_;
        block.stampNs = stampNow();
        ring.tryPush(block);
        played_ += SampleBlock::kSamples;
    }
    state_ = SourceState::finished;
}

}  // namespace trueunit
