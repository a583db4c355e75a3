// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording_ahead.h"

#include <algorithm>
#include <utility>

#include "core/pipeline.h"

namespace trueunit {

namespace {
constexpr std::size_t kBatchChunks = 256;  // a second and more: waking the other thread is dear
constexpr std::size_t kBatchesAhead = 4;
}  // namespace

RecordingAhead::RecordingAhead(Recording& recording, std::uint64_t most, const std::optional<FoundLine>& line)
    : recording_(recording) {
    if (line) {
        conditioner_.emplace(*line, recording.rateHz(), 0);
        conditioner_->keepCoupling();
    }
    recording_.rewind();
    thread_ = std::jthread([this, most](const std::stop_token& stop) { run(stop, most); });
}

RecordingAhead::~RecordingAhead() = default;  // stops the thread and waits for it

void RecordingAhead::run(const std::stop_token& stop, std::uint64_t left) {
    Batch batch;
    while (!stop.stop_requested() && fill(batch, left)) {
        std::unique_lock lock(mutex_);
        if (!changed_.wait(lock, stop, [this] { return ready_.size() < kBatchesAhead; })) return;
        ready_.push_back(std::move(batch));
        changed_.notify_all();
        batch = spentBatch();
    }
    if (conditioner_) conditioner_->finish(last_);
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
bool RecordingAhead::fill(Batch& batch, std::uint64_t& left) {
    constexpr std::size_t kChunk = Pipeline::kChunk;
    batch.samples.resize(std::min<std::uint64_t>(left, kBatchChunks * kChunk));
    batch.samples.resize(recording_.read(batch.samples));
    left -= batch.samples.size();
    if (!conditioner_) return !batch.samples.empty();
    batch.line.resize((batch.samples.size() + kChunk - 1) / kChunk);
    std::span<const float> rest = batch.samples;
    for (Conditioned& chunk : batch.line) {
        const std::size_t take = std::min(kChunk, rest.size());
        chunk.clear();
        conditioner_->push(rest.first(take), chunk);
        rest = rest.subspan(take);
    }
    return !batch.samples.empty();
}

const RecordingAhead::Batch* RecordingAhead::next() {
    std::unique_lock lock(mutex_);
    if (!taken_.samples.empty()) spent_.push_back(std::exchange(taken_, {}));
    changed_.wait(lock, [this] { return !ready_.empty() || ended_; });
    if (ready_.empty()) return nullptr;
    taken_ = std::move(ready_.front());
    ready_.pop_front();
    changed_.notify_all();
    return &taken_;
}

}  // namespace trueunit
