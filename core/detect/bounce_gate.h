// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <deque>
#include <optional>
#include <vector>

#include "core/condition/line_fit.h"

namespace trueunit {

// A transition that holds, with what surrounds it. Samples.
struct HeldTransition {
    Transition first;            // the first closure (or opening): the significant instant
    int bounces = 0;             // returns within the hold time
    double settleSamples = 0.0;  // first to last of them
    double clearBefore = 0.0;    // to the transition before, of any kind
    double clearAfter = 0.0;     // to the transition after; the hold time at least when there is none yet
    bool glitch = false;         // the line went back for good: a spike, no instant
};

// Tells instants from bounce: after a transition the line has the hold time to settle; where it then stands decides.
// In: raw transitions in order, and how far the input has come. Out: held transitions, in order, late by the hold.
// Analysis thread; constant cost.
class BounceGate {
public:
    explicit BounceGate(double holdSamples) : hold_(holdSamples) {}

    void setHold(double samples) { hold_ = samples; }
    double hold() const { return hold_; }
    void push(const Transition& raw) { waiting_.push_back(raw); }
    void advance(double now, std::vector<HeldTransition>& out);  // nothing before `now` is to come any more

private:
    double hold_;
    double lastRaw_ = -1e300;
    std::deque<Transition> waiting_;
};

}  // namespace trueunit
