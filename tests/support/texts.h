// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <random>
#include <string>
#include <string_view>
#include <vector>

#include "core/frame/code_table.h"

namespace trueunit::test {

// Combinations in no particular order, all 32 of them.
inline std::vector<unsigned> mixedText(std::size_t n, unsigned seed) {
    std::mt19937 random(seed);
    std::vector<unsigned> codes(n);
    for (unsigned& c : codes) c = random() % 32U;
    return codes;
}

inline std::vector<unsigned> codesOf(std::string_view text) {
    std::vector<unsigned> codes;
    for (const unsigned char c : encode(*findCode("ita2"), text)) codes.push_back(c);
    return codes;
}

inline std::string printed(const std::vector<unsigned>& codes) {
    Decoder decoder(*findCode("ita2"));
    std::string text;
    for (const unsigned c : codes) text += decoder.text(c);
    return text;
}

}  // namespace trueunit::test
