// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/condition/line_restorer.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/acquire/magnitude.h"
#include "core/straight_sums.h"

namespace trueunit {

namespace {
constexpr double kBlockSeconds = 0.0001;        // levels are decided on the mean of so much,
constexpr std::size_t kLightSmoothBlocks = 2;   // where there is little of it short bounces show
constexpr double kLittleNoise = 0.015;          // residual of the fit, of the swing
constexpr double kHoldBackSeconds = 0.006;      // the slowest rise from mid-level to a decision
constexpr double kHysteresis = 0.12;            // of the swing, either side of the middle; a slow rise must reach it
constexpr double kFollowSeconds = 0.5;          // time constant of swing and offset
constexpr double kQuietSeconds = 0.004;         // after a decision the levels are not yet steady
constexpr double kHeardBeforeSeconds = 0.0035;  // from this long before an edge the coupling is fed with what is heard,
constexpr double kHeardAfterSeconds = 0.005;    // until this long after it;
constexpr double kTrustedSeconds = 0.014;       // from here on with the level alone
constexpr double kAway = 0.2;                   // of the swing: on the way to the other level
constexpr double kCalm = 0.1;                   // of the swing: a stride so near its level needs no look at each block
constexpr std::size_t kLetGo = 8192;            // samples kept longer than needed, to move them seldom
constexpr double kLargestError = 0.25;          // of the swing: more than that is no level error but an edge
}  // namespace

LineRestorer::LineRestorer(const LineFit& fit, double rateHz, std::uint64_t firstSample)
    : rateHz_(rateHz),
      block_(std::max<std::size_t>(1, static_cast<std::size_t>(std::lround(kBlockSeconds * rateHz)))),
      blocks_(fit.residual < kLittleNoise ? kLightSmoothBlocks : kSmoothBlocks),
      stride_(kStrideBlocks * block_),
      delay_(stride_ *
             static_cast<std::size_t>(std::ceil(kHoldBackSeconds * rateHz / static_cast<double>(stride_)) + 1)),
      groupDelay_(0.5 * (static_cast<double>(blocks_ * block_) - 1.0)),
      follow_(static_cast<double>(block_) / (kFollowSeconds * rateHz)),
      quiet_(kQuietSeconds * rateHz),
      heardBeforeEdge_(kHeardBeforeSeconds * rateHz),
      trustFrom_(kHeardAfterSeconds * rateHz),
      trustSlope_(1.0 / ((kTrustedSeconds - kHeardAfterSeconds) * rateHz)),
      rails_(fit.rails),
      swing_(fit.swing),
      offset_(fit.offset),
      first_(static_cast<double>(firstSample)),
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
    sums_.fill((smoothBefore_ + offset_) * static_cast<double>(block_));
    sumScale_ = 1.0 / static_cast<double>(blocks_ * block_);
    middleCrossing_ = first_;
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
    held_.insert(held_.end(), heard.begin(), heard.end());
    const float largest = largestMagnitude(heard);
    if (!(largest < rails_.nearest())) railTo_ = heardCount_ + held_.size() - decided_;
    if (!(largest <= kLargestSample))
        for (float& v : std::span(held_).last(heard.size()))
            if (!(std::abs(v) <= kLargestSample)) v = std::isfinite(v) ? std::copysign(kLargestSample, v) : 0.0F;
    const std::size_t strides = (held_.size() - decided_) / stride_;
    const std::size_t due = decided_ + strides * stride_;
    std::size_t out = line.size();
    if (due > delay_) line.resize(out + due - std::max(decided_, delay_));
    while (decided_ < due) {
        decide(std::span(held_).subspan(decided_, stride_), transitions);
        decided_ += stride_;
        if (decided_ <= delay_) continue;
        restore(std::span(held_).subspan(decided_ - delay_ - stride_, stride_), line.data() + out);
        out += stride_;
    }
    if (decided_ > delay_ + kLetGo) {
        const std::size_t spent = decided_ - delay_;
        held_.erase(held_.begin(), held_.begin() + static_cast<std::ptrdiff_t>(spent));
        decided_ -= spent;
    }
}

void LineRestorer::finish(std::vector<float>& line) {
    std::span<const float> rest = std::span(held_).subspan(decided_ > delay_ ? decided_ - delay_ : 0);
    std::size_t out = line.size();
    line.resize(out + rest.size());
    while (!rest.empty()) {
        const std::span<const float> stride = rest.first(std::min(stride_, rest.size()));
        restore(stride, line.data() + out);
        out += stride.size();
        rest = rest.subspan(stride.size());
    }
    held_.clear();
    decided_ = 0;
}

