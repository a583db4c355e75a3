// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/report/frozen_frame.h"

namespace trueunit::test {

// A frozen moment of a sender whose marks are 7.3 % long: letters R and Y at 45.45 baud with drawn, not measured,
// values. It stands for what the pipeline publishes where a test is about showing, not about measuring.
FrozenFrame frameOfLongMarks();

std::shared_ptr<const CharacterTrace> drawnTrace(std::uint64_t number, unsigned code, const std::string& print,
                                                 double biasPercent);

}  // namespace trueunit::test
