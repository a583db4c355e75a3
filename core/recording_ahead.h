// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <condition_variable>
#include <cstdint>
#include <deque>
#include <mutex>
#include <optional>
#include <stop_token>
#include <thread>
#include <vector>

#include "core/acquire/recording.h"
#include "core/condition/line_conditioner.h"

namespace trueunit {

// Reads a recording, and conditions its line when that is known already, on a thread of its own, a few batches ahead of
// whoever takes them; so reading and conditioning share the work with timing and all that follows. The recording is the
// thread's while this lives. next() and last() belong to one thread. Memory is that of the batches.
class RecordingAhead {
public:
    struct Batch {
        std::vector<float> samples;     // whole chunks of the pipeline, but for the end
        std::vector<Conditioned> line;  // of each chunk; empty when the line is not known
    };

    // From the beginning, so many samples at most.
    RecordingAhead(Recording& recording, std::uint64_t most, const std::optional<FoundLine>& line);
    ~RecordingAhead();

    const Batch* next();                               // valid until it is called again; null at the end
    const Conditioned& last() const { return last_; }  // after the end: what the conditioner then let go

private:
    void run(const std::stop_token& stop, std::uint64_t left);
    bool fill(Batch& batch, std::uint64_t& left);
    Batch spentBatch();

    Recording& recording_;                        // the thread's
    std::optional<LineConditioner> conditioner_;  // the thread's
    Conditioned last_;                            // the thread's until ended_
    Batch taken_;                                 // the taker's

    std::mutex mutex_;  // of what follows
    std::condition_variable_any changed_;
    std::deque<Batch> ready_;
    std::vector<Batch> spent_;  // to be filled again
    bool ended_ = false;

    std::jthread thread_;
};

}  // namespace trueunit
