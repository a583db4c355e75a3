// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <algorithm>
#include <atomic>
#include <thread>

#include "core/acquire/sample_ring.h"

namespace trueunit {
namespace {

// Every sample of a block follows from its number, so that the reader can tell a torn block from a whole one.
float payload(std::uint64_t number, std::size_t i) { return static_cast<float>((number * 31 + i) % 65521); }

struct Received {
    std::uint64_t blocks = 0;
    std::uint64_t missing = 0;
    std::uint64_t torn = 0;
    std::uint64_t disordered = 0;
};

void check(const SampleBlock& block, std::uint64_t& expected, Received& received) {
    const std::uint64_t number = block.firstSample / SampleBlock::kSamples;
    ++received.blocks;
    if (number < expected)
        ++received.disordered;
    else
        received.missing += number - expected;
    expected = number + 1;
    for (std::size_t i = 0; i < block.samples.size(); ++i)
        if (block.samples[i] != payload(number, i)) {
            ++received.torn;
            break;
        }
    if (block.stampNs != static_cast<std::int64_t>(number) + 5) ++received.torn;
}

// `lag` lets the reader fall behind by so many blocks before it reads, which makes the writer find the ring full.
Received exchange(std::uint64_t total, std::uint64_t lag, std::uint64_t& dropped) {
    SampleRing ring;
    std::atomic<bool> ended{false};
    Received received;
    std::thread reader([&] {
        SampleBlock block;
        std::uint64_t expected = 0;
        for (bool last = false; !last;) {
            last = ended.load();
            if (!last && ring.waitingBlocks() < lag) {
                std::this_thread::yield();
                continue;
            }
            while (ring.tryPop(block)) check(block, expected, received);
        }
        received.missing += total - expected;
    });
    SampleBlock block;
    for (std::uint64_t n = 0; n < total; ++n) {
        block.firstSample = n * SampleBlock::kSamples;
        block.stampNs = static_cast<std::int64_t>(n) + 5;
        for (std::size_t i = 0; i < block.samples.size(); ++i) block.samples[i] = payload(n, i);
        ring.tryPush(block);
    }
    ended = true;
    reader.join();
    dropped = ring.droppedBlocks();
    return received;
}

TEST(RingStress, NoBlockIsTornOrOutOfOrderAndEveryMissingOneWasCounted) {
    constexpr std::uint64_t kTotal = 60000;
    std::uint64_t dropped = 0;
    const Received r = exchange(kTotal, 0, dropped);
    EXPECT_EQ(r.torn, 0U);
    EXPECT_EQ(r.disordered, 0U);
    EXPECT_EQ(r.missing, dropped);
    EXPECT_EQ(r.blocks + dropped, kTotal);
}

TEST(RingStress, AReaderThatOnlyWakesAtAFullRingStillGetsWholeBlocks) {
    constexpr std::uint64_t kTotal = 60000;
    std::uint64_t dropped = 0;
    const Received r = exchange(kTotal, SampleRing::kBlocks, dropped);
    EXPECT_EQ(r.torn, 0U);
    EXPECT_EQ(r.disordered, 0U);
    EXPECT_EQ(r.missing, dropped);
    EXPECT_EQ(r.blocks + dropped, kTotal);
}

}  // namespace
}  // namespace trueunit
