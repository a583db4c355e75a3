// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording_ahead.h"

#include <algorithm>
#include <span>
#include <utility>

#include "core/pipeline.h"

namespace trueunit {

namespace {
constexpr std::size_t kBatchChunks = 256;  // a second and more: waking the other thread is dear
constexpr std::size_t kBatchesAhead = 4;
}  // namespace

RecordingAhead::RecordingAhead(Recording& recording, const FoundLine& line)
    : recording_(recording),
      conditioner_(line, recording.rateHz(), 0),
      dropouts_(recording.rateHz()),
      samples_(kBatchChunks * Pipeline::kChunk) {
    conditioner_.keepCoupling();
    startOn(dropouts_, line);
    if (!line.tones) meter_.setRails(line.fit.rails);
    recording_.seek(0);
    thread_ = std::jthread([this](const std::stop_token& stop) { run(stop); });
}

RecordingAhead::~RecordingAhead() = default;  // stops the thread and waits for it

void RecordingAhead::run(const std::stop_token& stop) {
    Batch batch;
    while (!stop.stop_requested() && fill(batch)) {
        std::unique_lock lock(mutex_);
        if (!changed_.wait(lock, stop, [this] { return ready_.size() < kBatchesAhead; })) return;
        ready_.push_back(std::move(batch));
        changed_.notify_all();
        batch = spentBatch();
    }
    conditioner_.finish(last_);
    const std::scoped_lock lock(mutex_);
    ended_ = true;
    changed_.notify_all();
}

// With the lock held.
RecordingAhead::Batch RecordingAhead::spentBatch() {
    if (spent_.empty()) return {};
    Batch batch = std::move(spent_.back());
    spent_.pop_back();
    return batch;
}

// False at the end.
bool RecordingAhead::fill(Batch& batch) {
    std::span<const float> samples(samples_.data(), recording_.read(samples_));
    batch.resize((samples.size() + Pipeline::kChunk - 1) / Pipeline::kChunk);
    for (ChunkAhead& chunk : batch) {
        const std::size_t take = std::min(Pipeline::kChunk, samples.size());
        meter_.push(samples.first(take), recording_.rateHz());
        chunk.meter = meter_;
        const DropoutWatch before = dropouts_;
        chunk.dropout.reset();
        if (dropouts_.push(samples.first(take), meter_.recent())) chunk.dropout = before;
        chunk.line.clear();
        conditioner_.push(samples.first(take), chunk.line);
        samples = samples.subspan(take);
    }
    return !batch.empty();
}

const RecordingAhead::Batch* RecordingAhead::next() {
    std::unique_lock lock(mutex_);
    if (!taken_.empty()) spent_.push_back(std::exchange(taken_, {}));
    changed_.wait(lock, [this] { return !ready_.empty() || ended_; });
    if (ready_.empty()) return nullptr;
    taken_ = std::move(ready_.front());
    ready_.pop_front();
    changed_.notify_all();
    return &taken_;
}

}  // namespace trueunit
