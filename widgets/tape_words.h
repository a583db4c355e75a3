// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <cstddef>
#include <optional>
#include <vector>

#include "core/report/snapshot.h"

namespace trueunit {

// Not as the tape has it.
inline bool isWrong(const TapeCharacter& c) { return c.due && *c.due != c.code; }

// Looks the same on the tape.
bool drawnAlike(const TapeCharacter& a, const TapeCharacter& b);

// For each character of the tape that came rightly and yet prints as a figure instead of a letter, or the other way:
// which one before it lost the shift, or came as one that is none.
std::vector<std::optional<std::size_t>> wrongCase(const Snapshot& snapshot);

// ", due "8"" where that is known and it printed otherwise; empty if not.
QString dueWords(const TapeCharacter& character);

// What a character is, and what is wrong with it.
QString characterWords(const std::vector<TapeCharacter>& tape, std::size_t index,
                       const std::vector<std::optional<std::size_t>>& causes);

// Where its print stands; empty: it has none.
QString printWords(const std::vector<TapeCharacter>& tape, std::size_t index);

// The last characters by name, as they would be read out.
QString tapeWords(const Snapshot& snapshot);

}  // namespace trueunit
