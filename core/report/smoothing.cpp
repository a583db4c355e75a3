// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/smoothing.h"

namespace trueunit {

std::vector<SmoothingChange> smoothingChanges(const std::vector<TrailPoint>& trail) {
    std::vector<SmoothingChange> changes;
    std::size_t over = 0;
    for (const TrailPoint& p : trail) {
        if (p.over == 0) continue;
        if (over != 0 && p.over != over) changes.push_back({p.seconds, p.over});
        over = p.over;
    }
    return changes;
}

}  // namespace trueunit
