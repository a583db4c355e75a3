// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/find_faults.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "core/report/finding_rules.h"
#include "core/report/finding_words.h"
#include "core/report/judge.h"

namespace trueunit {

namespace {

constexpr long kFewOfWhatIsRare = 100;  // characters
constexpr long kFewestInOrder = 24;
constexpr double kInDoubt = 0.5;       // of the confidence is left beside an input that spoils the readings
constexpr double kTextUnknown = 0.12;  // of the confidence that all is in order: lost marks would not be seen
constexpr double kTextPlain = 0.09;    // likewise: of half of them something would show
constexpr long kPlainTells = 200;      // characters
constexpr double kNoSuspicion = 0.1;
constexpr double kMinor = 0.6;  // of the confidence is left of a doubtful trifle beside what is out of limits
constexpr double kSurely = 0.9;
constexpr double kLeastConfidence = 0.1;  // what is less sure is nothing to run after
constexpr double kOverdrivenPercent = 1.0;

constexpr std::array<Rule, 18> kRules = {contactOffset, endOffset,   contactBounce,   contactScatter, levelDropout,
                                         levelStuck,    levelLate,   secondLevelLate, feedSlip,       wrongSpeed,
                                         unsteadySpeed, cyclicDrive, tripLate,        slowRise,       weakSignal,
                                         hum,           clipped,     reversed};

// Whether lost marks would probably have shown though the text is not known.
bool plainTextClears(const Symptoms& s) {
    return s.plainText && s.plainText->plain && s.plainText->characters >= kPlainTells &&
           s.plainText->probability < kNoSuspicion;
}

std::string levelWords(const Symptoms& s) {
    if (s.tape)
        return " No level lost a mark or filled a space more than chance would have it." + learnedWords(s.tape->source);
    if (plainTextClears(s))
        return " The text is not known. It reads much like plain text; a level that now and then loses a mark or fills "
               "a space may hide in it.";
    return " The text is not known, so lost marks and filled spaces were not counted.";
}

Finding inOrder(const Symptoms& s) {
    const Reading& r = s.reading;
    Finding f;
    f.id = "in-order";
    f.title = s.tape ? "In order: nothing stands out" : "The timing is in order; lost marks cannot be counted";
    const long n = r.text.characters;
    f.evidence = "Over " + std::to_string(n) + " characters";
    if (r.distortion.biasPercent)
        f.evidence += " bias is " + signedDecimals(r.distortion.biasPercent->value, 1) + " %,";
    if (r.distortion.endPercent)
        f.evidence += " end distortion " + signedDecimals(r.distortion.endPercent->value, 1) + " %,";
    if (r.speed.errorPercent) f.evidence += " speed error " + signedDecimals(r.speed.errorPercent->value, 2) + " %,";
    if (r.distortion.synchronousPercent)
        f.evidence +=
            " and no instant is further off than " + percent(*r.distortion.synchronousPercent) + " of a unit.";
    f.evidence += levelWords(s);
    f.lookAt = s.tape ? "Nothing; leave the adjustments as they are."
                      : "Nothing in the timing; leave the adjustments as they are.";
    f.confirm = s.tape ? "Keep this reading in the logbook to compare with at the next visit."
                       : "Run a tape of known text (RY or the fox sentence) to have the levels counted as well.";
    const double unknown = s.tape ? 0.0 : plainTextClears(s) ? kTextPlain : kTextUnknown;
    if (n < kFewOfWhatIsRare) f.confirm += " More characters make this surer: what is rare shows only then.";
    f.confidence = std::clamp(0.98 - 3.0 / static_cast<double>(n) - unknown, 0.5, 0.97);
    return f;
}

// Beside a fault out of limits a small one is easily a shadow of it.
void doubtTrifles(std::vector<RankedFinding>& ranked) {
    if (ranked.empty() || ranked.front().severity < 1.0) return;
    for (RankedFinding& r : ranked)
        if (r.severity >= kMentioned && r.severity < 1.0 && r.finding.confidence < kSurely)
            r.finding.confidence *= kMinor;
}

// A single lost mark is a trifle, and yet no limit allows it.
bool outByItself(const Symptoms& s, const std::string& id) {
    static constexpr std::array<std::pair<const char*, const char*>, 3> kKeys = {
        {{"level-dropout", "marks_missed"}, {"level-stuck", "spaces_filled"}, {"feed-slip", "feed_slips"}}};
    return std::any_of(kKeys.begin(), kKeys.end(),
                       [&](const auto& of) { return id == of.first && exceeds(s.reading.verdict, of.second); });
}

bool isOfSender(const Finding& f) {
    static constexpr std::array kOfInput = {"weak-signal", "hum", "clipped", "reversed"};
    return std::find(kOfInput.begin(), kOfInput.end(), f.id) == kOfInput.end();
}

// What is out has a cause: where no finding is beyond its own limit, the worst of those that are sure of it is.
void blameForWhatIsOut(const Symptoms& s, std::vector<Finding>& findings) {
    const bool out = exceeds(s.reading.verdict, "gross_percent") || exceeds(s.reading.verdict, "synchronous_percent");
    const auto beyond = [](const Finding& f) { return isFault(f) && !f.minor; };
    if (!out || std::any_of(findings.begin(), findings.end(), beyond)) return;
    const auto worst = std::find_if(findings.begin(), findings.end(),
                                    [](const Finding& f) { return isSureFault(f) && isOfSender(f); });
    if (worst != findings.end()) worst->minor = false;
}

bool mayBeInOrder(const Symptoms& s) {
    const Reading& r = s.reading;
    return r.text.characters >= kFewestInOrder && r.verdict.within.value_or(false) &&
           50 * r.text.framingErrors <= r.text.characters;
}

}  // namespace

std::vector<Finding> findFaults(const Symptoms& s) {
    if (!s.reading.valid() || s.reading.text.characters < static_cast<long>(kFewestForFindings)) return {};
    std::vector<RankedFinding> ranked;
    for (const Rule rule : kRules)
        if (auto found = rule(s)) ranked.push_back(std::move(*found));
    for (RankedFinding& r : ranked) r.finding.minor = r.severity <= 1.0 && !outByItself(s, r.finding.id);
    std::stable_sort(ranked.begin(), ranked.end(), [](const RankedFinding& a, const RankedFinding& b) {
        return a.severity != b.severity ? a.severity > b.severity : a.finding.confidence > b.finding.confidence;
    });
    if (!ranked.empty() && ranked.front().severity >= kFirst)
        for (auto r = ranked.begin() + 1; r != ranked.end(); ++r) r->finding.confidence *= kInDoubt;
    doubtTrifles(ranked);
    std::erase_if(ranked, [](const RankedFinding& r) { return r.finding.confidence < kLeastConfidence; });
    std::vector<Finding> out;
    for (const RankedFinding& r : ranked)
        if (r.severity >= kMentioned) out.push_back(r.finding);
    if (out.empty() && mayBeInOrder(s)) out.push_back(inOrder(s));
    for (const RankedFinding& r : ranked)
        if (r.severity < kMentioned && r.severity >= kRemark) out.push_back(r.finding);
    blameForWhatIsOut(s, out);
    return out;
}

std::string sentenceOf(NoReading why) {
    switch (why) {
        case NoReading::silent:
            return "No signal: the input is silent.";
        case NoReading::steady:
            return "No signal: nothing that switches between two levels.";
        case NoReading::tooFew:
            return "Too few characters for a reading: let the tape run.";
        case NoReading::alternates:
            return "No unit can be told: one mark and one space only repeat. Send RY, or any text.";
        case NoReading::notStartStop:
            break;
    }
    return "Not start-stop: there is a signal, but it does not fall into characters.";
}

std::vector<Finding> findingsOfNothing(NoReading why, const InputReading& input) {
    std::vector<Finding> out;
    Finding f;
    f.confidence = 0.95;
    f.confirm = "Open and close the contact by hand, slowly, and watch the line on the grid." + kUnplug + kLoopOff;
    if (why == NoReading::alternates) {
        f.id = "not-start-stop";
        f.title = "One mark and one space repeat: nothing in them tells the unit";
        f.evidence =
            "One character held down that has a single stretch of mark or of space (letters, blank, T, O, M, V) makes "
            "such a signal, and so does hum. Speed and bias cannot be told apart in it.";
        f.lookAt =
            "Send RY, or any text. If a text is running: is this the right input, and the right pair of the loop?";
    } else if (why == NoReading::notStartStop) {
        f.id = "not-start-stop";
        f.confidence = 0.6;  // a keyed line that slow edges and a narrow coupling deform looks the same
        f.title = "There is a signal, but it cannot be read as start-stop";
        f.evidence =
            "The line switches between two levels, but neither way round do its changes fall into characters of "
            "start, levels and stop. A sender heard through a very narrow coupling, or with very slow edges, may look "
            "the same.";
        f.lookAt =
            "Is this the right input, and the right pair of the loop? Synchronous signals, speech and music, and a "
            "receiver tuned beside the tones look like this.";
    } else {
        f.id = "no-signal";
        const bool silent = why == NoReading::silent;
        f.title = silent ? "The input is silent" : "Nothing on the input switches between two levels";
        f.evidence = input.peakDbfs ? "The largest sample lies " + decimals(*input.peakDbfs, 0) + " dB of full scale."
                                    : "Every sample is zero.";
        f.lookAt =
            "Right input chosen, right recording? Cable, stage, gain; is the loop closed and fed, does the tape run?";
    }
    if (why != NoReading::tooFew) out.push_back(f);
    if (input.clippedPercent > kOverdrivenPercent) {
        f.id = "clipped";
        f.confidence = 0.9;
        f.title = "The input is overdriven: " + percent(input.clippedPercent) + " of the samples clip";
        f.evidence = "Flattened samples may be why nothing can be read.";
        f.lookAt = "Input gain of the sound card, microphone boost, the stage or divider at the loop.";
        f.confirm = "Turn the gain down until the level meter shows no clipping, then measure again." + kLoopOff;
        out.insert(out.begin(), f);
    }
    return out;
}

}  // namespace trueunit
