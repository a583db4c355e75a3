// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/loop_learning.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>

namespace trueunit {

namespace {

constexpr std::size_t kRounds = 3;
constexpr double kLeastExcess = 0.25;  // of pairs that match, above what the text's frequencies make
constexpr double kLeastSigmas = 5.0;
constexpr double kNearBest = 0.8;
constexpr std::size_t kLongestLoop = 600;
constexpr std::size_t kTemplates = 4;  // rounds tried as the first guess
constexpr double kLargestCost = 2.0;   // per character: more is no repetition
constexpr int kVotes = 3;

double chanceOfMatch(std::span<const SentCode> sent) {
    std::array<double, 256> seen{};
    for (const SentCode& c : sent) seen[c.code & 0xFFU] += 1.0;
    double q = 0.0;
    for (const double n : seen) q += n * n;
    return q / (static_cast<double>(sent.size()) * static_cast<double>(sent.size()));
}

double matchAt(std::span<const SentCode> sent, std::size_t lag) {
    std::size_t same = 0;
    for (std::size_t i = lag; i < sent.size(); ++i) same += sent[i].code == sent[i - lag].code ? 1U : 0U;
    return static_cast<double>(same) / static_cast<double>(sent.size() - lag);
}

// Marks seen at one place of the loop, of so many rounds.
struct Tally {
    double marks = 0.0;
    double rounds = 0.0;
};

struct LevelRates {
    double missed = 0.02;
    double filled = 0.02;
    double marks = 0.5;  // of the loop's places
};

struct Vote {
    LevelRates rates;
    std::vector<double> mark;  // probability that the place carries one
    double likelihood = -1e300;
};

double logOfChance(const Tally& t, double chance) {
    return t.marks * std::log(chance) + (t.rounds - t.marks) * std::log(1.0 - chance);
}

Vote maximise(std::span<const Tally> tallies, LevelRates rates) {
    constexpr double kLeast = 0.002;
    Vote vote{rates, std::vector<double>(tallies.size()), 0.0};
    for (int round = 0; round < 40; ++round) {
        double marks = 0.0, marksSeen = 0.0, markRounds = 0.0, spacesSeen = 0.0, spaceRounds = 0.0;
        vote.likelihood = 0.0;
        for (std::size_t j = 0; j < tallies.size(); ++j) {
            const Tally& t = tallies[j];
            const double asMark = std::log(rates.marks) + logOfChance(t, 1.0 - rates.missed);
            const double asSpace = std::log(1.0 - rates.marks) + logOfChance(t, rates.filled);
            const double most = std::max(asMark, asSpace);
            const double p = std::exp(asMark - most) / (std::exp(asMark - most) + std::exp(asSpace - most));
            vote.likelihood += most + std::log(std::exp(asMark - most) + std::exp(asSpace - most));
            vote.mark[j] = p;
            marks += p;
            marksSeen += p * t.marks;
            markRounds += p * t.rounds;
            spacesSeen += (1.0 - p) * (t.rounds - t.marks);
            spaceRounds += (1.0 - p) * t.rounds;
        }
        rates.marks = std::clamp(marks / static_cast<double>(tallies.size()), kLeast, 1.0 - kLeast);
        if (markRounds > 0.0) rates.missed = std::clamp(1.0 - marksSeen / markRounds, kLeast, 0.8);
        if (spaceRounds > 0.0) rates.filled = std::clamp(1.0 - spacesSeen / spaceRounds, kLeast, 0.8);
        rates.filled = std::min(rates.filled, 0.9 - rates.missed);
        vote.rates = rates;
    }
    return vote;
}

// A level that loses marks and one that fills spaces look alike at places that are seen both ways: each account is
// tried, the likelier one holds.
std::vector<double> voteOnLevel(std::span<const Tally> tallies) {
    Vote best;
    for (const LevelRates& from : {LevelRates{}, LevelRates{0.3, 0.005, 0.6}, LevelRates{0.005, 0.3, 0.4}}) {
        Vote v = maximise(tallies, from);
        if (v.likelihood > best.likelihood + 0.5) best = std::move(v);
    }
    return best.mark;
}

std::vector<LoopCode> voteOnLoop(std::span<const SentCode> sent, const Alignment& walk, std::size_t places,
                                 int levels) {
    std::vector<LoopCode> loop(places);
    sent = sent.last(walk.place.size());
    for (int level = 0; level < levels; ++level) {
        std::vector<Tally> tallies(places);
        for (std::size_t i = 0; i < sent.size(); ++i) {
            if (!sent[i].sure || walk.step[i] == Alignment::Step::again) continue;
            Tally& t = tallies[walk.place[i]];
            t.rounds += 1.0;
            t.marks += (sent[i].code >> level & 1U) != 0 ? 1.0 : 0.0;
        }
        const std::vector<double> mark = voteOnLevel(tallies);
        for (std::size_t j = 0; j < places; ++j)
            if (mark[j] > 0.5) loop[j].code |= 1U << level;
    }
    return loop;
}

}  // namespace

std::optional<std::size_t> repetitionPeriod(std::span<const SentCode> sent) {
    const std::size_t longest = std::min(sent.size() / kRounds, kLongestLoop);
    if (longest < 1 || sent.size() < 12) return std::nullopt;
    const double chance = chanceOfMatch(sent);
    if (chance > 0.9) return 1;  // one character, over and over
    std::vector<double> excess(longest + 1, 0.0);
    double most = 0.0;
    for (std::size_t lag = 1; lag <= longest; ++lag) {
        const double sigma = std::sqrt(chance * (1.0 - chance) / static_cast<double>(sent.size() - lag));
        const double above = matchAt(sent, lag) - chance;
        if (above < kLeastExcess || above < kLeastSigmas * sigma) continue;
        excess[lag] = above;
        most = std::max(most, above);
    }
    if (most <= 0.0) return std::nullopt;
    // Two rounds match as well as one; a lag near the loop's own that is no part of it only half matches.
    const auto best = static_cast<std::size_t>(std::max_element(excess.begin(), excess.end()) - excess.begin());
    for (std::size_t lag = 1; lag < best; ++lag)
        if (best % lag == 0 && excess[lag] >= kNearBest * most) return lag;
    return best;
}

std::optional<std::vector<LoopCode>> learnLoop(std::span<const SentCode> sent, int levels) {
    const auto period = repetitionPeriod(sent);
    if (!period) return std::nullopt;
    std::optional<std::vector<LoopCode>> best;
    double bestCost = kLargestCost;
    for (std::size_t t = 0; t < kTemplates && (t + 1) * *period <= sent.size(); ++t) {
        std::vector<LoopCode> loop;
        for (const SentCode& c : sent.subspan(t * *period, *period)) loop.push_back({c.code, false});
        Alignment walk = alignToLoop(sent, loop);
        for (int vote = 0; vote < kVotes; ++vote) {
            loop = voteOnLoop(sent, walk, loop.size(), levels);
            walk = alignToLoop(sent, loop);
        }
        if (walk.cost >= bestCost) continue;
        bestCost = walk.cost;
        best = std::move(loop);
        if (bestCost < 0.3) break;
    }
    return best;
}

}  // namespace trueunit
