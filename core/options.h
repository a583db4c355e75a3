// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "core/machine_card.h"
#include "core/result.h"
#include "core/units.h"

namespace trueunit {

// Windows, characters, that are offered to choose from, shortest first; a longer one is all.
inline constexpr std::array kOfferedWindows = {1, 8, 32, 128};

// What the person may set about a measurement. Values left empty are found from the signal.
struct Options {
    std::optional<double> baud;       // nominal speed, 20..200 baud
    std::optional<double> stopUnits;  // nominal stop length, 1.0..2.5 units; only shown and judged, never assumed
    std::string code = "ita2";        // a name codeNames() lists
    InputKind input = InputKind::automatic;
    std::vector<double> tonesHz;      // one keyed tone, or the two; 100..10000 Hz each; empty = found from the signal
    int windowCharacters = 0;         // readings cover the last N characters; 0 = all
    double slicePercent = 50.0;       // the instant is the crossing of this fraction of the swing, 10..90
    std::string expect;               // text of a tape loop, repeated from any point; empty = not known
    std::optional<MachineCard> card;  // what motor and gears should make; empty: nothing is said of the drive
    double clockPpm = 0.0;            // the card's clock is fast by this much, -1000..1000 parts in a million

    std::optional<Error> problem() const;  // the first value out of range, in words
};

}  // namespace trueunit
