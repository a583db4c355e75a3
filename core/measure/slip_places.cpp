// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/slip_places.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace trueunit {

namespace {

constexpr std::size_t kShortestLoop = 10;
constexpr std::size_t kFewestRounds = 3;
constexpr long kFewestTogether = 4;
constexpr long kFewestAnywhere = 10;
constexpr double kChance = 0.001;
constexpr std::size_t kShown = 8;  // letters that tell the place

// Slips by the hole that they are before: the tape stood still instead of coming to it, or went over it.
std::vector<long> slipsByPlace(std::span<const LoopCode> loop, const Alignment& walk, std::size_t begin) {
    std::vector<long> slips(loop.size());
    for (std::size_t i = begin; i < walk.place.size(); ++i) {
        const std::size_t at = walk.place[i];
        const std::size_t before = (at + loop.size() - 1) % loop.size();
        if (loop[at].unknown || loop[before].unknown) continue;
        if (walk.step[i] == Alignment::Step::again) ++slips[(at + 1) % loop.size()];
        if (walk.step[i] == Alignment::Step::over) ++slips[before];
    }
    return slips;
}

// Probability that one of so many places, all alike, has that many slips or more (Poisson, times the places).
double chanceOf(long most, long slips, std::size_t places) {
    const double mean = static_cast<double>(slips) / static_cast<double>(places);
    double term = std::exp(-mean), below = 0.0;
    for (long n = 0; n < most; ++n) {
        below += term;
        term *= mean / static_cast<double>(n + 1);
    }
    return static_cast<double>(places) * std::max(0.0, 1.0 - below);
}

std::string printBefore(const CodeTable& table, std::span<const LoopCode> loop, std::size_t place) {
    Decoder decoder(table);
    std::string text;
    for (std::size_t i = 0; i < loop.size() + place; ++i) {  // once round, so that the case is known
        const LoopCode& c = loop[i % loop.size()];
        const std::string print = c.unknown ? std::string() : decoder.text(c.code);
        if (print.size() == 1 && print[0] >= ' ') text += print;
    }
    return text.substr(text.size() - std::min(kShown, text.size()));
}

}  // namespace

std::optional<SlipPlaces> slipPlaces(const CodeTable& table, std::span<const LoopCode> loop, const Alignment& walk,
                                     std::size_t begin) {
    if (loop.size() < kShortestLoop || walk.place.size() - begin < kFewestRounds * loop.size()) return std::nullopt;
    const std::vector<long> slips = slipsByPlace(loop, walk, begin);
    SlipPlaces out;
    for (const long n : slips) out.slips += n;
    const auto most = std::max_element(slips.begin(), slips.end());
    if (*most >= kFewestTogether && 3 * *most >= out.slips && chanceOf(*most, out.slips, loop.size()) < kChance) {
        out.atOnePlace = *most;
        out.behind = printBefore(table, loop, static_cast<std::size_t>(most - slips.begin()));
        return out;
    }
    out.anywhere = out.slips >= kFewestAnywhere && 4 * *most < out.slips;
    return out.anywhere ? std::optional(out) : std::nullopt;
}

}  // namespace trueunit
