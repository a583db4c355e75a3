// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/detect/edge_timer.h"
#include "core/straight_sums.h"

namespace trueunit {

namespace {
constexpr double kLookSeconds = 0.004;    // either side
constexpr double kShareOfElement = 0.45;  // of the way to the neighbour edge, at most
constexpr double kLeastHaltSeconds = 0.35e-3;
constexpr double kMostNoise = 0.05;  // rms, of the swing
// Of the way from a tenth of the swing to nine, the part spent between a quarter and three: a straight edge takes
// 0.62, a step through any filter less, one that halts more.
constexpr double kHalts = 0.72;
constexpr double kFoot = 0.25;    // of the swing: what comes after the first closure does not reach so far down
constexpr int kFewestFormed = 6;  // edges, before their form is known
constexpr double kStands = 0.42;  // of the swing, that a straight line through that way rises; an edge does 0.5
}  // namespace

// A contact that re-opens for less than the line takes to fall keeps it half way up. Its instant is the first closure.
std::optional<EdgeTimer::Halt> EdgeTimer::haltOf(const HeldTransition& held, const Levels& levels) const {
    if (noiseRms() > kMostNoise) return std::nullopt;
    const double at = held.first.time, look = kLookSeconds * rateHz_;
    const double from = std::max(at - std::min(look, kShareOfElement * held.clearBefore), static_cast<double>(begin_));
    const double to = at + std::min(look, kShareOfElement * held.clearAfter);
    const std::span<const float> line = between(from, to);
    const double scale = 1.0 / (levels.after - levels.before);
    const auto heightOf = [&](double level, double i) {  // 0 to 1
        return (level - levels.slope * (std::ceil(from) + i - at) - levels.before) * scale;
    };
    const auto height = [&](std::size_t i) { return heightOf(static_cast<double>(line[i]), static_cast<double>(i)); };
    const auto firstAbove = [&](std::size_t i, double h) {  // two in a row: no lone spike
        while (i + 1 < line.size() && !(height(i) >= h && height(i + 1) >= h)) ++i;
        return i;
    };
    const auto lastBelow = [&](std::size_t past, double h) {
        while (past > 0 && height(past - 1) >= h) --past;
        return past;  // of it
    };
    const auto crossed = [&](std::size_t above, double h) {  // between that sample and the one before
        const double below = height(above - 1), step = height(above) - below;
        return static_cast<double>(above) - (step > 0.0 ? std::clamp((height(above) - h) / step, 0.0, 1.0) : 0.0);
    };
    const std::size_t quarter = firstAbove(0, 0.25), three = lastBelow(line.size(), 0.75);
    const std::size_t tenth = lastBelow(quarter, 0.1), nine = firstAbove(three, 0.9);
    if (tenth == 0 || quarter >= three || nine + 1 >= line.size()) return std::nullopt;
    const auto stood = static_cast<double>(three - quarter);
    if (stood < kLeastHaltSeconds * rateHz_ || stood < kHalts * static_cast<double>(nine - tenth)) return std::nullopt;
    const StraightSums way = straightSums(line.subspan(quarter, three - quarter));
    if ((way.xy / way.xx - levels.slope) * way.n * scale > kStands) return std::nullopt;
    // The foot of the first closure and the head of the last are formed as any edge is.
    const EdgeShape& own = shapes_[held.first.up ? 1 : 0];
    const EdgeShape& form = own.edges() >= kFewestFormed ? own : shapes_[held.first.up ? 0 : 1];
    const double foot = crossed(firstAbove(tenth - 1, kFoot), kFoot) - form.crossing(kFoot);
    const double head = crossed(lastBelow(line.size(), 1.0 - kFoot), 1.0 - kFoot) - form.crossing(1.0 - kFoot);
    return Halt{std::ceil(from) + foot + own.sliceOffset(), std::max(head - foot, 1.0)};
}

}  // namespace trueunit
