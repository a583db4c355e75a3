// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/normal_equations.h"
#include "core/simulate/truth.h"

namespace trueunit::test {

// The definition of unit, bias and end (t - s = k T + a [to mark] + b [to space], least squares) applied to the
// instants that were imposed, not to those that were measured.
struct TruthFit {
    double unitSeconds = 0.0;
    double biasPercent = 0.0;
    double endPercent = 0.0;
};

inline TruthFit fitTruth(const Truth& truth, double nominalUnitSeconds) {
    NormalEquations<3> equations;
    double start = 0.0;
    for (const TrueInstant& i : truth.instants) {
        if (i.bounce) continue;
        if (i.k == 0) {
            start = i.seconds;
            continue;
        }
        const bool mark = i.to == Condition::mark;
        equations.add({static_cast<double>(i.k), mark ? 1.0 : 0.0, mark ? 0.0 : 1.0}, i.seconds - start);
    }
    TruthFit fit;
    if (const auto x = equations.solve()) {
        fit.unitSeconds = (*x)[0];
        fit.biasPercent = -100.0 * (*x)[1] / nominalUnitSeconds;
        fit.endPercent = 100.0 * (*x)[2] / nominalUnitSeconds;
    }
    return fit;
}

}  // namespace trueunit::test
