// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/frozen_frame.h"

namespace trueunit {

class PageFlow;

// The part of the report page that holds the frame against the moment marked "before"; nothing when none is.
void drawComparison(PageFlow& page, const FrozenFrame& frame);

}  // namespace trueunit
