// SPDX-License-Identifier: GPL-3.0-or-later
// What the tape feed does; told by holding the characters against the text of the tape.
#include <cmath>
#include <numbers>

#include "core/report/finding_rules.h"
#include "core/report/finding_words.h"

namespace trueunit {

namespace {

constexpr long kFewestFed = 30;

std::string whereItSlips(const SlipPlaces& p) {
    if (p.anywhere) return " They come anywhere on the tape.";
    return " " + std::to_string(p.atOnePlace) + " of them come at one place of the tape, behind “" + p.behind + "”.";
}

// Whether so many more of one kind than of the other are not what a feed does that slips either way: the chance that
// heads fall so often (binomial).
bool allOneWay(long these, long others) {
    constexpr double kChance = 0.01;
    const auto n = static_cast<double>(these + others);
    double chance = 0.0;
    for (long k = 0; k <= others; ++k) {
        const auto few = static_cast<double>(k);
        chance +=
            std::exp(std::lgamma(n + 1) - std::lgamma(few + 1) - std::lgamma(n - few + 1) - n * std::numbers::ln2);
    }
    return these > others && chance < kChance;
}

// A tape that stands still was not moved, one that goes too far was not held (common practice).
std::string whatFeeds(const TapeStudy& t) {
    if (t.slipPlaces && t.slipPlaces->atOnePlace > 0)
        return "The tape at that place: a torn or blocked feed hole, a splice, a crease. Then feed wheel and its pins, "
               "feed pawl and detent.";
    if (allOneWay(t.repeated, t.skipped))
        return "The feed holes of the tape; then what moves it: feed pawl and its spring, feed wheel and its pins; "
               "what holds it back: lid, guide, reel.";
    if (allOneWay(t.skipped, t.repeated))
        return "What holds the tape where it is: detent of the feed wheel and its spring, a feed pawl that goes too "
               "far; then a tape that is pulled.";
    return "The tape itself, its feed holes: try a new one. Then what lets the tape go short and far by turns: detent "
           "of the "
           "feed wheel and its spring, the wheel's pins and play, feed pawl, tape guide and lid.";
}

}  // namespace

std::optional<RankedFinding> feedSlip(const Symptoms& s) {
    if (!s.tape || s.tape->compared < kFewestFed) return std::nullopt;
    const long slips = s.tape->repeated + s.tape->skipped;
    const long framing = s.reading.text.framingErrors;
    if (slips < 1 || slips <= framing) return std::nullopt;
    Finding f;
    f.id = "feed-slip";
    f.seenAt.slips = true;
    f.confidence = slips >= 3 ? 0.96 : slips == 2 ? 0.9 : 0.75;
    if (s.tape->strange > slips) f.confidence *= 0.7;
    f.title = "The feed slips: " + std::to_string(slips) + " in " + std::to_string(s.tape->compared) + " characters";
    f.evidence = "Held against " + heldAgainst(*s.tape, s.reading.text.characters) + ": sent twice " +
                 std::to_string(s.tape->repeated) + ", passed over " + std::to_string(s.tape->skipped) + ". That is " +
                 rateWords(slips, s.tape->compared) + " of the characters; level by level what came is right.";
    if (s.tape->slipPlaces) f.evidence += whereItSlips(*s.tape->slipPlaces);
    if (s.tape->loopLength == 2) f.evidence += " On RY a character sent twice looks the same as one passed over.";
    f.lookAt = whatFeeds(*s.tape);
    f.confirm =
        "Mark the tape and let it run: the mark must come by after the same number of characters each round. "
        "Try a new tape before the feed is touched." +
        kUnplug;
    return RankedFinding{f,
                         kWrongNowAndThen + 20.0 * static_cast<double>(slips) / static_cast<double>(s.tape->compared)};
}

}  // namespace trueunit
