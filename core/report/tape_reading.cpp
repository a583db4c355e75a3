// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/tape_reading.h"

#include "core/frame/code_table.h"
#include "core/report/finding_words.h"

namespace trueunit {

namespace {

// Every round has characters that the person's text has not, or lacks some: said, for they are not judged.
void noteOtherText(Reading& r, const TapeStudy& tape, const Options& options) {
    const CodeTable* code = findCode(options.code);
    if (!code || tape.source != TextSource::given) return;
    const std::size_t given = encodeRound(*code, options.expect).size();
    if (tape.othersBetween)
        r.notes.emplace_back(
            "Before the text of the tape begins anew come characters that it does not hold, such as a line end: they "
            "are not judged.");
    else if (given != 0 && tape.loopLength % given != 0)
        r.notes.push_back("The tape has " + std::to_string(tape.loopLength) + " characters a round, its text " +
                          std::to_string(given) +
                          ": the difference is taken for the tape's own, such as a carriage return.");
    if (tape.otherCharacters > 0)
        r.notes.push_back("Places where every round of the tape has another character than its text: " +
                          std::to_string(tape.otherCharacters) + ". They are taken for the tape's own; look at both.");
}

}  // namespace

void readTape(Reading& r, const std::optional<TapeStudy>& tape, const Options& options) {
    if (!tape) {
        r.notes.emplace_back(!options.expect.empty()
                                 ? "The tape does not carry the expected text: levels and feed cannot be judged."
                                 : "The text of the tape is not known and does not repeat three times: lost marks "
                                   "and filled spaces cannot be counted.");
        return;
    }
    noteOtherText(r, *tape, options);
    if (tape->source == TextSource::learned) r.notes.emplace_back(kLearnedText);
    r.text.wrongCharacters = tape->wrong;
    r.text.feedSlips = tape->repeated + tape->skipped;
    r.text.compared = tape->compared;
    r.text.round = tape->round;
    r.levels.emplace();
    for (const LevelCount& l : tape->levels)
        r.levels->push_back({l.level, l.marksExpected, l.marksMissed, l.spacesExpected, l.spacesFilled});
}

}  // namespace trueunit
