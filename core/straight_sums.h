// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <span>

namespace trueunit {

// What a straight line through evenly spaced samples follows from. Sums run in lanes, so that no addition waits for the
// one before it; in single precision, which a second of line does not exhaust.
struct StraightSums {
    double n = 0.0;
    double mean = 0.0;
    double xx = 0.0;  // sum of squares of the number of a sample less its mean,
    double xy = 0.0;  // of its products with the samples,
    double yy = 0.0;  // and of squares of the samples less theirs

    double middle() const { return 0.5 * (n - 1.0); }                   // mean of the numbers, which start at 0
    double left() const { return xx > 0.0 ? yy - xy * xy / xx : 0.0; }  // sum of squares about the best straight line
};

constexpr std::size_t kLanes = 8;
using Lanes = std::array<float, kLanes>;

inline double totalOf(const Lanes& l) {
    return static_cast<double>((l[0] + l[1]) + (l[2] + l[3])) + static_cast<double>((l[4] + l[5]) + (l[6] + l[7]));
}

inline double sumOf(std::span<const float> samples) {
    Lanes sum{};
    std::size_t i = 0;
    for (; i + kLanes <= samples.size(); i += kLanes)
        for (std::size_t k = 0; k < kLanes; ++k) sum[k] += samples[i + k];
    for (std::size_t k = 0; i < samples.size(); ++i, ++k) sum[k] += samples[i];
    return totalOf(sum);
}

// Samples are counted from a value near them (the first one), so that the squares lose no digits.
inline StraightSums straightSums(std::span<const float> samples) {
    StraightSums s;
    if (samples.empty()) return s;
    const float zero = samples.front();
    Lanes y{}, xy{}, yy{}, x{0.0F, 1.0F, 2.0F, 3.0F, 4.0F, 5.0F, 6.0F, 7.0F};
    const auto take = [&](std::size_t i, std::size_t k) {
        const float v = samples[i] - zero;
        y[k] += v;
        xy[k] += x[k] * v;
        yy[k] += v * v;
        x[k] += static_cast<float>(kLanes);
    };
    std::size_t i = 0;
    for (; i + kLanes <= samples.size(); i += kLanes)
        for (std::size_t k = 0; k < kLanes; ++k) take(i + k, k);
    for (std::size_t k = 0; i < samples.size(); ++i, ++k) take(i, k);
    s.n = static_cast<double>(samples.size());
    s.mean = totalOf(y) / s.n;
    s.xx = s.n * (s.n * s.n - 1.0) / 12.0;
    s.xy = totalOf(xy) - s.middle() * totalOf(y);
    s.yy = totalOf(yy) - s.n * s.mean * s.mean;
    s.mean += static_cast<double>(zero);
    return s;
}

// Sum of squares of what neighbours differ by.
inline double stepSquares(std::span<const float> samples) {
    Lanes sum{};
    const auto square = [&](std::size_t i) {
        const float step = samples[i] - samples[i - 1];
        return step * step;
    };
    std::size_t i = 1;
    for (; i + kLanes <= samples.size(); i += kLanes)
        for (std::size_t k = 0; k < kLanes; ++k) sum[k] += square(i + k);
    for (std::size_t k = 0; i < samples.size(); ++i, ++k) sum[k] += square(i);
    return totalOf(sum);
}

}  // namespace trueunit
