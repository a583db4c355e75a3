// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/displacement_pattern.h"

#include <algorithm>
#include <cmath>

#include "core/measure/lever_accounts.h"
#include "core/measure/short_elements.h"
#include "core/normal_equations.h"

namespace trueunit {

namespace {

constexpr long kFewestInstants = 5;
constexpr std::size_t kFewestPlaces = 6;
constexpr std::size_t kMostOut = 2;
constexpr double kLeastPercent = 1.0;   // smaller ones are no lever's fault
constexpr double kLeastSigmas = 4.5;    // some twenty accounts are tried, or pairs of them
constexpr double kLeastShare = 0.5;     // of what is left must be explained by one more lever
constexpr std::size_t kToSpare = 2;     // places more than unknowns
constexpr double kOffsetPercent = 2.0;  // bias and end: a fault of their own
constexpr double kAsGood = 6.0;         // squares in which accounts differ by chance: some 2.5 standard deviations

enum Column : std::size_t { kSpeed, kToMark, kToSpace, kFirstOut, kColumns = kFirstOut + kMostOut };
using Equations = NormalEquations<kColumns>;

struct Account {
    DisplacementPattern pattern;
    double weightedLeft = 1e300;
};

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

// Squares left over what the scatter of the places makes: the rest is the account's own doubt.
double excess(double weightedLeft, std::size_t levers, std::size_t places) {
    return std::max(1.0, weightedLeft / static_cast<double>(places - kFirstOut - levers));
}

// Of many pairs some fit almost anything: a pair must stand out of what it leaves as well.
bool telling(const Account& a, std::size_t places) {
    const std::size_t levers = a.pattern.out.size();
    const double sigmas = kLeastSigmas * (levers > 1 ? std::sqrt(excess(a.weightedLeft, levers, places)) : 1.0);
    return std::all_of(a.pattern.out.begin(), a.pattern.out.end(), [=](const StandingOut& out) {
        const double size = std::abs(out.percent.value);
        return size >= kLeastPercent && size * 1.96 >= sigmas * out.percent.uncertainty;
    });
}

// Bias, end, and what a lever does to one direction alone: what the account has to suppose besides its levers.
long supposed(const Account& a) {
    const auto& out = a.pattern.out;
    return std::count_if(out.begin(), out.end(), [](auto& o) { return o.which != StandingOut::Which::both; }) +
           (std::abs(a.pattern.bias.value) > kOffsetPercent ? 1 : 0) +
           (std::abs(a.pattern.end.value) > kOffsetPercent ? 1 : 0);
}

// Of the accounts by so many levers that leave least but for chance, the one that supposes least. Levers are tried
// together: of two that are out, neither need be the best account when taken alone.
std::optional<Account> simplest(std::span<const InstantStatistics> places, int levels, std::size_t levers) {
    const std::vector<LeverAccount> all = leverAccounts(places, levels, levers);
    double least = 1e300;
    for (const LeverAccount& a : all) least = std::min(least, a.weightedLeft);
    const double most = least + kAsGood * excess(least, levers, places.size());
    std::optional<Account> best;
    for (const LeverAccount& a : all) {
        if (a.weightedLeft > most) continue;
        const auto account = explain(places, a.out);
        if (!account) continue;
        const long more = best ? supposed(*account) - supposed(*best) : -1;
        if (more < 0 || (more == 0 && account->weightedLeft < best->weightedLeft)) best = account;
    }
    return best;
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
    for (std::size_t levers = 1; best && levers <= kMostOut; ++levers) {
        // Where no more is left than scatter makes, no further lever could stand out.
        if (best->weightedLeft < kLeastSigmas * kLeastSigmas) break;
        if (places.size() < kFirstOut + levers + kToSpare) break;
        const auto next = simplest(places, levels, levers);
        if (!next || !telling(*next, places.size())) continue;
        const auto more = static_cast<double>(levers - best->pattern.out.size());
        if (next->weightedLeft <= std::pow(1.0 - kLeastShare, more) * best->weightedLeft) best = next;
    }
    if (!best) return std::nullopt;
    std::sort(best->pattern.out.begin(), best->pattern.out.end(), [](const StandingOut& a, const StandingOut& b) {
        return std::abs(a.percent.value) > std::abs(b.percent.value);
    });
    return best->pattern;
}

}  // namespace trueunit
