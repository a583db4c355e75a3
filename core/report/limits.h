// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace trueunit {

// A set of limits, each the largest absolute value that is still in order. Percent of a unit unless said.
struct Limits {
    std::string name = "bench";
    std::string title = "bench practice";
    std::string origin =
        "Common practice for a mechanical transmitter as adjusted on the bench; speed after ITU-T S.3.";
    double biasPercent = 5.0;
    double endPercent = 5.0;
    double grossPercent = 10.0;
    double synchronousPercent = 10.0;
    double speedPercent = 0.75;  // of the nominal speed
};

}  // namespace trueunit
