// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command_line.h"

namespace trueunit {

// The commands that need no window. Each prints to standard output, complains in one sentence on standard error, and
// returns the exit code: 0 done (measure: in limits), 1 out of limits, 2 no valid reading or refused by the world.
int runMeasure(const Command& command);
int runReport(const Command& command);  // needs a QGuiApplication
int runRender(const Command& command);
int runClock(const Command& command);
int runInputs();

int refuse(const Error& error);      // prints the sentence, returns 2
Outcome takeCard(Command& command);  // the machine card it names into its options

}  // namespace trueunit
