// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>

namespace trueunit {

// What the line comes to on either side when it has time, learned at the end of long elements. How long is long enough
// depends on the edges: where they are seen to be slow it takes five time constants, or the longest of late. Side 0 is
// low, 1 is high; an edge up comes to rest at side 1. Value type; analysis thread.
class SettledLevels {
public:
    explicit SettledLevels(double rateHz) : rateHz_(rateHz) {}

    // Whether an element of so many samples on this side has come to rest at its end; rise of the edges to it, from 10
    // to 90 % in samples. In the order of their coming.
    bool rests(std::size_t side, double samples, double rise);
    void take(std::size_t side, double level);  // at the end of one that has

    // An edge to this side falls short of the swing, some milliseconds after it, by this part of it.
    void fallsShort(std::size_t side, double part);
    double missing(std::size_t side) const { return missing_[side]; }  // of the swing, of late
    bool slow(std::size_t side) const;  // an edge to it is not over when its neighbourhood is

    double operator[](std::size_t side) const { return level_[side]; }
    double height(double fraction) const { return level_[0] + (level_[1] - level_[0]) * fraction; }

private:
    double rateHz_;
    std::array<double, 2> level_{0.0, 1.0};
    std::array<double, 2> count_{0.0, 0.0};
    std::array<double, 2> missing_{0.0, 0.0};  // how far edges fall short
    std::array<double, 2> longest_{0.0, 0.0};  // element of late, samples
};

}  // namespace trueunit
