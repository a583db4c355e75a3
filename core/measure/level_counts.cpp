// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/level_counts.h"

#include <algorithm>
#include <cmath>

namespace trueunit {

namespace {

constexpr int kMostLevelsOff = 2;
constexpr long kFewestCompared = 6;
constexpr double kOtherText = 2.2;  // cost of the alignment: beyond it the tape carries another text

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

TapeStudy count(const TapeText& text, std::span<const SentCode> sent, int levels, std::size_t counted) {
    using Step = Alignment::Step;
    TapeStudy study;
    study.source = text.source;
    study.loopLength = text.loop.size();
    for (int level = 1; level <= levels; ++level) study.levels.push_back({level, 0, 0, 0, 0});
    const Alignment walk = alignToLoop(sent, text.loop);
    study.costPerCharacter = walk.cost;
    sent = sent.last(walk.place.size());
    const std::size_t first = sent.size() - std::min(counted, sent.size());
    study.expected.resize(sent.size());
    for (std::size_t i = 0; i < sent.size(); ++i) {
        const SentCode& c = sent[i];
        const LoopCode& due = text.loop[walk.place[i]];
        if (due.unknown) continue;
        study.expected[i] = due.code;
        if (i < first) continue;
        if (walk.step[i] == Step::again) ++study.repeated;
        if (walk.step[i] == Step::over && !text.loop[(walk.place[i] + text.loop.size() - 1) % text.loop.size()].unknown)
            study.skipped += walk.skipped[i];
        if (!c.sure) continue;
        ++study.compared;
        if (levelsApart(c.code, due.code) > kMostLevelsOff) {
            ++study.strange;
            continue;
        }
        countLevels(study.levels, c.code, due.code);
    }
    return study;
}

}  // namespace

std::optional<TapeStudy> studyTape(const CodeTable& table, std::string_view given, std::span<const SentCode> sent,
                                   std::size_t counted) {
    const auto text = given.empty() ? recogniseText(table, sent) : givenText(table, given, sent);
    if (!text) return std::nullopt;
    TapeStudy study = count(*text, sent, table.levels, counted);
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
