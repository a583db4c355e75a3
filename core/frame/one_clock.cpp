// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/frame/one_clock.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace trueunit {

namespace {
constexpr long kFewestPeriods = 7;
constexpr double kOnTheClock = 0.06;    // of a unit
constexpr double kNearlyAll = 0.9;      // of the periods, on the clock
constexpr double kMostAlike = 0.85;     // of them of one length: a machine that pauses now and then,
constexpr double kFewestErrors = 0.03;  // with that share of errors;
constexpr double kMostAlikeIfBad = 0.95;
constexpr double kManyErrors = 0.06;
}  // namespace

bool runsOnOneClock(std::span<const Character* const> characters, double unitSeconds) {
    std::map<long, long> lengths;
    long periods = 0;
    long onClock = 0;
    long errors = 0;
    for (std::size_t i = 0; i < characters.size(); ++i) {
        errors += characters[i]->measurable() ? 0 : 1;
        if (i == 0 || characters[i]->afterGap) continue;
        const double units = (characters[i]->start - characters[i - 1]->start) / unitSeconds;
        const double whole = std::round(units);
        ++periods;
        onClock += std::abs(units - whole) < kOnTheClock ? 1 : 0;
        ++lengths[static_cast<long>(whole)];
    }
    long alike = 0;
    for (const auto& [length, count] : lengths) alike = std::max(alike, count);
    if (periods < kFewestPeriods || static_cast<double>(onClock) < kNearlyAll * static_cast<double>(periods))
        return false;
    const double same = static_cast<double>(alike) / static_cast<double>(periods);
    const double bad = static_cast<double>(errors) / static_cast<double>(characters.size());
    return (same < kMostAlike && bad >= kFewestErrors) || (same < kMostAlikeIfBad && bad >= kManyErrors);
}

}  // namespace trueunit
