// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/report/finding_rules.h"
#include "core/report/finding_words.h"

namespace trueunit {

namespace {

constexpr long kFewestShares = 40;   // characters
constexpr double kRareShare = 0.04;  // of the characters have a level at mark: no plain text is so
constexpr double kSurestOfText = 0.95;
constexpr double kSuspected = 0.5;  // probability of a remark

void sayWhereToLook(Finding& f, const std::string& level, bool marks) {
    f.lookAt =
        marks ? "Level " + level + ": sensing pin, transfer lever, its spring and its contact."
              : "Level " + level + ": sensing pin stuck up, transfer lever not returning, contact welded or shorted.";
    f.confirm =
        "Run a tape whose text is known (RY uses every level both ways) and give it as the expected text." + kUnplug;
}

std::optional<RankedFinding> levelNeverSeen(const Symptoms& s, bool marks) {
    if (s.tape) return std::nullopt;
    const LevelShare* worst = nullptr;
    const auto seen = [marks](const LevelShare& l) { return marks ? l.marks : l.characters - l.marks; };
    for (const LevelShare& l : s.shares)
        if (!worst || seen(l) < seen(*worst)) worst = &l;
    if (!worst || worst->characters < kFewestShares) return std::nullopt;
    if (rateInterval(seen(*worst), worst->characters).high > 2.0 * kRareShare) return std::nullopt;
    const std::string level = std::to_string(worst->level);
    Finding f;
    f.id = marks ? "level-dropout" : "level-stuck";
    f.confidence = seen(*worst) == 0 ? 0.8 : 0.6;
    f.seenAt.level = worst->level;
    f.title = "Level " + level + (marks ? " hardly ever sends a mark" : " hardly ever sends a space");
    f.evidence =
        "Of " + std::to_string(worst->characters) + " characters only " + std::to_string(seen(*worst)) + " had " +
        (marks ? "a mark" : "a space") + " on level " + level +
        ". The text is not known; plain text uses every level either way in a quarter of its characters or more.";
    sayWhereToLook(f, level, marks);
    return RankedFinding{f, kWrongNowAndThen};
}

std::string examples(const std::vector<HarmedWord>& words) {
    std::string out;
    for (const HarmedWord& w : words) out += (out.empty() ? " For example: " : ", ") + w.sent + " → " + w.meant;
    return out.empty() ? out : out + ".";
}

std::string shareWords(const PlainTextStudy& t) {
    return decimals(100.0 * t.rate, 0) + " % (95 % interval " + decimals(100.0 * t.rateLow, 0) + " to " +
           decimals(100.0 * t.rateHigh, 0) + " %)";
}

// Combinations that no plain text has, or hardly ever.
std::optional<RankedFinding> levelInPlainText(const Symptoms& s, bool marks) {
    if (!s.plainText || s.plainText->fault.marks != marks) return std::nullopt;
    const PlainTextStudy& t = *s.plainText;
    if (t.probability < kSuspected) return std::nullopt;
    const bool told = t.probability >= kPlainTextTold;
    const long harmed = std::max(1L, std::lround(t.harmed));
    const long atRisk = std::max(harmed, std::lround(t.atRisk));
    const std::string level = std::to_string(t.fault.level);
    Finding f;
    f.id = marks ? "level-dropout" : "level-stuck";
    f.confidence = std::min(t.probability, kSurestOfText);
    f.seenAt.level = t.fault.level;
    f.seenAt.characters = told;
    f.title = "Level " + level + (marks ? " seems to lose marks" : " seems to fill spaces") + ": about " +
              std::to_string(harmed) + " of " + std::to_string(atRisk);
    f.evidence =
        "The text is not known. Read as plain text, about " + std::to_string(harmed) + " of its " +
        std::to_string(t.characters) + " characters fit in only with " +
        (marks ? "a mark on level " + level + " that did not come" : "a space on level " + level + " that was filled") +
        ": " + shareWords(t) + " of that level's " + (marks ? "marks." : "spaces.") + examples(t.words) +
        " The chance that the text itself is like that is " + percent(100.0 * (1.0 - f.confidence), 0) + ".";
    sayWhereToLook(f, level, marks);
    return RankedFinding{
        f,
        told ? kWrongNowAndThen + kMorePerRate * static_cast<double>(harmed) / static_cast<double>(atRisk) : kRemark};
}

}  // namespace

std::optional<RankedFinding> levelWithoutText(const Symptoms& s, bool marks) {
    if (auto never = levelNeverSeen(s, marks)) return never;
    return levelInPlainText(s, marks);
}

}  // namespace trueunit
