// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <optional>
#include <span>
#include <vector>

#include "core/measure/text_alignment.h"

namespace trueunit {

// What the rounds of a tape show at one place of its loop, beside the hole itself.
struct SeenAtPlace {
    int visits = 0;
    int passedOver = 0;
    std::map<unsigned, int> came;      // at the place, by combination
    std::map<unsigned, int> inserted;  // after it
};

// Per place of the loop. Pure.
std::vector<SeenAtPlace> lookAtRounds(std::span<const SentCode> sent, const Alignment& walk,
                                      std::span<const LoopCode> loop);

// The combination of most rounds, of two at least.
std::optional<unsigned> combinationOfMost(const std::map<unsigned, int>& counts, int rounds);

// Adds or strikes out a hole where most rounds, two at least, show one more or one less than the loop does; false: they
// agree with it. A slip of the feed in one round is outvoted so, and remains a slip. Pure.
bool mendLoop(std::vector<LoopCode>& loop, const std::vector<SeenAtPlace>& seen);

// Puts another combination where most rounds show it and the levels in which it differs are so seldom wrong at all
// other places that chance would hardly put them wrong here each time: there the tape differs from its text, while a
// level that fails does so everywhere. Returns how many. Pure.
int mendCharacters(std::vector<LoopCode>& loop, const std::vector<SeenAtPlace>& seen, int levels);

}  // namespace trueunit
