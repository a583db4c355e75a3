// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/snapshot.h"
#include "widgets/reading_row.h"

namespace trueunit {

// The row of marks lost and spaces filled, counted against the text of the tape: "13, 0", "level 3". Out when either
// is.
RowText levelsRow(const Snapshot& snapshot);

}  // namespace trueunit
