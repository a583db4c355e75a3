// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/frame/code_table.h"
#include "core/measure/text_alignment.h"

namespace trueunit {

// One level that loses marks, or fills spaces, at random.
struct LevelFault {
    int level = 1;      // 1 = first sent
    bool marks = true;  // marks are lost; false: spaces are filled
};

// A word of the tape as it came and as it was meant; "·" stands for what prints nothing.
struct HarmedWord {
    std::string sent;
    std::string meant;
};

// What a plain text, though nobody knows it, says of the levels.
struct PlainTextStudy {
    bool plain = false;        // it hangs together as a plain text does, so that a fault can show in it
    long characters = 0;       // read
    LevelFault fault;          // the likeliest
    double probability = 0.0;  // of a fault, against a text that only looks that way; 0 to 1
    double harmed = 0.0;       // characters that it is to be expected to have changed
    double rate = 0.0;         // of those at risk that were changed, 0 to 1
    double rateLow = 0.0;      // its 95 % interval
    double rateHigh = 1.0;
    double atRisk = 0.0;                         // characters that had such a mark (or space), those changed among them
    std::vector<HarmedWord> words;               // some of the surest, oldest first
    std::vector<std::optional<unsigned>> meant;  // of the last characters, where one was almost surely changed
};
inline constexpr double kPlainTextTold = 0.7;  // probability from which a fault is spoken of

// Five-level codes only; empty when there are too few characters, of which the newest 4,000 are read.
//
// Each character is taken for one of a plain text (letter pairs of six languages, line endings and shifts as they are
// punched) that the level left alone or changed, with a rate that is not known; summed over all ways that is a hidden
// Markov model (forward-backward algorithm, Baum and others 1970). Against it stands the best account without a fault:
// the same languages, and any habit of the text itself as far as it repeats. The text decides by which it is said in
// fewer bits. Pure.
std::optional<PlainTextStudy> studyPlainText(const CodeTable& table, std::span<const SentCode> sent);

}  // namespace trueunit
