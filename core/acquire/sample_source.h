// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/acquire/sample_ring.h"
#include "core/result.h"

namespace trueunit {

enum class SourceState {
    idle,      // not started, or stopped
    running,   // samples are coming
    finished,  // a recording or scenario has come to its end
    lost,      // the device went away or its callback fell silent
};

// Whatever fills the ring: a sound input, a recording played at its own pace, a scenario.
// start and stop are called by the owner (the window's thread); the source pushes from a thread of its own.
// stop returns only when nothing will be pushed any more (a stream that hangs is abandoned, see the sound input).
class SampleSource {
public:
    virtual ~SampleSource() = default;
    virtual Outcome start(SampleRing& ring) = 0;
    virtual void stop() = 0;
    virtual SourceState state() const = 0;
    virtual double rateHz() const = 0;            // valid once started, > 0
    virtual std::string description() const = 0;  // for the window: "Line in, left (48 kHz)"
};

}  // namespace trueunit
