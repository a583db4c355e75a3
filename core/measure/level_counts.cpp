// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/level_counts.h"

#include <algorithm>
#include <cmath>

namespace trueunit {

namespace {

constexpr int kMostLevelsOff = 2;
constexpr long kFewestCompared = 6;
constexpr double kOtherText = 2.2;       // cost of the alignment: beyond it the tape carries another text
constexpr std::size_t kAboutSlip = 2;    // characters either side of a slip: which of them slipped is not known
constexpr std::size_t kYetOpen = 4;      // newest characters, where the feed slips: a slip to come may explain them
constexpr std::size_t kMostLeading = 8;  // characters before and after the text itself
constexpr std::size_t kLeadingPart = 10;
constexpr std::size_t kRoundBelieved = 12;  // characters of a new round after a stretch that is not known

void countLevels(std::vector<LevelCount>& levels, unsigned sent, unsigned due) {
    for (LevelCount& l : levels) {
        const unsigned bit = 1U << (l.level - 1);
        const bool mark = (sent & bit) != 0;
        if ((due & bit) != 0) {
            ++l.marksExpected;
            l.marksMissed += mark ? 0 : 1;
        } else {
            ++l.spacesExpected;
            l.spacesFilled += mark ? 1 : 0;
        }
    }
}

// No single level's doing.
bool isForeign(const SentCode& sent, const LoopCode& due) {
    return !sent.sure || (!due.unknown && levelsApart(sent.code, due.code) > 1);
}

std::size_t beforeOn(std::span<const LoopCode> loop, std::size_t place) {
    return (place + loop.size() - 1) % loop.size();
}

// Where the newest round of the text begins, if what comes between the rounds is not known and the round is too young
// to be told from it; else the end.
std::size_t youngRound(const Alignment& walk, std::span<const LoopCode> loop) {
    const std::size_t end = walk.place.size();
    if (std::none_of(loop.begin(), loop.end(), [](const LoopCode& c) { return c.unknown; })) return end;
    std::size_t begin = end;
    while (begin > 0 && !loop[walk.place[begin - 1]].unknown &&
           (begin == end || walk.place[begin - 1] <= walk.place[begin]))
        --begin;
    return end - begin < kRoundBelieved ? begin : end;
}

bool slips(const Alignment& walk) {
    return std::any_of(walk.step.begin(), walk.step.end(), [](Alignment::Step step) {
        return step == Alignment::Step::again || step == Alignment::Step::over;
    });
}

// Which characters prove something of the levels: not those about a slip of the feed, whose place in the text is
// doubtful, nor what runs through before and after the text (blank tape, shifts, a character heard from its middle).
std::vector<bool> telling(std::span<const SentCode> sent, const Alignment& walk, std::span<const LoopCode> loop,
                          std::size_t first) {
    std::vector<bool> tells(sent.size(), true);
    const auto forget = [&](std::size_t i) { tells[i] = false; };
    for (std::size_t i = 1; i < sent.size(); ++i) {
        if (walk.step[i] == Alignment::Step::on || loop[beforeOn(loop, walk.place[i])].unknown) continue;
        if (loop[walk.place[i]].unknown || loop[walk.place[i - 1]].unknown) continue;
        const std::size_t last = std::min(sent.size() - 1, i + kAboutSlip - 1);
        for (std::size_t j = i - std::min(i, kAboutSlip); j <= last; ++j) forget(j);
    }
    if (slips(walk))
        for (std::size_t n = 1; n <= std::min(kYetOpen, sent.size()); ++n) forget(sent.size() - n);
    // Where the known text meets a stretch that is not, a character of that stretch may pass for one misread.
    const auto unknownBeside = [&](std::size_t i) {
        return (i > 0 && loop[walk.place[i - 1]].unknown) || (i + 1 < sent.size() && loop[walk.place[i + 1]].unknown);
    };
    for (std::size_t i = 0; i < sent.size(); ++i)
        if (sent[i].code != loop[walk.place[i]].code && unknownBeside(i)) forget(i);
    for (std::size_t i = youngRound(walk, loop); i < sent.size(); ++i)
        if (sent[i].code != loop[walk.place[i]].code) forget(i);
    const std::size_t most = std::min(kMostLeading, (sent.size() - first) / kLeadingPart);
    for (std::size_t i = first; i < std::min(first + most, sent.size()) && isForeign(sent[i], loop[walk.place[i]]); ++i)
        forget(i);
    for (std::size_t n = 1; n <= most && isForeign(sent[sent.size() - n], loop[walk.place[sent.size() - n]]); ++n)
        forget(sent.size() - n);
    return tells;
}

// Of reversals: the newest character, if none like it was among them before. The return that ends their line looks like
// one of them with a level lost, until what follows it has come.
bool mayEndALine(std::span<const SentCode> sent) {
    const auto before = sent.first(sent.size() - 1);
    return std::none_of(before.begin(), before.end(), [&](const SentCode& c) { return c.code == sent.back().code; });
}

TapePlace placeOf(const Alignment& walk, std::span<const LoopCode> loop, std::size_t i, bool tells) {
    TapePlace place;
    const std::size_t at = walk.place[i];
    if (loop[at].unknown) return place;
    place.hole = loop[at].code;
    place.tells = tells;
    if (i + kYetOpen >= walk.place.size()) return place;  // what follows may show that it slipped elsewhere
    place.again = walk.step[i] == Alignment::Step::again;
    if (walk.step[i] != Alignment::Step::over || loop[beforeOn(loop, at)].unknown) return place;
    for (auto back = static_cast<std::size_t>(walk.skipped[i]); back > 0; --back)
        place.passed.push_back(loop[(at + loop.size() - back % loop.size()) % loop.size()].code);
    return place;
}

// Which characters, wrong by a level or by several, are so few beside the slips that these may be the cause.
class Doubt {
public:
    explicit Doubt(const TapeStudy& study) {
        const long slips = study.repeated + study.skipped;
        strange_ = mayBeSlips(study.strange, slips);
        for (const LevelCount& l : study.levels) {
            if (mayBeSlips(l.marksMissed, slips)) missed_ |= 1U << (l.level - 1);
            if (mayBeSlips(l.spacesFilled, slips)) filled_ |= 1U << (l.level - 1);
        }
    }
    bool covers(unsigned came, unsigned due) const {
        if (levelsApart(came, due) > kMostLevelsOff) return strange_;
        return (due & ~came & ~missed_) == 0 && (came & ~due & ~filled_) == 0;
    }

private:
    bool strange_ = false;
    unsigned missed_ = 0, filled_ = 0;  // levels
};

void leaveOpenWhatMayBeSlips(TapeStudy& study, std::span<const SentCode> sent, std::size_t begin) {
    const Doubt doubt(study);
    for (std::size_t i = 0; i < sent.size(); ++i) {
        TapePlace& place = study.places[i];
        if (!place.tells || !sent[i].sure || *place.hole == sent[i].code) continue;
        if (!doubt.covers(sent[i].code, *place.hole)) continue;
        place.tells = false;
        study.wrong -= i < begin ? 0 : 1;
    }
}

TapeStudy count(const CodeTable& table, const TapeText& text, std::span<const SentCode> sent, std::size_t counted) {
    TapeStudy study;
    study.source = text.source;
    study.loopLength = text.loop.size();
    study.otherCharacters = text.otherCharacters;
    study.round = printOf(table, text);
    study.othersBetween = text.source == TextSource::given && text.loop.back().unknown;
    for (int level = 1; level <= table.levels; ++level) study.levels.push_back({level, 0, 0, 0, 0});
    const Alignment first = alignToLoop(sent, text.loop);
    study.costPerCharacter = first.cost;
    const Alignment walk = alignToLoop(sent, text.loop, pricesLearned(sent, text.loop, first));
    sent = sent.last(walk.place.size());
    const std::size_t begin = sent.size() - std::min(counted, sent.size());
    study.places.reserve(sent.size());
    std::vector<bool> tells = telling(sent, walk, text.loop, begin);
    if (text.source == TextSource::reversals && mayEndALine(sent)) tells.back() = false;
    for (std::size_t i = 0; i < sent.size(); ++i) {
        const SentCode& c = sent[i];
        const LoopCode& due = text.loop[walk.place[i]];
        const TapePlace& place = study.places.emplace_back(placeOf(walk, text.loop, i, tells[i]));
        if (due.unknown || i < begin) continue;
        study.repeated += place.again ? 1 : 0;
        study.skipped += static_cast<long>(place.passed.size());
        if (!c.sure) continue;
        ++study.compared;
        if (!tells[i]) continue;
        study.wrong += c.code == due.code ? 0 : 1;
        if (levelsApart(c.code, due.code) > kMostLevelsOff) {
            ++study.strange;
            continue;
        }
        countLevels(study.levels, c.code, due.code);
    }
    if (study.repeated + study.skipped > 0) leaveOpenWhatMayBeSlips(study, sent, begin);
    study.slipPlaces = slipPlaces(table, text.loop, walk, begin);
    return study;
}

}  // namespace

std::optional<TapeStudy> studyTape(const CodeTable& table, std::string_view given, std::span<const SentCode> sent,
                                   std::size_t counted) {
    const auto text = given.empty() ? recogniseText(table, sent) : givenText(table, given, sent);
    if (!text) return std::nullopt;
    TapeStudy study = count(table, *text, sent, counted);
    if (study.compared < kFewestCompared || study.costPerCharacter > kOtherText) return std::nullopt;
    return study;
}

std::vector<LevelShare> levelShares(std::span<const SentCode> sent, int levels) {
    std::vector<LevelShare> shares;
    for (int level = 1; level <= levels; ++level) {
        LevelShare share{level, 0, 0};
        for (const SentCode& c : sent) {
            if (!c.sure) continue;
            ++share.characters;
            share.marks += (c.code >> (level - 1) & 1U) != 0 ? 1 : 0;
        }
        shares.push_back(share);
    }
    return shares;
}

RateInterval rateInterval(long hits, long tries) {
    if (tries <= 0) return {};
    constexpr double z = 1.959964;
    const auto n = static_cast<double>(tries);
    const double p = static_cast<double>(hits) / n;
    const double centre = (p + z * z / (2.0 * n)) / (1.0 + z * z / n);
    const double half = z / (1.0 + z * z / n) * std::sqrt(p * (1.0 - p) / n + z * z / (4.0 * n * n));
    return {std::max(0.0, centre - half), std::min(1.0, centre + half)};
}

}  // namespace trueunit
