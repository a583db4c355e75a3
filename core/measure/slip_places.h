// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <string>

#include "core/frame/code_table.h"
#include "core/measure/text_alignment.h"

namespace trueunit {

// Whether the feed slips at one place of the tape loop, round after round, as a torn feed hole or a splice makes it, or
// anywhere, as the feed wheel does.
struct SlipPlaces {
    long slips = 0;         // in all
    long atOnePlace = 0;    // where most are, if chance would hardly put so many there; else 0
    std::string behind;     // what the tape prints just before that place
    bool anywhere = false;  // clearly not at one place
};

// Of the characters of a walk from `begin` on. Empty: too few slips or rounds to tell.
std::optional<SlipPlaces> slipPlaces(const CodeTable& table, std::span<const LoopCode> loop, const Alignment& walk,
                                     std::size_t begin);

}  // namespace trueunit
