// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <span>

#include "core/normal_equations.h"

namespace trueunit {

// Mains hum on the line, told from noise and from the line's own swing: the line at rest, averaged over a millisecond,
// is fitted two seconds at a time with a level for either condition and a sine of 50 or 60 Hz. In: the restored line
// (0..1). Analysis thread; a few operations per sample, constant memory.
class HumMeter {
public:
    explicit HumMeter(double rateHz);

    void push(std::span<const float> line);

    struct Hum {
        double hz = 50.0;
        double amplitude = 0.0;  // fraction of the swing of the restored line
    };
    std::optional<Hum> hum() const;  // empty: none that stands out of the noise, or less than two seconds heard

private:
    static constexpr std::size_t kMains = 2;
    using Equations = NormalEquations<4>;  // space level, mark level, cosine, sine

    void takeBin(double mean);
    void closeSegment();

    double binSamples_;
    double sum_ = 0.0;
    double count_ = 0.0;
    double filled_ = 0.0;             // samples until the bin ends
    std::array<double, 4> recent_{};  // means of the last bins, newest last
    std::uint64_t bins_ = 0;
    int inSegment_ = 0;
    double rested_ = 0.0;  // bins of the segment that entered
    std::array<Equations, kMains> equations_;
    std::array<double, kMains> squares_{};  // amplitude squared, mean of the segments
    std::array<double, kMains> chance_{};   // of it, what noise makes
    double segments_ = 0.0;
};

}  // namespace trueunit
