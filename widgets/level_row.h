// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <vector>

#include "core/report/snapshot.h"
#include "widgets/reading_row.h"

namespace trueunit {

// Marks lost, or spaces filled, on all levels together.
struct LevelTally {
    long count = 0, all = 0;
    QStringList where;  // "level 3: 13 of 96"
};
LevelTally tallyOf(const std::vector<LevelReading>& levels, long LevelReading::*hits, long LevelReading::*tries);

// The row of marks lost and spaces filled, counted against the text of the tape: "13, 0", "level 3". Out when either
// is.
RowText levelsRow(const Snapshot& snapshot);

// Whether the counts are against a text that nobody gave.
bool textIsLearned(const Reading& reading);

}  // namespace trueunit
