// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/nudge_contrast.h"

#include <cmath>

#include "core/normal_equations.h"

namespace trueunit {

namespace {

constexpr double kSpeedSuspected = 2.5;  // standard deviations of the part that grows with the place
constexpr double kBesideSpeed = 4.0;     // what is left of the step must then still stand out by this
constexpr double kByMarks = 0.4;         // of the step: what the instants to mark must show of it by themselves

// Does more than half of the step stay when the character that carries most of it is left out?
bool carriedByMany(std::span<const BiasPoint> newest, double from, double step) {
    double sum = 0.0, furthest = 0.0;
    for (const BiasPoint& p : newest) {
        const double off = (p.bias - from) * (step > 0.0 ? 1.0 : -1.0);
        sum += off;
        furthest = std::max(furthest, off);
    }
    return sum - furthest > 0.5 * std::abs(step) * static_cast<double>(newest.size() - 1);
}

// Mean displacement of the instants to mark, or to space; pattern taken out.
double meanOf(bool toMark, std::span<const BiasPoint> points, const BiasScatter& scatter) {
    double sum = 0.0, n = 0.0;
    for (const BiasPoint& p : points)
        for (const BiasPoint::Displacement& d : p.instants)
            if (d.toMark == toMark) {
                sum += d.percent - scatter.patternOf(d.k, toMark);
                n += 1.0;
            }
    return n > 0.0 ? sum / n : 0.0;
}

// The new displacements as a step of those to mark and a part that grows with the place, by least squares.
bool isSpeed(std::span<const BiasPoint> newest, double bias, double spaces, const BiasScatter& scatter) {
    enum Column : std::size_t { kStep, kGrowth, kColumns };
    NormalEquations<kColumns> equations;
    for (const BiasPoint& p : newest)
        for (const BiasPoint::Displacement& d : p.instants)
            equations.add({d.toMark ? 1.0 : 0.0, static_cast<double>(d.k)},
                          d.percent - scatter.patternOf(d.k, d.toMark) - (d.toMark ? -bias : spaces));
    const auto inverse = equations.inverse();
    const auto x = equations.solve();
    if (!inverse || !x) return false;
    const double variance = scatter.instantVariance() * scatter.widening(newest.size());
    const auto deviations = [&](Column c) { return std::abs((*x)[c]) / std::sqrt(variance * (*inverse)[c][c]); };
    return deviations(kGrowth) > kSpeedSuspected && deviations(kStep) < kBesideSpeed;
}

}  // namespace

double normalDeviateOf(double t, double v) {
    return (8.0 * v + 1.0) / (8.0 * v + 3.0) * std::sqrt(v * std::log1p(t * t / v));
}

Measured meanBias(std::span<const BiasPoint> points, const BiasScatter& scatter) {
    double weights = 0.0, sum = 0.0;
    for (const BiasPoint& p : points) {
        weights += 1.0 / p.variance;
        sum += p.bias / p.variance;
    }
    if (weights == 0.0) return {};
    return {sum / weights, std::sqrt(scatter.widening(points.size()) / weights)};
}

double contrastOf(std::span<const BiasPoint> before, std::span<const BiasPoint> newest, const BiasScatter& scatter) {
    const Measured from = meanBias(before, scatter), to = meanBias(newest, scatter);
    const double step = to.value - from.value;
    if (std::abs(step) < kLeastStepPercent) return 0.0;
    const double deviations =
        normalDeviateOf(std::abs(step) / std::hypot(from.uncertainty, to.uncertainty), scatter.degrees());
    if (!carriedByMany(newest, from.value, step)) return 0.0;
    const double byMarks = meanOf(true, before, scatter) - meanOf(true, newest, scatter);
    if (byMarks / step < kByMarks) return 0.0;  // the ends of marks have moved, not their beginnings
    if (isSpeed(newest, from.value, meanOf(false, before, scatter), scatter)) return 0.0;
    return deviations;
}

}  // namespace trueunit
