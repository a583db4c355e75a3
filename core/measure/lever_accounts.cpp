// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/lever_accounts.h"

#include <array>
#include <cmath>
#include <numeric>

#include "core/normal_equations.h"

namespace trueunit {

namespace {

constexpr double kFloorPercent = 0.06;  // means are not known better than this: placing of instants, text
constexpr double kUntold = 1e-9;        // of its squares: what is left of a lever is rounding

using Places = std::span<const InstantStatistics>;
using AtPlaces = std::vector<double>;

double product(const AtPlaces& a, const AtPlaces& b) { return std::inner_product(a.begin(), a.end(), b.begin(), 0.0); }

std::vector<StandingOut> everyLever(int levels) {
    using Which = StandingOut::Which;
    std::vector<StandingOut> all;
    for (int k = 1; k <= levels; ++k) all.push_back({k, Which::both, {}});
    for (int k = 1; k < levels; ++k) all.push_back({k, Which::marks, {}});
    for (int k = 2; k <= levels + 1; ++k) all.push_back({k, Which::toMark, {}});
    for (int k = 2; k <= levels; ++k) all.push_back({k, Which::toSpace, {}});
    return all;
}

// What speed, bias and end leave of displacements, in standard deviations of the means.
AtPlaces leftOf(AtPlaces displaced, Places places) {
    NormalEquations<3> equations;
    const auto rowOf = [](const InstantStatistics& i) {
        const double mark = i.to == Condition::mark ? 1.0 : 0.0;
        return std::array{static_cast<double>(i.k), mark, 1.0 - mark};
    };
    for (std::size_t p = 0; p < places.size(); ++p)
        equations.add(rowOf(places[p]), displaced[p], 1.0 / varianceOf(places[p]));
    const auto x = equations.solve();
    for (std::size_t p = 0; x && p < places.size(); ++p) {
        const auto row = rowOf(places[p]);
        displaced[p] -= std::inner_product(row.begin(), row.end(), x->begin(), 0.0);
    }
    for (std::size_t p = 0; p < places.size(); ++p) displaced[p] /= std::sqrt(varianceOf(places[p]));
    return displaced;
}

struct Lever {
    StandingOut out;
    AtPlaces moves;     // of length 1, speed, bias and end taken out
    double told = 0.0;  // how much of it is in the displacements; its square is what it alone explains
};

std::vector<Lever> leversTold(Places places, int levels, const AtPlaces& left) {
    std::vector<Lever> levers;
    for (const StandingOut& out : everyLever(levels)) {
        AtPlaces moves;
        double squares = 0.0;
        for (const InstantStatistics& i : places) {
            moves.push_back(touches(out, i.k, i.to) ? 1.0 : 0.0);
            squares += moves.back() / varianceOf(i);
        }
        moves = leftOf(std::move(moves), places);
        const double remain = product(moves, moves);
        if (remain <= kUntold * squares) continue;
        for (double& each : moves) each /= std::sqrt(remain);
        const double told = product(moves, left);
        levers.push_back({out, std::move(moves), told});
    }
    return levers;
}

}  // namespace

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

double varianceOf(const InstantStatistics& place) {
    return place.rms * place.rms / static_cast<double>(place.count) + kFloorPercent * kFloorPercent;
}

std::vector<LeverAccount> leverAccounts(std::span<const InstantStatistics> places, int levels, std::size_t levers) {
    AtPlaces means;
    for (const InstantStatistics& i : places) means.push_back(i.mean);
    const AtPlaces left = leftOf(std::move(means), places);
    const double squares = product(left, left);
    const std::vector<Lever> all = leversTold(places, levels, left);
    std::vector<LeverAccount> accounts;
    for (auto a = all.begin(); a != all.end(); ++a) {
        if (levers == 1) accounts.push_back({{a->out}, squares - a->told * a->told});
        for (auto b = a + 1; levers == 2 && b != all.end(); ++b) {
            const double shared = product(a->moves, b->moves), apart = 1.0 - shared * shared;
            if (apart <= kUntold) continue;
            const double explained = a->told * a->told - 2.0 * shared * a->told * b->told + b->told * b->told;
            accounts.push_back({{a->out, b->out}, squares - explained / apart});
        }
    }
    return accounts;
}

}  // namespace trueunit
