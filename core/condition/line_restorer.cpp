// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/condition/line_restorer.h"

#include <algorithm>
#include <bit>
#include <cmath>

namespace trueunit {

namespace {
constexpr double kSmoothSeconds = 0.0005;       // averages noise
constexpr double kLightSmoothSeconds = 0.0002;  // where there is little of it: short bounces show
constexpr double kLittleNoise = 0.015;          // residual of the fit, of the swing
constexpr double kHoldBackSeconds = 0.006;      // the slowest rise from mid-level to a decision
constexpr double kHysteresis = 0.12;            // of the swing, either side of the middle; a slow rise must reach it
constexpr double kRail = 0.999;                 // full scale
constexpr double kFollowSeconds = 0.5;          // time constant of swing and offset
constexpr double kQuietSeconds = 0.004;         // after a decision the levels are not yet steady
constexpr double kHeardBeforeSeconds = 0.0035;  // from this long before an edge the coupling is fed with what is heard,
constexpr double kHeardAfterSeconds = 0.005;    // until this long after it;
constexpr double kTrustedSeconds = 0.014;       // from here on with the level alone
constexpr double kAway = 0.2;                   // of the swing: on the way to the other level
constexpr double kLargestError = 0.25;          // of the swing: more than that is no level error but an edge
}  // namespace

LineRestorer::LineRestorer(const LineFit& fit, double rateHz, std::uint64_t firstSample)
    : rateHz_(rateHz),
      width_(std::max<std::size_t>(
          1, static_cast<std::size_t>(
                 std::lround((fit.residual < kLittleNoise ? kLightSmoothSeconds : kSmoothSeconds) * rateHz)))),
      delay_(static_cast<std::size_t>(std::lround(kHoldBackSeconds * rateHz))),
      groupDelay_(0.5 * static_cast<double>(width_ - 1)),
      follow_(1.0 / (kFollowSeconds * rateHz)),
      quiet_(static_cast<std::size_t>(kQuietSeconds * rateHz)),
      swing_(fit.swing),
      offset_(fit.offset),
      heardCount_(firstSample),
      restoredCount_(firstSample),
      held_(std::bit_ceil(delay_ + width_ + 1)),
      decisionLoss_(fit.coupling, rateHz),
      high_(fit.startsHigh),
      restoreLoss_(fit.coupling, rateHz),
      restoreHigh_(fit.startsHigh) {
    const std::array<double, 2> start{fit.lossAtStart[0] * swing_, fit.lossAtStart[1] * swing_};
    decisionLoss_.setState(start);
    restoreLoss_.setState(start);
    const double first = level() - start[0] - start[1] + offset_;
    std::fill(held_.begin(), held_.end(), static_cast<float>(first));
    sum_ = first * static_cast<double>(width_);
    previous_ = level();
    smoothBefore_ = heardBefore_ = first - offset_;
    middleCrossing_ = static_cast<double>(firstSample);
}

void LineRestorer::setCoupling(const HighPass& coupling) {
    for (CouplingLoss* loss : {&decisionLoss_, &restoreLoss_}) {
        const std::array<double, 2> state = loss->state();
        *loss = CouplingLoss(coupling, rateHz_);
        loss->setState(state);
    }
}

void LineRestorer::push(std::span<const float> heard, std::vector<float>& line, std::vector<Transition>& transitions) {
    const std::size_t mask = held_.size() - 1;
    for (const float sample : heard) {
        const float x = std::isfinite(sample) ? std::clamp(sample, -8.0F, 8.0F) : 0.0F;
        const auto n = static_cast<std::size_t>(heardCount_);
        sum_ += static_cast<double>(x) - static_cast<double>(held_[(n - width_) & mask]);
        held_[n & mask] = x;
        ++heardCount_;
        decide(sum_ / static_cast<double>(width_), transitions);
        if (heardCount_ - restoredCount_ > delay_)
            line.push_back(restoreNext(static_cast<double>(held_[(n - delay_) & mask])));
    }
}

void LineRestorer::finish(std::vector<float>& line) {
    const std::size_t mask = held_.size() - 1;
    while (restoredCount_ < heardCount_)
        line.push_back(restoreNext(static_cast<double>(held_[static_cast<std::size_t>(restoredCount_) & mask])));
}

// How far the decided level is trusted so many samples after an edge. Near one the line has a form of its own.
double LineRestorer::trust(double sinceEdge) const {
    const double seconds = sinceEdge / rateHz_;
    return std::clamp((seconds - kHeardAfterSeconds) / (kTrustedSeconds - kHeardAfterSeconds), 0.0, 1.0);
}

// The smoothed samples lie groupDelay_ behind; the loss model of the decision runs on that clock.
void LineRestorer::decide(double smooth, std::vector<Transition>& transitions) {
    const double heard = smooth - offset_;
    const bool atRail = std::abs(smooth) >= kRail;  // it is at least so much: the sign decides
    const double share = atRail ? 1.0 : away_ > 0 && away_ <= delay_ ? 0.0 : trust(static_cast<double>(sinceDecision_));
    decisionLoss_.follow(smoothBefore_, heard, atRail ? std::copysign(0.5 * swing_, smooth) : level(), share);
    smoothBefore_ = heard;
    double value = heard + decisionLoss_.loss();
    if (atRail) value = smooth > 0.0 ? std::max(value, 0.5 * swing_) : std::min(value, -0.5 * swing_);
    // A level that stays away without having become the other one is a wrong level: after a while it is pulled back.
    away_ = std::abs(value - level()) < kAway * swing_ ? 0 : away_ + 1;
    const double now = static_cast<double>(heardCount_ - 1);
    if ((value >= 0.0) != (previous_ >= 0.0)) middleCrossing_ = now - value / (value - previous_);
    previous_ = value;
    ++sinceDecision_;
    const double threshold = kHysteresis * swing_;
    if (high_ ? value < -threshold : value > threshold) {
        high_ = !high_;
        sinceDecision_ = 0;
        const double oldest = now - static_cast<double>(delay_) + groupDelay_ + 1.0;
        const double crossing = std::max(middleCrossing_, oldest);
        transitions.push_back({crossing - groupDelay_, high_});
        ahead_.push_back(transitions.back());
    } else if (sinceDecision_ > quiet_ && !atRail) {
        followLevels(value - level(), follow_ * trust(static_cast<double>(sinceDecision_)));
    }
}

void LineRestorer::followLevels(double error, double share) {
    if (std::abs(error) > kLargestError * swing_) return;
    offset_ += share * error;
    swing_ += share * (high_ ? error : -error);
}

float LineRestorer::restoreNext(double sample) {
    const auto now = static_cast<double>(restoredCount_++);
    while (!ahead_.empty() && ahead_.front().time <= now) {
        lastEdge_ = ahead_.front().time;
        restoreHigh_ = ahead_.front().up;
        ahead_.pop_front();
    }
    const double heard = sample - offset_;
    const double level = restoreHigh_ ? 0.5 * swing_ : -0.5 * swing_;
    const bool atRail = std::abs(sample) >= kRail;
    const bool before = !ahead_.empty() && ahead_.front().time - now < kHeardBeforeSeconds * rateHz_;
    restoreLoss_.follow(heardBefore_, heard, level, atRail ? 1.0 : before ? 0.0 : trust(now - lastEdge_));
    heardBefore_ = heard;
    if (atRail) return sample > 0.0 ? 1.0F : 0.0F;
    return static_cast<float>((heard + restoreLoss_.loss()) / swing_ + 0.5);
}

}  // namespace trueunit
