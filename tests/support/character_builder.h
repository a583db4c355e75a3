// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <vector>

#include "core/frame/character.h"
#include "core/measure/character_log.h"

namespace trueunit::test {

// Characters as a perfect framer would hand them over, with every instant where the test wants it.
struct CharacterBuilder {
    double unit = 0.022;     // actual, seconds
    double nominal = 0.022;  // percentages are of this
    double stopUnits = 1.42;
    int levels = 5;
    double biasPercent = 0.0;  // marking positive: instants to mark early
    double endPercent = 0.0;   // marking positive: instants to space late
    std::function<double(std::uint64_t number, int k, Condition to)> extraPercent;  // late positive

    Character character(std::uint64_t number, unsigned code) const {
        Character c;
        c.number = number;
        c.code = code;
        c.start = 1.0 + static_cast<double>(number) * (levels + 1 + stopUnits) * unit;
        Condition now = Condition::space;
        for (int k = 1; k <= levels + 1; ++k) {
            const bool mark = k == levels + 1 || ((code >> (k - 1)) & 1U) != 0;
            const Condition to = mark ? Condition::mark : Condition::space;
            if (to == now) continue;
            now = to;
            double percent = mark ? -biasPercent : endPercent;
            if (extraPercent) percent += extraPercent(number, k, to);
            c.instants.push_back({k, to, k * unit + 0.01 * percent * nominal});
        }
        return c;
    }

    std::vector<Character> characters(const std::vector<unsigned>& codes) const {
        std::vector<Character> out;
        for (const unsigned code : codes) out.push_back(character(out.size(), code));
        return out;
    }
};

inline std::vector<const Character*> pointersTo(const std::vector<Character>& characters) {
    std::vector<const Character*> out;
    for (const Character& c : characters) out.push_back(&c);
    return out;
}

// A log of them that prints nothing.
inline CharacterLog logOf(const std::vector<Character>& characters) {
    CharacterLog log;
    for (const Character& c : characters) log.add({c, "", ""});
    return log;
}

inline std::vector<unsigned> allCodes(int times = 1) {
    std::vector<unsigned> codes;
    for (int i = 0; i < times; ++i)
        for (unsigned c = 0; c < 32; ++c) codes.push_back((c * 13U + 5U) % 32U);  // 13 is odd: every code once
    return codes;
}

}  // namespace trueunit::test
