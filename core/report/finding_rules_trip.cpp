// SPDX-License-Identifier: GPL-3.0-or-later
// What the clutch and its trip do, from one start to the next.
#include <algorithm>
#include <cmath>

#include "core/report/finding_rules.h"
#include "core/report/finding_words.h"

namespace trueunit {

namespace {

constexpr double kStopScatter = 0.03;  // units
constexpr double kStopScatterLimit = 0.06;
constexpr double kStopLate = 0.08;  // units, against the nominal stop
constexpr double kStopLateLimit = 0.15;
constexpr double kRunning = 0.5;
constexpr double kPoorSnrDb = 16.0;  // a start may be misplaced by noise

}  // namespace

std::optional<RankedFinding> tripLate(const Symptoms& s) {
    if (!s.steadiness || s.steadiness->runningShare < kRunning || !s.reading.speed.stopUnits) return std::nullopt;
    const double rest = 0.01 * s.reading.distortion.fortuitousRmsPercent.value_or(0.0);
    const double scatter = s.steadiness->stopScatter;
    const double own = std::sqrt(std::max(0.0, scatter * scatter - 3.0 * rest * rest));
    const double stop = s.reading.speed.stopUnits->value;
    const double late = s.options.stopUnits ? stop - *s.options.stopUnits : 0.0;
    const bool irregular = own >= kStopScatter && own > 2.0 * rest;
    if (!irregular && late < kStopLate) return std::nullopt;
    Finding f;
    f.id = "trip-late";
    f.seenAt.instants = {{s.levels + 1, Condition::mark}};
    f.title = irregular ? "The stop is irregular: " + percent(100.0 * own, 0) + " of a unit rms"
                        : "The stop is too long by " + decimals(late, 2) + " units";
    if (irregular) {
        f.evidence = "From start to start the interval varies by " + decimals(own * s.unitMs(), 2) +
                     " ms rms, while the instants within the characters keep their places within " +
                     percent(100.0 * rest, 2) + " rms; the stop is " + decimals(stop, 2) + " units on average";
        f.evidence += s.options.stopUnits ? ", nominal " + decimals(*s.options.stopUnits, 2) + "." : ".";
    } else {
        f.evidence = "The stop is " + decimals(stop, 2) + " units, nominal " + decimals(*s.options.stopUnits, 2) +
                     ", and steady. The clutch lets go late each time, or the machine waits for its tape.";
    }
    f.lookAt =
        "Clutch and its trip: trip lever, latch and pawl, clutch teeth and spring, dry or gummed clutch, friction "
        "set too low; the tape-out and feed interlocks.";
    f.confirm =
        "Watch the start of each character against the one before on the grid; with the power off trip the clutch by "
        "hand and feel whether it engages at once." +
        kUnplug;
    f.confidence = irregular ? std::clamp(0.97 - 0.3 * rest / own, 0.5, 0.97) : 0.85;
    const bool rare = irregular && s.steadiness->stopScatterTrimmed < std::max(0.5 * kStopScatter, 2.0 * rest);
    if (rare || s.reading.input.snrDb.value_or(40.0) < kPoorSnrDb) f.confidence = 0.5;
    return RankedFinding{f, std::max(irregular ? own / kStopScatterLimit : 0.0, late / kStopLateLimit)};
}

}  // namespace trueunit
