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
    static constexpr std::size_t kTurnBins = 100;  // a tenth of a second holds whole periods of either mains
    using Turn = std::array<std::array<double, 2>, kTurnBins>;  // cosine and sine at each bin
    using Equations = NormalEquations<4>;                       // space level, mark level, cosine, sine

    // The bins of a segment that came at one place of the turn, the line at one level.
    struct Place {
        double count = 0.0;
        double sum = 0.0;
        double squares = 0.0;
    };

    void takeBin(double mean);
    void closeSegment();
    static Turn turnOf(double hz);
    Equations equations(const Turn& turn) const;

    double binSamples_;
    double sum_ = 0.0;
    double count_ = 0.0;
    double filled_ = 0.0;    // samples until the bin ends
    double newest_ = 0.0;    // mean of the last bin,
    int condition_ = 0;      // its level,
    int alike_ = 0;          // and how many in a row have been at it
    std::size_t place_ = 0;  // of the last bin in its turn
    int inSegment_ = 0;
    double rested_ = 0.0;                               // bins of the segment that entered
    std::array<std::array<Place, kTurnBins>, 2> rest_;  // they, at space and at mark
    std::array<double, kMains> squares_{};              // amplitude squared, mean of the segments
    std::array<double, kMains> chance_{};               // of it, what noise makes
    double segments_ = 0.0;
};

}  // namespace trueunit
