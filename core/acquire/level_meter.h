// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <span>

#include "core/acquire/rails.h"

namespace trueunit {

// Peak level and clipping of the samples as they come. Analysis thread; value type.
class LevelMeter {
public:
    static constexpr float kFaintest = 3e-5F;  // -90 dBFS: below it nothing can be measured

    void push(std::span<const float> samples, double rateHz);
    void setRails(const Rails& rails) {  // what counts as clipped from now on
        rails_ = rails;
        railsKnown_ = true;
    }

    std::uint64_t count() const { return count_; }
    double clippedPercent() const {
        return count_ ? 100.0 * static_cast<double>(clipped_) / static_cast<double>(count_) : 0.0;
    }
    float peak() const { return peak_; }      // since the start
    float recent() const { return recent_; }  // of the last 100 ms
    bool clippingNow() const { return clippingNow_; }
    bool everHeard() const { return peak_ >= kFaintest; }
    bool hearing() const { return recent_ >= kFaintest; }
    void forgetRecent() { recent_ = 0.0F; }

private:
    std::uint64_t clippedOf(std::span<const float> samples) const;

    Rails rails_;
    bool railsKnown_ = false;  // false: full scale, as long as nothing lies beyond
    std::uint64_t count_ = 0;
    std::uint64_t clipped_ = 0;
    float peak_ = 0.0F;
    float recent_ = 0.0F;
    bool clippingNow_ = false;
};

}  // namespace trueunit
