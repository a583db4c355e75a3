// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/loop_learning.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>

#include "core/measure/loop_editing.h"
#include "core/measure/loop_mending.h"

namespace trueunit {

namespace {

constexpr std::size_t kRounds = 3;
constexpr double kLeastExcess = 0.25;  // of pairs that match, above what the text's frequencies make
constexpr double kLeastSigmas = 5.0;
constexpr double kNearBest = 0.8;
constexpr std::size_t kLongestLoop = 600;
constexpr std::size_t kTemplates = 4;  // rounds tried as the first guess
constexpr std::size_t kMostParts = 4;  // a loop of several rounds is tried as one of each
constexpr double kLargestCost = 2.0;   // per character: more is no repetition
constexpr double kGoodCost = 0.3;
constexpr double kOtherRound = 1.0;  // no part of several rounds
constexpr double kHoleCost = 6.9;    // to say which of 32 combinations it is, in the prices of an alignment
constexpr int kVotes = 3;
constexpr double kHardly = 0.002;
constexpr double kClearly = 3.0;   // of logarithms of likelihoods
constexpr std::size_t kDrift = 2;  // holes by which slips carry one round off the next

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

// Pairs of neighbours that come again, though slips have carried the rounds apart.
double pairsMatchNear(std::span<const SentCode> sent, std::size_t lag) {
    const std::size_t first = lag + kDrift + 1;
    if (first >= sent.size()) return 0.0;
    std::size_t same = 0;
    for (std::size_t i = first; i < sent.size(); ++i)
        for (std::size_t by = lag - std::min(kDrift, lag - 1); by <= lag + kDrift; ++by)
            if (sent[i].code == sent[i - by].code && sent[i - 1].code == sent[i - by - 1].code) {
                ++same;
                break;
            }
    return static_cast<double>(same) / static_cast<double>(sent.size() - first);
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

// Which faults an account lets the level have; the other one comes hardly ever.
enum class Account { losesMarks, fillsSpaces, both };

Vote maximise(std::span<const Tally> tallies, LevelRates rates, Account account) {
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
        if (account != Account::fillsSpaces && markRounds > 0.0)
            rates.missed = std::clamp(1.0 - marksSeen / markRounds, kLeast, 0.8);
        if (account != Account::losesMarks && spaceRounds > 0.0)
            rates.filled = std::clamp(1.0 - spacesSeen / spaceRounds, kLeast, 0.8);
        rates.filled = std::min(rates.filled, 0.9 - rates.missed);
        vote.rates = rates;
    }
    return vote;
}

// A level that loses marks and one that fills spaces look alike at places that are seen both ways: each account is
// tried, the likelier one holds, and one that lets it do both only where it is clearly likelier.
std::vector<double> voteOnLevel(std::span<const Tally> tallies) {
    Vote best;
    const auto tryAccount = [&](const LevelRates& from, Account account, double clearly) {
        Vote v = maximise(tallies, from, account);
        if (v.likelihood > best.likelihood + clearly) best = std::move(v);
    };
    tryAccount({0.3, kHardly, 0.6}, Account::losesMarks, 0.0);
    tryAccount({kHardly, 0.3, 0.4}, Account::fillsSpaces, 0.5);
    tryAccount({}, Account::both, kClearly);
    return best.mark;
}

// What is certain stays as it is.
std::vector<LoopCode> voteOnLoop(std::span<const SentCode> sent, const Alignment& walk, std::vector<LoopCode> loop,
                                 int levels) {
    const std::size_t places = loop.size();
    for (LoopCode& hole : loop)
        if (!hole.certain) hole = {};
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
            if (mark[j] > 0.5 && !loop[j].certain) loop[j].code |= 1U << level;
    }
    return loop;
}

// How much more than chance comes again after so many characters; 0 where it may be chance.
double excessOf(std::span<const SentCode> sent, double match, double chance, std::size_t lag) {
    const double sigma = std::sqrt(chance * (1.0 - chance) / static_cast<double>(sent.size() - lag));
    const double above = match - chance;
    return above < kLeastExcess || above < kLeastSigmas * sigma ? 0.0 : above;
}

// Two rounds match as well as one; a lag near the loop's own that is no part of it only half matches.
std::optional<std::size_t> shortestOfBest(const std::vector<double>& excess) {
    const auto most = std::max_element(excess.begin(), excess.end());
    if (*most <= 0.0) return std::nullopt;
    const auto best = static_cast<std::size_t>(most - excess.begin());
    for (std::size_t lag = 1; lag < best; ++lag)
        if (best % lag == 0 && excess[lag] >= kNearBest * *most) return lag;
    return best;
}

// As repetitionPeriod, about, where the feed slips so often that no two rounds are of one length.
std::optional<std::size_t> driftingPeriod(std::span<const SentCode> sent) {
    const std::size_t longest = std::min(sent.size() / kRounds, kLongestLoop);
    if (longest <= 2 * kDrift) return std::nullopt;
    const double pair = chanceOfMatch(sent) * chanceOfMatch(sent);
    const double chance = 1.0 - std::pow(1.0 - pair, 2.0 * kDrift + 1.0);
    std::vector<double> excess(longest + 1, 0.0);
    for (std::size_t lag = 2 * kDrift + 1; lag <= longest; ++lag)
        excess[lag] = excessOf(sent, pairsMatchNear(sent, lag), chance, lag);
    return shortestOfBest(excess);
}

LearnedLoop priced(std::vector<LoopCode> loop, const Alignment& walk) {
    const auto said = std::count_if(loop.begin(), loop.end(), [](const LoopCode& c) { return !c.certain; });
    const double holes = kHoleCost * static_cast<double>(said);
    return {std::move(loop), walk.cost, walk.cost * static_cast<double>(walk.place.size()) + holes};
}

// The rounds vote on each hole of a first guess, and on holes more or less.
LearnedLoop votedOn(std::span<const SentCode> sent, std::vector<LoopCode> loop, int levels) {
    Alignment walk = alignToLoop(sent, loop);
    for (int vote = 0; vote < kVotes; ++vote) {
        loop = voteOnLoop(sent, walk, std::move(loop), levels);
        walk = alignToLoop(sent, loop);
        if (mendLoop(loop, lookAtRounds(sent, walk, loop))) walk = alignToLoop(sent, loop);
    }
    return priced(std::move(loop), walk);
}

// Rounds to begin with, cut out of what was sent.
std::vector<LoopCode> roundOf(std::span<const SentCode> sent, std::size_t period, std::size_t number) {
    std::vector<LoopCode> loop;
    for (const SentCode& c : sent.subspan(number * period, period)) loop.push_back({c.code, false});
    return loop;
}

}  // namespace

