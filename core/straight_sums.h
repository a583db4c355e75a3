// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <span>

namespace trueunit {

// What a straight line through evenly spaced samples follows from. Sums run in four lanes, so that no addition waits
// for the one before it.
struct StraightSums {
    double n = 0.0;
    double mean = 0.0;
    double xx = 0.0;  // sum of squares of the number of a sample less its mean,
    double xy = 0.0;  // of its products with the samples,
    double yy = 0.0;  // and of squares of the samples less theirs

    double middle() const { return 0.5 * (n - 1.0); }                   // mean of the numbers, which start at 0
    double left() const { return xx > 0.0 ? yy - xy * xy / xx : 0.0; }  // sum of squares about the best straight line
};

constexpr std::size_t kLanes = 4;

inline double sumOf(std::span<const float> samples) {
    std::array<double, kLanes> sum{};
    std::size_t i = 0;
    for (; i + kLanes <= samples.size(); i += kLanes)
        for (std::size_t k = 0; k < kLanes; ++k) sum[k] += static_cast<double>(samples[i + k]);
    for (; i < samples.size(); ++i) sum[0] += static_cast<double>(samples[i]);
    return (sum[0] + sum[1]) + (sum[2] + sum[3]);
}

// Samples are counted from a value near them (the first one), so that the squares lose no digits.
inline StraightSums straightSums(std::span<const float> samples) {
    StraightSums s;
    if (samples.empty()) return s;
    const auto zero = static_cast<double>(samples.front());
    std::array<double, kLanes> y{}, xy{}, yy{}, x{0.0, 1.0, 2.0, 3.0};
    const auto take = [&](std::size_t i, std::size_t k) {
        const double v = static_cast<double>(samples[i]) - zero;
        y[k] += v;
        xy[k] += x[k] * v;
        yy[k] += v * v;
        x[k] += static_cast<double>(kLanes);
    };
    std::size_t i = 0;
    for (; i + kLanes <= samples.size(); i += kLanes)
        for (std::size_t k = 0; k < kLanes; ++k) take(i + k, k);
    for (std::size_t k = 0; i < samples.size(); ++i, ++k) take(i, k);
    const auto total = [](const std::array<double, kLanes>& a) { return (a[0] + a[1]) + (a[2] + a[3]); };
    s.n = static_cast<double>(samples.size());
    s.mean = total(y) / s.n;
    s.xx = s.n * (s.n * s.n - 1.0) / 12.0;
    s.xy = total(xy) - s.middle() * total(y);
    s.yy = total(yy) - s.n * s.mean * s.mean;
    s.mean += zero;
    return s;
}

// Sum of squares of what neighbours differ by.
inline double stepSquares(std::span<const float> samples) {
    std::array<double, kLanes> sum{};
    const auto square = [&](std::size_t i) {
        const double step = static_cast<double>(samples[i]) - static_cast<double>(samples[i - 1]);
        return step * step;
    };
    std::size_t i = 1;
    for (; i + kLanes <= samples.size(); i += kLanes)
        for (std::size_t k = 0; k < kLanes; ++k) sum[k] += square(i + k);
    for (; i < samples.size(); ++i) sum[0] += square(i);
    return (sum[0] + sum[1]) + (sum[2] + sum[3]);
}

}  // namespace trueunit
