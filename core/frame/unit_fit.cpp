// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/frame/unit_fit.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/normal_equations.h"

namespace trueunit {

namespace {

enum Column : std::size_t { kUnit, kToMark, kToSpace, kColumns };
using Equations = NormalEquations<kColumns>;

Equations::Vector rowOf(const Instant& i) {
    const bool mark = i.to == Condition::mark;
    return {static_cast<double>(i.k), mark ? 1.0 : 0.0, mark ? 0.0 : 1.0};
}

// Sum over characters of the outer product of their score: the middle of the sandwich.
Equations::Matrix scoreProducts(std::span<const Character* const> characters, const Equations::Vector& x,
                                bool unitGiven) {
    Equations::Matrix m{};
    for (const Character* c : characters) {
        if (!c->measurable()) continue;
        Equations::Vector score{};
        for (const Instant& i : c->instants) {
            const Equations::Vector row = rowOf(i);
            double left = i.seconds;
            for (std::size_t j = 0; j < kColumns; ++j) left -= row[j] * x[j];
            for (std::size_t j = 0; j < kColumns; ++j) score[j] += row[j] * left;
        }
        if (unitGiven) score[kUnit] = 0.0;
        for (std::size_t i = 0; i < kColumns; ++i)
            for (std::size_t j = 0; j < kColumns; ++j) m[i][j] += score[i] * score[j];
    }
    return m;
}

double sandwich(const Equations::Matrix& bread, const Equations::Matrix& filling, std::size_t of) {
    double v = 0.0;
    for (std::size_t i = 0; i < kColumns; ++i)
        for (std::size_t j = 0; j < kColumns; ++j) v += bread[of][i] * filling[i][j] * bread[j][of];
    return std::max(v, 0.0);
}

}  // namespace

double studentFactor(double degreesOfFreedom) {
    constexpr double z = 1.959964;
    const double v = std::max(degreesOfFreedom, 1.0);
    if (v < 1.5) return 12.706;
    if (v < 2.5) return 4.303;
    const double z2 = z * z;
    return z + z * (z2 + 1.0) / (4.0 * v) + z * ((5.0 * z2 + 16.0) * z2 + 3.0) / (96.0 * v * v) +
           z * (((3.0 * z2 + 19.0) * z2 + 17.0) * z2 - 15.0) / (384.0 * v * v * v);
}

std::optional<UnitFit> fitUnit(std::span<const Character* const> characters, std::optional<double> unitSeconds) {
    Equations equations;
    UnitFit fit;
    std::array<std::size_t, 2> count{0, 0};  // to space, to mark
    for (const Character* c : characters) {
        if (!c->measurable()) continue;
        ++fit.characters;
        for (const Instant& i : c->instants) {
            equations.add(rowOf(i), i.seconds);
            ++count[i.to == Condition::mark ? 1 : 0];
        }
    }
    fit.instants = count[0] + count[1];
    if (fit.instants == 0) return std::nullopt;
    constexpr double kFirm = 1e15;  // holds an unknown at a value
    if (unitSeconds) equations.add({1.0, 0.0, 0.0}, *unitSeconds, kFirm);
    if (count[1] == 0) equations.stiffen(kToMark, kFirm);
    if (count[0] == 0) equations.stiffen(kToSpace, kFirm);
    const auto bread = equations.inverse();
    const auto x = equations.solve();
    if (!bread || !x || (*x)[kUnit] <= 0.0) return std::nullopt;
    const Equations::Matrix filling = scoreProducts(characters, *x, unitSeconds.has_value());
    double squares = 0.0;
    for (const Character* c : characters) {
        if (!c->measurable()) continue;
        for (const Instant& i : c->instants) {
            const double e = i.seconds - i.k * (*x)[kUnit] - (*x)[i.to == Condition::mark ? kToMark : kToSpace];
            squares += e * e;
        }
    }
    fit.rms = std::sqrt(squares / static_cast<double>(fit.instants));
    const auto n = static_cast<double>(fit.characters);
    const double factor = fit.characters > 1 ? studentFactor(n - 1.0) * std::sqrt(n / (n - 1.0)) : 12.7;
    const auto measured = [&](Column c) { return Measured{(*x)[c], factor * std::sqrt(sandwich(*bread, filling, c))}; };
    fit.unit = measured(kUnit);
    if (count[1] > 0) fit.toMark = measured(kToMark);
    if (count[0] > 0) fit.toSpace = measured(kToSpace);
    return fit;
}

}  // namespace trueunit
