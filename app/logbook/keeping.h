// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/logbook/frames.h"
#include "app/logbook/visits.h"

namespace trueunit {

// A frame to be kept. Its machine is found by the frame's machine name, or made.
struct Keeping {
    KeptFrame kept;
    QString uid;                  // of the frame; one that the logbook has already gets its notes changed
    std::optional<qint64> visit;  // empty: the machine's visit that goes on, or a new one
    FrameRole role = FrameRole::none;
};

struct Kept {
    qint64 frame = 0, visit = 0, machine = 0;
    bool newVisit = false;
    bool again = false;  // it was there already; its notes were changed
    qint64 before = 0;   // the frame before the repair, if it came into the logbook with this one
    bool after = false;  // it is the visit's frame after the repair now
};

// One transaction: when it succeeds the frame is on the disk, when it is refused nothing was changed. With it goes the
// moment before the repair, if there is one: into the same visit unless the logbook has it, and marked as before unless
// the visit has another one so marked. A frame that is to be the one after takes that mark from any other of its visit.
Result<Kept> keepFrame(const Store& store, const Keeping& keeping, const Keeping* before = nullptr);

}  // namespace trueunit
