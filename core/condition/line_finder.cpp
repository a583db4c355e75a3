// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/condition/line_finder.h"

#include <algorithm>
#include <utility>

#include "core/condition/line_study.h"
#include "core/condition/tone_demodulator.h"

namespace trueunit {

namespace {
constexpr double kFirstLookSeconds = 1.0;
constexpr double kLookEverySeconds = 0.5;
constexpr double kMostSeconds = 6.0;
constexpr double kShortestSeconds = 0.3;
}  // namespace

LineFinder::LineFinder(double rateHz, InputKind wanted, std::vector<double> tonesHz)
    : rateHz_(rateHz), wanted_(wanted), tonesHz_(std::move(tonesHz)) {}

bool LineFinder::push(std::span<const float> samples, std::uint64_t now, bool hearing) {
    if (held_.empty()) heldFrom_ = now;
    held_.insert(held_.end(), samples.begin(), samples.end());
    if (static_cast<double>(held_.size()) > kMostSeconds * rateHz_) {
        const std::size_t drop = held_.size() / 2;
        held_.erase(held_.begin(), held_.begin() + static_cast<std::ptrdiff_t>(drop));
        heldFrom_ += drop;
    }
    const std::uint64_t end = now + samples.size();
    if (!hearing || end < nextLook_ || static_cast<double>(held_.size()) < kFirstLookSeconds * rateHz_) return false;
    nextLook_ = end + static_cast<std::uint64_t>(kLookEverySeconds * rateHz_);
    return lookNow();
}

bool LineFinder::lookNow() {
    if (static_cast<double>(held_.size()) < kShortestSeconds * rateHz_) return false;
    found_ = findLine(held_, rateHz_, wanted_, tonesHz_);
    return found_.has_value();
}

std::vector<float> LineFinder::release() {
    nextLook_ = 0;
    return std::exchange(held_, {});
}

std::optional<FoundLine> findLine(std::span<const float> samples, double rateHz, InputKind wanted,
                                  std::span<const double> tonesHz) {
    std::optional<Tones> tones;
    if (tonesHz.size() == 1)
        tones = Tones{InputKind::tone, tonesHz[0], 0.0};
    else if (tonesHz.size() == 2)
        tones = Tones{InputKind::twoTone, std::min(tonesHz[0], tonesHz[1]), std::max(tonesHz[0], tonesHz[1])};
    else
        tones = findTones(samples, rateHz, wanted);
    if (!tones && (wanted == InputKind::tone || wanted == InputKind::twoTone)) return std::nullopt;
    if (!tones) {
        const auto fit = studyLine(samples, rateHz, true);
        return fit ? std::optional(FoundLine{*fit, std::nullopt}) : std::nullopt;
    }
    ToneDemodulator demodulator(*tones, rateHz);
    std::vector<float> line;
    demodulator.push(samples, line);
    const auto fit = studyLine(line, rateHz, false);
    return fit ? std::optional(FoundLine{*fit, tones}) : std::nullopt;
}

}  // namespace trueunit
