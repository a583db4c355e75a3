// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/short_elements.h"

#include <cmath>
#include <vector>

#include "core/measure/displacements.h"
#include "core/normal_equations.h"

namespace trueunit {

namespace {

constexpr std::size_t kFewestInstants = 40;
constexpr double kLeastPercent = 1.0;  // smaller ones do no harm
constexpr double kLeastSigmas = 6.0;
constexpr double kMostLeft = 0.4;         // of the squares that speed, bias and end leave,
constexpr double kMostScatterLeft = 0.6;  // and of those that every place's own mean leaves

enum Column : std::size_t { kSpeed, kToMark, kToSpace, kAfterShort, kColumns };
using Equations = NormalEquations<kColumns>;

double squaresOf(const std::vector<Displaced>& displaced) {
    double squares = 0.0;
    for (const Displaced& d : displaced) squares += d.left * d.left;
    return squares;
}

}  // namespace

std::optional<Measured> afterShortElements(Characters characters, double unitSeconds) {
    std::vector<Displaced> displaced = displacementsOf(characters, unitSeconds);
    if (displaced.size() < kFewestInstants) return std::nullopt;
    Equations with;
    for (const Displaced& d : displaced)
        with.add(
            {static_cast<double>(d.k), d.toMark ? 1.0 : 0.0, d.toMark ? 0.0 : 1.0, d.precedingUnits == 1 ? 1.0 : 0.0},
            d.left);
    Equations without = with;
    without.stiffen(kAfterShort, 1e15);
    const auto inverse = with.inverse();
    const auto x = with.solve(), plain = without.solve();
    if (!inverse || !x || !plain) return std::nullopt;
    const double left = with.left(*x);
    takeOutMeans(displaced);
    if (left > kMostLeft * without.left(*plain) || left > kMostScatterLeft * squaresOf(displaced)) return std::nullopt;
    const double variance = left / static_cast<double>(displaced.size() - kColumns);
    const double sigma = std::sqrt(variance * (*inverse)[kAfterShort][kAfterShort]);
    const double effect = (*x)[kAfterShort];
    if (std::abs(effect) < std::max(kLeastPercent, kLeastSigmas * sigma)) return std::nullopt;
    return Measured{effect, 1.96 * sigma};
}

}  // namespace trueunit
