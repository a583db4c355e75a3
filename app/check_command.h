// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command_line.h"

namespace trueunit {

// trueunit check: the self-check in memory and, with --loopback, through the sound card. Prints it and keeps it.
// Returns 0 passed, 1 not passed, 2 when it could not be made, with one sentence.
int runCheck(const Command& command);

}  // namespace trueunit
