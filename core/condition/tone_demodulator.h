// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <complex>
#include <cstdint>
#include <span>
#include <vector>

#include "core/condition/tone_finder.h"

namespace trueunit {

// Turns keyed tones into a line level, sample for sample. One tone: its envelope. Two tones: which of them it is, by
// the turning of the phase about the frequency between them, with the strengths of the two made equal first. Three
// running means in a row pass the keying and remove the double frequency; they are symmetric, so both directions are
// delayed alike and no bias arises.
// Analysis thread; a fixed cost a sample; does not depend on how the samples are chopped.
class ToneDemodulator {
public:
    ToneDemodulator(const Tones& tones, double rateHz);

    void push(std::span<const float> heard, std::vector<float>& line);
    double delaySamples() const { return delay_; }  // of the line behind the samples
    double riseSeconds() const { return rise_; }    // 10 to 90 %, of the front end itself
    const Tones& tones() const { return tones_; }

private:
    using Complex = std::complex<double>;
    // Mean of the last n values, by running sum.
    class RunningMean {
    public:
        explicit RunningMean(std::size_t n = 1) : held_(n) {}
        Complex push(Complex v) {
            sum_ += v - held_[at_];
            held_[at_] = v;
            if (++at_ == held_.size()) {
                at_ = 0;
                sum_ = {};  // afresh once a turn, so that rounding cannot pile up
                for (const Complex& h : held_) sum_ += h;
            }
            return sum_ / static_cast<double>(held_.size());
        }

    private:
        std::vector<Complex> held_;
        Complex sum_{};
        std::size_t at_ = 0;
    };

    float level(Complex baseband);
    Complex evened(Complex mixed);  // two-tone: strength taken out

    Tones tones_;
    Complex turn_;  // of the mixing oscillator per sample
    Complex oscillator_{1.0, 0.0};
    std::uint64_t turns_ = 0;
    std::array<RunningMean, 2> early_;  // two-tone: just enough to lose the double frequency
    std::array<RunningMean, 3> means_;
    std::vector<Complex> lag_;
    std::size_t lagAt_ = 0;
    double strength_ = 0.0;  // of the two-tone signal, slowly followed
    double follow_ = 0.0;
    double delay_ = 0.0;
    double rise_ = 0.0;
};

}  // namespace trueunit
