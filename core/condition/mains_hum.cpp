// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/condition/mains_hum.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace trueunit {

namespace {

constexpr std::array kMainsHz = {50.0, 60.0};
constexpr double kAlike = 0.15;  // of the change within a period
constexpr double kShare = 0.8;   // of the transitions; RY by units of half a period comes to two thirds

// Sum of squares of how much the input changes over so many samples, up to each sample of a part of it.
double change(const std::vector<double>& heard, std::size_t from, std::size_t to, std::size_t lag) {
    double squares = 0.0;
    for (std::size_t i = from; i < to; ++i) squares += (heard[i] - heard[i - lag]) * (heard[i] - heard[i - lag]);
    return squares;
}

}  // namespace

bool isMainsHum(const Stretch& s) {
    return std::any_of(kMainsHz.begin(), kMainsHz.end(), [&](double hz) {
        const double period = s.rateHz / hz;
        const auto samples = [&](double share) { return static_cast<std::size_t>(std::lround(share * period)); };
        double seen = 0.0;
        double alike = 0.0;
        for (const Transition& t : s.transitions) {
            if (t.time < 2.0 * period + 1.0 || t.time + period > static_cast<double>(s.heard.size())) continue;
            const auto from = static_cast<std::size_t>(t.time - period);
            const auto over = [&](double share) { return change(s.heard, from, from + samples(2.0), samples(share)); };
            seen += 1.0;
            if (over(1.0) < kAlike * std::max(over(0.5), over(0.25))) alike += 1.0;
        }
        return seen > 0.0 && alike > kShare * seen;
    });
}

}  // namespace trueunit
