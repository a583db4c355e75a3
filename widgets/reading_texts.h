// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "widgets/reading_row.h"
#include "widgets/readings_panel.h"
#include "widgets/words.h"

namespace trueunit {

// What a row of the readings says of a moment; the decimals are the row's own and keep still. Empty value: no reading.
RowText readingText(ReadingsPanel::Row row, const Snapshot& snapshot, StableDecimals& decimals);

}  // namespace trueunit
