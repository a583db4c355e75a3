// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <deque>
#include <optional>
#include <vector>

#include "core/detect/edge.h"
#include "core/frame/character.h"

namespace trueunit {

// How edges are to be read. Found by findFraming, then followed.
struct Framing {
    bool inverted = false;     // mark is the low level
    double unitSeconds = 0.0;  // actual unit
    double biasSeconds = 0.0;  // mean delay of to-mark instants: early is negative
};

// Cuts edges into start-stop characters as an ideal receiver does: a mark-to-space edge at rest starts one, each
// level is read in the middle of its unit, the stop must be mark. A missing stop is a framing error and the next
// start is taken after the line has been at mark again. In: edges in order, seconds. Analysis thread; constant cost.
class CharacterFramer {
public:
    CharacterFramer(int levels, Framing framing) : levels_(levels), framing_(framing) {}

    void follow(double unitSeconds, double biasSeconds) {
        framing_.unitSeconds = unitSeconds;
        framing_.biasSeconds = biasSeconds;
    }
    const Framing& framing() const { return framing_; }

    void push(const Edge& edge, double secondsPerSample);
    void advance(double nowSeconds, std::vector<Character>& out);  // no edge before now is to come any more
    void markGap() { afterGap_ = true; }

private:
    struct Placed {
        double seconds;
        Condition to;
        int bounces;
        double settleSeconds;
    };

    bool take(std::vector<Character>& out);
    Condition conditionAt(double seconds) const;
    std::optional<double> earlyStart(double stopRead) const;
    void placeInstants(Character& c, double end) const;

    int levels_;
    Framing framing_;
    std::deque<Placed> edges_;  // not yet used up
    std::uint64_t count_ = 0;
    bool afterGap_ = true;
};

}  // namespace trueunit
