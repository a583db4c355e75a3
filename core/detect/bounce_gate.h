// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
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
    double clearAfter = 0.0;     // to the transition after, or as far as the gate looks: more is not asked for
    bool glitch = false;         // the line went back for good: a spike, no instant
};

// Tells instants from bounce: after a transition the line has the hold time to settle; where it then stands decides.
// In: raw transitions in order, and how far the input has come. Out: held transitions, in order, late by the hold or
// by how far it looks ahead, if that is more: what a transition is said to have around it does not depend on how the
// input is cut into blocks.
// Analysis thread; constant cost.
class BounceGate {
public:
    explicit BounceGate(double holdSamples, double lookSamples = 0.0) : hold_(holdSamples), look_(lookSamples) {}

    void setHold(double samples) { hold_ = samples; }
    double delay() const { return std::max(hold_, look_); }  // samples
    void push(const Transition& raw) { waiting_.push_back(raw); }
    void advance(double now, std::vector<HeldTransition>& out);  // nothing before `now` is to come any more

private:
    double hold_;
    double look_;
    double lastRaw_ = -1e300;
    std::deque<Transition> waiting_;
};

}  // namespace trueunit
