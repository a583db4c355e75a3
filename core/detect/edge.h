// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace trueunit {

// A significant instant of the line: where it first crosses the slice level, to a small part of a sample.
struct Edge {
    double time = 0.0;           // samples since the input started, fractional
    bool up = false;             // low to high; which of the two is mark is not known yet
    int bounces = 0;             // re-openings after it
    double settleSamples = 0.0;  // from the first closure to the last of them
    bool glitch = false;         // not an instant at all: a spike came and went here (time of its front)
    double haltSamples = 0.0;    // re-openings too short for the line to fall, first closure to last; 0: none
};

}  // namespace trueunit
