// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cstdint>
#include <optional>

namespace trueunit {

// Compares the samples that came with the monotonic clock: a stall can lose seconds of them without any mark from the
// driver. In: frames handed over, and when (ns). Out: how many are missing, told once, a second after the stall, when
// what was only late has had time to arrive. Callback thread; a few operations a call. A card's clock that is off by
// up to 0.2 % is no loss.
class LossWatch {
public:
    explicit LossWatch(double rateHz) : rateHz_(rateHz) {}

    std::uint64_t push(std::uint64_t frames, std::int64_t nowNs) noexcept {
        if (!firstNs_) {
            firstNs_ = lastNs_ = nowNs;
            return 0;
        }
        handed_ += frames;
        const double lag = 1e-9 * static_cast<double>(nowNs - *firstNs_) - static_cast<double>(handed_) / rateHz_;
        usualLag_ = std::min(lag, usualLag_ + kDrift * 1e-9 * static_cast<double>(nowNs - lastNs_));
        lastNs_ = nowNs;
        if (lag - usualLag_ < kLateSeconds) {
            lateSinceNs_.reset();
            return 0;
        }
        if (!lateSinceNs_) {
            lateSinceNs_ = nowNs;
            leastLag_ = lag;
        }
        leastLag_ = std::min(leastLag_, lag);
        if (nowNs - *lateSinceNs_ < kSettledNs) return 0;
        const auto missing = static_cast<std::uint64_t>((leastLag_ - usualLag_) * rateHz_);
        handed_ += missing;
        lateSinceNs_.reset();
        return missing;
    }

private:
    static constexpr double kDrift = 0.002;
    static constexpr double kLateSeconds = 0.3;  // more than the coming and going of any buffer
    static constexpr std::int64_t kSettledNs = 1'000'000'000;

    double rateHz_;
    std::optional<std::int64_t> firstNs_;
    std::optional<std::int64_t> lateSinceNs_;  // empty: all is as usual
    std::int64_t lastNs_ = 0;
    double usualLag_ = 0.0;     // seconds the samples are behind the clock
    double leastLag_ = 0.0;     // the same, smallest since it is late
    std::uint64_t handed_ = 0;  // samples after the first call's, those told missing included
};

}  // namespace trueunit
