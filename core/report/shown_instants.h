// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/report/reading.h"

namespace trueunit {

// The displacement by instant as it is drawn and listed: at the sender's own speed. A fault that is set aside pulls at
// the speed as read, and with it at every instant by its place; here it does not.
struct ShownInstants {
    std::vector<InstantReading> instants;
    double unitSeconds = 0.0;      // they are of; 0: not known
    bool withoutTheFault = false;  // the speed is another than the one that is read
};

// Pure. In proportion to k: what a longer unit makes early.
ShownInstants shownInstants(const Reading& reading);

}  // namespace trueunit
