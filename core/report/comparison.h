// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>
#include <optional>
#include <string>
#include <vector>

#include "core/report/reading.h"

namespace trueunit {

// Is the difference of two readings more than chance? Larger than the root of the squares of their uncertainties, since
// they come from different characters (JCGM 100:2008, 5.1, from memory); chance alone does that in 5 cases of 100.
inline bool differs(const Measured& a, const Measured& b) {
    return std::abs(a.value - b.value) > std::hypot(a.uncertainty, b.uncertainty);
}

// What may be said of a change. Some ten are looked at together, and 95 % each would show one by chance in every other
// report: one that is called changed is larger than twice its uncertainty, which chance does in 1 of 1000 rows.
enum class Seen { notKnown, none, unsure, changed };
constexpr double kChangedBeyond = 2.0;

// One quantity before and after, marking and late positive.
struct Difference {
    std::string key;   // that of the JSON reading, or "k to mark" for an instant
    std::string name;  // "bias"
    std::string unit;  // "%"
    std::optional<Measured> before;
    std::optional<Measured> after;
    std::optional<Measured> change;  // empty unless both are known
    Seen seen() const;
};

struct Comparison {
    std::vector<Difference> readings;  // speed error, shaft, stop, bias, end
    std::vector<Difference> instants;  // mean displacement of each k and direction met in either
};

// Fewer characters than that, before or after, make a poor proof.
constexpr std::size_t kFirmCharacters = 32;

// An instant that was met too seldom to tell a change of 5 % of a unit is not worth a row.
bool tells(const Difference& instant);

// Pure. Windows that share characters show less than the true difference; they are never called different wrongly.
Comparison compareReadings(const Reading& before, const Reading& after);

// The mean of an instant's displacement with its 95 % half-width; empty below two.
std::optional<Measured> meanOf(const InstantReading& instant);
// The same of one among others that scatter alike: where it was met a few times only, all together tell the scatter,
// or its own where that is larger. Empty while nothing does.
std::optional<Measured> meanAmong(const InstantReading& instant, const std::vector<InstantReading>& all);

}  // namespace trueunit
