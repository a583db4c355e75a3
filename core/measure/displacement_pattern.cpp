// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/displacement_pattern.h"

#include <algorithm>
#include <cmath>

#include "core/measure/short_elements.h"
#include "core/normal_equations.h"

namespace trueunit {

namespace {

constexpr long kFewestInstants = 5;
constexpr std::size_t kFewestPlaces = 6;
constexpr std::size_t kMostOut = 2;
constexpr double kFloorPercent = 0.06;  // means are not known better than this: placing of instants, text
constexpr double kLeastPercent = 1.0;   // smaller ones are no lever's fault
constexpr double kLeastSigmas = 4.5;    // some twenty accounts are tried
constexpr double kLeastShare = 0.5;     // of what is left must be explained by one more lever

enum Column : std::size_t { kSpeed, kToMark, kToSpace, kFirstOut, kColumns = kFirstOut + kMostOut };
using Equations = NormalEquations<kColumns>;

bool touches(const StandingOut& out, int k, Condition to) {
    const bool mark = to == Condition::mark;
    switch (out.which) {
        case StandingOut::Which::both:
            return k == out.k;
        case StandingOut::Which::marks:
            return mark ? k == out.k : k == out.k + 1;
        case StandingOut::Which::toMark:
            return mark && k == out.k;
        case StandingOut::Which::toSpace:
            return !mark && k == out.k;
    }
    return false;
}

std::vector<StandingOut> accounts(int levels) {
    using Which = StandingOut::Which;
    std::vector<StandingOut> all;
    for (int k = 1; k <= levels; ++k) all.push_back({k, Which::both, {}});
    for (int k = 1; k < levels; ++k) all.push_back({k, Which::marks, {}});
    for (int k = 2; k <= levels + 1; ++k) all.push_back({k, Which::toMark, {}});
    for (int k = 2; k <= levels; ++k) all.push_back({k, Which::toSpace, {}});
    return all;
}

struct Account {
    DisplacementPattern pattern;
    double weightedLeft = 1e300;
};

double varianceOf(const InstantStatistics& i) {
    return i.rms * i.rms / static_cast<double>(i.count) + kFloorPercent * kFloorPercent;
}

std::optional<Account> explain(std::span<const InstantStatistics> places, const std::vector<StandingOut>& out) {
    Equations equations;
    const auto rowOf = [&out](const InstantStatistics& i) {
        const bool mark = i.to == Condition::mark;
        Equations::Vector row{static_cast<double>(i.k), mark ? 1.0 : 0.0, mark ? 0.0 : 1.0};
        for (std::size_t o = 0; o < out.size(); ++o) row[kFirstOut + o] = touches(out[o], i.k, i.to) ? 1.0 : 0.0;
        return row;
    };
    for (const InstantStatistics& i : places) equations.add(rowOf(i), i.mean, 1.0 / varianceOf(i));
    for (std::size_t o = out.size(); o < kMostOut; ++o) equations.stiffen(kFirstOut + o, 1.0);
    const auto inverse = equations.inverse();
    const auto x = equations.solve();
    if (!inverse || !x) return std::nullopt;
    const auto measured = [&](std::size_t c, double sign) {
        return Measured{sign * (*x)[c], 1.96 * std::sqrt((*inverse)[c][c])};
    };
    Account a;
    a.weightedLeft = equations.left(*x);
    a.pattern = {(*x)[kSpeed], measured(kToMark, -1.0), measured(kToSpace, 1.0), out, 0.0};
    for (std::size_t o = 0; o < out.size(); ++o) a.pattern.out[o].percent = measured(kFirstOut + o, 1.0);
    double squares = 0.0;
    for (const InstantStatistics& i : places) {
        const auto row = rowOf(i);
        double e = i.mean;
        for (std::size_t c = 0; c < kColumns; ++c) e -= row[c] * (*x)[c];
        squares += e * e;
    }
    a.pattern.left = std::sqrt(squares / static_cast<double>(places.size()));
    return a;
}

bool telling(const StandingOut& out) {
    const double size = std::abs(out.percent.value);
    return size >= kLeastPercent && size * 1.96 >= kLeastSigmas * out.percent.uncertainty;
}

}  // namespace

std::optional<DisplacementPattern> displacementPattern(Characters characters, double unitSeconds, int levels) {
    const auto afterShort = afterShortElements(characters, unitSeconds);
    const double aside = afterShort ? afterShort->value : 0.0;
    auto pattern = displacementPattern(instantStatistics(characters, unitSeconds, aside), levels);
    if (pattern) pattern->afterShort = afterShort;
    return pattern;
}

std::optional<DisplacementPattern> displacementPattern(std::span<const InstantStatistics> instants, int levels) {
    std::vector<InstantStatistics> places;
    for (const InstantStatistics& i : instants)
        if (i.count >= kFewestInstants) places.push_back(i);
    if (places.size() < kFewestPlaces) return std::nullopt;
    std::optional<Account> best = explain(places, {});
    while (best && best->pattern.out.size() < kMostOut && places.size() > kFirstOut + best->pattern.out.size() + 1) {
        std::optional<Account> next;
        for (const StandingOut& more : accounts(levels)) {
            std::vector<StandingOut> out = best->pattern.out;
            out.push_back(more);
            const auto account = explain(places, out);
            if (account && (!next || account->weightedLeft < next->weightedLeft)) next = account;
        }
        if (!next || next->weightedLeft > (1.0 - kLeastShare) * best->weightedLeft) break;
        const auto& out = next->pattern.out;
        if (!std::all_of(out.begin(), out.end(), telling)) break;
        best = next;
    }
    if (!best) return std::nullopt;
    std::sort(best->pattern.out.begin(), best->pattern.out.end(), [](const StandingOut& a, const StandingOut& b) {
        return std::abs(a.percent.value) > std::abs(b.percent.value);
    });
    return best->pattern;
}

}  // namespace trueunit
