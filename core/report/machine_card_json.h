// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/machine_card.h"
#include "core/result.h"

namespace trueunit {

// A machine card as JSON: name, title, code, baud, stop_units, motor {kind, mains_hz, turns_a_minute}, gears
// {driving_teeth, driven_teeth}, shaft_turns_a_character. Either the card or one sentence naming what is wrong.
Result<MachineCard> parseMachineCard(std::string_view json);
std::string machineCardJson(const MachineCard& card);

std::optional<Error> problemOf(const MachineCard& card);  // the first value out of range, in words

}  // namespace trueunit
