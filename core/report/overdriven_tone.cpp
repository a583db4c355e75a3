// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/overdriven_tone.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace trueunit {

namespace {

constexpr double kMarkShare = 57.0;  // percent of the time that a sender rests at mark, about
constexpr double kMostFlat = 0.98;   // of a tone's samples
constexpr double kUnseenRise = 0.4;  // of the front end's: so much of a tone's own may be hidden in it
constexpr double kDoubt = 1.3;       // that it may be more: an edge need not be straight
constexpr double kWholeRise = 1.25;  // of a straight edge, over its 10 to 90 %

// Strength of a sine of so many times the rail when it is flattened there, over the rail.
double flattened(double times) {
    return 2.0 / std::numbers::pi * (times * std::asin(1.0 / times) + std::sqrt(1.0 - 1.0 / (times * times)));
}

}  // namespace

double overdrivenToneMs(const InputReading& in) {
    const double flat = std::min(in.clippedPercent / kMarkShare, kMostFlat);
    if (in.kind != InputKind::tone || flat <= 0.0) return 0.0;
    const double times = 1.0 / std::sin((1.0 - flat) * std::numbers::pi / 2.0);
    const double middle =
        0.5 * flattened(times) / times;  // of the tone's height, where half of what is left is reached
    const double rise = std::max(in.riseToMarkMs.value_or(0.0), in.riseToSpaceMs.value_or(0.0));
    const double seen = std::sqrt(std::max(0.0, rise * rise - in.frontEndRiseMs * in.frontEndRiseMs));
    const double own = std::max(kUnseenRise * in.frontEndRiseMs, 0.5 * seen / middle);  // flattening makes it steeper
    return 2.0 * kDoubt * kWholeRise * own * (0.5 - middle);
}

}  // namespace trueunit
