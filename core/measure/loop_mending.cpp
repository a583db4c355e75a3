// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/loop_mending.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace trueunit {

namespace {

constexpr double kHardlyChance = 1e-3;
constexpr std::size_t kFewPlaces = 2, kShareOfPlaces = 12;  // more is another text, or a level after certain characters
constexpr std::size_t kMostLevels = 8;

// How often each level was wrong, by what was due there: space, mark.
struct LevelErrors {
    std::array<std::array<int, 2>, kMostLevels> wrong{}, seen{};

    void count(unsigned came, unsigned due, int times, int levels) {
        for (int l = 0; l < levels; ++l) {
            const auto level = static_cast<std::size_t>(l);
            const std::size_t was = due >> l & 1U;
            seen[level][was] += times;
            wrong[level][was] += ((came ^ due) >> l & 1U) != 0 ? times : 0;
        }
    }
    // That so many characters have all these levels wrong: by the rates that may be after what was seen (each level's
    // beta distribution, all rates alike before), so that where nothing was seen a level may well fail each time.
    double logChanceOf(unsigned came, unsigned due, int times, int levels) const {
        double chance = 0.0;
        for (int l = 0; l < levels; ++l) {
            if (((came ^ due) >> l & 1U) == 0) continue;
            const auto level = static_cast<std::size_t>(l);
            const std::size_t was = due >> l & 1U;
            const double failed = wrong[level][was] + 1.0, all = seen[level][was] + 2.0;
            chance += std::lgamma(failed + times) - std::lgamma(failed) + std::lgamma(all) - std::lgamma(all + times);
        }
        return chance;
    }
};

double logWaysOf(int times, int rounds) {
    return std::lgamma(rounds + 1.0) - std::lgamma(times + 1.0) - std::lgamma(rounds - times + 1.0);
}

}  // namespace

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
        const bool struck = !loop[j].certain && s.passedOver >= 2 && s.passedOver > s.visits && loop.size() > 2;
        if (!struck) mended.push_back(loop[j]);
        changed |= struck;
        const std::optional<unsigned> further = combinationOfMost(s.inserted, s.visits);
        if (!further) continue;
        // The hole itself may be the one that was inserted, and the new one have come before it.
        const std::optional<unsigned> here = combinationOfMost(s.came, s.visits);
        if (!struck && !loop[j].certain && here && *further == loop[j].code) mended.back().code = *here;
        mended.push_back({*further, false});
        changed = true;
    }
    loop = std::move(mended);
    return changed;
}

int mendCharacters(std::vector<LoopCode>& loop, const std::vector<SeenAtPlace>& seen, int levels) {
    LevelErrors elsewhere;
    std::vector<std::size_t> differs;
    for (std::size_t j = 0; j < loop.size(); ++j) {
        if (loop[j].unknown) continue;
        if (const auto most = combinationOfMost(seen[j].came, seen[j].visits); most && *most != loop[j].code)
            differs.push_back(j);
        else
            for (const auto& [came, times] : seen[j].came) elsewhere.count(came, loop[j].code, times, levels);
    }
    if (differs.size() > std::max(kFewPlaces, loop.size() / kShareOfPlaces)) return 0;
    int mended = 0;
    for (const std::size_t j : differs) {
        const SeenAtPlace& here = seen[j];
        const unsigned most = *combinationOfMost(here.came, here.visits);
        const int times = here.came.at(most);
        const double chance = logWaysOf(times, here.visits) + elsewhere.logChanceOf(most, loop[j].code, times, levels);
        if (chance + std::log(static_cast<double>(loop.size())) > std::log(kHardlyChance)) continue;
        loop[j].code = most;
        ++mended;
    }
    return mended;
}

}  // namespace trueunit
