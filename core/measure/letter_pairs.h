// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <span>
#include <string_view>

namespace trueunit {

// How often one letter follows another in the plain text of a language. Letters with marks count as the letters they
// are sent as (AE for an A with two dots). Counted from the letter pairs of an encyclopedia's articles as the package
// python3-langdetect 1.0.9 lists them (Debian 12; Apache 2.0); the counts are facts, the rounding to half bits is ours.
struct LetterPairs {
    std::string_view language;
    std::array<std::string_view, 27> rows;

    // Of `to` behind `from`, 0 to 1: 0 is the gap between words, 1 to 26 are A to Z.
    double probability(int from, int to) const;
};

std::span<const LetterPairs> letterPairs();

}  // namespace trueunit
