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
constexpr double kStands = 0.42;  // of the swing, that a straight line through that way rises; an edge does 0.5
constexpr double kFoot = 0.25, kHead = 1.0 - kFoot;  // of the swing: what comes between does not reach so far
constexpr int kFewestFormed = 6;                     // edges, before their form is known

// The line about an edge, from 0 at its level before to 1 at that after. Samples are counted from the first.
class Rise {
public:
    Rise(std::span<const float> line, double before, double after, double slope, double firstFromEdge)
        : line_(line), before_(before), swing_(after - before), slope_(slope), first_(firstFromEdge) {}

    std::size_t size() const { return line_.size(); }
    double height(std::size_t i) const {
        return (static_cast<double>(line_[i]) - slope_ * (first_ + static_cast<double>(i)) - before_) / swing_;
    }
    std::size_t firstAbove(std::size_t i, double h) const {  // two in a row: no lone spike
        while (i + 1 < size() && !(height(i) >= h && height(i + 1) >= h)) ++i;
        return i;
    }
    std::size_t pastLastBelow(std::size_t past, double h) const {
        while (past > 0 && height(past - 1) >= h) --past;
        return past;
    }
    double crossing(std::size_t above, double h) const {  // between that sample and the one before
        const double below = height(above - 1), step = height(above) - below;
        return static_cast<double>(above) - (step > 0.0 ? std::clamp((height(above) - h) / step, 0.0, 1.0) : 0.0);
    }
    double straightRise(std::size_t from, std::size_t past) const {
        const StraightSums way = straightSums(line_.subspan(from, past - from));
        return (way.xy / way.xx - slope_) * way.n / swing_;
    }

private:
    std::span<const float> line_;
    double before_, swing_, slope_, first_;
};

}  // namespace

// A contact that re-opens for less than the line takes to fall keeps it half way up. Its instant is the first closure.
std::optional<EdgeTimer::Halt> EdgeTimer::haltOf(const HeldTransition& held, const Levels& levels) const {
    if (noiseRms() > kMostNoise) return std::nullopt;
    const double at = held.first.time, look = kLookSeconds * rateHz_;
    const double from = std::max(at - std::min(look, kShareOfElement * held.clearBefore), static_cast<double>(begin_));
    const double to = at + std::min(look, kShareOfElement * held.clearAfter);
    const double first = std::ceil(from);
    const Rise rise(between(from, to), levels.before, levels.after, levels.slope, first - at);
    const std::size_t quarter = rise.firstAbove(0, kFoot), three = rise.pastLastBelow(rise.size(), kHead);
    const std::size_t tenth = rise.pastLastBelow(quarter, 0.1), nine = rise.firstAbove(three, 0.9);
    if (tenth == 0 || quarter >= three || nine + 1 >= rise.size()) return std::nullopt;
    const auto stood = static_cast<double>(three - quarter);
    if (stood < kLeastHaltSeconds * rateHz_ || stood < kHalts * static_cast<double>(nine - tenth)) return std::nullopt;
    if (rise.straightRise(quarter, three) > kStands) return std::nullopt;
    // The foot of the first closure and the head of the last are formed as any edge is.
    const EdgeShape& own = shapes_[held.first.up ? 1 : 0];
    const EdgeShape& form = own.edges() >= kFewestFormed ? own : shapes_[held.first.up ? 0 : 1];
    const double foot = rise.crossing(quarter, kFoot) - form.crossing(kFoot);
    const double head = rise.crossing(three, kHead) - form.crossing(kHead);
    return Halt{first + foot + own.sliceOffset(), std::max(head - foot, 1.0)};
}

}  // namespace trueunit
