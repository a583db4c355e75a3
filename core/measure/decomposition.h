// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/frame/unit_fit.h"
#include "core/measure/changes.h"
#include "core/measure/timing.h"

namespace trueunit {

// A line in the displacement: amplitude * sin(2 pi hz t + phase), percent of a unit.
struct PeriodicLine {
    double hz = 0.0;
    double amplitude = 0.0;
    double falseAlarm = 1.0;  // probability that chance alone makes a line stand out as much, anywhere in the search
    bool shiftsStart = false;
};

// What the displacement of the instants is made of, once speed is taken out: d = bias or end + place + character
// before + steps or a drift of bias and speed + periodic lines + rest (after ITU-T R.140's kinds of distortion; from
// memory). Percent of a unit.
struct Decomposition {
    double characteristic = 0.0;       // spread of the mean by length of the preceding element, chance taken off
    bool characteristicKnown = false;  // two lengths or more, each met often enough
    std::vector<PeriodicLine> lines;   // strongest first
    bool linesSought = false;          // long enough to look for any
    double restRms = 0.0;              // fortuitous
    double restPeak = 0.0;
    // Of the rest, by analysis of variance over the characters: what all instants of one share, which is their start's;
    // and what is each one's own. Standard deviations; 0, 0: too few characters of two instants or more.
    double together = 0.0, apart = 0.0;
    long over = 0;                                // characters
    std::optional<Changes::OfBias> biasChange{};  // within them
};

// Empty below some twenty instants. Pure; the search for lines costs some tens of milliseconds for 500 characters
// and looks at the last 600 only.
std::optional<Decomposition> decompose(Characters characters, const UnitFit& fit, bool seekLines = true);

}  // namespace trueunit
