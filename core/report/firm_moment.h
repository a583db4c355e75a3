// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>

#include "core/report/snapshot.h"

namespace trueunit {

// The same moment, to be kept as a proof: over the last seconds where the window has fewer characters. The moment
// itself when there are no more, or when the eccentric was turned among them. Pure.
std::shared_ptr<const Snapshot> firmMoment(const std::shared_ptr<const Snapshot>& moment);

}  // namespace trueunit
