// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
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
    bool certain = false;  // of a known sentence: the rounds do not vote on it
};

// Where each received character belongs on the loop, and how the feed went.
struct Alignment {
    enum class Step : unsigned char { on, again, over, jump };  // from the character before to this one

    std::vector<std::size_t> place;  // on the loop, per character
    std::vector<Step> step;          // per character; the first one is a jump
    std::vector<int> skipped;        // holes passed over without being sent, before each character
    double cost = 0.0;               // per character, by the prices asked for
};

// What errors of the levels and slips of the feed cost against what is right: about minus two times the logarithm of
// the odds. At worst a level is in error once in three times, any character may be misread altogether, and the feed
// slips once in 26 characters either way.
struct AlignmentPrices {
    std::array<float, 8> lost = {2, 2, 2, 2, 2, 2, 2, 2};  // by level
    std::array<float, 8> filled = lost;
    float atMost = 6.0F;  // of one character
    float again = 6.5F;   // the same once more
    float over = 6.5F;    // over one
};

// From a walk: of the levels away from the slips of its feed, for two levels that never fail elsewhere do not fail
// together where a slip explains what came. Never cheaper than at worst, but for a feed that slips oftener.
AlignmentPrices pricesLearned(std::span<const SentCode> sent, std::span<const LoopCode> loop, const Alignment& walk);

// Finds the likeliest walk round the loop (Viterbi's algorithm): on by one, the same once more, over a few, or, dear,
// to anywhere. Starts at any point. Pure; time and memory go with characters times loop length, so the oldest
// characters are left out when there are too many: place.size() counts those at the end of `sent` that were aligned.
Alignment alignToLoop(std::span<const SentCode> sent, std::span<const LoopCode> loop,
                      const AlignmentPrices& prices = {});

// Levels in which two combinations differ.
int levelsApart(unsigned a, unsigned b);

}  // namespace trueunit
