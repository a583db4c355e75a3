// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/sound_playback.h"

#include <thread>

namespace trueunit {

bool SoundPlayback::play(float* interleaved, std::uint64_t frames) noexcept {
    inside_.store(true);  // sequentially consistent with release(): either we see released_, or it sees us inside
    const bool released = released_.load();
    std::uint64_t taken = 0;
    std::uint64_t silent = 0;
    for (std::uint64_t i = 0; i < frames; ++i) {
        if (at_ == SampleBlock::kSamples && !released && ring_->tryPop(block_)) at_ = 0;
        const bool some = at_ < SampleBlock::kSamples;
        const float value = some ? block_.samples[at_++] : 0.0F;
        ++(some ? taken : silent);
        for (int c = 0; c < channels_; ++c) *interleaved++ = value;
    }
    const std::int64_t now = stampNow();
    const std::uint64_t before = played.fetch_add(taken, std::memory_order_relaxed);
    if (before == 0 && taken > 0) firstSampleNs.store(now, std::memory_order_relaxed);
    if (before + taken > 0) missed.fetch_add(silent, std::memory_order_relaxed);
    lastCallNs.store(now, std::memory_order_relaxed);
    inside_.store(false);
    return !released;
}

void SoundPlayback::release() noexcept {
    released_.store(true);
    while (inside_.load()) std::this_thread::yield();  // microseconds: the callback only copies
}

}  // namespace trueunit
