// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <atomic>
#include <cstdint>
#include <memory>

#include "core/acquire/sample_block.h"

namespace trueunit {

// Carries blocks from one producer thread to one consumer thread without a lock.
//
// Thread safety: tryPush only from the producer, tryPop only from the consumer, the counters from anyone.
// Invariants: (1) read_ <= write_ <= read_ + kBlocks; (2) slots [read_, write_) belong to the consumer, all others
// to the producer; (3) the counters never wrap: 2^64 blocks last longer than any machine.
// A block that finds no room is dropped and counted, never waited for: its number is missing at the other end.
class SampleRing {
public:
    static constexpr std::uint64_t kBlocks = 2048;  // 10.9 s at 48 kHz, 2.7 s at 192 kHz

    SampleRing() : blocks_(std::make_unique<SampleBlock[]>(kBlocks)) {}

    bool tryPush(const SampleBlock& block) noexcept {
        const std::uint64_t w = write_.load(std::memory_order_relaxed);  // ours: no one else writes it
        if (w - read_.load(std::memory_order_acquire) == kBlocks) {      // acquire: the slot is really vacated
            dropped_.fetch_add(1, std::memory_order_relaxed);
            return false;
        }
        blocks_[w % kBlocks] = block;
        write_.store(w + 1, std::memory_order_release);  // release: contents before index
        return true;
    }

    bool tryPop(SampleBlock& block) noexcept {
        const std::uint64_t r = read_.load(std::memory_order_relaxed);  // ours: no one else writes it
        if (r == write_.load(std::memory_order_acquire)) return false;  // acquire: contents are visible
        block = blocks_[r % kBlocks];
        read_.store(r + 1, std::memory_order_release);  // release: we are done with the slot
        return true;
    }

    std::uint64_t droppedBlocks() const noexcept { return dropped_.load(std::memory_order_relaxed); }
    std::uint64_t waitingBlocks() const noexcept {
        const std::uint64_t r = read_.load(std::memory_order_acquire);
        return write_.load(std::memory_order_acquire) - r;
    }

private:
    std::unique_ptr<SampleBlock[]> blocks_;
    alignas(64) std::atomic<std::uint64_t> write_{0};    // written by the producer
    alignas(64) std::atomic<std::uint64_t> read_{0};     // written by the consumer
    alignas(64) std::atomic<std::uint64_t> dropped_{0};  // written by the producer
};

}  // namespace trueunit
