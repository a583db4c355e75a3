// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/condition/line_finder.h"

#include <algorithm>
#include <array>
#include <utility>

#include "core/condition/line_study.h"
#include "core/condition/tone_demodulator.h"

namespace trueunit {

namespace {
constexpr double kFirstLookSeconds = 1.0;
constexpr double kLookEverySeconds = 0.5;
constexpr double kRecentSeconds = 4.0;   // that a look is taken at
constexpr double kLookAtAllEvery = 6.0;  // seconds: keys pressed one by one take long to show a line
constexpr double kMostSeconds = 24.0;
constexpr double kShortestSeconds = 0.3;
}  // namespace

LineFinder::LineFinder(double rateHz, InputKind wanted, std::vector<double> tonesHz)
    : rateHz_(rateHz), wanted_(wanted), tonesHz_(std::move(tonesHz)) {}

bool LineFinder::push(std::span<const float> samples, std::uint64_t now, bool hearing) {
    if (held_.empty()) heldFrom_ = now;
    held_.insert(held_.end(), samples.begin(), samples.end());
    if (static_cast<double>(held_.size()) > kMostSeconds * rateHz_) forget(held_.size() / 2);
    const std::uint64_t end = now + samples.size();
    if (!hearing || end < nextLook_ || static_cast<double>(held_.size()) < kFirstLookSeconds * rateHz_) return false;
    nextLook_ = end + static_cast<std::uint64_t>(kLookEverySeconds * rateHz_);
    const auto recent = static_cast<std::size_t>(kRecentSeconds * rateHz_);
    if (held_.size() <= recent) return lookNow();
    const std::size_t older = held_.size() - recent;
    found_ = findLine(std::span(held_).subspan(older), rateHz_, wanted_, tonesHz_);
    if (found_) forget(older);
    if (found_ || end < nextLookAtAll_) return found_.has_value();
    nextLookAtAll_ = end + static_cast<std::uint64_t>(kLookAtAllEvery * rateHz_);
    return lookNow();
}

void LineFinder::forget(std::size_t oldest) {
    held_.erase(held_.begin(), held_.begin() + static_cast<std::ptrdiff_t>(oldest));
    heldFrom_ += oldest;
}

bool LineFinder::lookNow() {
    if (static_cast<double>(held_.size()) < kShortestSeconds * rateHz_) return false;
    found_ = findLine(held_, rateHz_, wanted_, tonesHz_);
    return found_.has_value();
}

bool LineFinder::heldHasSteps() const { return hasSteps(held_, rateHz_); }

std::vector<float> LineFinder::release() {
    nextLook_ = nextLookAtAll_ = 0;
    return std::exchange(held_, {});
}

void startOn(DropoutWatch& watch, const FoundLine& line) {
    if (line.tones) return watch.stop();
    const LineFit& fit = line.fit;
    const double lost = fit.coupling.cornersHz().empty() ? fit.lossAtStart[0] + fit.lossAtStart[1] : 0.0;  // for good
    const std::array levels{fit.offset - (0.5 + lost) * fit.swing, fit.offset + (0.5 - lost) * fit.swing};
    watch.start(levels);
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
