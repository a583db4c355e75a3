// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/loop_mending.h"

#include <algorithm>
#include <utility>

namespace trueunit {

std::vector<SeenAtPlace> lookAtRounds(std::span<const SentCode> sent, const Alignment& walk,
                                      std::span<const LoopCode> loop) {
    std::vector<SeenAtPlace> seen(loop.size());
    sent = sent.last(walk.place.size());
    for (std::size_t i = 0; i < sent.size(); ++i) {
        SeenAtPlace& here = seen[walk.place[i]];
        if (walk.step[i] == Alignment::Step::again) {
            ++here.inserted[sent[i].code];
            continue;
        }
        ++here.visits;
        ++here.came[sent[i].code];
        for (int s = 1; s <= walk.skipped[i]; ++s)
            ++seen[(walk.place[i] + loop.size() - static_cast<std::size_t>(s)) % loop.size()].passedOver;
    }
    return seen;
}

std::optional<unsigned> combinationOfMost(const std::map<unsigned, int>& counts, int rounds) {
    const auto most = std::max_element(counts.begin(), counts.end(),
                                       [](const auto& a, const auto& b) { return a.second < b.second; });
    if (most == counts.end() || most->second < 2 || 2 * most->second <= rounds) return std::nullopt;
    return most->first;
}

bool mendLoop(std::vector<LoopCode>& loop, const std::vector<SeenAtPlace>& seen) {
    std::vector<LoopCode> mended;
    bool changed = false;
    for (std::size_t j = 0; j < loop.size(); ++j) {
        const SeenAtPlace& s = seen[j];
        const bool struck = s.passedOver >= 2 && s.passedOver > s.visits && loop.size() > 2;
        if (!struck) mended.push_back(loop[j]);
        changed |= struck;
        const std::optional<unsigned> further = combinationOfMost(s.inserted, s.visits);
        if (!further) continue;
        // The hole itself may be the one that was inserted, and the new one have come before it.
        const std::optional<unsigned> here = combinationOfMost(s.came, s.visits);
        if (!struck && here && *further == loop[j].code) mended.back().code = *here;
        mended.push_back({*further, false});
        changed = true;
    }
    loop = std::move(mended);
    return changed;
}

}  // namespace trueunit
