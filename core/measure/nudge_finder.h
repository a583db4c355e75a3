// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <deque>
#include <optional>
#include <vector>

#include "core/frame/character.h"
#include "core/measure/bias_scatter.h"
#include "core/measure/nudge.h"

namespace trueunit {

// Finds steps of the bias as they happen. After every character the newest two to 24 are held against up to 32 before
// them, on the scatter learned from this very sender. The limit is 6.8 chances in a million for the comparison of three
// characters and 1.6 for the others, so a steady sender with normal scatter is called nudged less than once in
// an hour (22,000 characters); measured with 1 % scatter: tests/bench/nudge_bench.cpp. A slow drift moves both sides
// and is no nudge. A step that is within its uncertainty once 32 characters have followed is taken back. Analysis
// thread; some ten thousand operations a character; memory bounded.
class NudgeFinder {
public:
    // unitSeconds: the actual unit as known now; nominalSeconds: what percentages are of.
    void push(const Character& character, double unitSeconds, double nominalSeconds);
    void clear();

    const std::vector<Nudge>& nudges() const { return nudges_; }  // oldest first, the last 64
    // Number of the first character after the newest step, which may be one of several of the same turn; 0: no nudge.
    std::uint64_t levelSince() const;
    std::size_t charactersToLearn() const;                    // until nudges are found; 0: they are
    std::optional<Measured> level() const { return level_; }  // of the bias since the last nudge, 95 %

private:
    void place(BiasPoint& point, const Character& character) const;
    void relearn();
    void look();
    void begin(std::size_t first, const Measured& before);
    void settle();
    void takeBackIdle(std::size_t start);
    std::size_t segmentStart() const;
    Measured stated(const Measured& mean) const;

    std::deque<Character> characters_;
    std::vector<BiasPoint> points_;  // of the same characters, oldest first
    BiasScatter scatter_;
    std::vector<Nudge> nudges_;
    std::optional<Measured> level_;
    int segment_ = 0;
    double steppedAt_ = -1e12;  // seconds, of the newest step
    double fixedUnit_ = 0.0, nominal_ = 0.0, unit_ = 0.0;
};

}  // namespace trueunit
