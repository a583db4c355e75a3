// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/measure/text_alignment.h"

namespace trueunit {

// Characters after which the tape repeats, if it does so three times or more; of several the shortest. Pure.
std::optional<std::size_t> repetitionPeriod(std::span<const SentCode> sent);

// The loop behind a repeating tape. Each level of each place is voted on by the rounds, in the light of how often that
// level's marks are missed and its spaces filled, which is estimated with it (expectation and maximisation; A. P.
// Dempster et al., 1977, from memory). A fault that hits more than every other round alike is taken for the text.
std::optional<std::vector<LoopCode>> learnLoop(std::span<const SentCode> sent, int levels);

}  // namespace trueunit
