// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <condition_variable>
#include <deque>
#include <mutex>
#include <stop_token>
#include <thread>
#include <vector>

#include "core/acquire/dropout_watch.h"
#include "core/acquire/level_meter.h"
#include "core/acquire/recording.h"
#include "core/condition/chunk_ahead.h"

namespace trueunit {

// Reads a recording of a line that is known already and conditions it, on a thread of its own, a few batches ahead of
// whoever takes them; so reading and conditioning share the work with timing and all that follows. The samples stay
// here: handing them over as well costs more than conditioning them. The recording is the thread's while this lives.
// next() and last() belong to one thread. Memory is that of the batches.
class RecordingAhead {
public:
    using Batch = std::vector<ChunkAhead>;  // whole chunks of the pipeline, but for the end

    RecordingAhead(Recording& recording, const FoundLine& line);  // from the beginning
    ~RecordingAhead();

    const Batch* next();                               // valid until it is called again; null at the end
    const Conditioned& last() const { return last_; }  // after the end: what the conditioner then let go

private:
    void run(const std::stop_token& stop);
    bool fill(Batch& batch);
    Batch spentBatch();

    Recording& recording_;         // the thread's
    LineConditioner conditioner_;  // the thread's
    LevelMeter meter_;             // the thread's
    DropoutWatch dropouts_;        // the thread's
    std::vector<float> samples_;   // the thread's, of one batch
    Conditioned last_;             // the thread's until ended_
    Batch taken_;                  // the taker's

    std::mutex mutex_;  // of what follows
    std::condition_variable_any changed_;
    std::deque<Batch> ready_;
    std::vector<Batch> spent_;  // to be filled again
    bool ended_ = false;

    std::jthread thread_;
};

}  // namespace trueunit
