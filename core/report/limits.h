// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace trueunit {

// Where a set of limits comes from.
enum class LimitsOrigin { published, practice, own };

// A set of limits, each the largest absolute value that is still in order. Percent of a unit unless said.
// A set need not state every limit. What it does not state is not judged; the number that then stands in its place is
// the largest that the stated ones leave room for, for scales and bands that want one.
struct Limits {
    std::string name = "bench";
    std::string title = "bench practice";
    LimitsOrigin kind = LimitsOrigin::practice;
    std::string origin = "A mechanical transmitter as adjusted on the bench; speed after ITU-T S.3.";
    double biasPercent = 5.0;
    double endPercent = 5.0;
    double grossPercent = 10.0;
    double synchronousPercent = 10.0;
    double speedPercent = 0.75;  // of the nominal speed
    bool statesBias = true;
    bool statesEnd = true;
    bool statesGross = true;
    bool statesSynchronous = true;
    bool statesSpeed = true;
};

}  // namespace trueunit
