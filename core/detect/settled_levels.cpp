// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/detect/settled_levels.h"

#include <algorithm>

namespace trueunit {

namespace {
constexpr double kLongElementSeconds = 0.014;
constexpr double kEnoughSeconds = 0.070;  // seven time constants of 10 ms
constexpr double kRises = 2.5;            // five time constants
constexpr double kNearLongest = 0.85;
constexpr double kForgetLongest = 0.02;  // an element
constexpr double kUnsettled = 0.02;      // of the swing missing beside the edges
constexpr double kForget = 0.03;
}  // namespace

bool SettledLevels::slow(std::size_t side) const { return missing_[side] > kUnsettled; }

bool SettledLevels::rests(std::size_t side, double samples, double rise) {
    const double enough = kEnoughSeconds * rateHz_, least = kLongElementSeconds * rateHz_;
    longest_[side] = std::max((1.0 - kForgetLongest) * longest_[side], std::min(samples, enough));
    return samples >= (slow(side) ? std::max(least, std::min(kNearLongest * longest_[side], kRises * rise)) : least);
}

void SettledLevels::take(std::size_t side, double level) {
    count_[side] = std::min(count_[side] + 1.0, 1.0 / kForget);
    level_[side] += (level - level_[side]) / count_[side];
}

void SettledLevels::fallsShort(std::size_t side, double part) {
    const bool before = slow(side);
    missing_[side] += kForget * (part - missing_[side]);
    if (slow(side) && !before) count_[side] = 0.0;  // what was taken until now had not come to rest
}

}  // namespace trueunit
