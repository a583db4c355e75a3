// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <atomic>
#include <memory>
#include <mutex>
#include <optional>
#include <thread>

#include "core/acquire/recent_input.h"
#include "core/acquire/sample_ring.h"
#include "core/detect/line_model.h"
#include "core/options.h"
#include "core/report/latest_snapshot.h"
#include "core/report/limits.h"

namespace trueunit {

// Pops the ring, owns the pipeline, publishes snapshots: at most forty a second, so a character is shown within 25 ms
// of its being measured. Ring and latest are the owner's and outlive this object. Every block goes to recent as well,
// when there is one.
//
// Threads: constructor, destructor, change and finish belong to the owner; all else happens on the thread inside.
class AnalysisThread {
public:
    AnalysisThread(SampleRing& ring, LatestSnapshot& latest, double rateHz, Options options, Limits limits,
                   std::shared_ptr<RecentInput> recent = nullptr,
                   std::shared_ptr<const LineModel> learned = nullptr);  // of the wiring, ahead

    // From the next block on. What concerns the readings only leaves the record as it is; for the rest the record
    // begins anew, and what has been learned of the wiring is kept as far as it still holds.
    void change(Options options, Limits limits);
    // The signal comes from elsewhere now (the other channel): all begins anew.
    void restart();
    // The source has come to its end: measure what the ring still holds, and let go what waits for more.
    void finish();
    // The program plays its own tone, or no longer does: is it heard in what is measured?
    void expectTone(bool playing) { tonePlays_.store(playing, std::memory_order_relaxed); }
    bool toneHeard() const { return toneHeard_.load(std::memory_order_relaxed); }

private:
    struct Change {
        Options options;
        Limits limits;
    };
    struct Begin {
        Change as;
        std::shared_ptr<const LineModel> learned;
    };
    struct Requests {
        std::optional<Change> change;
        bool restart = false;
        bool finish = false;
    };

    void run(const std::stop_token& stop, const Begin& first);
    Requests takeRequests();

    SampleRing& ring_;
    LatestSnapshot& latest_;
    const double rateHz_;
    const std::shared_ptr<RecentInput> recent_;
    std::atomic<bool> tonePlays_{false};  // the owner's word to the thread inside
    std::atomic<bool> toneHeard_{false};  // and its answer
    std::mutex mutex_;
    Requests requests_;    // guarded by mutex_
    std::jthread thread_;  // last: it starts when all else is there, and ends first
};

}  // namespace trueunit
