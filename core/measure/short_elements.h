// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/measure/timing.h"

namespace trueunit {

// By how much the instants that end an element of one unit are displaced against those that end a longer one, to mark
// and to space alike: a line, relay or lever that has not come to rest after so short a time. Instants at k = 1 always
// end one unit, so that a fit which does not know of this takes a part of it for speed, bias and end distortion.
// Percent of the unit, late positive. Empty unless it explains most of what speed, bias, end and place leave. Pure.
std::optional<Measured> afterShortElements(Characters characters, double unitSeconds);

}  // namespace trueunit
