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

// Sums over the instants of one direction, from which the equations follow.
struct Sums {
    double n = 0.0, k = 0.0, kk = 0.0, t = 0.0, kt = 0.0, tt = 0.0;

    void add(const Instant& i) {
        const auto place = static_cast<double>(i.k);
        n += 1.0;
        k += place;
        kk += place * place;
        t += i.seconds;
        kt += place * i.seconds;
        tt += i.seconds * i.seconds;
    }
};

Equations equationsOf(const Sums& mark, const Sums& space) {
    Equations equations;
    equations.addSums({{{mark.kk + space.kk, 0.0, 0.0}, {mark.k, mark.n, 0.0}, {space.k, 0.0, space.n}}},
                      {mark.kt + space.kt, mark.t, space.t}, mark.tt + space.tt);
    return equations;
}

struct Left {
    Equations::Matrix
        products{};  // sum over characters of the outer product of their score: the middle of the sandwich
    double squares = 0.0;
};

Left leftBy(std::span<const Character* const> characters, const Equations::Vector& x, bool unitGiven) {
    Left left;
    for (const Character* c : characters) {
        if (!c->measurable()) continue;
        Equations::Vector score{};
        for (const Instant& i : c->instants) {
            const Column column = i.to == Condition::mark ? kToMark : kToSpace;
            const double e = i.seconds - i.k * x[kUnit] - x[column];
            left.squares += e * e;
            score[kUnit] += i.k * e;
            score[column] += e;
        }
        if (unitGiven) score[kUnit] = 0.0;
        for (std::size_t i = 0; i < kColumns; ++i)
            for (std::size_t j = 0; j < kColumns; ++j) left.products[i][j] += score[i] * score[j];
    }
    return left;
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
    UnitFit fit;
    Sums mark, space;
    for (const Character* c : characters) {
        if (!c->measurable()) continue;
        ++fit.characters;
        fit.instants += c->instants.size();
        for (const Instant& i : c->instants) (i.to == Condition::mark ? mark : space).add(i);
    }
    if (fit.instants == 0) return std::nullopt;
    Equations equations = equationsOf(mark, space);
    constexpr double kFirm = 1e15;  // holds an unknown at a value
    if (unitSeconds) equations.add({1.0, 0.0, 0.0}, *unitSeconds, kFirm);
    if (mark.n == 0.0) equations.stiffen(kToMark, kFirm);
    if (space.n == 0.0) equations.stiffen(kToSpace, kFirm);
    const auto bread = equations.inverse();
    const auto x = equations.solve();
    if (!bread || !x || (*x)[kUnit] <= 0.0) return std::nullopt;
    const Left left = leftBy(characters, *x, unitSeconds.has_value());
    fit.rms = std::sqrt(left.squares / static_cast<double>(fit.instants));
    const auto n = static_cast<double>(fit.characters);
    const double factor = fit.characters > 1 ? studentFactor(n - 1.0) * std::sqrt(n / (n - 1.0)) : 12.7;
    const auto measured = [&](Column c) {
        return Measured{(*x)[c], factor * std::sqrt(sandwich(*bread, left.products, c))};
    };
    fit.unit = measured(kUnit);
    if (mark.n > 0.0) fit.toMark = measured(kToMark);
    if (space.n > 0.0) fit.toSpace = measured(kToSpace);
    return fit;
}

}  // namespace trueunit
