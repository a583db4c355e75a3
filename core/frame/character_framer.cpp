// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/frame/character_framer.h"

#include <algorithm>
#include <cmath>

namespace trueunit {

namespace {
constexpr double kShortestStop = 0.2;  // units of mark that still part two characters
}

void CharacterFramer::push(const Edge& edge, double secondsPerSample) {
    const bool mark = edge.up != framing_.inverted;
    // A closure that halts has bounced; an opening that does has burnt a little.
    const bool halts = mark && edge.haltSamples > 0.0;
    edges_.push_back({edge.time * secondsPerSample, mark ? Condition::mark : Condition::space,
                      edge.bounces + (halts ? 1 : 0),
                      std::max(edge.settleSamples, halts ? edge.haltSamples : 0.0) * secondsPerSample});
}

void CharacterFramer::advance(double nowSeconds, std::vector<Character>& out) {
    const double needed = (levels_ + 1.5) * framing_.unitSeconds;
    while (!edges_.empty()) {
        if (edges_.front().to != Condition::space) {  // not a start
            edges_.pop_front();
            continue;
        }
        if (edges_.front().seconds + needed >= nowSeconds) return;
        if (!take(out)) edges_.pop_front();
    }
}

// The condition of the line at a moment, after the first edge in hand.
Condition CharacterFramer::conditionAt(double seconds) const {
    Condition c = Condition::mark;
    for (const Placed& e : edges_) {
        if (e.seconds > seconds) break;
        c = e.to;
    }
    return c;
}

// Reads the character that the first edge starts; false: the start did not last half a unit.
bool CharacterFramer::take(std::vector<Character>& out) {
    const double unit = framing_.unitSeconds;
    Character c;
    c.start = edges_.front().seconds;
    const double shift = 0.5 * framing_.biasSeconds;  // the eye's centre under bias
    if (conditionAt(c.start + 0.5 * unit + shift) != Condition::space) return false;
    for (int level = 1; level <= levels_; ++level)
        if (conditionAt(c.start + (level + 0.5) * unit + shift) == Condition::mark) c.code |= 1U << (level - 1);
    double end = c.start + (levels_ + 1.5) * unit;
    c.stopPresent = conditionAt(end + shift) == Condition::mark;
    if (const auto nextStart = earlyStart(end + shift); !c.stopPresent && nextStart) {
        c.stopPresent = true;
        end = std::nextafter(*nextStart, 0.0);
    }
    c.number = count_++;
    c.afterGap = afterGap_;
    afterGap_ = false;
    placeInstants(c, end);
    const auto next = std::find_if(edges_.begin(), edges_.end(), [end](const Placed& e) { return e.seconds > end; });
    edges_.erase(edges_.begin(), next);
    // Without a stop the line is at space: whatever comes first is its return to mark, which starts nothing.
    if (!c.stopPresent) afterGap_ = true;
    out.push_back(std::move(c));
    return true;
}

// A stop cut short by a hasty clutch: the line has been at mark for a while and gone to space before the stop is read.
std::optional<double> CharacterFramer::earlyStart(double stopRead) const {
    const double unit = framing_.unitSeconds;
    const double earliest = edges_.front().seconds + (levels_ + 1 + kShortestStop) * unit;
    for (const Placed& e : edges_) {
        if (e.seconds > stopRead) break;
        if (e.seconds < earliest || e.to != Condition::space) continue;
        if (conditionAt(e.seconds - kShortestStop * unit) == Condition::mark) return e.seconds;
    }
    return std::nullopt;
}

void CharacterFramer::placeInstants(Character& c, double end) const {
    for (auto e = edges_.begin(); e != edges_.end() && e->seconds <= end; ++e) {
        c.bounces += e->bounces;
        c.longestBounceSeconds = std::max(c.longestBounceSeconds, e->settleSeconds);
        if (e == edges_.begin()) continue;
        const double offset = e->seconds - c.start;
        const double expected = e->to == Condition::mark ? framing_.biasSeconds : 0.0;
        const int k = static_cast<int>(std::lround((offset - expected) / framing_.unitSeconds));
        const bool taken = !c.instants.empty() && c.instants.back().k >= k;
        if (k < 1 || k > levels_ + 1 || taken) c.regular = false;
        c.instants.push_back({k, e->to, offset, e->settleSeconds});
    }
}

}  // namespace trueunit