// How far the decided level is trusted so many samples after an edge. Near one the line has a form of its own.
double LineRestorer::trust(double sinceEdge) const {
    return std::clamp((sinceEdge - trustFrom_) * trustSlope_, 0.0, 1.0);
}

// The means of a stride's blocks, each with those before it. Block sums grow side by side: none waits for another.
LineRestorer::Stride LineRestorer::smoothed(std::span<const float> stride) {
    std::array<float, kStrideBlocks> sums{};
    for (std::size_t i = 0; i < block_; ++i)
        for (std::size_t k = 0; k < kStrideBlocks; ++k) sums[k] += stride[k * block_ + i];
    std::copy_n(sums_.begin() + kStrideBlocks, kBlocksBefore, sums_.begin());
    std::copy(sums.begin(), sums.end(), sums_.begin() + kBlocksBefore);
    const auto* const oldest = sums_.data() + kBlocksBefore + 1 - blocks_;
    Stride means{};
    for (std::size_t j = 0; j < blocks_; ++j)
        for (std::size_t k = 0; k < kStrideBlocks; ++k) means[k] += oldest[j + k];
    for (double& m : means) m *= sumScale_;
    return means;
}

void LineRestorer::decide(std::span<const float> stride, std::vector<Transition>& transitions) {
    oldest_ = static_cast<double>(heardCount_ + stride_) - static_cast<double>(delay_);
    error_ = 0.0;
    const Stride means = smoothed(stride);
    if (calm(means))
        decideCalm(means);
    else
        for (const double mean : means) decideBlock(mean, transitions);
    followLevels();
}

// No change of level can come of this stride.
bool LineRestorer::calm(const Stride& smooth) const {
    const double expected = level() + offset_ - decisionLoss_.loss();
    return away_ == 0.0 && std::all_of(smooth.begin(), smooth.end(), [&](double s) {
               return std::abs(s - expected) < kCalm * swing_ && !rails_.reached(static_cast<float>(s));
           });
}

// The loss goes straight on for so short a time.
void LineRestorer::decideCalm(const Stride& smooth) {
    constexpr auto kBlocks = static_cast<double>(kStrideBlocks);
    const double trusted = trust(sinceDecision_ + 0.5 * static_cast<double>(stride_));
    const double heard = std::accumulate(smooth.begin(), smooth.end(), 0.0) - kBlocks * offset_;
    const double last = smooth.back() - offset_;
    const double before = decisionLoss_.loss();
    decisionLoss_.followRun(kBlocks, 2.0 * heard + smoothBefore_ - last, level(), trusted);
    const double after = decisionLoss_.loss();
    smoothBefore_ = last;
    previous_ = last + after;
    heardCount_ += stride_;
    sinceDecision_ += static_cast<double>(stride_);
    const double losses = 0.5 * ((kBlocks - 1.0) * before + (kBlocks + 1.0) * after);  // at the end of each block
    if (sinceDecision_ > quiet_) error_ = trusted * (heard + losses - kBlocks * level());
}

// The smoothed means lie groupDelay_ behind; the loss model of the decision runs on that clock, block by block.
void LineRestorer::decideBlock(double smooth, std::vector<Transition>& transitions) {
    const auto step = static_cast<double>(block_);
    heardCount_ += block_;
    const double heard = smooth - offset_;
    const bool atRail = rails_.reached(static_cast<float>(smooth));  // it is at least so much: the side decides
    const bool above = smooth >= static_cast<double>(rails_.high);
    const double trusted = trust(sinceDecision_);
    const double share = atRail ? 1.0 : away_ > 0.0 && away_ <= static_cast<double>(delay_) ? 0.0 : trusted;
    decisionLoss_.follow(smoothBefore_, heard, atRail ? (above ? 0.5 : -0.5) * swing_ : level(), share);
    smoothBefore_ = heard;
    double value = heard + decisionLoss_.loss();
    if (atRail) value = above ? std::max(value, 0.5 * swing_) : std::min(value, -0.5 * swing_);
    // A level that stays away without having become the other one is a wrong level: after a while it is pulled back.
    const double error = value - level();
    away_ = std::abs(error) < kAway * swing_ ? 0.0 : away_ + step;
    const double now = static_cast<double>(heardCount_ - 1);
    if ((value >= 0.0) != (previous_ >= 0.0)) middleCrossing_ = now - step * value / (value - previous_);
    previous_ = value;
    sinceDecision_ += step;
    const double threshold = kHysteresis * swing_;
    if (high_ ? value < -threshold : value > threshold)
        changeLevel(transitions);
    else if (sinceDecision_ > quiet_ && !atRail && std::abs(error) <= kLargestError * swing_)
        error_ += trusted * error;
}

