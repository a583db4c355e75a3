// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "core/condition/line_conditioner.h"
#include "core/detect/bounce_gate.h"
#include "core/detect/edge.h"
#include "core/detect/edge_timer.h"
#include "core/detect/hum_meter.h"

namespace trueunit {

// A conditioned line to edges: its transitions freed from bounce and placed; its hum measured by the way. Analysis
// thread; owns its stages.
class EdgeFinder {
public:
    EdgeFinder(double rateHz, double sliceFraction, std::uint64_t firstSample);

    void push(const Conditioned& conditioned, std::vector<Edge>& out);
    void finish(const Conditioned& last, std::vector<Edge>& out);

    double knownTo() const;  // samples: every edge before it has been handed out
    void setHold(double samples) { gate_.setHold(samples); }
    void setShapes(std::span<const EdgeShape, 2> shapes) { timer_.setShapes(shapes); }
    void setMarkIsLow(bool low) { timer_.setMarkIsLow(low); }

    const EdgeTimer& timer() const { return timer_; }
    double humPeakToPeak(const HighPass& coupling) const;  // of the swing, as it is in the samples; 0 = none found

private:
    void take(const Conditioned& conditioned);
    void hold(double end);  // times what holds, when nothing before the end is to come

    EdgeTimer timer_;
    BounceGate gate_;
    HumMeter humMeter_;
    std::vector<HeldTransition> held_;  // of one push; kept to spare the allocation
};

}  // namespace trueunit
