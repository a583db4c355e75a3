// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/machine_card.h"

namespace trueunit {

// A pair of gears that would give another speed.
struct GearWanted {
    double baud = 0.0;
    double ratio = 0.0;  // turns of the transmitting shaft to one of the motor
    int drivingTeeth = 0;
    int drivenTeeth = 0;      // the pair nearest to it, few enough teeth to be cut
    double errorPercent = 0;  // of the speed with that pair, fast is positive
};

// What the motor and the gears of a card say about a measured speed. Sentences are for the person.
struct DriveExplanation {
    double expectedBaud = 0.0;        // by motor and gears
    double errorPercent = 0.0;        // of the measured speed against it, fast is positive
    std::vector<std::string> causes;  // what explains the measured speed, likeliest first; empty: motor and gears do
    std::string speedWords;           // expected and measured speed, and the standard one it matches
};

// By motor and gears: turns of the transmitting shaft, so characters, so units a second.
double expectedBaud(const MachineCard& card, int levels);

// With the stop as measured, in units, where it is known: a stop other than the card's may be what makes the speed.
DriveExplanation explainDrive(const MachineCard& card, int levels, double measuredBaud,
                              std::optional<double> measuredStop = std::nullopt);

// The gears for each standard speed other than the card's own; at most three, the nearest speeds.
std::vector<GearWanted> gearsWanted(const MachineCard& card, int levels, double baud);
std::string gearWords(const GearWanted& gear);

// Which shaft turns so often a second, at the measured speed: "the motor shaft", "the transmitting shaft, twice a
// turn". Empty: none of them.
std::optional<std::string> shaftOf(const MachineCard& card, int levels, double measuredBaud, double hz);

}  // namespace trueunit
