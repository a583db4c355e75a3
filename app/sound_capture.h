// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <atomic>
#include <cstdint>

#include "app/loss_watch.h"
#include "core/acquire/sample_ring.h"

namespace trueunit {

// What the sound library's callback does, apart from the library: copies one channel into blocks of 256, stamps,
// pushes and counts. capture() belongs to the callback thread: no lock, no allocation, no system call but the clock.
// The atomics may be read, and channel set, by any thread; release() by the owner, who frees the ring after it.
class SoundCapture {
public:
    SoundCapture(SampleRing& ring, int channels) : ring_(&ring), channels_(channels) {}

    void setRate(double rateHz) { losses_ = LossWatch(rateHz); }  // before the first call

    // Interleaved frames as they come. Returns false when the owner has let go and the stream should end.
    bool capture(const float* interleaved, std::uint64_t frames, bool overflowed) noexcept;

    // Returns when the ring will not be touched any more.
    void release() noexcept;

    std::atomic<int> channel{0};
    std::atomic<std::int64_t> lastCallNs{0};          // monotonic; 0 = never
    std::array<std::atomic<double>, 2> stepEnergy{};  // sum of squared sample-to-sample steps: a DC offset is none

private:
    SampleRing* ring_;
    int channels_;
    SampleBlock block_;  // being filled; callback thread only, as are the next five
    std::size_t filled_ = 0;
    std::uint64_t taken_ = 0;  // samples since the start; advances even when a block is dropped
    LossWatch losses_{48000.0};
    std::array<float, 2> previous_{};
    std::array<double, 2> energy_{};
    std::atomic<bool> released_{false};  // written by the owner
    std::atomic<bool> inside_{false};    // written by the callback
};

}  // namespace trueunit
