// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/measure/displacement_pattern.h"
#include "core/measure/level_counts.h"
#include "core/measure/plain_text.h"
#include "core/measure/steadiness.h"
#include "core/options.h"
#include "core/report/limits.h"
#include "core/report/reading.h"

namespace trueunit {

// All that the rules of the findings go by: the reading, and what was measured for their sake alone. References are
// the caller's.
struct Symptoms {
    const Reading& reading;
    const Limits& limits;
    const Options& options;
    int levels = 5;
    std::optional<DisplacementPattern> pattern;
    std::optional<Steadiness> steadiness;
    std::optional<TapeStudy> tape;
    std::vector<LevelShare> shares;
    std::optional<PlainTextStudy> plainText{};  // where the text of the tape is not known

    double unitMs() const { return reading.speed.unitMs.value_or(20.0); }
    // Displacement to be expected of the instants from the noise of the input alone, rms percent.
    double noisePercent() const;
    // By how much a slow rise delays the instants to mark behind those to space, percent; 0 for quick edges.
    double riseDelayPercent() const;
    // With levers and short elements set aside; empty without a pattern or a nominal speed.
    std::optional<double> speedErrorByPattern() const;
    double wanderPercent() const;       // rms of the speed; 0 when it is not known to wander
    double largestLinePercent() const;  // amplitude of the strongest periodic line; 0: none
    // A few instants lie far outside what the rest scatters: characters read wrong rather than a trait of the machine.
    bool strays() const;
    // 10 to 90 % in milliseconds of the slower direction, the front end's own rise taken off; 0 when not known.
    double slowestRiseMs() const;
};

}  // namespace trueunit
