// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/reading.h"

namespace trueunit {

// What an overdriven input may take from the bias of an interrupted tone, ms: flattened, the tone comes to half its
// height sooner than it would, and leaves it later. How much sooner follows from how far it is overdriven and how
// slowly it comes; of that little is seen behind the demodulator's own rise. Pure.
double overdrivenToneMs(const InputReading& input);

}  // namespace trueunit
