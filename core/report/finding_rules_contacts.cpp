// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/report/finding_rules.h"
#include "core/report/finding_words.h"
#include "core/report/shown_instants.h"

namespace trueunit {

namespace {

constexpr long kFewestInstants = 20;
constexpr double kMildPercent = 2.0;  // bias and end: smaller is in order
constexpr double kSlowRiseMs = 1.2;
constexpr double kLongestRiseReadMs = 2.8;
constexpr double kScatterPercent = 1.7;    // rms; smaller is in order
constexpr double kScatterLimit = 3.0;      // rms: peaks reach the limit of the distortion
constexpr long kAsGoodAsAll = 20;          // characters that a window has more than what the rest is of
constexpr double kNoiseTold = 0.05;        // rms
constexpr double kWildPeakPercent = 10.0;  // one instant so far out, the others quiet
constexpr double kGrowth = 1.7;            // of the scatter through the character: the drive may be at work
constexpr double kFewestToCompare = 15.0;  // instants
constexpr long kFewestAtPlace = 8;
constexpr double kStartAlone = 2.0, kStartMore = 1.4;  // share of the start over that of each instant
constexpr double kBounceMs = 0.3;
constexpr double kBounceUnit = 0.05;  // of a unit: a bounce so long is at its limit

long countOf(const Reading& r, Condition to) {
    long n = 0;
    for (const InstantReading& i : r.instants) n += i.to == to ? i.count : 0;
    return n;
}

// Bias or end as read, or by the account of all causes where a lever out of place pulls at the reading.
std::optional<Measured> offset(const std::optional<Measured>& read, const std::optional<DisplacementPattern>& pattern,
                               Measured DisplacementPattern::*part) {
    if (!read || !pattern) return read;
    const Measured& told = (*pattern).*part;
    // The instants of one character share its start, which the places taken one by one do not know of.
    return Measured{pattern->pullsAtReadings() ? told.value : read->value,
                    std::max({told.uncertainty, read->uncertainty, 0.05})};
}

// A start instant off its place shifts all others against it alike: to mark and to space the same way.
bool startIsOff(const Symptoms& s) {
    if (!s.pattern) return false;
    const double bias = s.pattern->bias.value;
    const double end = s.pattern->end.value;
    return std::abs(bias) > kMildPercent && std::abs(end) > kMildPercent &&
           std::abs(bias + end) < 0.25 * std::abs(bias);
}

std::string offsetDoubt(const Symptoms& s) {
    if (!s.pattern || !s.pattern->pullsAtReadings()) return "";
    if (s.pattern->afterShort) return " What short elements do is left out of this figure.";
    return " A lever is out of place as well; its part is left out of this figure. Mend the lever first, then turn the "
           "eccentric.";
}

bool riseExplains(const Symptoms& s, double bias) {
    const double delay = s.riseDelayPercent();
    if (s.slowestRiseMs() < kSlowRiseMs || contactBounce(s)) return false;
    // The form of an edge is learned over a few milliseconds: a slower rise reads short, its delay is at least this.
    const double most = s.slowestRiseMs() > kLongestRiseReadMs ? 3.0 * delay : 1.5 * delay;
    const double least = 0.5 * delay;
    return -bias > std::min(least, most) - 1.0 && -bias < std::max(least, most) + 1.0;
}

double offsetConfidence(const Symptoms& s, const Measured& m) {
    double doubt = s.pattern ? std::min(0.5, s.pattern->left / std::abs(m.value)) : 0.2;
    // What swings or scatters further than the offset leaves a part of itself in the means.
    const double rest = s.reading.distortion.fortuitousRmsPercent.value_or(0.0) + s.largestLinePercent();
    if (rest > std::abs(m.value)) doubt += std::min(1.0, 0.7 * rest / std::abs(m.value));
    if (s.strays()) doubt += 0.3;
    return std::clamp((0.985 - 0.6 * doubt) * chanceBeyond(m.value, m.uncertainty, 0.8 * kMildPercent), 0.05, 0.99);
}

// What the scatter of the last instants is to that of the first ones: unevenness of the drive grows through the
// character, scatter of the contact does not.
double growth(const Symptoms& s) {
    double n[2] = {}, squares[2] = {};
    for (const InstantReading& i : s.reading.instants) {
        if (i.k > 2 && i.k < s.levels) continue;
        const std::size_t late = i.k > 2 ? 1 : 0;
        n[late] += static_cast<double>(i.count);
        squares[late] += static_cast<double>(i.count) * i.rmsPercent * i.rmsPercent;
    }
    if (n[0] < kFewestToCompare || n[1] < kFewestToCompare || !(squares[0] > 0.0)) return 1.0;
    return std::sqrt(squares[1] / n[1] / (squares[0] / n[0]));
}

// How alike the levels are: what they share is suspected sooner than each of them.
std::string placeByPlace(const Symptoms& s, Condition to) {
    double least = 0.0, most = 0.0;
    int places = 0;
    for (const InstantReading& i : shownInstants(s.reading).instants) {
        if (i.to != to || i.k > s.levels || i.count < kFewestAtPlace) continue;
        least = places == 0 ? i.meanPercent : std::min(least, i.meanPercent);
        most = places == 0 ? i.meanPercent : std::max(most, i.meanPercent);
        ++places;
    }
    if (places < 3) return {};
    return " Level by level they lie at " + signedDecimals(least, 1) + " to " + signedDecimals(most, 1) + " %.";
}

// What all instants of a character share over what each has by itself: 1 where the start scatters as much as any other,
// much more where it scatters alone. 0: not known.
double startShare(const Symptoms& s) {
    const auto& d = s.reading.distortion;
    return d.togetherPercent && d.apartPercent.value_or(0.0) > 0.0 ? *d.togetherPercent / *d.apartPercent : 0.0;
}

std::string startWords(const DistortionReading& d) {
    return " All instants of a character share " + percent(*d.togetherPercent) + ", " + percent(*d.apartPercent) +
           " is each one's own";
}

// All that a character is timed by comes early or late, and its instants with it.
void blameStart(Finding& f, const DistortionReading& d) {
    f.title = "The start scatters by " + percent(*d.togetherPercent);
    f.evidence += startWords(d) + ": it is the start they are counted from that comes early or late.";
    f.evidence += " That makes the stop before it long or short as well.";
    f.lookAt =
        "What makes the start: its own contact where it has one (dirt, burnt faces, a loose screw), then its lever, "
        "cam "
        "and spring, and their play. Not a contact that sends the levels too: that would scatter each instant by "
        "itself.";
    f.confirm =
        "Freeze and step from character to character with the arrow keys: within each, all flags are off by about as "
        "much. Clean the start contact and measure again.";
}

// Whether the start is to blame, alone or more than the others.
void partStart(Finding& f, const Symptoms& s) {
    const double share = startShare(s);
    if (share == 0.0) return;
    if (share > kStartAlone) return blameStart(f, s.reading.distortion);
    f.evidence += startWords(s.reading.distortion) +
                  (share > kStartMore ? ": the start scatters more than the others; begin with its contact."
                                      : ": it is not the start.");
}

std::string whatIsLeft(const Symptoms& s) {
    const DistortionReading& d = s.reading.distortion;
    const double rms = *d.fortuitousRmsPercent, noise = s.noisePercent();
    std::string words = d.cyclic ? "With speed, bias, levels and periodic lines taken out, "
                                 : "With speed, bias and levels taken out, ";
    words += percent(rms) + " rms of a unit is left, up to " + percent(d.fortuitousPeakPercent.value_or(rms)) +
             ". Common practice bears " + percent(kScatterLimit) + " rms.";
    if (d.fortuitousOver + kAsGoodAsAll < s.reading.text.characters)
        words += " That is of the last " + std::to_string(d.fortuitousOver) + " characters.";
    if (noise > kNoiseTold) words += " The noise of the input alone would make " + percent(noise, 2) + ".";
    if (!d.cyclic) words += " It is too short yet to tell whether it comes and goes with the drive.";
    return words;
}

}  // namespace

std::optional<RankedFinding> contactOffset(const Symptoms& s) {
    const auto bias = offset(s.reading.distortion.biasPercent, s.pattern, &DisplacementPattern::bias);
    if (!bias || countOf(s.reading, Condition::mark) < kFewestInstants) return std::nullopt;
    if (std::abs(bias->value) < kMildPercent || riseExplains(s, bias->value)) return std::nullopt;
    const bool marking = bias->value > 0.0;
    const bool mild = std::abs(bias->value) <= s.limits.biasPercent;
    Finding f;
    f.id = "contact-offset";
    f.seenAt.instants = {{0, Condition::mark}};
    f.confidence = offsetConfidence(s, *bias);
    f.title = std::string(marking ? "Marks too long by " : "Marks too short by ") + percent(bias->value) +
              (mild ? ", within limits" : "");
    f.evidence = "All instants to mark come " + percent(bias->value) + " of a unit (" +
                 decimals(std::abs(bias->value) * 0.01 * s.unitMs(), 2) + " ms) " + (marking ? "early" : "late") +
                 ", whatever the level; those to space do not." + offsetDoubt(s);
    if (startIsOff(s)) {
        f.evidence += " The instants to space are off by as much the same way: the start instant itself may be " +
                      std::string(marking ? "late" : "early") + ", which cannot be told apart.";
        f.confidence *= 0.8;
    }
    f.lookAt = marking ? "Contact: the gap is too small or the contact closes too early. Contact box eccentric, "
                         "contact spring tension, wear of the contact or of its lever."
                       : "Contact: the gap is too large or the contact closes too late. Contact box eccentric, contact "
                         "spring tension, dirt or burning on the contact.";
    f.confirm = "Turn the contact eccentric a little and watch the bias: it must move for all levels alike." + kUnplug +
                kLoopOff + kNoOil;
    return RankedFinding{f, std::abs(bias->value) / s.limits.biasPercent};
}

std::optional<RankedFinding> endOffset(const Symptoms& s) {
    const auto end = offset(s.reading.distortion.endPercent, s.pattern, &DisplacementPattern::end);
    if (!end || countOf(s.reading, Condition::space) < kFewestInstants) return std::nullopt;
    if (std::abs(end->value) < kMildPercent) return std::nullopt;
    const bool late = end->value > 0.0;
    const bool mild = std::abs(end->value) <= s.limits.endPercent;
    Finding f;
    f.id = "end-offset";
    f.seenAt.instants = {{0, Condition::space}};
    f.confidence = offsetConfidence(s, *end) * (startIsOff(s) ? 0.8 : 1.0);
    f.title = std::string(late ? "Marks end late by " : "Marks end early by ") + percent(end->value) +
              (mild ? ", within limits" : "");
    f.evidence = "Counted from the start of the character, all its other instants to space come " +
                 percent(end->value) + " of a unit (" + decimals(std::abs(end->value) * 0.01 * s.unitMs(), 2) +
                 " ms) " + (late ? "late" : "early") + "." + placeByPlace(s, Condition::space) + offsetDoubt(s);
    f.lookAt =
        late ? "What lets the contact open after a level but not at the start: trailing flanks of the level cams, "
               "transfer levers or their bail that fall back slowly (gum, friction, a weak spring), a contact lever "
               "that sticks where the start has a contact of its own."
             : "What lets the contact open after a level but not at the start: worn trailing flanks of the level cams, "
               "worn transfer levers or bail, too stiff a contact spring where the start has a contact of its own.";
    f.lookAt += startIsOff(s) ? " Or the start instant, from which all others are counted: start cam, clutch."
                              : " One contact for both would be off at the start as well, which shows as bias.";
    f.confirm =
        "With an ohmmeter across the contact turn the machine by hand and see where on the cams it opens, at the start "
        "and after each level. Off its place after all levels alike, look first at what they share, the bail and the "
        "contact lever, then at "
        "cams and levers. In its place "
        "everywhere, it is off at speed alone: clean the pivots and look at the springs." +
        kUnplug + kLoopOff;
    return RankedFinding{f, std::abs(end->value) / s.limits.endPercent};
}

std::optional<RankedFinding> contactBounce(const Symptoms& s) {
    const auto& contact = s.reading.contact;
    const long closures = countOf(s.reading, Condition::mark);
    if (!contact || closures < kFewestInstants || contact->bounces < 4 || contact->longestMs < kBounceMs)
        return std::nullopt;
    const double share = static_cast<double>(contact->bounces) / static_cast<double>(closures);
    if (share < 0.02) return std::nullopt;
    Finding f;
    f.id = "contact-bounce";
    f.seenAt.bounces = true;
    const bool noisy = s.reading.input.snrDb.value_or(0.0) < 16.0;
    f.confidence = noisy ? 0.6 : std::min(0.98, 0.85 + share);
    f.title = "The contact bounces for up to " + decimals(contact->longestMs, 1) + " ms";
    f.evidence = std::to_string(contact->bouncedClosures) + " of " + std::to_string(contact->closures) +
                 " closures bounced, with " + std::to_string(contact->bounces) +
                 " re-openings or halts in all; the longest took " + decimals(contact->longestMs, 2) + " ms (" +
                 percent(100.0 * contact->longestMs / s.unitMs()) + " of a unit) from the first closure to steady.";
    f.lookAt = "Contact, what is easiest to try first: a loose screw or bracket, burnt or dirty faces, spring tension.";
    f.confirm =
        "Look at the front of the marks on the grid: the line falls back after it has closed, or where that is too "
        "short for it halts half way up. Tighten, clean, set the spring, in this order, and measure again after each. "
        "On a battery of 12 V in place of the loop dirt alone can do it, which the loop's higher voltage breaks "
        "through." +
        kUnplug + kLoopOff + kNoOil;
    const double size = contact->longestMs / (kBounceUnit * s.unitMs());
    return RankedFinding{f, 0.5 + size * std::min(1.0, 4.0 * share)};
}

std::optional<RankedFinding> contactScatter(const Symptoms& s) {
    const auto& d = s.reading.distortion;
    const long n = countOf(s.reading, Condition::mark) + countOf(s.reading, Condition::space);
    if (!d.fortuitousRmsPercent || n < 2 * kFewestInstants) return std::nullopt;
    const double rms = *d.fortuitousRmsPercent;
    const double noise = s.noisePercent();
    const double wander = s.steadiness && s.steadiness->wanderRatio > kWanderRatio ? 4.0 * s.steadiness->wander : 0.0;
    const double own = std::sqrt(std::max(0.0, rms * rms - noise * noise - wander * wander));
    const bool wild = own < kScatterPercent && d.fortuitousPeakPercent.value_or(0.0) > kWildPeakPercent &&
                      *d.fortuitousPeakPercent > 8.0 * noise;
    if (own < kScatterPercent && !wild) return std::nullopt;
    const bool bounces = contactBounce(s).has_value();
    Finding f;
    f.id = "contact-scatter";
    f.seenAt.instants = {{0, Condition::mark}, {0, Condition::space}};
    f.title = wild ? "Now and then an instant stands far out, by up to " + percent(*d.fortuitousPeakPercent)
                   : "The instants scatter by " + percent(own) + " at random";
    f.evidence = whatIsLeft(s);
    const bool grows = growth(s) > kGrowth;
    if (grows)
        f.evidence += " It grows through the character, as what the drive does: watch it over more characters first.";
    if (bounces) f.evidence += " The contact bounces as well, which may be the whole cause.";
    f.lookAt =
        "Contact: dirt, burnt faces, a loose contact or bracket; play in the contact lever and in the bearings of "
        "the shaft.";
    f.confirm =
        "Freeze and step from character to character with the arrow keys, best through one that is sent over and over: "
        "flags that change one by one are the contact's, where all of a character change together it is its start. "
        "Clean the contact and measure again.";
    if (!wild && !grows) partStart(f, s);  // the instants share what the drive does as well
    f.confirm += kUnplug + kLoopOff + kNoOil;
    const bool doubtful = bounces || s.strays() || grows || !d.cyclic;
    f.confidence = wild ? 0.4 : (doubtful ? 0.5 : 0.97) * chanceBeyond(own, 2.0 * own / std::sqrt(n), 1.5);
    return RankedFinding{f, wild ? 0.6 : own / kScatterLimit * (bounces ? 0.5 : 1.0)};
}

}  // namespace trueunit
