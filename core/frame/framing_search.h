// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>

#include "core/detect/edge.h"
#include "core/frame/character_framer.h"

namespace trueunit {

// What a stretch of edges turned out to be.
struct FramingFound {
    Framing framing;
    std::size_t firstEdge = 0;  // framing starts with this edge
    double scatterUnits = 0.0;  // rms of what speed, bias and end do not explain
    double errorShare = 0.0;    // framing errors, 0..1
};

// What is known of a stretch beside its edges.
struct FramingClues {
    std::optional<double> nominalBaud;  // as set by the person
    double restSeconds = 0.0;           // that the line was seen without an edge before the first one
};

// Whether a speed can be that of a machine of this nominal one: a wrong gear or mains, but neither half nor double.
bool nearNominal(double baud, double nominalBaud);

// Whether the lengths only alternate, or change slowly, as hum and a character of one mark or space repeated do:
// nothing in them tells a unit.
bool onlyAlternate(std::span<const Edge> edges);

// Finds speed, polarity and the first start in a stretch of edges (about two seconds of running tape), by trying
// every speed from 35 to 130 baud, and those about the nominal one, in both polarities and keeping the one under which
// the edges fall into characters best. Where they do so in more than one way, as one character repeated does, a speed
// near the nominal one, a constant stop and a line that rested at mark decide. Empty when none does: then the signal
// is not start-stop, or there is too little of it. Pure.
std::optional<FramingFound> findFraming(std::span<const Edge> edges, double secondsPerSample, int levels,
                                        const FramingClues& clues = {});

}  // namespace trueunit
