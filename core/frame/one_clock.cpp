// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/frame/one_clock.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

namespace trueunit {

namespace {
constexpr std::size_t kFewestPeriods = 4;
constexpr double kAlikeWithin = 0.25;        // of a unit, about the middle period
constexpr double kMostAlike = 0.85;          // of the periods: a machine that pauses now and then,
constexpr double kFewestErrors = 0.03;       // with that share of errors,
constexpr std::size_t kManyCharacters = 24;  // or without errors for so long: chance alone does not do that;
constexpr double kMostAlikeIfBad = 0.95;
constexpr double kManyErrors = 0.06;
constexpr double kShortestClock = 0.45;  // of a unit: the framing may have taken the speed wrongly
constexpr double kLongestClock = 1.55;
constexpr double kOnTheClock = 0.96;  // length of the mean of the starts' phases: 1 = each on the clock
constexpr double kFinestStep = 1e-4;  // turns a unit; over longer pauses no clock is followed, which would take long

// Start to start, in units, where no sample was lost between.
std::vector<double> periodsOf(std::span<const Character* const> characters, double unitSeconds) {
    std::vector<double> periods;
    for (std::size_t i = 1; i < characters.size(); ++i)
        if (!characters[i]->afterGap)
            periods.push_back((characters[i]->start - characters[i - 1]->start) / unitSeconds);
    return periods;
}

double shareAlike(std::vector<double> periods) {
    const auto middle = periods.begin() + static_cast<std::ptrdiff_t>(periods.size() / 2);
    std::nth_element(periods.begin(), middle, periods.end());
    const double usual = *middle;
    const auto alike =
        std::count_if(periods.begin(), periods.end(), [&](double p) { return std::abs(p - usual) < kAlikeWithin; });
    return static_cast<double>(alike) / static_cast<double>(periods.size());
}

// Length of the mean phase of the starts on a clock of so many turns a unit.
double phaseLock(std::span<const double> starts, double turns) {
    double real = 0.0;
    double imaginary = 0.0;
    for (const double s : starts) {
        const double phase = 2.0 * std::numbers::pi * turns * s;
        real += std::cos(phase);
        imaginary += std::sin(phase);
    }
    return std::hypot(real, imaginary) / static_cast<double>(starts.size());
}

// Whether the starts lie on a clock of any period near the unit.
bool onAClock(std::span<const double> periods) {
    periods = periods.last(std::min(periods.size(), kManyCharacters));
    std::vector<double> starts{0.0};
    for (const double p : periods) starts.push_back(starts.back() + p);
    const double step = std::max(1.0 / (10.0 * starts.back()), kFinestStep);
    for (double turns = 1.0 / kLongestClock; turns < 1.0 / kShortestClock; turns += step)
        if (phaseLock(starts, turns) > kOnTheClock) return true;
    return false;
}
}  // namespace

bool runsOnOneClock(std::span<const Character* const> characters, double unitSeconds) {
    const std::vector<double> periods = periodsOf(characters, unitSeconds);
    if (periods.size() < kFewestPeriods) return false;
    const auto errors = std::count_if(characters.begin(), characters.end(), [](auto* c) { return !c->measurable(); });
    const double bad = static_cast<double>(errors) / static_cast<double>(characters.size());
    const double same = shareAlike(periods);
    const bool odd = same < kMostAlike && (bad >= kFewestErrors || characters.size() < kManyCharacters);
    return (odd || (same < kMostAlikeIfBad && bad >= kManyErrors)) && onAClock(periods);
}

}  // namespace trueunit
