// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <deque>
#include <span>
#include <vector>

#include "core/frame/character.h"
#include "core/measure/displacements.h"

namespace trueunit {

// One character's own estimate of the bias, and what its instants were displaced by. Percent, marking positive;
// displacements late positive and on a unit that stays the same, so that its error is a pattern and no step.
struct BiasPoint {
    struct Displacement {
        int k = 0;
        bool toMark = false;
        double percent = 0.0;
    };
    std::uint64_t number = 0;
    double seconds = 0.0;  // of its start
    int segment = 0;       // counts the nudges before it
    std::vector<Displacement> instants;
    double bias = 0.0;                       // the pattern of the places and the likely error of the start taken out
    double variance = 1.0;                   // of it, as learned
    double marks = 0.0;                      // instants to mark that tell it
    double spaces = 0.0;                     // instants to space that tell the error of the start
    double markMean = 0.0, spaceMean = 0.0;  // of their displacements, the pattern taken out
};

// What a sender does when nobody touches it, learned from its last characters: the pattern by place (a late level is
// no nudge), the scatter of single instants, the scatter that all instants of a character share, since they are counted
// from one start, and how much slower the mean of neighbours settles than chance would have it (wow and wander make
// neighbours alike). The bias moves the instants to mark only, so those to space tell by how much the start was off;
// the estimate of a character is the one of least variance that follows from that.
// Cost of learn(): some thousand operations.
class BiasScatter {
public:
    static constexpr std::size_t kFewest = 12;  // characters to learn from

    // From settled points, oldest first; nothing is learned from fewer than kFewest.
    void learn(std::span<const BiasPoint> settled);
    bool known() const { return degrees_ > 0.0; }
    double degrees() const { return degrees_; }     // of freedom behind the variances
    double widening(std::size_t characters) const;  // of the variance of a mean over so many neighbours, >= 1
    double instantVariance() const { return within_ + shared_ + left_; }
    double patternOf(int k, bool toMark) const { return places_[static_cast<std::size_t>(k)][toMark ? 1 : 0]; }
    double markPlace() const { return meanPlace_; }  // mean k of the instants to mark

    // Fills bias, variance, marks. Places hardly seen so far tell nothing; a character of such alone has no weight.
    void estimate(BiasPoint& point) const;

private:
    void learnPlaces(std::span<const BiasPoint> settled, const std::vector<double>& means);
    void learnVariances(std::span<const BiasPoint> settled, const std::vector<double>& means);
    double learnShared(std::span<const BiasPoint> settled, const std::vector<double>& means) const;
    bool told(const BiasPoint::Displacement& d) const;
    double shareOf(double spaces) const;  // of the spaces' mean that is the start's error
    double varianceOf(double marks, double spaces) const;
    void learnWidening(const std::vector<double>& residuals);

    std::array<std::array<double, 2>, kMostPlaces> places_{}, counts_{};  // mean, seen so often
    double within_ = 1.0, shared_ = 0.0, left_ = 0.0;  // of instants; of starts; of whole characters besides
    double degrees_ = 0.0;
    double meanPlace_ = 0.0;
    std::array<double, 6> widening_{};  // of 1, 2, 4, 8, 16, 32 neighbours
};

}  // namespace trueunit
