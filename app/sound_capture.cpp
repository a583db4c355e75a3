// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/sound_capture.h"

#include <algorithm>
#include <thread>
#include <utility>

namespace trueunit {

bool SoundCapture::capture(const float* interleaved, std::uint64_t frames, bool overflowed) noexcept {
    inside_.store(true);  // sequentially consistent with release(): either we see released_, or it sees us inside
    if (released_.load()) {
        inside_.store(false);
        return false;
    }
    const std::int64_t now = stampNow();
    const int heard = std::min(channel.load(std::memory_order_relaxed), channels_ - 1);
    block_.lossBefore |= overflowed;
    if (const std::uint64_t missing = losses_.push(frames, now); missing > 0) {
        taken_ += std::exchange(filled_, 0) + missing;  // what was begun has a hole in it
        block_.lossBefore = true;
    }
    for (std::uint64_t i = 0; i < frames; ++i) {
        const float* frame = interleaved + i * static_cast<std::uint64_t>(channels_);
        for (std::size_t c = 0; c < static_cast<std::size_t>(channels_); ++c) {
            const float step = frame[c] - previous_[c];
            energy_[c] += static_cast<double>(step * step);
            previous_[c] = frame[c];
        }
        block_.samples[filled_++] = frame[heard];
        if (filled_ < SampleBlock::kSamples) continue;
        block_.firstSample = taken_;
        block_.stampNs = now;
        block_.lossBefore = !ring_->tryPush(block_) ? block_.lossBefore : false;  // a loss is told once, not forgotten
        taken_ += SampleBlock::kSamples;
        filled_ = 0;
    }
    for (std::size_t c = 0; c < 2; ++c) stepEnergy[c].store(energy_[c], std::memory_order_relaxed);
    lastCallNs.store(now, std::memory_order_relaxed);
    inside_.store(false);
    return true;
}

void SoundCapture::release() noexcept {
    released_.store(true);
    while (inside_.load()) std::this_thread::yield();  // microseconds: the callback only copies
}

}  // namespace trueunit