void LineRestorer::changeLevel(std::vector<Transition>& transitions) {
    followLevels();  // what was gathered is of the level before
    high_ = !high_;
    sinceDecision_ = 0.0;
    const double at = std::max(middleCrossing_ - groupDelay_, oldest_);
    if (at <= first_) {  // it was so from the start: nothing was seen to change
        restoreHigh_ = high_;
        return;
    }
    transitions.push_back({at, high_});
    ahead_.push_back(transitions.back());
}

void LineRestorer::followLevels() {
    offset_ += follow_ * error_;
    swing_ += follow_ * (high_ ? error_ : -error_);
    error_ = 0.0;
}

void LineRestorer::passEdges(double now) {
    while (!ahead_.empty() && ahead_.front().time <= now) {
        lastEdge_ = ahead_.front().time;
        restoreHigh_ = ahead_.front().up;
        ahead_.pop_front();
    }
}

void LineRestorer::restore(std::span<const float> stride, float* line) {
    if (restoredCount_ < railTo_ && largestMagnitude(stride) >= rails_.nearest()) {
        for (const float sample : stride) *line++ = restoreNext(static_cast<double>(sample));
        return;
    }
    const auto begin = static_cast<double>(restoredCount_);
    const auto length = static_cast<double>(stride.size());
    const bool edgeNear = !ahead_.empty() && ahead_.front().time - begin < heardBeforeEdge_ + length;
    const double trusted = edgeNear ? 0.0 : trust(begin + 0.5 * length - lastEdge_);
    if (trusted > 0.0)
        restoreAtRest(stride, trusted, line);
    else
        restoreNearEdge(stride, line);
    restoredCount_ += stride.size();
    passEdges(static_cast<double>(restoredCount_ - 1));
}

// What is heard is integrated sample by sample: it may have any form.
void LineRestorer::restoreNearEdge(std::span<const float> stride, float* line) {
    const double scale = 1.0 / swing_;
    const double shift = 0.5 - offset_ * scale;
    CouplingLoss loss = restoreLoss_;  // in registers
    double heardBefore = heardBefore_;
    for (const float v : stride) {
        const auto sample = static_cast<double>(v);
        const double heard = sample - offset_;
        loss.follow(heardBefore, heard);
        heardBefore = heard;
        *line++ = static_cast<float>((sample + loss.loss()) * scale + shift);
    }
    restoreLoss_ = loss;
    heardBefore_ = heardBefore;
}

// The loss of a level at rest goes straight on for so short a time.
void LineRestorer::restoreAtRest(std::span<const float> stride, double trusted, float* line) {
    const auto samples = static_cast<double>(stride.size());
    const double last = static_cast<double>(stride.back()) - offset_;
    const double heardTwice = 2.0 * (sumOf(stride) - samples * offset_) + heardBefore_ - last;
    const double before = restoreLoss_.loss();
    restoreLoss_.followRun(samples, heardTwice, restoreHigh_ ? 0.5 * swing_ : -0.5 * swing_, trusted);
    heardBefore_ = last;
    const double scale = 1.0 / swing_;
    const double slope = (restoreLoss_.loss() - before) * (1.0 / samples);
    const auto gain = static_cast<float>(scale);
    const auto first = static_cast<float>((before + slope - offset_) * scale + 0.5);
    const auto step = static_cast<float>(slope * scale);
    for (std::size_t i = 0; i < stride.size(); ++i)
        line[i] = stride[i] * gain + (first + step * static_cast<float>(static_cast<std::int32_t>(i)));
}

float LineRestorer::restoreNext(double sample) {
    const auto now = static_cast<double>(restoredCount_++);
    passEdges(now);
    const double heard = sample - offset_;
    const double level = restoreHigh_ ? 0.5 * swing_ : -0.5 * swing_;
    const bool atRail = rails_.reached(static_cast<float>(sample));
    const bool before = !ahead_.empty() && ahead_.front().time - now < heardBeforeEdge_;
    restoreLoss_.follow(heardBefore_, heard, level, atRail ? 1.0 : before ? 0.0 : trust(now - lastEdge_));
    heardBefore_ = heard;
    if (atRail) return sample >= static_cast<double>(rails_.high) ? 1.0F : 0.0F;
    return static_cast<float>((heard + restoreLoss_.loss()) / swing_ + 0.5);
}

}  // namespace trueunit
