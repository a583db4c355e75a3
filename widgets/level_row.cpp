// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/level_row.h"

#include <QStringList>
#include <algorithm>

#include "core/report/finding_words.h"
#include "core/report/judge.h"
#include "widgets/told.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

// "lost: level 3: 13 of 96; filled: of 800"
QString levelWords(const LevelTally& lost, const LevelTally& filled) {
    const auto words = [](const LevelTally& c) {
        return c.where.isEmpty() ? Words::tr("of %1").arg(c.all) : c.where.join(QStringLiteral(", "));
    };
    return Words::tr("marks lost: %1; spaces filled: %2").arg(words(lost), words(filled));
}

std::vector<int> wrongLevels(const std::vector<LevelReading>& levels) {
    std::vector<int> wrong;
    for (const LevelReading& l : levels)
        if (l.marksMissed > 0 || l.spacesFilled > 0) wrong.push_back(l.level);
    return wrong;
}

}  // namespace

LevelTally tallyOf(const std::vector<LevelReading>& levels, long LevelReading::*hits, long LevelReading::*tries) {
    LevelTally c;
    for (const LevelReading& l : levels) {
        c.count += l.*hits;
        c.all += l.*tries;
        if (l.*hits > 0) c.where << Words::tr("level %1: %2 of %3").arg(l.level).arg(l.*hits).arg(l.*tries);
    }
    return c;
}

bool textIsLearned(const Reading& reading) {
    return std::find(reading.notes.begin(), reading.notes.end(), kLearnedText) != reading.notes.end();
}

RowText levelsRow(const Snapshot& s) {
    RowText text;
    const auto& levels = s.reading.levels;
    if (!levels) {
        if (s.reading.text.characters > 0)
            text.judgement = s.options.expect.empty() ? Words::tr("text not known") : Words::tr("another text");
        return text;
    }
    const LevelTally lost = tallyOf(*levels, &LevelReading::marksMissed, &LevelReading::marksExpected);
    const LevelTally filled = tallyOf(*levels, &LevelReading::spacesFilled, &LevelReading::spacesExpected);
    text.value = Words::tr("%1, %2").arg(lost.count).arg(filled.count);
    const std::vector<int> wrong = wrongLevels(*levels);
    const bool learned = textIsLearned(s.reading);
    text.judgement = wrong.size() == 1  ? Words::tr("level %1").arg(wrong.front())
                     : wrong.size() > 1 ? Words::tr("%1 levels").arg(wrong.size())
                     : learned          ? Words::tr("text learned")
                                        : Words::tr("of %1, %2").arg(lost.all).arg(filled.all);
    text.brief = wrong.empty() && !learned ? Words::tr("of %1").arg(lost.all + filled.all) : text.judgement;
    if (exceeds(s.reading.verdict, "marks_missed") || exceeds(s.reading.verdict, "spaces_filled"))
        text.within = false;
    else if (wrong.empty() && !learned)  // what is lost most of the time is learned as if it belonged there
        text.within = true;
    text.inWords = levelWords(lost, filled);
    if (learned) text.inWords += QStringLiteral(". ") + told(kLearnedText);
    return text;
}

}  // namespace trueunit
