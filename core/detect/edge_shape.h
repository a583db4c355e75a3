// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <vector>

namespace trueunit {

// The form of the edges of one direction, learned from the signal: S(t) rises from 0 to 1, t in samples from a
// reference near mid-swing. Aligned edges are averaged on a grid finer than the samples; the average says where the
// slice level is crossed and, by its slope, how to weigh samples when the next edge is placed (least squares reaches
// the bound of S. M. Kay, Estimation Theory, 1993, ch. 3, from memory). Until enough edges are known the form is a
// smooth step of assumed width. Value type; analysis thread.
class EdgeShape {
public:
    EdgeShape(double rateHz, double sliceFraction);

    // Samples of one aligned edge, scaled to rise from 0 to 1; offset of the first from the edge's reference; rms noise
    // of the samples on that scale.
    void learn(double firstOffset, std::span<const double> scaled, double noise);
    void setSlice(double fraction);

    double value(double t) const;
    double slope(double t) const;  // per sample
    // Samples before and after the reference within which the form is neither 0 nor 1.
    double before() const { return before_; }
    double after() const { return after_; }
    double sliceOffset() const { return slice_; }  // of the slice crossing from the reference
    double riseSamples() const { return rise_; }   // 10 to 90 %
    double crossing(double fraction) const;        // of its height, from the reference
    int edges() const { return edges_; }
    double reach() const { return reach_; }  // samples either side that learning covers

private:
    void rebuild(double noise);
    void adopt(const std::vector<double>& smooth, double zoneLevel);
    double smoothCrossing(double fraction) const;
    double settles(std::ptrdiff_t from, int direction, double target, double level) const;
    void seed(double rise);

    double rateHz_;
    double reach_;
    double sliceFraction_;
    double smallestZone_;
    int edges_ = 0;
    int nextRebuild_ = 6;
    std::vector<double> sum_;
    std::vector<double> count_;
    std::vector<double> value_;  // on the grid
    std::vector<double> slope_;  // on the grid, per sample
    double before_ = 0.0;
    double after_ = 0.0;
    double slice_ = 0.0;
    double rise_ = 0.0;
};

}  // namespace trueunit
