// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <chrono>
#include <cstdint>

namespace trueunit {

// The unit of exchange between a source and the analysis: 256 consecutive samples of one channel, +-1 full scale.
struct SampleBlock {
    static constexpr std::size_t kSamples = 256;

    std::uint64_t firstSample = 0;  // number of samples[0] since the source started; a step in it is a gap
    std::int64_t stampNs = 0;       // monotonic clock when the last sample was handed over, nanoseconds
    bool lossBefore = false;        // the driver reported a loss of unknown length before this block
    std::array<float, kSamples> samples{};
};

// The clock of the stamps, nanoseconds. Any thread, the sound callback's too.
inline std::int64_t stampNow() noexcept {
    return std::chrono::steady_clock::now().time_since_epoch() / std::chrono::nanoseconds(1);
}

}  // namespace trueunit
