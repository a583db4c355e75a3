// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/frozen_frame.h"

namespace trueunit {

class PageFlow;

// The bias on its way to the frozen moment: every turn of the eccentric is a step. Before it the speed, where a fault
// rests on that. Only where there is enough of it, and room on the page for it and what else has to follow.
void drawTrail(PageFlow& page, const FrozenFrame& frame);

}  // namespace trueunit
