// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/condition/level_watch.h"

#include <algorithm>

#include "core/condition/line_study.h"

namespace trueunit {

namespace {
constexpr double kQuietSeconds = 0.4;  // longer than any character
constexpr double kStretchSeconds = 1.2;
constexpr double kLongestPauseSeconds = 16.0;
constexpr double kLeastRange = 0.05;  // of the swing; less cannot be keyed, it is noise and hum
}  // namespace

bool LevelWatch::push(std::span<const float> samples, bool transitions, double swing) {
    if (transitions) {
        quiet_ = pause_ = 0.0;
        stretch_.clear();
        return false;
    }
    quiet_ += static_cast<double>(samples.size());
    if (quiet_ < kQuietSeconds * rateHz_ + pause_) return false;
    stretch_.insert(stretch_.end(), samples.begin(), samples.end());
    if (static_cast<double>(stretch_.size()) < kStretchSeconds * rateHz_) return false;
    const bool other = keyed(swing);
    stretch_.clear();
    quiet_ = 0.0;
    pause_ = std::clamp(2.0 * pause_, kStretchSeconds * rateHz_, kLongestPauseSeconds * rateHz_);
    return other;
}

bool LevelWatch::keyed(double swing) const {
    const auto [low, high] = std::minmax_element(stretch_.begin(), stretch_.end());
    return static_cast<double>(*high - *low) > kLeastRange * swing && studyLine(stretch_, rateHz_, coupled_);
}

}  // namespace trueunit
