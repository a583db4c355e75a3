// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/reading.h"

namespace trueunit {

// A lever out of place, or a loop or lever that does not settle, moves the bias as read; it is not the eccentric alone
// that wants turning.
enum class BiasPull { none, level, unsettled };
BiasPull biasPulledIn(const Reading& reading);

}  // namespace trueunit
