// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>

#include "core/condition/line_fit.h"

namespace trueunit {

// Looks at a stretch of samples as a whole (two seconds and more) and finds the keyed line in it: swing, offset and
// the one or two poles of the coupling, by least squares of the whole stretch. Empty when no two-level signal of at
// least ten transitions explains it. coupled: a loop as heard; else a demodulated line, which has neither coupling nor
// rails. Pure; some milliseconds for four seconds of input.
std::optional<LineFit> studyLine(std::span<const float> heard, double rateHz, bool coupled = true);

// Whether steps up and down stand out of the rest, be they too few for a study. Pure.
bool hasSteps(std::span<const float> heard, double rateHz);

}  // namespace trueunit
