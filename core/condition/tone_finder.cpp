// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/condition/tone_finder.h"

#include <algorithm>
#include <cmath>
#include <complex>
#include <numbers>
#include <vector>

#include "core/condition/spectrum.h"

namespace trueunit {

namespace {

constexpr double kBinHz = 12.0;
constexpr double kLowestToneHz = 250.0;  // the power of a bare loop lies below
constexpr double kHighestToneHz = 10000.0;
constexpr double kPeakHalfWidthHz = 45.0;  // keying spreads a tone this far
constexpr double kToneShare = 0.5;         // of the power, in the tones
constexpr double kSecondTone = 0.04;       // of the first one's power, at least
constexpr double kTurnTaking = -0.5;       // correlation of the envelopes of two keyed tones, at most

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

// Envelope of the samples about a frequency, seen through a mean of the given length.
std::vector<double> envelope(std::span<const float> samples, double rateHz, double hz, std::size_t length) {
    const std::complex<double> turn = std::polar(1.0, -2.0 * std::numbers::pi * hz / rateHz);
    std::complex<double> oscillator{1.0, 0.0};
    std::vector<std::complex<double>> sums(samples.size() + 1);
    for (std::size_t i = 0; i < samples.size(); ++i, oscillator *= turn)
        sums[i + 1] = sums[i] + oscillator * (std::isfinite(samples[i]) ? static_cast<double>(samples[i]) : 0.0);
    std::vector<double> out;
    for (std::size_t i = length; i < sums.size(); i += std::max<std::size_t>(1, length / 4))
        out.push_back(std::abs(sums[i] - sums[i - length]));
    return out;
}

// Two keyed tones take turns: where one is, the other is not. A side band of a single tone does not do that.
bool takeTurns(std::span<const float> samples, double rateHz, double firstHz, double secondHz) {
    const auto length = static_cast<std::size_t>(rateHz / std::abs(firstHz - secondHz));
    const std::vector<double> a = envelope(samples, rateHz, firstHz, length);
    const std::vector<double> b = envelope(samples, rateHz, secondHz, length);
    const auto n = static_cast<double>(a.size());
    double sa = 0.0, sb = 0.0, aa = 0.0, bb = 0.0, ab = 0.0;
    for (std::size_t i = 0; i < a.size(); ++i) {
        sa += a[i];
        sb += b[i];
        aa += a[i] * a[i];
        bb += b[i] * b[i];
        ab += a[i] * b[i];
    }
    const double spread = (aa - sa * sa / n) * (bb - sb * sb / n);
    return spread > 0.0 && (ab - sa * sb / n) / std::sqrt(spread) < kTurnTaking;
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
    const bool two = secondPower > kSecondTone * firstPower && std::abs(second - first) < 1500.0 &&
                     takeTurns(samples, rateHz, first, second);
    if (!(total > 0.0)) return std::nullopt;
    if (wanted == InputKind::automatic && firstPower + (two ? secondPower : 0.0) < kToneShare * total)
        return std::nullopt;
    if (wanted == InputKind::tone || (wanted == InputKind::automatic && !two))
        return Tones{InputKind::tone, first, 0.0};
    if (second <= 0.0) return std::nullopt;
    return Tones{InputKind::twoTone, std::min(first, second), std::max(first, second)};
}

}  // namespace trueunit
