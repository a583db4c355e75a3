// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <span>

namespace trueunit {

// Is a tone that the program itself plays to be heard in the input? Half a second at a time, the power at the tone is
// held against that beside it and against what was there before the tone began, since a tape loop may have a line at
// the same place. Analysis thread; some ten operations a sample.
class ToneWatch {
public:
    ToneWatch(double rateHz, double toneHz);

    void push(std::span<const float> samples, bool playing);
    bool heard() const { return times_ >= 2; }  // in two halves of a second one after the other

private:
    void judge(bool playing);

    struct Resonance {
        double coefficient = 0.0, last = 0.0, beforeLast = 0.0;
        void push(double x) {
            const double now = x + coefficient * last - beforeLast;
            beforeLast = last;
            last = now;
        }
        double power() const { return last * last + beforeLast * beforeLast - coefficient * last * beforeLast; }
    };

    std::size_t frame_;  // samples
    std::size_t filled_ = 0;
    std::array<Resonance, 5> resonances_;  // the tone first, then beside it
    std::optional<double> quiet_;          // largest power at the tone while it did not play
    int times_ = 0;
};

}  // namespace trueunit
