// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <vector>

namespace trueunit {

// Averaged power spectrum of overlapping Hann-windowed stretches (P. D. Welch, 1967, from memory). Bin i lies at
// i * binHz. Power per bin in squares of the input's unit; only ratios are used here.
struct Spectrum {
    double binHz = 0.0;
    std::vector<double> power;
};
Spectrum averagedSpectrum(std::span<const float> samples, double rateHz, double binHz);

// Squared magnitudes of the discrete Fourier transform of real samples, zero-padded to at least `length` points;
// bins 0 .. n/2 of a transform of n points (n is given back through the number of bins).
std::vector<double> squaredTransform(std::span<const double> samples, std::size_t length);

}  // namespace trueunit
