// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/loop_editing.h"

#include <algorithm>
#include <map>
#include <optional>
#include <utility>
#include <vector>

#include "core/measure/loop_mending.h"

namespace trueunit {

namespace {

constexpr int kEdits = 8;
constexpr std::size_t kMostCells = 1U << 23U;  // characters times places, over all that is tried: about 50 ms

using Codes = std::vector<LoopCode>;

Codes without(Codes loop, std::size_t j) {
    loop.erase(loop.begin() + static_cast<std::ptrdiff_t>(j));
    return loop;
}

Codes withBefore(Codes loop, std::size_t j, unsigned code) {
    loop.insert(loop.begin() + static_cast<std::ptrdiff_t>(j), {code, false});
    return loop;
}

// What came oftenest at a place, or after it, beside the hole itself; more than so many times.
std::optional<unsigned> oftenestOther(const std::map<unsigned, int>& counts, unsigned hole, int times) {
    std::optional<unsigned> oftenest;
    for (const auto& [code, n] : counts)
        if (code != hole && n > times) {
            oftenest = code;
            times = n;
        }
    return oftenest;
}

// Other loops that what the rounds show at one place may speak for.
std::vector<Codes> otherLoops(const Codes& loop, std::size_t j, const SeenAtPlace& seen) {
    std::vector<Codes> others;
    const auto inserted = oftenestOther(seen.inserted, ~0U, 1);
    const auto came = oftenestOther(seen.came, loop[j].code, std::max(1, seen.visits / 4));
    if (!loop[j].certain && loop.size() > 2 && (seen.passedOver >= 2 || came)) others.push_back(without(loop, j));
    // One level of a place is for the vote, which knows how often that level fails.
    if (!loop[j].certain && came && levelsApart(*came, loop[j].code) > 1)
        others.push_back(withBefore(without(loop, j), j, *came));
    if (inserted) others.push_back(withBefore(loop, j + 1, *inserted));
    if (inserted || came) others.push_back(withBefore(loop, j, came ? *came : *inserted));
    return others;
}

// The places of a loop, those first where the rounds differ most from it.
std::vector<std::size_t> mostDoubtfulFirst(const Codes& loop, const std::vector<SeenAtPlace>& seen) {
    std::vector<int> doubts(loop.size());
    std::vector<std::size_t> places(loop.size());
    for (std::size_t j = 0; j < loop.size(); ++j) {
        places[j] = j;
        doubts[j] = seen[j].passedOver;
        for (const auto& [code, n] : seen[j].inserted) doubts[j] += n;
        for (const auto& [code, n] : seen[j].came) doubts[j] += levelsApart(code, loop[j].code) > 1 ? n : 0;
    }
    std::stable_sort(places.begin(), places.end(), [&](auto a, auto b) { return doubts[a] > doubts[b]; });
    return places;
}

}  // namespace

LearnedLoop editedWhereRoundsSlip(std::span<const SentCode> sent, LearnedLoop learned) {
    std::size_t left = kMostCells / std::max<std::size_t>(1, sent.size() * learned.loop.size());
    for (int edit = 0; edit < kEdits && left > 0 && !learned.faultless(); ++edit) {
        const std::vector<SeenAtPlace> seen = lookAtRounds(sent, alignToLoop(sent, learned.loop), learned.loop);
        LearnedLoop best = learned;
        for (const std::size_t j : mostDoubtfulFirst(learned.loop, seen))
            for (Codes& other : otherLoops(learned.loop, j, seen[j])) {
                if (left == 0) break;
                --left;
                LearnedLoop tried = pricedLoop(sent, std::move(other));
                if (tried.cost < best.cost) best = std::move(tried);
            }
        if (best.cost >= learned.cost) break;
        learned = std::move(best);
    }
    return learned;
}

}  // namespace trueunit
