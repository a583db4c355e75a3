// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/periodic_search.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

#include "core/condition/spectrum.h"
#include "core/normal_equations.h"

namespace trueunit {

namespace {

constexpr double kTwoPi = 2.0 * std::numbers::pi;
constexpr std::size_t kCandidates = 12;
constexpr std::size_t kNeighbours = 40;  // independent bins either side that say what the noise is there
constexpr std::size_t kFewest = 40;      // displacements
constexpr double kDearer = 1.02;         // what starts and instants must explain more than instants alone
constexpr double kDearerHigh = 0.04;     // and the highest frequency than the lowest

struct SineFit {
    double left = 0.0;  // sum of squares
    double sine = 0.0;
    double cosine = 0.0;
};

double basis(const Displaced& d, double hz, bool withStart, double phase) {
    const double here = std::cos(kTwoPi * hz * d.seconds - phase);
    return withStart ? here - std::cos(kTwoPi * hz * d.startSeconds - phase) : here;
}

SineFit fitSine(std::span<const Displaced> displaced, double hz, bool withStart) {
    NormalEquations<2> equations;
    for (const Displaced& d : displaced)
        equations.add({basis(d, hz, withStart, 0.0), basis(d, hz, withStart, 0.5 * std::numbers::pi)}, d.left);
    SineFit fit;
    const auto x = equations.solve();
    if (!x) {
        fit.left = 1e300;
        return fit;
    }
    fit.cosine = (*x)[0];
    fit.sine = (*x)[1];
    fit.left = equations.left(*x);
    return fit;
}

// Power of the displacements on an even grid; bins of a quarter of the resolution.
struct GridSpectrum {
    double binHz = 0.0;
    std::vector<double> power;
};

GridSpectrum gridSpectrum(std::span<const Displaced> displaced, double highestHz) {
    const double from = displaced.front().seconds;
    const double span = displaced.back().seconds - from;
    const double spacing = 1.0 / (8.0 * highestHz);
    std::vector<double> grid(static_cast<std::size_t>(span / spacing) + 2, 0.0);
    for (const Displaced& d : displaced) {  // shared between the two grid points around it
        const double at = (d.seconds - from) / spacing;
        const auto i = static_cast<std::size_t>(at);
        const double part = at - static_cast<double>(i);
        grid[i] += (1.0 - part) * d.left;
        grid[i + 1] += part * d.left;
    }
    GridSpectrum s;
    s.power = squaredTransform(grid, 4 * grid.size());
    s.binHz = 1.0 / (2.0 * static_cast<double>(s.power.size() - 1) * spacing);
    return s;
}

std::vector<std::size_t> highestPeaks(const GridSpectrum& s, std::size_t low, std::size_t high) {
    std::vector<std::size_t> peaks;
    for (std::size_t i = std::max<std::size_t>(low, 1); i + 1 < std::min(high, s.power.size()); ++i)
        if (s.power[i] > s.power[i - 1] && s.power[i] >= s.power[i + 1]) peaks.push_back(i);
    std::sort(peaks.begin(), peaks.end(), [&](auto a, auto b) { return s.power[a] > s.power[b]; });
    if (peaks.size() > kCandidates) peaks.resize(kCandidates);
    return peaks;
}

// Of the proposed frequencies, the two at which a sine takes most away; only those are worth refining.
std::vector<double> mostTelling(std::span<const Displaced> displaced, const std::vector<std::size_t>& peaks,
                                double binHz, bool withStart) {
    std::vector<std::pair<double, double>> byLeft;  // what is left, frequency
    for (const std::size_t peak : peaks) {
        const double hz = static_cast<double>(peak) * binHz;
        byLeft.emplace_back(fitSine(displaced, hz, withStart).left, hz);
    }
    std::sort(byLeft.begin(), byLeft.end());
    std::vector<double> out;
    for (std::size_t i = 0; i < std::min<std::size_t>(2, byLeft.size()); ++i) out.push_back(byLeft[i].second);
    return out;
}

double refine(std::span<const Displaced> displaced, double hz, double reach, bool withStart) {
    for (int round = 0; round < 5; ++round, reach *= 0.4) {
        double best = hz;
        double least = 1e300;
        for (int i = -2; i <= 2; ++i) {
            const double trial = hz + 0.5 * reach * i;
            if (trial <= 0.0) continue;
            if (const double left = fitSine(displaced, trial, withStart).left; left < least) {
                least = left;
                best = trial;
            }
        }
        hz = best;
    }
    return hz;
}

double median(std::vector<double> v) {
    const auto middle = v.begin() + static_cast<std::ptrdiff_t>(v.size() / 2);
    std::nth_element(v.begin(), middle, v.end());
    return *middle;
}

// Squares a sine takes away at independent frequencies near hz: what chance does there.
std::vector<double> gainsNear(std::span<const Displaced> displaced, double hz, double resolution, bool withStart,
                              double total) {
    std::vector<double> gains;
    for (std::size_t i = 2; i <= kNeighbours; ++i)
        for (const double side : {-1.0, 1.0}) {
            const double f = hz + side * static_cast<double>(i) * resolution;
            if (f > resolution) gains.push_back(total - fitSine(displaced, f, withStart).left);
        }
    return gains;
}

// Probability that chance takes away z times its mean or more, when that mean is itself only known from the median of
// m gains: as if it were the mean of m ln^2 2 of them, which makes the tail (1 + z/m')^-m' where a known mean has
// exp(-z).
double chanceOf(double z, std::size_t m) {
    const double alike = static_cast<double>(m) * std::numbers::ln2 * std::numbers::ln2;
    return std::pow(1.0 + z / alike, -alike);
}

}  // namespace

std::optional<PeriodicPart> strongestLine(std::span<const Displaced> displaced, double lowestHz, double highestHz) {
    if (displaced.size() < kFewest) return std::nullopt;
    const double span = displaced.back().seconds - displaced.front().seconds;
    if (!(span > 0.0)) return std::nullopt;
    const double resolution = 1.0 / span;
    const GridSpectrum s = gridSpectrum(displaced, highestHz);
    double total = 0.0;
    for (const Displaced& d : displaced) total += d.left * d.left;

    PeriodicPart best;
    double bestLeft = total, leastWeighed = 2.0 * total;
    bool bestWithStart = false;
    const std::vector<std::size_t> peaks =
        highestPeaks(s, static_cast<std::size_t>(lowestHz / s.binHz), static_cast<std::size_t>(highestHz / s.binHz));
    for (const bool withStart : {false, true}) {
        for (const double peakHz : mostTelling(displaced, peaks, s.binHz, withStart)) {
            const double hz = refine(displaced, peakHz, 0.5 * resolution, withStart);
            const double left = fitSine(displaced, hz, withStart).left;
            // Instants alone is the simpler account, and of two frequencies that meet the instants alike it is the
            // lower: the other must explain clearly more.
            const double weighed = left * (withStart ? kDearer : 1.0) * (1.0 + kDearerHigh * hz / highestHz);
            if (left >= total || weighed >= leastWeighed) continue;
            leastWeighed = weighed;
            bestLeft = left;
            best.hz = hz;
            bestWithStart = withStart;
        }
    }
    if (best.hz <= 0.0) return std::nullopt;
    const SineFit fit = fitSine(displaced, best.hz, bestWithStart);
    best.shiftsStart = bestWithStart;
    best.amplitude = std::hypot(fit.sine, fit.cosine);
    const double phase = std::atan2(fit.sine, fit.cosine);
    for (const Displaced& d : displaced) best.part.push_back(best.amplitude * basis(d, best.hz, bestWithStart, phase));
    // Gains of chance are exponential about their median / ln 2; the rest, not the total, is the noise.
    std::vector<double> gains = gainsNear(displaced, best.hz, resolution, bestWithStart, total);
    const std::size_t known = gains.size();
    const double noise = median(std::move(gains)) * bestLeft / total;
    const double z = (total - fit.left) * std::numbers::ln2 / std::max(noise, 1e-12 * total);
    // How often a maximum over a range of frequencies meets z (R. V. Baluev, 2008, from memory; times evenly spread).
    const double tries = std::sqrt(std::numbers::pi / 3.0 * std::max(z, 1.0)) * (highestHz - lowestHz) / resolution;
    best.falseAlarm = std::min(1.0, tries * chanceOf(z, known));
    return best;
}

}  // namespace trueunit
