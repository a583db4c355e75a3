// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/report/finding_rules.h"
#include "core/report/finding_words.h"
#include "core/report/text_faults.h"

namespace trueunit {

namespace {

constexpr long kFewestExpected = 10;
constexpr long kFewestOnSeveral = 4;
constexpr double kSeveralRate = 0.01;
constexpr double kOnce = 0.9;  // of a single one, which chance may have made
constexpr double kMildPercent = 2.0;
constexpr double kLatePercent = 5.0;

// Hits of one kind on one level against the same kind on the others: a level's own fault stands out of those.
struct Worst {
    int level = 0;
    long hits = 0;
    long tries = 0;
    long otherHits = 0;
    long otherTries = 0;
    double rate() const { return static_cast<double>(hits) / static_cast<double>(std::max(tries, 1L)); }
    double otherRate() const {
        return (static_cast<double>(otherHits) + 0.5) / static_cast<double>(std::max(otherTries, 1L));
    }
};

Worst worstLevel(const std::vector<LevelCount>& levels, long LevelCount::*hits, long LevelCount::*tries) {
    Worst worst;
    for (const LevelCount& l : levels) {
        Worst here{l.level, l.*hits, l.*tries, 0, 0};
        if (here.tries < kFewestExpected) continue;
        if (worst.level == 0 || here.rate() > worst.rate()) worst = here;
    }
    for (const LevelCount& l : levels) {
        if (l.level == worst.level) continue;
        worst.otherHits += l.*hits;
        worst.otherTries += l.*tries;
    }
    return worst;
}

// A single one is told if all else is flawless: a machine in order misprints nothing.
bool standsOut(const Symptoms& s, const Worst& w) {
    if (w.hits == 1 && (w.otherHits > 0 || s.reading.text.framingErrors > 0)) return false;
    return w.hits >= 1 && rateInterval(w.hits, w.tries).low > w.otherRate();
}

double levelConfidence(const Worst& w, const TapeStudy& t) {
    const double few = w.hits >= 5 ? 0.98 : w.hits >= 3 ? 0.95 : w.hits == 2 ? 0.85 : 0.6;
    return (t.repeated + t.skipped > 0 && w.hits < 5 ? 0.5 : 1.0) * few -
           (t.source == TextSource::learned ? 0.03 : 0.0) - (w.otherRate() > 0.25 * w.rate() ? 0.2 : 0.0);
}

EvidencePlaces placesOf(const StandingOut& o, int levels) {
    using Which = StandingOut::Which;
    EvidencePlaces at;
    if (o.which != Which::toSpace) at.instants.push_back({o.k, Condition::mark});
    if (o.which == Which::both || o.which == Which::toSpace) at.instants.push_back({o.k, Condition::space});
    if (o.which == Which::marks) at.instants.push_back({o.k + 1, Condition::space});
    if (o.k <= levels) at.level = o.k;
    return at;
}

// Errors on several levels alike point away from any one level's parts.
std::optional<RankedFinding> severalLevels(const Symptoms& s, const Worst& w, bool marks) {
    const long hits = w.hits + w.otherHits;
    const long tries = w.tries + w.otherTries;
    if (hits < 1) return std::nullopt;
    const bool few = hits < kFewestOnSeveral || rateInterval(hits, tries).high < kSeveralRate;
    Finding f;
    f.id = marks ? "level-dropout" : "level-stuck";
    f.confidence = few ? 0.25 : 0.4;
    f.seenAt.characters = true;
    f.title = hits == 1 ? std::string(marks ? "A single mark is lost" : "A single space is filled")
                        : std::string(marks ? "Marks are lost" : "Spaces are filled") +
                              " on several levels: " + std::to_string(hits) + " of " + std::to_string(tries);
    f.evidence = "Held against " + heldAgainst(*s.tape, s.reading.text.characters) + ", " + rateWords(hits, tries) +
                 (marks ? " of the marks are lost" : " of the spaces are filled") + "; ";
    f.evidence += hits == 1 ? "that may be chance."
                  : w.hits == 1
                      ? "one on each of " + std::to_string(hits) + " levels."
                      : "level " + std::to_string(w.level) + " most of all, but not beyond what chance makes.";
    f.evidence += learnedWords(s.tape->source);
    f.lookAt =
        "What all levels share: tape guide and lid, position of the feed holes to the sensing pins, contact and "
        "transmitting cams, a contact that chatters; and a weak or disturbed input.";
    f.confirm = "Try a new tape, and compare the faulty characters on the tape view." + kUnplug;
    return RankedFinding{f, (few ? 0.5 : 1.0) + kMorePerRate * static_cast<double>(hits) / static_cast<double>(tries)};
}

bool otherWayPrevails(const Symptoms& s, const Worst& w, long LevelCount::*otherHits) {
    for (const LevelCount& l : s.tape->levels)
        if (l.level == w.level) return prevails(l.*otherHits, w.hits);
    return false;
}

RankedFinding ranked(const Symptoms& s, Finding f, const Worst& w, long LevelCount::*otherHits) {
    const double severity = (w.hits > 1 ? kWrongNowAndThen : kOnce) + kMorePerRate * w.rate();
    if (!otherWayPrevails(s, w, otherHits)) return {std::move(f), severity};
    f.confidence = std::min(f.confidence, 0.3);
    return {std::move(f), 0.5 * severity};
}

Finding levelFinding(const Symptoms& s, const Worst& w, bool marks) {
    const std::string level = std::to_string(w.level);
    Finding f;
    f.id = marks ? "level-dropout" : "level-stuck";
    f.confidence = levelConfidence(w, *s.tape);
    f.seenAt.level = w.level;
    f.seenAt.characters = true;
    f.title =
        marks
            ? "Marks of level " + level + " are lost: " + std::to_string(w.hits) + " of " + std::to_string(w.tries)
            : "Spaces of level " + level + " are filled: " + std::to_string(w.hits) + " of " + std::to_string(w.tries);
    f.evidence = "Held against " + heldAgainst(*s.tape, s.reading.text.characters) + ", level " + level +
                 (marks ? " lost " : " filled ") + std::to_string(w.hits) + " of " + std::to_string(w.tries) +
                 (marks ? " marks, " : " spaces, ") + rateWords(w.hits, w.tries) + "; the other levels together " +
                 std::to_string(w.otherHits) + " of " + std::to_string(w.otherTries) + "." +
                 learnedWords(s.tape->source);
    if (marks && w.level <= s.levels)
        f.evidence += " A mark that is lost takes the changes of the line at " + level + " and " +
                      std::to_string(w.level + 1) + " with it; those that are left come in time.";
    f.confirm = "Look at a faulty character on the grid; with the power off press the sensing pin of level " + level +
                " by hand and feel its way." + kUnplug + kLoopOff + kNoOil;
    return f;
}

// Early and late cancel: to mark the lever looks like the only one in its place.
std::string hiddenBehindBias(const Symptoms& s, const StandingOut& o) {
    const double shift = -s.pattern->bias.value;  // of all instants to mark, late positive
    const bool toMark = o.which == StandingOut::Which::both || o.which == StandingOut::Which::marks ||
                        o.which == StandingOut::Which::toMark;
    if (!toMark || std::abs(shift) < kMildPercent || std::abs(shift + o.percent.value) > 0.5 * std::abs(shift))
        return "";
    return " To mark it hides behind the bias, which moves all instants to mark by " + signedDecimals(shift, 1) +
           " %: there it stands at " + signedDecimals(shift + o.percent.value, 1) + " % and looks right.";
}

// One lever of those that stand out, worst first; each has a finding of its own.
std::optional<RankedFinding> leverLate(const Symptoms& s, std::size_t which) {
    if (!s.pattern || s.pattern->out.size() <= which) return std::nullopt;
    const StandingOut& o = s.pattern->out[which];
    if (std::abs(o.percent.value) < kMildPercent) return std::nullopt;
    using Which = StandingOut::Which;
    const bool late = o.percent.value > 0.0;
    const bool stop = o.k > s.levels;
    const std::string level = std::to_string(o.k);
    Finding f;
    f.id = "level-late";
    f.seenAt = placesOf(o, s.levels);
    f.confidence = std::clamp(0.98 * chanceBeyond(o.percent.value, o.percent.uncertainty, 0.7 * kMildPercent) -
                                  0.5 * std::min(0.5, s.pattern->left / std::abs(o.percent.value)),
                              0.05, 0.98);
    const double rest = s.reading.distortion.fortuitousRmsPercent.value_or(0.0) + s.largestLinePercent();
    if (rest > std::abs(o.percent.value)) f.confidence *= 0.7;
    if (s.strays()) f.confidence *= 0.8;
    f.title = (stop ? std::string("The stop begins ") : "Level " + level + " comes ") + percent(o.percent.value) +
              (late ? " late" : " early");
    const std::string where = o.which == Which::both     ? "in both directions"
                              : o.which == Which::marks  ? "where its marks begin and end, and nowhere else"
                              : o.which == Which::toMark ? "to mark only"
                                                         : "to space only";
    f.evidence = "At " + instantName(o.k, s.levels) + " the line changes " + percent(o.percent.value) + " of a unit (" +
                 decimals(std::abs(o.percent.value) * 0.01 * s.unitMs(), 2) + " ms) " + (late ? "late " : "early ") +
                 where + "; with that set aside the other instants agree within " +
                 percent(std::max(s.pattern->left, 0.05), 2) + ".";
    if (s.pattern->out.size() > 1) {
        const StandingOut& other = s.pattern->out[1 - which];
        f.evidence += " Out as well, and set aside too: " + instantName(other.k, s.levels) + ", by " +
                      signedDecimals(other.percent.value, 1) + " %.";
    }
    f.evidence += hiddenBehindBias(s, o) + " " + setAsideWords(*s.pattern, s.speedErrorByPattern());
    f.lookAt = stop ? "Stop cam or stop lever; the end of level " + std::to_string(s.levels) + "'s travel."
                    : "Level " + level +
                          ": worn or gummed transfer lever, its cam or cam follower, its contact gap, weak "
                          "lever spring.";
    f.confirm =
        "Compare the points of " + instantName(o.k, s.levels) +
        " with its neighbours in the displacement plot; move that lever by hand with the power off and feel its way: "
        "drag speaks for gum or a weak spring, play for wear, neither for the cam or the contact gap." +
        kUnplug + kLoopOff;
    return RankedFinding{f, std::abs(o.percent.value) / kLatePercent};
}

// Marks lost or spaces filled, held against the text; what to look at follows the level.
std::optional<RankedFinding> levelFault(const Symptoms& s, bool lost, const char* lookAt) {
    if (!s.tape) return levelWithoutText(s, lost);
    const Worst w = lost ? worstLevel(s.tape->levels, &LevelCount::marksMissed, &LevelCount::marksExpected)
                         : worstLevel(s.tape->levels, &LevelCount::spacesFilled, &LevelCount::spacesExpected);
    if (w.level == 0 || mayBeSlips(w.hits, s.tape->repeated + s.tape->skipped)) return std::nullopt;
    if (!standsOut(s, w)) return severalLevels(s, w, lost);
    Finding f = levelFinding(s, w, lost);
    f.lookAt = "Level " + std::to_string(w.level) + lookAt;
    return ranked(s, std::move(f), w, lost ? &LevelCount::spacesFilled : &LevelCount::marksMissed);
}

}  // namespace

std::optional<RankedFinding> levelDropout(const Symptoms& s) {
    return levelFault(s, true,
                      ": sensing pin worn, bent or gummed, weak pin spring, transfer lever not followed through, "
                      "dirty contact of that level; then the tape itself (holes not clean).");
}

std::optional<RankedFinding> levelStuck(const Symptoms& s) {
    return levelFault(s, false,
                      ": sensing pin or transfer lever slow to return (gummed, weak return spring), contact "
                      "sticking or shorted; then a tape torn at that row.");
}

std::optional<RankedFinding> levelLate(const Symptoms& s) { return leverLate(s, 0); }
std::optional<RankedFinding> secondLevelLate(const Symptoms& s) { return leverLate(s, 1); }

}  // namespace trueunit
