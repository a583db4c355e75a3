// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/report/frozen_frame.h"

namespace trueunit {

class PageFlow;

// Two moments, and what a page calls them.
struct MomentsCompared {
    const Snapshot& before;
    const Snapshot& later;
    QString heading;
    QString laterTitle;  // of a column: "now", "after"
};

// The part of a page that holds one moment against an earlier one: the change of each reading with its uncertainty and
// the word for it, the instants beside them.
void drawComparison(PageFlow& page, const MomentsCompared& moments);

// That part of the report of one frame, against the moment marked "before"; nothing when none is.
void drawComparison(PageFlow& page, const FrozenFrame& frame);

}  // namespace trueunit
