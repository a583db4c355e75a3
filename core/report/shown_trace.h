// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>

#include "core/report/frozen_frame.h"

namespace trueunit {

// The character that a page draws of a frame: the chosen one; with none chosen the one that shows the first finding
// best, by its largest displacement at the instants the finding rests on or by what came wrong; else the newest. Empty:
// no character had been received.
std::shared_ptr<const CharacterTrace> shownTrace(const FrozenFrame& frame);

// The frame with its character left to shownTrace(), unless a person has worked on it: chosen another than the newest,
// set a cursor or written a note.
FrozenFrame withFaultShown(FrozenFrame frame);

// Two frames to be seen side by side: where shownTrace() has the choice, both show the same character of the tape, the
// one of those they share that shows the first frame's finding best. What a person chose stays.
void showAlike(FrozenFrame& before, FrozenFrame& after);
bool areAlike(const FrozenFrame& before, const FrozenFrame& after);  // both show the same character of the tape

}  // namespace trueunit
