// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <atomic>
#include <string>
#include <thread>

#include "core/acquire/recording.h"
#include "core/acquire/sample_source.h"

namespace trueunit {

// Plays a recording into the ring at its own pace, as a sound input would. Each start begins at the beginning.
// Owns the recording and the thread that pushes; start and stop belong to the owner's thread, state to anyone.
class RecordingSource : public SampleSource {
public:
    explicit RecordingSource(Recording recording) : recording_(std::move(recording)) {}
    ~RecordingSource() override { stop(); }

    Outcome start(SampleRing& ring) override;
    void stop() override;
    SourceState state() const override { return state_.load(); }
    double rateHz() const override { return recording_.rateHz(); }
    std::string description() const override;

private:
    void play(const std::stop_token& stop, SampleRing& ring);

    Recording recording_;  // the push thread's while it runs
    std::atomic<SourceState> state_{SourceState::idle};
    std::jthread thread_;
};

}  // namespace trueunit
