// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>

#include "core/units.h"

namespace trueunit {

// The tone or tones that carry the keying.
struct Tones {
    InputKind kind = InputKind::tone;
    double lowHz = 0.0;   // the only one, when there is one
    double highHz = 0.0;  // two-tone only
};

// Looks for keyed tones in a stretch of samples (half a second and more): their power stands in narrow peaks above
// the band of a bare loop. `wanted` restricts the answer to a kind (automatic: whichever is there). Pure.
std::optional<Tones> findTones(std::span<const float> samples, double rateHz, InputKind wanted);

}  // namespace trueunit
