// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/detect/edge_finder.h"

#include <algorithm>
#include <cmath>

namespace trueunit {

namespace {
constexpr double kFirstHoldSeconds = 0.0034;  // before the unit is known
}

EdgeFinder::EdgeFinder(double rateHz, double sliceFraction, std::uint64_t firstSample)
    : timer_(rateHz, sliceFraction, firstSample),
      gate_(kFirstHoldSeconds * rateHz, timer_.looksAhead()),
      humMeter_(rateHz) {}

void EdgeFinder::push(const Conditioned& conditioned, std::vector<Edge>& out) {
    take(conditioned);
    hold(static_cast<double>(timer_.end()));
    timer_.advance(out);
}

void EdgeFinder::finish(const Conditioned& last, std::vector<Edge>& out) {
    take(last);
    hold(static_cast<double>(timer_.end()) + gate_.delay() + 1.0);
    timer_.finish(out);
}

void EdgeFinder::take(const Conditioned& conditioned) {
    timer_.push(conditioned.line);
    humMeter_.push(conditioned.line);
    for (const Transition& t : conditioned.transitions) gate_.push(t);
}

void EdgeFinder::hold(double end) {
    held_.clear();
    gate_.advance(end, held_);
    for (const HeldTransition& h : held_) timer_.time(h);
}

// Restoring the line has raised the hum by what the coupling had taken off it.
double EdgeFinder::humPeakToPeak(const HighPass& coupling) const {
    const auto found = humMeter_.hum();
    if (!found) return 0.0;
    double raised = 1.0;
    for (const double corner : coupling.cornersHz()) raised *= std::hypot(1.0, corner / found->hz);
    return 2.0 * found->amplitude / raised;
}

double EdgeFinder::knownTo() const {
    const double gateKnows = static_cast<double>(timer_.end()) - gate_.delay() - 1.0;
    return timer_.waits() ? std::min(gateKnows, timer_.waitsSince()) : gateKnows;
}

}  // namespace trueunit
