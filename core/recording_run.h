// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <memory>

#include "core/acquire/recording.h"
#include "core/detect/line_model.h"
#include "core/options.h"
#include "core/report/limits.h"
#include "core/report/snapshot.h"

namespace trueunit {

// Measures a recording from end to end, as fast as it can be read. Two passes: the first, over at most a minute, only
// learns the wiring (coupling, edges, polarity), so that the second measures the first character like the last.
// progress is told on the way, on the calling thread, what part of the work is done, 0 to 1.
using Progress = std::function<void(double done)>;
Snapshot measureRecording(Recording& recording, const Options& options, const Limits& limits,
                          const Progress& progress = {});

// The first of the two alone: enough for a run that plays the recording to begin as measureRecording does. Reads from
// the beginning, and leaves the recording where it came to, on the strongest channel that has characters in it. Empty:
// none has.
std::shared_ptr<const LineModel> learnWiring(Recording& recording, const Options& options, const Limits& limits,
                                             const Progress& progress = {});

// The numbers alone, sooner.
Reading readRecording(Recording& recording, const Options& options, const Limits& limits,
                      const Progress& progress = {});

// The reading of an input that could not be read at all: nothing known, and the reason in the notes.
Reading readingOfNothing(const Error& reason, const Options& options, const Limits& limits);

}  // namespace trueunit
