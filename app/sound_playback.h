// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <atomic>
#include <cstdint>

#include "core/acquire/sample_ring.h"

namespace trueunit {

// What the sound library's output callback does, apart from the library: copies blocks of 256 from a ring to every
// channel, and silence when there is none. play() belongs to the callback thread: no lock, no allocation, no system
// call but the clock. The atomics may be read by any thread; release() by the owner, who frees the ring after it.
class SoundPlayback {
public:
    SoundPlayback(SampleRing& ring, int channels) : ring_(&ring), channels_(channels) {}

    // Interleaved frames to be filled. Returns false when the owner has let go and the stream should end.
    bool play(float* interleaved, std::uint64_t frames) noexcept;

    // Returns when the ring will not be touched any more.
    void release() noexcept;

    std::atomic<std::int64_t> lastCallNs{0};     // monotonic; 0 = never
    std::atomic<std::int64_t> firstSampleNs{0};  // monotonic, when the first sample was handed over; 0 = not yet
    std::atomic<std::uint64_t> played{0};        // samples taken from the ring
    std::atomic<std::uint64_t> missed{0};        // silent samples since the first block: the ring was empty

private:
    SampleRing* ring_;
    int channels_;
    SampleBlock block_;                       // being played; callback thread only, as is the next
    std::size_t at_ = SampleBlock::kSamples;  // next sample of it
    std::atomic<bool> inside_{false};
    std::atomic<bool> released_{false};
};

}  // namespace trueunit
