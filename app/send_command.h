// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command_line.h"

namespace trueunit {

// trueunit send: the reference signal to a sound output, until it ends or the program is interrupted, or to a file.
// Says on standard output what is sent and the caution that belongs to it. Returns 0, or 2 with one sentence.
int runSend(const Command& command);

}  // namespace trueunit
