// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/detect/edge_finder.h"

#include <cmath>
#include <utility>

#include "core/condition/line_study.h"

namespace trueunit {

namespace {
constexpr double kFirstHoldSeconds = 0.0034;  // before the unit is known
constexpr double kRefineSeconds = 8.0;
}  // namespace

EdgeFinder::EdgeFinder(const FoundLine& line, double rateHz, double sliceFraction, std::uint64_t firstSample)
    : line_(line),
      rateHz_(rateHz),
      restorer_(line.fit, rateHz, firstSample),
      gate_(kFirstHoldSeconds * rateHz),
      timer_(rateHz, sliceFraction, firstSample),
      humMeter_(rateHz),
      refineAt_(line.tones ? UINT64_MAX : static_cast<std::uint64_t>(kRefineSeconds * rateHz)) {
    if (line.tones) demodulator_.emplace(*line.tones, rateHz);
}

void EdgeFinder::push(std::span<const float> samples, std::vector<Edge>& out) {
    if (demodulator_) {
        demodulated_.clear();
        demodulator_->push(samples, demodulated_);
        samples = demodulated_;
    }
    restored_.clear();
    raw_.clear();
    restorer_.push(samples, restored_, raw_);
    pass(false, out);
    if (refineAt_ != UINT64_MAX) refineCoupling(samples);
}

void EdgeFinder::finish(std::vector<Edge>& out) {
    restored_.clear();
    raw_.clear();
    restorer_.finish(restored_);
    pass(true, out);
}

void EdgeFinder::pass(bool last, std::vector<Edge>& out) {
    timer_.push(restored_);
    humMeter_.push(restored_);
    for (const Transition& t : raw_) gate_.push(t);
    heldTransitions_.clear();
    const double end = static_cast<double>(timer_.end());
    gate_.advance(last ? end + gate_.hold() + 1.0 : end, heldTransitions_);
    for (const HeldTransition& h : heldTransitions_) timer_.time(h);
    if (last)
        timer_.finish(out);
    else
        timer_.advance(out);
}

// Restoring the line has raised the hum by what the coupling had taken off it.
double EdgeFinder::humPeakToPeak() const {
    const auto found = humMeter_.hum();
    if (!found) return 0.0;
    double raised = 1.0;
    for (const double corner : line_.fit.coupling.cornersHz()) raised *= std::hypot(1.0, corner / found->hz);
    return 2.0 * found->amplitude / raised;
}

double EdgeFinder::knownTo() const {
    const double gateKnows = static_cast<double>(timer_.end()) - gate_.hold() - 1.0;
    return timer_.waits() ? std::min(gateKnows, timer_.waitsSince()) : gateKnows;
}

void EdgeFinder::refineCoupling(std::span<const float> samples) {
    recent_.insert(recent_.end(), samples.begin(), samples.end());
    if (recent_.size() < refineAt_) return;
    refineAt_ = UINT64_MAX;
    const std::vector<float> stretch = std::exchange(recent_, {});
    const auto again = studyLine(stretch, rateHz_);
    if (!again) return;
    restorer_.setCoupling(again->coupling);
    line_.fit.coupling = again->coupling;
    line_.fit.lossAtStart = again->lossAtStart;
}

}  // namespace trueunit
