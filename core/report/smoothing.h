// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/report/snapshot.h"

namespace trueunit {

// From here on the trail is taken over another number of characters: steadier or less so for that reason alone.
struct SmoothingChange {
    double seconds = 0.0;  // since the input started
    std::size_t over = 0;  // characters, from there on
};

// Oldest first. Pure. Points that do not say what they are taken over tell of no change.
std::vector<SmoothingChange> smoothingChanges(const std::vector<TrailPoint>& trail);

}  // namespace trueunit
