// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/measure/text_alignment.h"

namespace trueunit {

// Characters after which the tape repeats, if it does so three times or more; of several the shortest. Pure.
std::optional<std::size_t> repetitionPeriod(std::span<const SentCode> sent);

// A loop, and what it costs together with the slips and errors it makes of what was sent, in the prices of an
// alignment: a long loop that takes slips for its text is dearer than a short one that tells them.
struct LearnedLoop {
    std::vector<LoopCode> loop;
    double perCharacter = 0.0;  // of what was sent, without the loop itself
    double cost = 0.0;          // all of it

    bool faultless() const { return perCharacter < 0.02; }
};

// The loop behind a repeating tape. Each level of each place is voted on by the rounds, in the light of how often that
// level's marks are missed and its spaces filled, which is estimated with it (expectation and maximisation; A. P.
// Dempster et al., 1977, from memory), and on holes more or fewer, so that slips of the feed in the first guess do not
// stay in it. A fault that hits more than every other round alike is taken for the text. Begins with rounds as they
// came; of several loops the one holds that costs least. Pure.
std::optional<LearnedLoop> learnLoop(std::span<const SentCode> sent, int levels);

// The same from a first guess. Empty: what was sent is something else.
std::optional<LearnedLoop> learnLoopFrom(std::span<const SentCode> sent, std::vector<LoopCode> guess, int levels);

LearnedLoop pricedLoop(std::span<const SentCode> sent, std::vector<LoopCode> loop);  // as it is

}  // namespace trueunit