LearnedLoop pricedLoop(std::span<const SentCode> sent, std::vector<LoopCode> loop) {
    const Alignment walk = alignToLoop(sent, loop);
    return priced(std::move(loop), walk);
}

std::optional<std::size_t> repetitionPeriod(std::span<const SentCode> sent) {
    const std::size_t longest = std::min(sent.size() / kRounds, kLongestLoop);
    if (longest < 1 || sent.size() < 12) return std::nullopt;
    const double chance = chanceOfMatch(sent);
    if (chance > 0.9) return 1;  // one character, over and over
    std::vector<double> excess(longest + 1, 0.0);
    for (std::size_t lag = 1; lag <= longest; ++lag) excess[lag] = excessOf(sent, matchAt(sent, lag), chance, lag);
    return shortestOfBest(excess);
}

std::optional<LearnedLoop> learnLoopFrom(std::span<const SentCode> sent, std::vector<LoopCode> guess, int levels) {
    LearnedLoop learned = editedWhereRoundsSlip(sent, votedOn(sent, std::move(guess), levels));
    return learned.perCharacter < kLargestCost ? std::optional(std::move(learned)) : std::nullopt;
}

std::optional<LearnedLoop> learnLoop(std::span<const SentCode> sent, int levels) {
    auto period = repetitionPeriod(sent);
    if (!period) period = driftingPeriod(sent);
    std::optional<LearnedLoop> best;
    for (std::size_t part = 1; period && part <= kMostParts; ++part) {
        const std::size_t round = *period / part;
        if (part > 1 && ((best && best->faultless()) || round <= 2 * kDrift)) break;
        for (std::size_t t = 0; t < kTemplates && (t + 1) * round <= sent.size(); ++t) {
            LearnedLoop tried = votedOn(sent, roundOf(sent, round, t), levels);
            const double cost = tried.perCharacter;
            if (cost < kLargestCost && (!best || tried.cost < best->cost)) best = std::move(tried);
            if (cost < kGoodCost || (part > 1 && cost > kOtherRound)) break;
        }
    }
    if (best) best = editedWhereRoundsSlip(sent, std::move(*best));
    return best;
}

}  // namespace trueunit
