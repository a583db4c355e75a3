// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <limits>
#include <vector>

#include "core/condition/line_fit.h"

namespace trueunit {

// A stretch of input as the study of a line works on it: thinned, with the transitions seen in it.
struct Stretch {
    std::vector<double> heard;
    double rateHz = 0.0;
    std::vector<Transition> transitions;
    std::vector<char> clipped;  // at the rail: true only that it was at least so much
    std::vector<char> blind;    // not to be explained by the fit
    Rails rails;
};

struct Trial {
    double squares = std::numeric_limits<double>::infinity();  // that the fit leaves
    LineFit fit;
};

// Swing, offset and the coupling's state at the start are linear once the high-pass is given: one least-squares fit.
// A trial without swing says that nothing could be fitted.
Trial tryHighPass(const Stretch& stretch, const HighPass& highPass);

}  // namespace trueunit
