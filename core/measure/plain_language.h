// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <span>
#include <vector>

#include "core/frame/code_table.h"
#include "core/measure/text_alignment.h"

namespace trueunit {

// Kinds of five-level combination, as they hang together on a tape.
enum class CodeKind : unsigned char { text, gap, carriageReturn, lineFeed, letters, figures, blank };

CodeKind kindOf(std::size_t code);
int letterOf(std::size_t code);                    // 1 to 26; 0 for what prints no letter
Shift shiftAfter(Shift before, std::size_t code);  // of what follows

// The tape of a plain text in one language: what follows what, line endings and shifts as they are punched.
struct PlainLanguage {
    static constexpr std::size_t kCodes = 32;
    using Table = std::array<std::array<double, kCodes>, kCodes>;  // from, to
    Table inLetters{};
    Table inFigures{};

    double follows(Shift shift, std::size_t from, std::size_t to) const;  // probability of `to` behind `from`
};
const std::vector<PlainLanguage>& plainLanguages();

// How well a text can be told in advance, character by character, if no level has a fault: logarithm of its
// probability, in nats.
struct WithoutFault {
    double account = 0.0;          // the best that is known, the habit of the text itself included
    double even = 0.0;             // letters that do not hang together
    std::size_t language = 0;      // the likeliest
    double languageAccount = 0.0;  // of that alone
};
WithoutFault accountWithout(std::span<const SentCode> sent);

}  // namespace trueunit
