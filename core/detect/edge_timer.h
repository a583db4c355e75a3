// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <deque>
#include <optional>
#include <span>
#include <vector>

#include "core/detect/bounce_gate.h"
#include "core/detect/edge.h"
#include "core/detect/edge_shape.h"
#include "core/detect/settled_levels.h"

namespace trueunit {

// Places each held transition to a small part of a sample. In: the restored line (0..1) and held transitions. Out:
// edges in order. An edge's own levels come from the line either side of it, with a slope common to both sides, so
// that hum and drift do not shift it; its time from a least-squares fit of the learned form between those levels.
// A slow edge that never settles between neighbours is timed by its crossing of the settled levels instead.
// Analysis thread; keeps the last second of line; cost per edge, not per sample.
class EdgeTimer {
public:
    EdgeTimer(double rateHz, double sliceFraction, std::uint64_t firstSample = 0);

    void push(std::span<const float> line);
    void time(const HeldTransition& held) { waiting_.push_back(held); }
    void advance(std::vector<Edge>& out);  // times what the line now covers
    void finish(std::vector<Edge>& out);   // times the rest with what there is
    bool waits() const { return !waiting_.empty(); }
    double waitsSince() const { return waiting_.front().first.time; }

    // Samples behind an edge that must be seen before what surrounds it is known well enough to place it.
    double looksAhead() const;

    bool hums() const;        // more slow disturbance than noise
    double humRms() const;    // of that disturbance, fraction of the swing; what a slope over 24 ms does not explain
    double noiseRms() const;  // of the line, fraction of the swing; 0 = not known
    double riseSamples(bool up) const;  // 10 to 90 %
    std::span<const EdgeShape, 2> shapes() const { return shapes_; }
    void setShapes(std::span<const EdgeShape, 2> shapes) { shapes_ = {shapes[0], shapes[1]}; }
    void setMarkIsLow(bool low);  // the slice counts from space to mark

    // The line from a sample on, as far as it is still held. For the traces.
    struct Excerpt {
        double firstAt = 0.0;  // samples since the input started
        double spacing = 1.0;  // samples
        std::vector<float> line;
    };
    Excerpt excerpt(double from, double to, std::size_t most) const;
    std::uint64_t end() const { return end_; }  // first sample not yet seen

private:
    struct Levels {
        double before = 0.0;
        double after = 1.0;
        double slope = 0.0;  // per sample, common to both sides
        double reach = 0.0;  // half length used
        bool local = false;
        double samplesBefore = 0.0;  // they were measured over
        double samplesAfter = 0.0;
    };

    struct Halt {
        double time = 0.0;     // of the first closure, as if the line had gone straight up
        double samples = 0.0;  // from that to the last
    };

    Edge place(const HeldTransition& held);
    std::optional<Halt> haltOf(const HeldTransition& held, const Levels& levels) const;
    Levels levelsAround(double at, const HeldTransition& held, double longest) const;
    void steadyLevels(Levels& levels, bool up);
    void learnForm(EdgeShape& shape, double reference, double at, const Levels& levels);
    double fitForm(double at, const Levels& levels, bool up) const;
    bool slicedInTail(const EdgeShape& shape) const;
    double walkTo(double height, const HeldTransition& held) const;
    double crossSettled(const HeldTransition& held) const;
    double crossFirst(const HeldTransition& held) const;
    void followNoise(const HeldTransition& held, double at);
    void followSettled(const HeldTransition& held, double at);
    // At the rail, and so without a word on when the edge was.
    bool flattened(std::uint64_t i) const {
        const float v = history_[i - historyFrom_];
        return v == 0.0F || v == 1.0F;
    }
    double sample(std::uint64_t i) const { return static_cast<double>(history_[i - historyFrom_]); }
    void followSlowRise(std::size_t side, double middle, double clearAfter);
    std::span<const float> between(double from, double to) const;  // both included; not before begin_

    double rateHz_;
    double sliceFraction_;
    double sliceHeight_;  // from low to high
    double longestReach_;
    std::array<EdgeShape, 2> shapes_;  // falling, rising
    std::size_t kept_;                 // samples of history
    std::vector<float> history_;       // those and some older ones, to move them seldom
    std::uint64_t historyFrom_;        // number of the first of them
    std::uint64_t begin_;              // number of the first that counts
    std::uint64_t end_;
    std::deque<HeldTransition> waiting_;
    double noiseSquares_ = 0.0;
    double stepSquares_ = 0.0;  // of neighbouring samples' differences: noise without hum and drift
    double noiseCount_ = 0.0;
    SettledLevels settled_;             // low, high
    std::array<double, 2> slowRise_{};  // 10 to 90 % of slow edges down and up, samples; 0 = not known
    double steadied_ = 0.0;             // levels so far
    std::array<double, 4> wander_{};    // square of local less settled level: before, after; by direction
};

}  // namespace trueunit
