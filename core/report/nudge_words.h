// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/measure/nudge.h"
#include "core/report/limits.h"
#include "core/report/snapshot.h"

namespace trueunit {

// What the last nudge did, and what the hand should do next. Pure.
struct NudgeAdvice {
    enum class Kind {
        none,     // nothing was nudged
        goOn,     // nearer, same way on
        back,     // farther off, or past zero and out on the other side
        inOrder,  // in limits: tighten and watch
        crept,    // it was in limits and was told so, and moved away from zero: tightening, or something gives
    };
    Kind kind = Kind::none;
    std::string did;   // "last nudge: +7.8 to +5.1"
    std::string next;  // "go on the same way, about 1.5 times that nudge"
};

NudgeAdvice adviceAfter(const std::vector<Nudge>& nudges, const std::optional<Measured>& biasNow, const Limits& limits);

// While the scatter of this sender is still learned no nudge is found: how long that takes. Empty afterwards.
std::string learningWords(const Snapshot& s);

// The same beside the reading of the snapshot, which may still cover characters from before the nudge; what is in
// limits a minute after the last one leaves nothing to say.
NudgeAdvice adviceAfter(const Snapshot& s);

// How many of the window's characters came after the last nudge; all of them without one.
std::size_t charactersSinceNudge(const Snapshot& s);
std::size_t charactersSinceNudge(const Snapshot& s, std::size_t last);  // the same of so many

}  // namespace trueunit
