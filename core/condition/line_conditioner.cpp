// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/condition/line_conditioner.h"

#include <utility>

#include "core/condition/line_study.h"

namespace trueunit {

namespace {
constexpr double kRefineSeconds = 8.0;
}

LineConditioner::LineConditioner(const FoundLine& line, double rateHz, std::uint64_t firstSample)
    : line_(line),
      rateHz_(rateHz),
      restorer_(line.fit, rateHz, firstSample),
      watch_(rateHz, !line.tones),
      refineAt_(line.tones ? UINT64_MAX : static_cast<std::uint64_t>(kRefineSeconds * rateHz)) {
    if (line.tones) demodulator_.emplace(*line.tones, rateHz);
}

void LineConditioner::push(std::span<const float> samples, Conditioned& out) {
    if (demodulator_) {
        demodulated_.clear();
        demodulator_->push(samples, demodulated_);
        samples = demodulated_;
    }
    const std::size_t before = out.transitions.size();
    restorer_.push(samples, out.line, out.transitions);
    out.stale = out.stale || watch_.push(samples, out.transitions.size() != before, restorer_.swing());
    if (refineAt_ != UINT64_MAX) refineCoupling(samples);
}

void LineConditioner::finish(Conditioned& out) { restorer_.finish(out.line); }

void LineConditioner::refineCoupling(std::span<const float> samples) {
    recent_.insert(recent_.end(), samples.begin(), samples.end());
    if (recent_.size() < refineAt_) return;
    refineAt_ = UINT64_MAX;
    const std::vector<float> stretch = std::exchange(recent_, {});
    const auto again = studyLine(stretch, rateHz_);
    if (!again) return;
    restorer_.setCoupling(again->coupling);
    restorer_.setRails(again->rails);
    if (again->rails != line_.fit.rails) line_.fit = *again;  // the levels were those of flattened samples
    line_.fit.coupling = again->coupling;
    line_.fit.lossAtStart = again->lossAtStart;
}

}  // namespace trueunit
