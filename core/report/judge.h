// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/report/limits.h"
#include "core/report/reading.h"

namespace trueunit {

// What the instrument itself may add to a reading, 95 %, same unit as the reading: more characters do not lessen it.
struct InstrumentPart {
    double speedPercent = 0.0;
    double biasPercent = 0.0;  // and end
    double peakPercent = 0.0;  // of a single instant: gross and synchronous
};

// Characters that the readings rest on.
struct JudgedCharacters {
    long window = 0;
    long unit = 0;      // those that gave the unit, and so the speed
    bool full = false;  // the window takes no more of them
};

// Holds each reading against its limit, with the reading's uncertainty as a guard band on either side (the decision
// rule of ISO 14253-1, from memory): in when the whole interval is within the limit, out when the whole of it is
// beyond, open when the limit lies inside it. within is true when all are in, false when any is out, empty otherwise.
Verdict judgeReading(const Reading& reading, const Limits& limits, const InstrumentPart& part,
                     const JudgedCharacters& characters);

bool exceeds(const Verdict& verdict, const std::string& key);                 // a limit, or what none allows
const JudgedReading* judged(const Verdict& verdict, const std::string& key);  // nullptr: not judged

// The verdict for those who need a yes or no, such as an exit code: what is open counts by its value alone.
struct PlainVerdict {
    std::optional<bool> within;  // empty: nothing was judged
    std::vector<std::string> exceeded;
};
PlainVerdict plainVerdict(const Reading& reading);

// "in", "out", "cannot tell yet: 12 more characters", "cannot tell over so few: take the window 128".
std::string judgementWords(const JudgedReading& judged);

// A limit on the speed, and no nominal speed to hold the reading against.
bool lacksNominal(const Verdict& verdict);

// "bench practice: bias 5, end 5, gross 10, synchronous 10, speed 0.75 %. Common practice: ..."
std::string limitsText(const Limits& limits);
std::string originWords(LimitsOrigin kind);  // "published", "common practice", "own"

// One sentence for each reading that is open.
std::vector<std::string> openNotes(const Verdict& verdict);

}  // namespace trueunit
