// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <random>
#include <string_view>
#include <vector>

#include "core/frame/code_table.h"
#include "core/measure/nudge_finder.h"

#include "tests/support/texts.h"

namespace trueunit::test {

// Characters of a sender whose bias a hand moves, as a perfect framer hands them over, one at a time; shares no code
// with the simulator.
struct SteadySender {
    double nominal = 0.022;
    double unit = 0.022;
    double stopUnits = 1.42;
    double scatterPercent = 1.0;  // of each instant
    bool startScatters = true;    // as much as the others
    std::function<double(std::uint64_t number)> biasPercent = [](std::uint64_t) { return 0.0; };
    std::function<double(int k, bool toMark, double seconds)> extraPercent;  // late positive
    std::vector<unsigned> codes = {21, 10};                                  // empty: drawn
    std::mt19937_64 random{1};

    std::uint64_t next = 0;
    double turn = 1.0;

    Character character() {
        std::normal_distribution<double> normal(0.0, 0.01 * scatterPercent * nominal);
        Character c;
        c.number = next++;
        c.code = codes.empty() ? static_cast<unsigned>(random() % 32) : codes[c.number % codes.size()];
        c.start = turn + (scatterPercent > 0.0 && startScatters ? normal(random) : 0.0);
        bool mark = false;
        for (int k = 1; k <= 6; ++k) {
            const bool now = k == 6 || ((c.code >> (k - 1)) & 1U) != 0;
            if (now == mark) continue;
            mark = now;
            double percent = now ? -biasPercent(c.number) : 0.0;
            if (extraPercent) percent += extraPercent(k, now, turn + k * unit);
            const double at =
                turn + k * unit + 0.01 * percent * nominal + (scatterPercent > 0.0 ? normal(random) : 0.0);
            c.instants.push_back({k, now ? Condition::mark : Condition::space, at - c.start});
        }
        turn += (6.0 + stopUnits) * unit;
        return c;
    }
};

inline constexpr std::string_view kFox = "THE QUICK BROWN FOX JUMPS OVER THE LAZY DOG 1234567890\r\n";

}  // namespace trueunit::test
