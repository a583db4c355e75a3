// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/detect/edge.h"
#include "tests/support/character_builder.h"

namespace trueunit::test {

constexpr double kTrainSecondsPerSample = 1.0 / 48000.0;

// The edges of some characters, as a perfect detector would hand them over; mark is the high level unless inverted.
inline std::vector<Edge> edgesOf(const std::vector<Character>& characters, bool inverted = false) {
    std::vector<Edge> edges;
    const auto add = [&](double seconds, bool mark) {
        Edge e;
        e.time = seconds / kTrainSecondsPerSample;
        e.up = mark != inverted;
        edges.push_back(e);
    };
    for (const Character& c : characters) {
        add(c.start, false);
        for (const Instant& i : c.instants) add(c.start + i.seconds, i.to == Condition::mark);
    }
    return edges;
}

}  // namespace trueunit::test
