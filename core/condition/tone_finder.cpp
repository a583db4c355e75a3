// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/condition/tone_finder.h"

#include <algorithm>
#include <cmath>

#include "core/condition/spectrum.h"

namespace trueunit {

namespace {

constexpr double kBinHz = 12.0;
constexpr double kLowestToneHz = 250.0;  // the power of a bare loop lies below
constexpr double kHighestToneHz = 10000.0;
constexpr double kPeakHalfWidthHz = 45.0;  // keying spreads a tone this far
constexpr double kToneShare = 0.5;         // of the power, in the tones
constexpr double kSecondTone = 0.04;       // of the first one's power, at least

double powerAround(const Spectrum& s, double hz, double halfWidth) {
    double sum = 0.0;
    for (std::size_t i = 1; i < s.power.size(); ++i)
        if (std::abs(static_cast<double>(i) * s.binHz - hz) <= halfWidth) sum += s.power[i];
    return sum;
}

// Strongest bin outside the neighbourhood of a frequency, placed by the centre of its neighbours' power.
double peakHz(const Spectrum& s, double avoidHz, double avoidWidth) {
    std::size_t best = 0;
    for (std::size_t i = 2; i + 2 < s.power.size(); ++i) {
        const double hz = static_cast<double>(i) * s.binHz;
        if (hz < kLowestToneHz || hz > kHighestToneHz || std::abs(hz - avoidHz) < avoidWidth) continue;
        const bool local = s.power[i] >= s.power[i - 1] && s.power[i] >= s.power[i + 1];
        if (local && (best == 0 || s.power[i] > s.power[best])) best = i;
    }
    if (best == 0) return 0.0;
    double weight = 0.0;
    double moment = 0.0;
    for (std::size_t i = best - 2; i <= best + 2; ++i) {
        weight += s.power[i];
        moment += s.power[i] * static_cast<double>(i) * s.binHz;
    }
    return moment / weight;
}

}  // namespace

std::optional<Tones> findTones(std::span<const float> samples, double rateHz, InputKind wanted) {
    if (wanted == InputKind::loop) return std::nullopt;
    const Spectrum s = averagedSpectrum(samples, rateHz, kBinHz);
    const double first = peakHz(s, -1e9, 0.0);
    if (first <= 0.0) return std::nullopt;
    double total = 0.0;
    for (std::size_t i = 1; i < s.power.size(); ++i) total += s.power[i];
    const double firstPower = powerAround(s, first, kPeakHalfWidthHz);
    const double second = peakHz(s, first, 1.6 * kPeakHalfWidthHz);
    const double secondPower = second > 0.0 ? powerAround(s, second, kPeakHalfWidthHz) : 0.0;
    const bool two = secondPower > kSecondTone * firstPower && std::abs(second - first) < 1500.0;
    if (!(total > 0.0)) return std::nullopt;
    if (wanted == InputKind::automatic && firstPower + (two ? secondPower : 0.0) < kToneShare * total)
        return std::nullopt;
    if (wanted == InputKind::tone || (wanted == InputKind::automatic && !two))
        return Tones{InputKind::tone, first, 0.0};
    if (second <= 0.0) return std::nullopt;
    return Tones{InputKind::twoTone, std::min(first, second), std::max(first, second)};
}

}  // namespace trueunit
