// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <atomic>
#include <chrono>
#include <cstdint>
#include <string>
#include <thread>

#include "core/acquire/recording.h"
#include "core/acquire/sample_source.h"

namespace trueunit {

// Plays a recording into the ring at its own pace, as a sound input would, or as fast as the other end takes it. Each
// start begins at the beginning. Owns the recording and the thread that pushes; start and stop belong to the owner's
// thread, all else to anyone.
class RecordingSource : public SampleSource {
public:
    explicit RecordingSource(Recording recording) : recording_(std::move(recording)) {}
    ~RecordingSource() override { stop(); }

    Outcome start(SampleRing& ring) override;
    void stop() override;
    SourceState state() const override { return state_.load(); }
    double rateHz() const override { return recording_.rateHz(); }
    std::string description() const override;

    void setChannel(int channel) { recording_.setChannel(channel); }  // while stopped
    void setPaused(bool paused) { paused_ = paused; }
    bool paused() const { return paused_; }
    void setFast(bool fast) { fast_ = fast; }  // waits for the other end, so that nothing is lost
    double seconds() const { return recording_.seconds(); }
    double playedSeconds() const { return static_cast<double>(played_) / recording_.rateHz(); }

private:
    using Clock = std::chrono::steady_clock;
    void play(const std::stop_token& stop, SampleRing& ring);

    bool waitForTurn(const std::stop_token& stop, const SampleRing& ring);

    Recording recording_;                   // the push thread's while it runs
    std::atomic<std::uint64_t> played_{0};  // samples; written by the push thread
    std::atomic<bool> paused_{false}, fast_{false};
    Clock::time_point due_;  // the push thread's: when its next block would have been heard
    std::atomic<SourceState> state_{SourceState::idle};
    std::jthread thread_;
};

}  // namespace trueunit
