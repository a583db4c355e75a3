// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command_line.h"

namespace trueunit {

// The bench window, from the settings of last time and the options of the command line; both return the exit code and
// need a QApplication. Settings are kept when the window is closed.
int runWindow(const Command& command);
int runPicture(const Command& command);  // a picture of the window, of its own settings

}  // namespace trueunit
