// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/condition/line_restorer.h"

#include <algorithm>
#include <cmath>

namespace trueunit {

namespace {
constexpr double kBlockSeconds = 0.0001;        // levels are decided on the mean of so much,
constexpr std::size_t kSmoothBlocks = 5;        // over some of them because of noise;
constexpr std::size_t kLightSmoothBlocks = 2;   // where there is little of it short bounces show
constexpr double kLittleNoise = 0.015;          // residual of the fit, of the swing
constexpr double kHoldBackSeconds = 0.006;      // the slowest rise from mid-level to a decision
constexpr double kHysteresis = 0.12;            // of the swing, either side of the middle; a slow rise must reach it
constexpr float kRail = 0.999F;                 // full scale
constexpr double kFollowSeconds = 0.5;          // time constant of swing and offset
constexpr double kQuietSeconds = 0.004;         // after a decision the levels are not yet steady
constexpr double kHeardBeforeSeconds = 0.0035;  // from this long before an edge the coupling is fed with what is heard,
constexpr double kHeardAfterSeconds = 0.005;    // until this long after it;
constexpr double kTrustedSeconds = 0.014;       // from here on with the level alone
constexpr double kAway = 0.2;                   // of the swing: on the way to the other level
constexpr std::size_t kLetGo = 8192;            // samples kept longer than needed, to move them seldom
constexpr double kLargestError = 0.25;          // of the swing: more than that is no level error but an edge
}  // namespace

LineRestorer::LineRestorer(const LineFit& fit, double rateHz, std::uint64_t firstSample)
    : rateHz_(rateHz),
      block_(std::max<std::size_t>(1, static_cast<std::size_t>(std::lround(kBlockSeconds * rateHz)))),
      blocks_(fit.residual < kLittleNoise ? kLightSmoothBlocks : kSmoothBlocks),
      delay_(block_ * static_cast<std::size_t>(std::lround(kHoldBackSeconds * rateHz / static_cast<double>(block_)))),
      groupDelay_(0.5 * (static_cast<double>(blocks_ * block_) - 1.0)),
      follow_(static_cast<double>(block_) / (kFollowSeconds * rateHz)),
      quiet_(kQuietSeconds * rateHz),
      swing_(fit.swing),
      offset_(fit.offset),
      heardCount_(firstSample),
      restoredCount_(firstSample),
      decisionLoss_(fit.coupling, rateHz / static_cast<double>(block_)),
      high_(fit.startsHigh),
      restoreLoss_(fit.coupling, rateHz),
      restoreHigh_(fit.startsHigh) {
    const std::array<double, 2> start{fit.lossAtStart[0] * swing_, fit.lossAtStart[1] * swing_};
    decisionLoss_.setState(start);
    restoreLoss_.setState(start);
    previous_ = level();
    smoothBefore_ = heardBefore_ = level() - start[0] - start[1];
    sums_.assign(blocks_, (smoothBefore_ + offset_) * static_cast<double>(block_));
    sumScale_ = 1.0 / static_cast<double>(blocks_ * block_);
    middleCrossing_ = static_cast<double>(firstSample);
}

void LineRestorer::setCoupling(const HighPass& coupling) {
    const auto renew = [&](CouplingLoss& loss, double rate) {
        const std::array<double, 2> state = loss.state();
        loss = CouplingLoss(coupling, rate);
        loss.setState(state);
    };
    renew(decisionLoss_, rateHz_ / static_cast<double>(block_));
    renew(restoreLoss_, rateHz_);
}

void LineRestorer::push(std::span<const float> heard, std::vector<float>& line, std::vector<Transition>& transitions) {
    const std::size_t before = held_.size();
    held_.resize(before + heard.size());
    std::transform(heard.begin(), heard.end(), held_.begin() + static_cast<std::ptrdiff_t>(before), [](float v) {
        return v >= -8.0F && v <= 8.0F ? v : std::isfinite(v) ? std::copysign(8.0F, v) : 0.0F;
    });
    while (held_.size() - decided_ >= block_) {
        const std::span<const float> block = std::span(held_).subspan(decided_, block_);
        decided_ += block_;
        heardCount_ += block_;
        double sum = 0.0;
        for (const float v : block) sum += static_cast<double>(v);
        sums_[(heardCount_ / block_) % blocks_] = sum;
        double total = 0.0;
        for (const double v : sums_) total += v;
        decide(total * sumScale_, transitions);
        if (decided_ > delay_) restore(std::span(held_).subspan(decided_ - delay_ - block_, block_), line);
    }
    if (decided_ > delay_ + kLetGo) {
        const std::size_t spent = decided_ - delay_;
        held_.erase(held_.begin(), held_.begin() + static_cast<std::ptrdiff_t>(spent));
        decided_ -= spent;
    }
}

void LineRestorer::finish(std::vector<float>& line) {
    const std::size_t first = decided_ > delay_ ? decided_ - delay_ : 0;
    restore(std::span(held_).subspan(first), line);
    held_.clear();
    decided_ = 0;
}

// How far the decided level is trusted so many samples after an edge. Near one the line has a form of its own.
double LineRestorer::trust(double sinceEdge) const {
    const double seconds = sinceEdge / rateHz_;
    return std::clamp((seconds - kHeardAfterSeconds) / (kTrustedSeconds - kHeardAfterSeconds), 0.0, 1.0);
}

// The smoothed means lie groupDelay_ behind; the loss model of the decision runs on that clock, block by block.
void LineRestorer::decide(double smooth, std::vector<Transition>& transitions) {
    const auto step = static_cast<double>(block_);
    const double heard = smooth - offset_;
    const bool atRail = std::abs(smooth) >= static_cast<double>(kRail);  // it is at least so much: the sign decides
    const double share = atRail                                                ? 1.0
                         : away_ > 0.0 && away_ <= static_cast<double>(delay_) ? 0.0
                                                                               : trust(sinceDecision_);
    decisionLoss_.follow(smoothBefore_, heard, atRail ? std::copysign(0.5 * swing_, smooth) : level(), share);
    smoothBefore_ = heard;
    double value = heard + decisionLoss_.loss();
    if (atRail) value = smooth > 0.0 ? std::max(value, 0.5 * swing_) : std::min(value, -0.5 * swing_);
    // A level that stays away without having become the other one is a wrong level: after a while it is pulled back.
    away_ = std::abs(value - level()) < kAway * swing_ ? 0.0 : away_ + step;
    const double now = static_cast<double>(heardCount_ - 1);
    if ((value >= 0.0) != (previous_ >= 0.0)) middleCrossing_ = now - step * value / (value - previous_);
    previous_ = value;
    sinceDecision_ += step;
    const double threshold = kHysteresis * swing_;
    if (high_ ? value < -threshold : value > threshold) {
        high_ = !high_;
        sinceDecision_ = 0.0;
        const double oldest = now - static_cast<double>(delay_) + groupDelay_ + 1.0;
        const double crossing = std::max(middleCrossing_, oldest);
        transitions.push_back({crossing - groupDelay_, high_});
        ahead_.push_back(transitions.back());
    } else if (sinceDecision_ > quiet_ && !atRail) {
        followLevels(value - level(), follow_ * trust(sinceDecision_));
    }
}

void LineRestorer::followLevels(double error, double share) {
    if (std::abs(error) > kLargestError * swing_) return;
    offset_ += share * error;
    swing_ += share * (high_ ? error : -error);
}

void LineRestorer::restore(std::span<const float> block, std::vector<float>& line) {
    const auto now = static_cast<double>(restoredCount_);
    const double before = kHeardBeforeSeconds * rateHz_;
    const bool edge = !ahead_.empty() && ahead_.front().time - now < before + static_cast<double>(block.size());
    float most = 0.0F;
    for (const float v : block) most = std::max(most, std::abs(v));
    const bool rail = most >= kRail;
    if (edge || rail) {
        for (const float sample : block) line.push_back(restoreNext(static_cast<double>(sample)));
        return;
    }
    // The common case, without a decision for each sample.
    const double scale = 1.0 / swing_;
    const double shift = 0.5 - offset_ * scale;
    restoreLoss_.startRun(restoreHigh_ ? 0.5 * swing_ : -0.5 * swing_, trust(now - lastEdge_));
    const std::size_t first = line.size();
    line.resize(first + block.size());
    CouplingLoss loss = restoreLoss_;  // in registers
    double heardBefore = heardBefore_;
    for (std::size_t i = 0; i < block.size(); ++i) {
        const auto sample = static_cast<double>(block[i]);
        const double heard = sample - offset_;
        loss.run(heardBefore, heard);
        heardBefore = heard;
        line[first + i] = static_cast<float>((sample + loss.loss()) * scale + shift);
    }
    restoreLoss_ = loss;
    heardBefore_ = heardBefore;
    restoredCount_ += block.size();
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
    const bool atRail = std::abs(sample) >= static_cast<double>(kRail);
    const bool before = !ahead_.empty() && ahead_.front().time - now < kHeardBeforeSeconds * rateHz_;
    restoreLoss_.follow(heardBefore_, heard, level, atRail ? 1.0 : before ? 0.0 : trust(now - lastEdge_));
    heardBefore_ = heard;
    if (atRail) return sample > 0.0 ? 1.0F : 0.0F;
    return static_cast<float>((heard + restoreLoss_.loss()) / swing_ + 0.5);
}

}  // namespace trueunit
