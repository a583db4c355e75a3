// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/limits.h"
#include "core/report/reading.h"

namespace trueunit {

// A lever out of place, or a loop or lever that does not settle, moves the bias as read; it is not the eccentric alone
// that wants turning.
enum class BiasPull { none, level, unsettled };
BiasPull biasPulledIn(const Reading& reading);
// With that fault set aside the bias is within its limit: nothing is left for the eccentric.
bool contactIsInOrder(const Reading& reading, const Limits& limits);

}  // namespace trueunit
