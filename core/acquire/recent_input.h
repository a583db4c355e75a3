// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <deque>
#include <memory>
#include <mutex>
#include <optional>
#include <span>
#include <vector>

#include "core/acquire/sample_block.h"

namespace trueunit {

// Samples that followed each other without a gap, as they were kept: 24 bits each. Immutable; any thread.
class KeptStretch {
public:
    static constexpr std::size_t kChunkSamples = 8192;
    using Chunk = std::vector<std::uint8_t>;  // three bytes a sample, low one first

    std::uint64_t firstSample = 0;
    std::vector<std::shared_ptr<const Chunk>> chunks;

    std::uint64_t samples() const;
    std::size_t read(std::uint64_t from, std::span<float> out) const;  // samples written; fewer at the end
};

// The last samples before the one numbered end, most of them at most, from one stretch: samples from both sides of a
// gap do not belong together. Where end is not known (0) or not at hand, the last ones there are.
std::vector<float> lastSamples(const std::vector<KeptStretch>& stretches, std::uint64_t end, std::uint64_t most);

// The last minutes of the input, always at hand. In: blocks, as they come from the ring. Memory is bounded: three
// bytes a sample, 86 MB for ten minutes at 48 kHz, taken as it is needed. push belongs to the analysis thread; the
// rest to anyone: a mutex is held for a few microseconds.
class RecentInput {
public:
    explicit RecentInput(double rateHz, double seconds = 600.0);

    void push(const SampleBlock& block);
    void clear();

    std::vector<KeptStretch> stretches() const;  // oldest first; a gap in the input parts them
    double rateHz() const { return rateHz_; }
    double seconds() const;  // at hand

private:
    void forgetOldest();

    const double rateHz_;
    const std::uint64_t most_;  // samples
    mutable std::mutex mutex_;  // guards all below
    std::deque<KeptStretch> stretches_;
    KeptStretch::Chunk filling_;
    std::optional<std::uint64_t> expected_;
    std::uint64_t kept_ = 0;  // samples in full chunks
};

}  // namespace trueunit
