// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/report/reading.h"

namespace trueunit {

// A sender that loses marks or sends other characters than its tape carries is not in order, however well it times
// them. Both are empty when nothing was found wrong, or the text of the tape is not known.

// JSON keys of what is wrong: framing_errors, wrong_characters, feed_slips, marks_missed, spaces_filled.
std::vector<std::string> textFaults(const Reading& reading);

// The same for the person, a few words each: "13 of 96 marks of level 3 lost".
std::vector<std::string> textFaultWords(const Reading& reading);

// Where a level loses many marks, the text that was learned is wrong at a place or two, and spaces seem filled there;
// and the other way about. Of very unlike counts on one level the small one proves nothing.
inline bool prevails(long many, long few) { return many >= 4 * few; }

}  // namespace trueunit
