// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/analysis_thread.h"

#include <algorithm>
#include <chrono>
#include <utility>

#include "app/beat_tone.h"
#include "core/acquire/tone_watch.h"
#include "core/pipeline.h"

namespace trueunit {

namespace {

using Clock = std::chrono::steady_clock;
constexpr std::chrono::milliseconds kPublishEvery{25};
constexpr std::chrono::milliseconds kSleep{4};  // less than a block of 256 at 48 kHz

// One pipeline at a time, and the snapshots made of it.
class Run {
public:
    Run(SampleRing& ring, LatestSnapshot& latest, double rateHz, const Options& options, const Limits& limits,
        RecentInput* recent)
        : ring_(ring),
          latest_(latest),
          recent_(recent),
          rateHz_(rateHz),
          options_(options),
          limits_(limits),
          pipeline_(rateHz, options, limits),
          watch_(rateHz, BeatTone::kFixedHz) {}

    void change(const Options& options, const Limits& limits) {
        const bool sameWiring = options.input == options_.input && options.tonesHz == options_.tonesHz;
        options_ = options;
        limits_ = limits;
        fresh_ = true;
        if (pipeline_.adopt(options, limits)) return;
        auto learned = pipeline_.learned();
        pipeline_ = Pipeline(rateHz_, options, limits);
        if (learned && sameWiring) pipeline_.startFrom(std::move(learned));
    }

    void startFrom(std::shared_ptr<const LineModel> learned) { pipeline_.startFrom(std::move(learned)); }

    void restart() {
        if (recent_) recent_->clear();
        pipeline_ = Pipeline(rateHz_, options_, limits_);
        fresh_ = true;
    }

    // One block at most, so that publishing keeps its pace while a backlog is worked off.
    bool step(bool tonePlays) {
        if (finished_ || !ring_.tryPop(block_)) return false;
        if (recent_) recent_->push(block_);
        watch_.push(block_.samples, tonePlays);
        pipeline_.push(block_);
        fresh_ = true;
        return true;
    }

    bool toneHeard() const { return watch_.heard(); }

    void finish() {
        if (finished_) return;
        pipeline_.finish();
        finished_ = true;
        fresh_ = true;
    }

    void publishIfDue() {
        const Clock::time_point now = Clock::now();
        if (!fresh_ || now - published_ < kPublishEvery) return;
        Snapshot snapshot = pipeline_.snapshot();
        const auto before = latest_.take();
        snapshot.serial = before ? before->serial + 1 : 1;  // goes on across pipelines and sources
        snapshot.lostSamples = std::max(snapshot.lostSamples, ring_.droppedBlocks() * SampleBlock::kSamples);
        latest_.publish(std::move(snapshot));
        published_ = now;
        fresh_ = false;
    }

private:
    SampleRing& ring_;
    LatestSnapshot& latest_;
    RecentInput* recent_;
    const double rateHz_;
    Options options_;
    Limits limits_;
    Pipeline pipeline_;
    ToneWatch watch_;
    SampleBlock block_;
    Clock::time_point published_{};
    bool fresh_ = false;
    bool finished_ = false;
};

}  // namespace

AnalysisThread::AnalysisThread(SampleRing& ring, LatestSnapshot& latest, double rateHz, Options options, Limits limits,
                               std::shared_ptr<RecentInput> recent, std::shared_ptr<const LineModel> learned)
    : ring_(ring), latest_(latest), rateHz_(rateHz), recent_(std::move(recent)) {
    Begin first{{std::move(options), std::move(limits)}, std::move(learned)};
    thread_ = std::jthread([this, first = std::move(first)](const std::stop_token& stop) { run(stop, first); });
}

void AnalysisThread::change(Options options, Limits limits) {
    const std::scoped_lock lock(mutex_);
    requests_.change = Change{std::move(options), std::move(limits)};
}

void AnalysisThread::restart() {
    const std::scoped_lock lock(mutex_);
    requests_.restart = true;
}

void AnalysisThread::finish() {
    const std::scoped_lock lock(mutex_);
    requests_.finish = true;
}

AnalysisThread::Requests AnalysisThread::takeRequests() {
    const std::scoped_lock lock(mutex_);
    return std::exchange(requests_, {});
}

void AnalysisThread::run(const std::stop_token& stop, const Begin& first) {
    Run run(ring_, latest_, rateHz_, first.as.options, first.as.limits, recent_.get());
    if (first.learned) run.startFrom(first.learned);
    bool finishing = false;
    while (!stop.stop_requested()) {
        const Requests wanted = takeRequests();
        if (wanted.change) run.change(wanted.change->options, wanted.change->limits);
        if (wanted.restart) run.restart();
        finishing |= wanted.finish;
        const bool busy = run.step(tonePlays_.load(std::memory_order_relaxed));
        toneHeard_.store(run.toneHeard(), std::memory_order_relaxed);
        if (!busy && finishing) run.finish();
        run.publishIfDue();
        if (!busy) std::this_thread::sleep_for(kSleep);
    }
}

}  // namespace trueunit
