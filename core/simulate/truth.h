// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <deque>
#include <string>

#include "core/frame/code_table.h"
#include "core/units.h"

namespace trueunit {

// One instant as the simulated contacts made it.
struct TrueInstant {
    double seconds = 0.0;  // true time since the signal's first sample
    int k = 0;             // nominal units after the start; 0 is the start itself
    Condition to = Condition::mark;
    double displacementPercent = 0.0;  // (t - s - k T) / T0, late positive; of the start: from the cam's own beat
    bool bounce = false;               // an extra opening or closure after the closure k; no displacement
    std::uint64_t character = 0;
};

// One character as it went out.
struct SentCharacter {
    std::uint64_t number = 0;   // counts from 0
    unsigned tapeCode = 0;      // as the tape has it; level 1 is bit 0
    unsigned sentCode = 0;      // with the levels that failed
    double startSeconds = 0.0;  // s
    double unitSeconds = 0.0;   // T
    double biasPercent = 0.0;   // in force, eccentric included
    double endPercent = 0.0;
};

// What was imposed, the newest at the back. Bounded: the oldest are forgotten in an endless run.
struct Truth {
    static constexpr std::size_t kMostCharacters = 2048;
    static constexpr std::size_t kMostInstants = 20480;

    std::deque<SentCharacter> characters;
    std::deque<TrueInstant> instants;  // in order of time, bounces included
    std::uint64_t charactersSent = 0;  // forgotten ones included

    std::string sentText(const CodeTable& table) const;  // of the characters kept, as a receiver prints them
};

}  // namespace trueunit
