// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/measure/decomposition.h"
#include "core/options.h"
#include "core/report/reading.h"

namespace trueunit {

// Each adds its sentence to the notes of a reading where it applies. Pure.
void noteWhatIsMissing(Reading& reading);
void noteShortStop(Reading& reading, const Options& options);  // against the stop that was set; a long one is a finding
void noteGaps(Reading& reading);
void noteLevelSteps(Reading& reading);
void noteBiasChange(Reading& reading, const std::optional<Decomposition>& parts);  // of the same characters
void noteClock(Reading& reading, const Options& options);

}  // namespace trueunit
