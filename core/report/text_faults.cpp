// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/text_faults.h"

#include <algorithm>

namespace trueunit {

namespace {

constexpr long kFramingErrorsIn = 50;  // characters one framing error is let pass in: a start heard from its middle

bool framingFails(const TextReading& t) { return kFramingErrorsIn * t.framingErrors > t.characters; }
// A slip told for each character without a stop is that character, not the feed.
bool feedFails(const TextReading& t) { return t.feedSlips.value_or(0) > t.framingErrors; }

bool counts(long hits, const TextReading& t) { return !mayBeSlips(hits, t.feedSlips.value_or(0)); }
bool losesMarks(const Reading& r, const LevelReading& l) {
    return counts(l.marksMissed, r.text) && !prevails(l.spacesFilled, l.marksMissed);
}
bool fillsSpaces(const Reading& r, const LevelReading& l) {
    return counts(l.spacesFilled, r.text) && !prevails(l.marksMissed, l.spacesFilled);
}
bool errs(const TextReading& t) { return counts(t.wrongCharacters.value_or(0), t); }

bool anyLevel(const Reading& r, bool (*fails)(const Reading&, const LevelReading&)) {
    return r.levels &&
           std::any_of(r.levels->begin(), r.levels->end(), [&](const LevelReading& l) { return fails(r, l); });
}

std::string counted(long n, const char* one, const char* many) {
    return std::to_string(n) + " " + (n == 1 ? one : many);
}

}  // namespace

std::vector<std::string> textFaults(const Reading& r) {
    std::vector<std::string> keys;
    const auto check = [&keys](const char* key, bool exceeded) {
        if (exceeded) keys.emplace_back(key);
    };
    check("framing_errors", framingFails(r.text));
    check("wrong_characters", errs(r.text));
    check("feed_slips", feedFails(r.text));
    check("marks_missed", anyLevel(r, losesMarks));
    check("spaces_filled", anyLevel(r, fillsSpaces));
    return keys;
}

std::vector<std::string> textFaultWords(const Reading& r) {
    std::vector<std::string> words;
    for (const LevelReading& l : r.levels.value_or(std::vector<LevelReading>{})) {
        const std::string of = " of level " + std::to_string(l.level) + " ";
        if (losesMarks(r, l))
            words.push_back(std::to_string(l.marksMissed) + " of " + std::to_string(l.marksExpected) + " marks" + of +
                            "lost");
        if (fillsSpaces(r, l))
            words.push_back(std::to_string(l.spacesFilled) + " of " + std::to_string(l.spacesExpected) + " spaces" +
                            of + "filled");
    }
    if (errs(r.text)) words.push_back(counted(*r.text.wrongCharacters, "character is wrong", "characters are wrong"));
    if (feedFails(r.text)) words.push_back(counted(*r.text.feedSlips, "slip of the feed", "slips of the feed"));
    if (framingFails(r.text))
        words.push_back(counted(r.text.framingErrors, "character without its stop", "characters without their stop"));
    return words;
}

}  // namespace trueunit
