// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "core/condition/line_finder.h"
#include "core/condition/line_restorer.h"
#include "core/condition/tone_demodulator.h"
#include "core/detect/bounce_gate.h"
#include "core/detect/edge.h"
#include "core/detect/edge_timer.h"
#include "core/detect/hum_meter.h"

namespace trueunit {

// A found line from samples to edges: demodulated if it rides on tones, its levels restored, its transitions freed
// from bounce and placed. Measures the coupling once more after some seconds, because the first look had little to
// go by. Analysis thread; owns its stages.
class EdgeFinder {
public:
    EdgeFinder(const FoundLine& line, double rateHz, double sliceFraction, std::uint64_t firstSample);

    void push(std::span<const float> samples, std::vector<Edge>& out);
    void finish(std::vector<Edge>& out);

    double knownTo() const;  // samples: every edge before it has been handed out
    void setHold(double samples) { gate_.setHold(samples); }
    void setShapes(std::span<const EdgeShape, 2> shapes) { timer_.setShapes(shapes); }
    void keepCoupling() { refineAt_ = UINT64_MAX; }  // it is known well already

    const FoundLine& line() const { return line_; }
    const EdgeTimer& timer() const { return timer_; }
    double humPeakToPeak() const;  // of the swing, as it is in the samples; 0 = none found
    void setMarkIsLow(bool low) { timer_.setMarkIsLow(low); }
    double frontEndRiseSeconds() const { return demodulator_ ? demodulator_->riseSeconds() : 0.0; }

private:
    void pass(bool last, std::vector<Edge>& out);
    void refineCoupling(std::span<const float> samples);

    FoundLine line_;
    double rateHz_;
    std::optional<ToneDemodulator> demodulator_;
    LineRestorer restorer_;
    BounceGate gate_;
    EdgeTimer timer_;
    HumMeter humMeter_;
    // What passes between the stages in one push; kept to spare the allocations.
    std::vector<float> demodulated_, restored_;
    std::vector<Transition> raw_;
    std::vector<HeldTransition> heldTransitions_;
    std::vector<float> recent_;  // since the line was found, until the coupling is measured again
    std::uint64_t refineAt_;     // samples
};

}  // namespace trueunit
