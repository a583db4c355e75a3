// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/simulate/scenario.h"
#include "core/simulate/scenario_fields.h"

namespace trueunit {

// The layout of a scenario file, section by section; ranges stand beside the keys.
void readScenarioFields(ScenarioFields& fields, Scenario& scenario);
void readFaultFields(ScenarioFields& fields, Scenario::Faults& faults);
void readExpectFields(ScenarioFields& fields, Scenario::Expect& expect);

}  // namespace trueunit
