// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <complex>
#include <cstdint>
#include <span>
#include <vector>

#include "core/result.h"
#include "core/units.h"

namespace trueunit {

// What a reference tone tells of a sound card's clock.
struct ClockTrim {
    Measured ppm;          // the clock is fast by this many parts in a million
    double seconds = 0.0;  // of steady tone it was found from
};

// Hears a tone of known frequency and tells how fast the card's clock runs: the phase against the stated frequency, a
// value every 40 ms, falls on a straight line whose slope is the error (least squares). Any number of samples; keeps
// one complex value every 40 ms. One thread.
class ClockMeter {
public:
    ClockMeter(double rateHz, double toneHz);

    void push(std::span<const float> samples);
    Result<ClockTrim> result() const;  // a sentence when the tone is absent, unsteady, or no clock can be that far off

private:
    void closeStretch();

    double rateHz_;
    double toneHz_;
    std::size_t length_;           // samples of a stretch
    std::vector<double> window_;   // Hann, sum 1
    std::vector<float> gathered_;  // less than a stretch
    std::uint64_t first_ = 0;      // number of the first gathered sample
    std::vector<std::complex<double>> stretches_;
    double power_ = 0.0;  // of all that was heard about its mean, summed by stretch
};

}  // namespace trueunit
