// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/tape_text.h"

#include <algorithm>
#include <array>
#include <map>

#include "core/measure/loop_learning.h"

namespace trueunit {

namespace {

// ITU-T R.52 lists it among the sentences that may be used; its text from memory.
constexpr std::string_view kFox = "THE QUICK BROWN FOX JUMPS OVER THE LAZY DOG";
constexpr std::size_t kFewestReversals = 12;
constexpr double kReversalsCost = 1.3;  // per character: six in ten characters with a level wrong, or slips
constexpr double kPhraseCost = 1.2;     // per character of a known text
constexpr std::size_t kFewestOfPhrase = 20;
constexpr int kMendings = 3;
constexpr std::size_t kLearnedFrom = 2048;  // characters; more rounds than that teach nothing new

std::vector<LoopCode> asLoop(const std::basic_string<unsigned char>& codes) {
    std::vector<LoopCode> loop;
    for (const unsigned char c : codes) loop.push_back({c, false});
    return loop;
}

std::vector<SentCode> asSent(std::span<const LoopCode> loop) {
    std::vector<SentCode> sent;
    for (const LoopCode& c : loop) sent.push_back({c.code, true, false});
    return sent;
}

// What the rounds show at one place of the loop, beside the hole itself.
struct Seen {
    int visits = 0;
    int passedOver = 0;
    std::map<unsigned, int> came;      // at the place, by combination
    std::map<unsigned, int> inserted;  // after it
};

std::vector<Seen> lookAtRounds(std::span<const SentCode> sent, const Alignment& walk, std::span<const LoopCode> loop) {
    std::vector<Seen> seen(loop.size());
    sent = sent.last(walk.place.size());
    for (std::size_t i = 0; i < sent.size(); ++i) {
        Seen& here = seen[walk.place[i]];
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

// The combination of most rounds, of two at least.
std::optional<unsigned> mostOf(const std::map<unsigned, int>& counts, int rounds) {
    const auto most = std::max_element(counts.begin(), counts.end(),
                                       [](const auto& a, const auto& b) { return a.second < b.second; });
    if (most == counts.end() || most->second < 2 || 2 * most->second <= rounds) return std::nullopt;
    return most->first;
}

// One mending of the loop; false: nothing to mend. A hole is added or struck out when most rounds, two at least, agree.
bool mend(std::vector<LoopCode>& loop, const std::vector<Seen>& seen) {
    std::vector<LoopCode> mended;
    bool changed = false;
    for (std::size_t j = 0; j < loop.size(); ++j) {
        const Seen& s = seen[j];
        const bool struck = s.passedOver >= 2 && s.passedOver > s.visits && loop.size() > 2;
        if (!struck) mended.push_back(loop[j]);
        changed |= struck;
        const std::optional<unsigned> further = mostOf(s.inserted, s.visits);
        if (!further) continue;
        // The hole itself may be the one that was inserted, and the new one have come before it.
        const std::optional<unsigned> here = mostOf(s.came, s.visits);
        if (!struck && here && *further == loop[j].code) mended.back().code = *here;
        mended.push_back({*further, false});
        changed = true;
    }
    loop = std::move(mended);
    return changed;
}

// Whether what stands on unknown stretches are other characters (returns, line feeds) and not the loop's own out of
// turn, which a slipping feed makes.
bool othersBetween(std::span<const SentCode> sent, const Alignment& walk, std::span<const LoopCode> loop) {
    sent = sent.last(walk.place.size());
    int others = 0;
    int own = 0;
    for (std::size_t i = 0; i < sent.size(); ++i) {
        if (!loop[walk.place[i]].unknown) continue;
        const bool known = std::any_of(loop.begin(), loop.end(),
                                       [&](const LoopCode& c) { return !c.unknown && c.code == sent[i].code; });
        ++(known ? own : others);
    }
    return others > own;
}

// Whether most rounds, two at least, come by the unknown stretch at the loop's end.
bool comesByTheEnd(const Alignment& walk, const std::vector<LoopCode>& loop) {
    int rounds = 0, by = 0;
    for (std::size_t i = 1; i < walk.place.size(); ++i) {
        const bool ends = walk.place[i - 1] + 1 == loop.size();
        rounds += walk.place[i] < walk.place[i - 1] ? 1 : 0;
        by += ends && walk.place[i] != walk.place[i - 1] ? 1 : 0;
    }
    return by >= 2 && 2 * by > rounds;
}

// The person left out how the line ends: where other characters come before most rounds they are added, as they were
// in most of them, or where they differ as a stretch that is not known.
std::vector<LoopCode> withLineEnd(std::span<const SentCode> sent, std::vector<LoopCode> loop) {
    const double cost = alignToLoop(sent, loop).cost;
    if (cost == 0.0) return loop;
    std::vector<LoopCode> open = loop;
    open.push_back({0, true});
    const Alignment walk = alignToLoop(sent, open);
    if (walk.cost >= cost || !comesByTheEnd(walk, open) || !othersBetween(sent, walk, open)) return loop;
    const Seen end = lookAtRounds(sent, walk, open).back();
    for (const auto& counts : {end.came, end.inserted})
        if (const auto code = mostOf(counts, end.visits)) loop.push_back({*code, false});
    return alignToLoop(sent, loop).cost < walk.cost ? loop : open;
}

std::optional<TapeText> recogniseReversals(const CodeTable& table, std::span<const SentCode> sent) {
    if (sent.size() < kFewestReversals) return std::nullopt;
    const auto period = repetitionPeriod(sent);
    if (period && *period > 2) return std::nullopt;  // the learned loop holds what stands between the reversals, too
    TapeText text{TextSource::reversals, asLoop(encode(table, "RY"))};
    const double cost = alignToLoop(sent, text.loop).cost;
    TapeText broken = text;
    broken.loop.push_back({0, true});
    if (const Alignment walk = alignToLoop(sent, broken.loop);
        walk.cost < cost && othersBetween(sent, walk, broken.loop))
        return walk.cost < kReversalsCost ? std::optional(broken) : std::nullopt;
    return cost < kReversalsCost ? std::optional(text) : std::nullopt;
}

// A text of which any part, or none, stands between stretches that are not known.
std::vector<LoopCode> phrase(const CodeTable& table, std::string_view text) {
    std::vector<LoopCode> loop = asLoop(encode(table, text));
    loop.push_back({0, true});
    return loop;
}

// Whether enough of the characters lie on the known text, and close enough to it.
bool fits(std::span<const SentCode> sent, const Alignment& walk, std::span<const LoopCode> loop) {
    sent = sent.last(walk.place.size());
    std::size_t on = 0;
    double cost = 0.0;
    for (std::size_t i = 0; i < sent.size(); ++i) {
        const LoopCode& due = loop[walk.place[i]];
        if (due.unknown) continue;
        ++on;
        cost += 2.0 * std::min(3, levelsApart(sent[i].code, due.code));
        if (walk.step[i] == Alignment::Step::again || walk.step[i] == Alignment::Step::over) cost += 6.0;
    }
    return on >= kFewestOfPhrase && cost < kPhraseCost * static_cast<double>(on);
}

// Levels that differ from a known text at most of its places, a fault that never rests; either way.
unsigned alwaysWrong(std::span<const SentCode> sent, const Alignment& walk, std::span<const LoopCode> known) {
    unsigned wrong = 0;
    for (unsigned level = 0; level < 8; ++level)
        for (const unsigned due : {0U, 1U}) {
            int places = 0;
            int off = 0;
            for (std::size_t i = 0; i < sent.size(); ++i) {
                const LoopCode& c = known[walk.place[i]];
                if (c.unknown || (c.code >> level & 1U) != due) continue;
                ++places;
                off += (sent[i].code >> level & 1U) != due ? 1 : 0;
            }
            if (places >= 4 && 2 * off > places) wrong |= 1U << level;
        }
    return wrong;
}

// A learned loop takes a level that always fails for its text: where it is a known text, that text is right.
bool correctBy(const std::vector<LoopCode>& known, std::vector<LoopCode>& loop) {
    const std::vector<SentCode> once = asSent(loop);
    std::vector<SentCode> twice = once;  // the text may run over the end
    twice.insert(twice.end(), once.begin(), once.end());
    const Alignment walk = alignToLoop(twice, known);
    if (walk.place.size() < twice.size() || !fits(twice, walk, known)) return false;
    const unsigned wrong = alwaysWrong(twice, walk, known);
    for (std::size_t i = 0; i < twice.size(); ++i) {
        const LoopCode& due = known[walk.place[i]];
        if (!due.unknown && ((twice[i].code ^ due.code) & ~wrong) == 0) loop[i % loop.size()] = due;
    }
    return true;
}

}  // namespace

std::optional<TapeText> givenText(const CodeTable& table, std::string_view text, std::span<const SentCode> sent) {
    TapeText out{TextSource::given, asLoop(encodeRound(table, text))};
    if (out.loop.empty()) return std::nullopt;
    for (int i = 0; i < kMendings; ++i)
        if (!mend(out.loop, lookAtRounds(sent, alignToLoop(sent, out.loop), out.loop))) break;
    out.loop = withLineEnd(sent, std::move(out.loop));
    return out;
}

std::optional<TapeText> recogniseText(const CodeTable& table, std::span<const SentCode> sent) {
    sent = sent.last(std::min(sent.size(), kLearnedFrom));
    if (auto reversals = recogniseReversals(table, sent)) return reversals;
    if (auto loop = learnLoop(sent, table.levels)) {
        correctBy(phrase(table, "RYRYRYRY"), *loop);
        const bool fox = correctBy(phrase(table, kFox), *loop);
        return TapeText{fox ? TextSource::fox : TextSource::learned, std::move(*loop)};
    }
    std::vector<LoopCode> fox = phrase(table, kFox);
    const Alignment walk = alignToLoop(sent, fox);
    if (!fits(sent, walk, fox)) return std::nullopt;
    return TapeText{TextSource::fox, std::move(fox)};
}

}  // namespace trueunit
