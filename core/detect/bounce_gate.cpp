// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/detect/bounce_gate.h"

#include <cmath>

namespace trueunit {

void BounceGate::advance(double now, std::vector<HeldTransition>& out) {
    while (!waiting_.empty() && waiting_.front().time + delay() < now) {
        const Transition first = waiting_.front();
        std::size_t returns = 0;  // raw transitions after the first, within the hold time
        while (returns + 1 < waiting_.size() && waiting_[returns + 1].time <= first.time + hold_) ++returns;
        HeldTransition held;
        held.first = first;
        held.bounces = static_cast<int>((returns + 1) / 2);
        held.settleSamples = waiting_[returns].time - first.time;
        held.clearBefore = first.time - lastRaw_;
        held.glitch = returns % 2 == 1;
        held.clearAfter = waiting_.size() > 1 ? waiting_[1].time - first.time : delay();
        lastRaw_ = waiting_[returns].time;
        waiting_.erase(waiting_.begin(), waiting_.begin() + static_cast<std::ptrdiff_t>(returns) + 1);
        out.push_back(held);
    }
}

}  // namespace trueunit
