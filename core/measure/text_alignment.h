// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace trueunit {

// A combination as received.
struct SentCode {
    unsigned code = 0;
    bool sure = true;       // false: its stop was missing or two instants claimed one place
    bool afterGap = false;  // characters may be lost before it
};

// A combination the tape should carry, or a stretch of unknown length whose text is not known.
struct LoopCode {
    unsigned code = 0;
    bool unknown = false;
};

// Where each received character belongs on the loop, and how the feed went.
struct Alignment {
    enum class Step : unsigned char { on, again, over, jump };  // from the character before to this one

    std::vector<std::size_t> place;  // on the loop, per character
    std::vector<Step> step;          // per character; the first one is a jump
    std::vector<int> skipped;        // holes passed over without being sent, before each character
    double cost = 0.0;               // per character; 2 for each level that differs
};

// Finds the likeliest walk round the loop (Viterbi's algorithm): on by one, the same once more, over a few, or, dear,
// to anywhere. Starts at any point. Pure; time and memory go with characters times loop length, so the oldest
// characters are left out when there are too many: place.size() counts those at the end of `sent` that were aligned.
Alignment alignToLoop(std::span<const SentCode> sent, std::span<const LoopCode> loop);

// Levels in which two combinations differ.
int levelsApart(unsigned a, unsigned b);

}  // namespace trueunit
