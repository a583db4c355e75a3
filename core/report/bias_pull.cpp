// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/bias_pull.h"

#include <algorithm>
#include <cmath>

namespace trueunit {

BiasPull biasPulledIn(const Reading& r) {
    constexpr double kMatters = 0.5;  // percent; less is no reason to leave the eccentric alone
    if (!r.findings || !r.distortion.biasPercent) return BiasPull::none;
    const Measured& bias = *r.distortion.biasPercent;
    const bool agrees =
        r.setAside && std::abs(bias.value - r.setAside->biasPercent) < std::max(kMatters, bias.uncertainty);
    for (const Finding& f : *r.findings) {
        if (f.id == "level-late" && isSureFault(f) && !agrees) return BiasPull::level;
        if (f.id == "slow-rise" && isSureFault(f) && !agrees) return BiasPull::unsettled;
    }
    return BiasPull::none;
}

bool contactIsInOrder(const Reading& r, const Limits& limits) {
    return r.setAside && std::abs(r.setAside->biasPercent) <= limits.biasPercent;
}

}  // namespace trueunit
