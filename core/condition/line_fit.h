// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>

#include "core/acquire/rails.h"
#include "core/condition/coupling_loss.h"

namespace trueunit {

// What stands between the line and the samples of a stretch of input: heard = coupling(line * swing) + offset.
// The line is -1/2 or +1/2 here; which of the two is mark is settled by the framing.
struct LineFit {
    double swing = 0.0;   // full scale = 1
    double offset = 0.0;  // full scale = 1
    HighPass coupling;
    double residual = 0.0;                        // rms of what the fit leaves, fraction of the swing
    bool startsHigh = false;                      // level at the first sample of the stretch
    std::array<double, 2> lossAtStart{0.0, 0.0};  // state of the coupling there, in swings
    Rails rails;                                  // full scale = 1
};

// A change of level as first seen; time in samples, sub-sample but not yet refined.
struct Transition {
    double time = 0.0;
    bool up = false;
};

}  // namespace trueunit
