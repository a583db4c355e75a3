// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/receiving_margin.h"

namespace trueunit {

std::vector<LevelRange> levelRanges(Characters characters, double unitSeconds, int levels) {
    std::vector<LevelRange> ranges(static_cast<std::size_t>(levels));
    for (int level = 1; level <= levels; ++level) ranges[static_cast<std::size_t>(level - 1)].level = level;
    for (const Character* c : characters) {
        if (!c->measurable()) continue;
        for (const Instant& i : c->instants) {
            const double off = (i.seconds - i.k * unitSeconds) / unitSeconds;
            if (i.k >= 1 && i.k <= levels) {
                auto& low = ranges[static_cast<std::size_t>(i.k - 1)].low;
                const double steady = off + i.steadySeconds / unitSeconds;
                if (!low || steady > low->fraction) low = BoundingInstant{steady, c};
            }
            if (i.k >= 2 && i.k <= levels + 1) {
                auto& high = ranges[static_cast<std::size_t>(i.k - 2)].high;
                if (!high || 1.0 + off < high->fraction) high = BoundingInstant{1.0 + off, c};
            }
        }
    }
    return ranges;
}

}  // namespace trueunit
