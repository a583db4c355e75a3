// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/result.h"
#include "core/simulate/scenario.h"

namespace trueunit {

// The scenario that is built into the program and plays when no input is chosen: scenarios/demonstration.json.
Result<Scenario> demonstrationScenario();

}  // namespace trueunit
