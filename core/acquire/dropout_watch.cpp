// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acquire/dropout_watch.h"

#include <algorithm>
#include <cmath>

namespace trueunit {

namespace {
constexpr double kShortestSeconds = 0.003;
constexpr double kUsualSeconds = 0.8;
constexpr float kJump = 0.02F;     // of the level so far,
constexpr float kSilent = 0.002F;  // and so little of it is nothing
constexpr double kForgetSeconds = 10.0;
constexpr double kUsualRuns = 6.0;  // in that time
constexpr double kNearLevel = 0.1;  // of the other one
constexpr float kFade = 0.9995F;    // of that level, with every push: seconds
}  // namespace

DropoutWatch::DropoutWatch(double rateHz)
    : rateHz_(rateHz),
      shortest_(static_cast<std::size_t>(kShortestSeconds * rateHz)),
      usualAfter_(kUsualSeconds * rateHz) {}

void DropoutWatch::start(std::span<const double> levels) {
    double most = 0.0;
    for (const double level : levels) most = std::max(most, std::abs(level));
    watching_ =
        std::none_of(levels.begin(), levels.end(), [&](double level) { return std::abs(level) < kNearLevel * most; });
}

void DropoutWatch::enter(float before) {
    jumped_ = level_ > 0.0F && std::abs(before) >= kJump * level_;
    out_ = false;
}

std::optional<DropoutWatch::Dropout> DropoutWatch::push(std::span<const float> samples, float peak) {
    std::optional<Dropout> found;
    const std::size_t n = samples.size();
    if (n == 0) return found;
    level_ = std::max(peak, kFade * level_);
    const float most = kSilent * level_;
    const auto isSilent = [&](std::size_t i) { return std::abs(samples[i]) <= most; };
    runs_ *= std::exp(-static_cast<double>(n) / (kForgetSeconds * rateHz_));
    double since = sinceSilent_ + static_cast<double>(n);
    const std::size_t stride = std::max<std::size_t>(1, shortest_ / 2);  // a run that is long enough is met
    for (std::size_t i = 0; i < n; i += stride) {
        if (!isSilent(i)) continue;
        std::size_t begin = i, end = i;
        while (begin > 0 && isSilent(begin - 1)) --begin;
        while (end < n && isSilent(end)) ++end;
        const std::size_t before = begin == 0 ? silent_ : 0;
        if (before == 0) enter(begin > 0 ? samples[begin - 1] : last_);
        const bool enough = end - begin + before >= shortest_;
        const bool usual = runs_ > kUsualRuns || sinceSilent_ + static_cast<double>(begin) < usualAfter_;
        runs_ += enough && before < shortest_ ? 1.0 : 0.0;
        const bool begins = watching_ && enough && jumped_ && !out_ && !usual;
        out_ = out_ || begins;
        if (out_ && !found) found = Dropout{begin, end, begins};
        if (enough) since = static_cast<double>(n - end);
        i = end;
    }
    const auto atEnd = static_cast<std::size_t>(
        std::find_if(samples.rbegin(), samples.rend(), [most](float v) { return std::abs(v) > most; }) -
        samples.rbegin());
    const bool met = atEnd >= stride;  // above
    if (atEnd > 0 && atEnd < n && !met) enter(samples[n - atEnd - 1]);
    silent_ = atEnd == n ? silent_ + n : atEnd;
    last_ = samples[n - 1];
    sinceSilent_ = since;
    return found;
}

}  // namespace trueunit
