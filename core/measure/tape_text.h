// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/frame/code_table.h"
#include "core/measure/text_alignment.h"

namespace trueunit {

// How it is known what the tape should send.
enum class TextSource {
    given,      // by the person
    reversals,  // RYRY recognised
    fox,        // the fox sentence recognised, whatever stands between its repetitions
    learned,    // the tape repeats, and the rounds outvote each other
};

struct TapeText {
    TextSource source = TextSource::given;
    std::vector<LoopCode> loop;
    int otherCharacters = 0;  // of a given text, that every round has otherwise: mended as well
};

// A text of the person's as a loop, mended where every round shows a hole more or a hole less than the text does
// (carriage returns, shifts): such holes are on the tape and no fault of the feed. Other characters before the
// text begins anew, such as a line end that it lacks, are added as most rounds have them, or where the rounds differ as
// a stretch that is not known. Empty: nothing to send in it.
std::optional<TapeText> givenText(const CodeTable& table, std::string_view text, std::span<const SentCode> sent);

// RY or the fox sentence, though levels may fail; else a loop of at least three rounds learned from its repetition.
std::optional<TapeText> recogniseText(const CodeTable& table, std::span<const SentCode> sent);

// What a round of the tape prints, from behind a line end where it has one; a stretch that is not known is "…". UTF-8.
std::string printOf(const CodeTable& table, const TapeText& text);

}  // namespace trueunit
