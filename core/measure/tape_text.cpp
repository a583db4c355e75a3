// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/tape_text.h"

#include <algorithm>
#include <array>
#include <set>

#include "core/measure/loop_learning.h"
#include "core/measure/loop_mending.h"

namespace trueunit {

namespace {

// ITU-T R.52 lists it among the sentences that may be used; its text from memory.
constexpr std::string_view kFox = "THE QUICK BROWN FOX JUMPS OVER THE LAZY DOG";
constexpr std::size_t kFewestReversals = 12;
constexpr double kReversalsCost = 1.3;  // per character: six in ten characters with a level wrong, or slips
constexpr double kPhraseCost = 1.2;     // per character of a known text
constexpr std::size_t kFewestOfPhrase = 20;
constexpr int kMendings = 3;
constexpr std::size_t kStretchesTried = 12;
constexpr std::size_t kLearnedFrom = 2048;  // characters; more rounds than that teach nothing new

std::vector<LoopCode> asLoop(const std::basic_string<unsigned char>& codes) {
    std::vector<LoopCode> loop;
    for (const unsigned char c : codes) loop.push_back({c, false});
    return loop;
}

// Two rounds of it: a text may run over the loop's end.
std::vector<SentCode> sentTwice(std::span<const LoopCode> loop) {
    std::vector<SentCode> sent;
    for (int round = 0; round < 2; ++round)
        for (const LoopCode& c : loop) sent.push_back({c.code, true, false});
    return sent;
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
    const SeenAtPlace end = lookAtRounds(sent, walk, open).back();
    for (const auto& counts : {end.came, end.inserted})
        if (const auto code = combinationOfMost(counts, end.visits)) loop.push_back({*code, false});
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
    for (LoopCode& hole : loop) hole.certain = true;
    loop.push_back({0, true});
    return loop;
}

// Whether enough of the characters lie on the known text, on most of it, and close enough to it.
bool fits(std::span<const SentCode> sent, const Alignment& walk, std::span<const LoopCode> loop) {
    sent = sent.last(walk.place.size());
    std::size_t on = 0;
    double cost = 0.0;
    std::set<std::size_t> passed;
    for (std::size_t i = 0; i < sent.size(); ++i) {
        const LoopCode& due = loop[walk.place[i]];
        if (due.unknown) continue;
        ++on;
        passed.insert(walk.place[i]);
        cost += 2.0 * std::min(3, levelsApart(sent[i].code, due.code));
        if (walk.step[i] == Alignment::Step::again || walk.step[i] == Alignment::Step::over) cost += 6.0;
    }
    return on >= kFewestOfPhrase && 2 * passed.size() >= loop.size() && cost < kPhraseCost * static_cast<double>(on);
}

// The fox sentence, whatever stands between its repetitions, where it is what was sent.
std::optional<std::vector<LoopCode>> foxBetweenOthers(const CodeTable& table, std::span<const SentCode> sent) {
    std::vector<LoopCode> fox = phrase(table, kFox);
    const Alignment walk = alignToLoop(sent, fox);
    return fits(sent, walk, fox) ? std::optional(std::move(fox)) : std::nullopt;
}

// What stood on the stretch at the loop's end that is not known, each time that it came whole.
std::set<std::vector<unsigned>> stretchesBetween(std::span<const SentCode> sent, const Alignment& walk,
                                                 std::span<const LoopCode> loop) {
    sent = sent.last(walk.place.size());
    std::set<std::vector<unsigned>> stretches;
    std::vector<unsigned> stretch;
    bool whole = false;  // its beginning was heard
    for (std::size_t i = 1; i < sent.size(); ++i) {
        const bool on = loop[walk.place[i]].unknown;
        if (on && !loop[walk.place[i - 1]].unknown) whole = true;
        if (on) stretch.push_back(sent[i].code);
        if (on || stretch.empty()) continue;
        if (whole) stretches.insert(stretch);
        stretch.clear();
    }
    return stretches;
}

// The cheapest of those loops.
LearnedLoop withStretchBetween(std::span<const SentCode> sent, const std::vector<LoopCode>& fox,
                               const std::set<std::vector<unsigned>>& stretches) {
    LearnedLoop best = pricedLoop(sent, fox);
    for (const auto& stretch : stretches) {
        std::vector<LoopCode> loop(fox.begin(), fox.end() - 1);
        for (const unsigned code : stretch) loop.push_back({code, false});
        if (LearnedLoop tried = pricedLoop(sent, std::move(loop)); tried.cost < best.cost) best = std::move(tried);
    }
    return best;
}

// Where the feed slips a learned loop may keep a slip that it began with: the fox sentence as it stands, with one of
// the stretches that came between, with the learned loop's own, or with anything between, unless that costs more.
void holdToFox(const CodeTable& table, std::span<const SentCode> sent, std::optional<LearnedLoop>& learned) {
    const auto fox = foxBetweenOthers(table, sent);
    if (!fox) return;
    auto stretches = stretchesBetween(sent, alignToLoop(sent, *fox), *fox);
    while (stretches.size() > kStretchesTried) stretches.erase(stretches.begin());
    if (learned) {
        const std::vector<SentCode> twice = sentTwice(learned->loop);
        stretches.merge(stretchesBetween(twice, alignToLoop(twice, *fox), *fox));
    }
    LearnedLoop held = withStretchBetween(sent, *fox, stretches);
    if (!held.loop.back().unknown)
        if (auto voted = learnLoopFrom(sent, held.loop, table.levels); voted && voted->cost < held.cost)
            held = std::move(*voted);
    if (!learned || held.cost <= learned->cost) learned = std::move(held);
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
    const std::vector<SentCode> twice = sentTwice(loop);
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
    for (int i = 0; i < kMendings; ++i) {
        const Alignment walk = alignToLoop(sent, out.loop);
        std::vector<LoopCode> mended = out.loop;
        if (!mendLoop(mended, lookAtRounds(sent, walk, mended)) || alignToLoop(sent, mended).cost >= walk.cost) break;
        out.loop = std::move(mended);
    }
    out.loop = withLineEnd(sent, std::move(out.loop));
    out.otherCharacters =
        mendCharacters(out.loop, lookAtRounds(sent, alignToLoop(sent, out.loop), out.loop), table.levels);
    return out;
}

std::optional<TapeText> recogniseText(const CodeTable& table, std::span<const SentCode> sent) {
    sent = sent.last(std::min(sent.size(), kLearnedFrom));
    if (auto reversals = recogniseReversals(table, sent)) return reversals;
    auto learned = learnLoop(sent, table.levels);
    if (!learned || !learned->faultless()) holdToFox(table, sent, learned);
    if (!learned) return std::nullopt;
    std::vector<LoopCode> loop = std::move(learned->loop);
    if (loop.back().unknown) return TapeText{TextSource::fox, std::move(loop)};
    correctBy(phrase(table, "RYRYRYRY"), loop);
    const bool fox = correctBy(phrase(table, kFox), loop);
    return TapeText{fox ? TextSource::fox : TextSource::learned, std::move(loop)};
}

std::string printOf(const CodeTable& table, const TapeText& text) {
    Decoder decoder(table);
    std::string round;
    for (int turn = 0; turn < 2; ++turn) {  // the first finds the shift that the loop begins in
        round.clear();
        for (const LoopCode& hole : text.loop) round += hole.unknown ? "\u2026" : decoder.text(hole.code);
    }
    const std::size_t end = round.rfind('\n');
    return end == std::string::npos ? round : round.substr(end + 1) + round.substr(0, end + 1);
}

}  // namespace trueunit
