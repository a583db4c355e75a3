// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <deque>
#include <span>
#include <vector>

#include "core/condition/coupling_loss.h"
#include "core/condition/line_fit.h"

namespace trueunit {

// Gives the line its levels back. In: samples as heard. Out: the line scaled to 0 (low) and 1 (high), late by
// delay() samples, and the transitions seen in it, each before the samples around it are let go.
//
// What the coupling loses is added to the samples. Its model is fed near an edge with what is heard, so that the edge
// may have any form, and further away with the level that was decided: a level holds for any length of time and hardly
// any noise is integrated. Swing and offset follow the signal slowly. Levels are decided on block by block; trust and
// levels change once a stride of some blocks, so that what is done for each sample has no decision in it. A sample at
// the rail was cut off there: all that is known of it is the side, and it comes out as exactly 0 or 1. Analysis thread;
// a fixed cost a sample; the result does not depend on how the samples are chopped.
class LineRestorer {
public:
    LineRestorer(const LineFit& fit, double rateHz, std::uint64_t firstSample = 0);

    void push(std::span<const float> heard, std::vector<float>& line, std::vector<Transition>& transitions);
    void finish(std::vector<float>& line);  // lets go what is held back, with no more transitions

    std::size_t delay() const { return delay_; }
    double swing() const { return swing_; }
    double offset() const { return offset_; }
    bool high() const { return high_; }
    void setCoupling(const HighPass& coupling);
    void setRails(const Rails& rails) { rails_ = rails; }

private:
    static constexpr std::size_t kStrideBlocks = 8;    // blocks of one trust
    using Stride = std::array<double, kStrideBlocks>;  // smoothed means of its blocks
    static constexpr std::size_t kSmoothBlocks = 5;    // that a mean goes over because of noise
    static constexpr std::size_t kBlocksBefore = kSmoothBlocks - 1;

    void decide(std::span<const float> stride, std::vector<Transition>& transitions);
    bool calm(const Stride& smooth) const;
    void decideCalm(const Stride& smooth);
    void decideBlock(double smooth, std::vector<Transition>& transitions);
    void changeLevel(std::vector<Transition>& transitions);
    Stride smoothed(std::span<const float> stride);
    void followLevels();
    void restore(std::span<const float> stride, float* line);
    void restoreNearEdge(std::span<const float> stride, float* line);
    void restoreAtRest(std::span<const float> stride, double trusted, float* line);
    float restoreNext(double sample);
    void passEdges(double now);
    double trust(double sinceEdge) const;
    double level() const { return high_ ? 0.5 * swing_ : -0.5 * swing_; }

    double rateHz_;
    std::size_t block_;   // samples between decisions
    std::size_t blocks_;  // of the smoothing before the decision
    std::size_t stride_;  // samples, whole blocks
    std::size_t delay_;   // whole strides
    double groupDelay_;
    double follow_;           // share of the level error taken over per block
    double quiet_;            // samples
    double heardBeforeEdge_;  // samples
    double trustFrom_;        // samples since an edge
    double trustSlope_;       // per sample

    Rails rails_;
    double swing_;
    double offset_;
    double first_;                 // absolute number of the first sample of all
    std::uint64_t heardCount_;     // absolute number of the next sample to be decided on
    std::uint64_t restoredCount_;  // absolute number of the next sample to be restored
    double oldest_ = 0.0;          // absolute number of the first sample that a transition may still be told before

    // Decision: runs ahead on means.
    std::vector<float> held_;   // samples not yet let go, and some spent ones before them
    std::uint64_t railTo_ = 0;  // absolute number of the first sample from which on none is known to be at the rail
    std::size_t decided_ = 0;   // of them, decided on
    std::array<double, kBlocksBefore + kStrideBlocks> sums_{};  // of the last blocks, newest last
    double sumScale_ = 1.0;
    CouplingLoss decisionLoss_;
    bool high_;
    double previous_ = 0.0;  // smoothed and restored, last block
    double middleCrossing_ = 0.0;
    double sinceDecision_ = 0.0;  // samples
    double away_ = 0.0;           // samples that the line has been off its level
    double smoothBefore_ = 0.0;   // as heard, less the offset
    double error_ = 0.0;          // of the level in this stride, by trust

    // Restoration: follows delay_ samples behind, with the transitions at their times.
    CouplingLoss restoreLoss_;
    bool restoreHigh_;
    double heardBefore_ = 0.0;
    double lastEdge_ = -1e12;
    std::deque<Transition> ahead_;
};

}  // namespace trueunit
