// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/measure/level_counts.h"
#include "core/options.h"
#include "core/report/reading.h"

namespace trueunit {

// What the characters, held against the text of their tape, say of levels and feed; what is not known, and where the
// tape has other characters than the person's text, as notes.
void readTape(Reading& reading, const std::optional<TapeStudy>& tape, const Options& options);

}  // namespace trueunit
