// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "core/simulate/scenario.h"
#include "core/simulate/seeded_random.h"

namespace trueunit {

// The tape under the sensing pins: gives one combination after the other, level 1 in bit 0, round and round if the
// scenario says so, with the slips of a worn feed wheel.
class TextFeed {
public:
    explicit TextFeed(const Scenario& scenario);
    std::optional<unsigned> next();  // empty: the tape is out

private:
    std::optional<unsigned> advance();

    std::basic_string<unsigned char> firstRound_;
    std::basic_string<unsigned char> laterRounds_;  // begins in the shift the text ends in
    bool repeat_;
    Scenario::FeedSlips slips_;
    SeededRandom random_;
    bool first_ = true;
    std::size_t at_ = 0;
    std::optional<unsigned> again_;
};

}  // namespace trueunit
