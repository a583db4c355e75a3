// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/compose_reading.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/frame/code_table.h"
#include "core/measure/decomposition.h"
#include "core/measure/receiving_margin.h"
#include "core/measure/timing.h"
#include "core/report/find_faults.h"
#include "core/report/finding_words.h"
#include "core/report/judge.h"
#include "core/report/overdriven_tone.h"
#include "core/report/reading_notes.h"
#include "core/report/speed_reading.h"
#include "core/report/tape_reading.h"

namespace trueunit {

namespace {

// What the instrument itself may add, 95 %: the card's clock untrimmed (100 parts in a million) and the placing of
// instants (residual of the self-check on noiseless signals).
constexpr double kClockPercent = 0.01;
constexpr double kTrimmedClockPercent = 0.001;
constexpr double kPlacingPercent = 0.01;
constexpr double kClippedPercent = 0.25;  // coupled and cut off: what the card lost is not all known
constexpr double kClipMatters = 0.5;      // percent of the samples
constexpr double kHoldsNominal = 0.005;   // of the unit
constexpr double kBouncePlacing = 5e-5;   // seconds: of the first closure of a contact that bounces
constexpr double kFrontEndShare = 0.015;  // of a demodulator's rise: the largest error met with tones at 30 dB

Measured scaled(Measured m, double factor, double calibration = 0.0) {
    return {m.value * factor, std::hypot(m.uncertainty * std::abs(factor), calibration)};
}

std::vector<const Character*> plain(const std::vector<const LoggedCharacter*>& logged) {
    std::vector<const Character*> out;
    out.reserve(logged.size());
    for (const LoggedCharacter* c : logged) out.push_back(&c->character);
    return out;
}

std::vector<SentCode> sentCodes(const std::vector<const LoggedCharacter*>& logged) {
    std::vector<SentCode> sent;
    for (const LoggedCharacter* c : logged)
        sent.push_back({c->character.code, c->character.stopPresent, c->character.afterGap});
    return sent;
}

TextReading textOf(const std::vector<const LoggedCharacter*>& window, const std::string& code) {
    TextReading text;
    text.code = code;
    text.characters = static_cast<long>(window.size());
    for (const LoggedCharacter* c : window) {
        if (!c->character.stopPresent) ++text.framingErrors;
        text.decoded += c->text;
    }
    return text;
}

void noteParity(Reading& r, const std::vector<const LoggedCharacter*>& window, const CodeTable& code) {
    if (!code.evenParity) return;
    const auto right =
        std::count_if(window.begin(), window.end(), [&](auto* c) { return parityRight(code, c->character.code); });
    r.notes.push_back("Parity is even in " + std::to_string(right) + " of " + std::to_string(window.size()) +
                      " characters.");
}

ContactReading contactOf(const std::vector<const LoggedCharacter*>& window) {
    ContactReading contact;
    for (const LoggedCharacter* c : window) {
        contact.bounces += c->character.bounces;
        contact.longestMs = std::max(contact.longestMs, 1e3 * c->character.longestBounceSeconds);
        for (const Instant& i : c->character.instants) {
            if (i.to != Condition::mark) continue;
            ++contact.closures;
            contact.bouncedClosures += i.steadySeconds > 0.0 ? 1 : 0;
        }
    }
    return contact;
}

// Of the mean instant, by those that bounced.
double bouncePercent(Characters window, double unitSeconds) {
    double bounced = 0.0, closures = 0.0;
    for (const Character* c : window) {
        bounced += c->bounces > 0 ? 1.0 : 0.0;
        for (const Instant& i : c->instants) closures += i.to == Condition::mark ? 1.0 : 0.0;
    }
    return closures > 0.0 ? 100.0 * kBouncePlacing / unitSeconds * std::min(1.0, bounced / closures) : 0.0;
}

// An edge that is hardly over before the next begins is placed by levels that the line seldom comes to, and a coupling
// hides them further: the largest errors met with time constants up to half a unit, from a third of a unit on. Sliced
// off the middle of the swing, all of it tells.
double slowRisePercent(const InputReading& in, double unitSeconds) {
    constexpr double kQuick = 0.3;  // units, 10 to 90 %
    constexpr double kDirect = 4.0, kCoupled = 12.0;
    constexpr double kSliced = 1.5;  // near the corners of the edge
    if (in.frontEndRiseMs > 0.0) return 0.0;
    const double rise = 1e-3 * std::max(in.riseToMarkMs.value_or(0.0), in.riseToSpaceMs.value_or(0.0)) / unitSeconds;
    const double over = std::max(0.0, rise - kQuick);
    const double offMiddle = std::abs(in.slicePercent - 50.0) / 40.0;
    return (in.couplingHz.empty() ? kDirect : kCoupled) * over * over + kSliced * offMiddle * rise;
}

// What a demodulator adds: a part of its own rise, and more the fewer turns the tone makes in a unit, or the two tones
// make against each other, for where in its turn a tone is keyed then tells. The largest errors met.
double frontEndPercent(const InputReading& in, double unitSeconds) {
    constexpr double kTone = 50.0, kTwoTones = 3.0;
    double percent = kFrontEndShare * 0.1 * in.frontEndRiseMs / unitSeconds;
    if (in.kind == InputKind::tone && in.toneHz > 0.0) percent += kTone / std::pow(in.toneHz * unitSeconds, 2.0);
    if (in.shiftHz > 0.0) percent += kTwoTones / std::pow(in.shiftHz * unitSeconds, 4.0);
    return percent;
}

void readDrive(Reading& r, const Options& options, int levels) {
    if (!options.card || !r.speed.baud) return;
    const double baud = r.speed.baud->value;
    const std::optional<Measured>& stop = r.speed.stopUnits;
    r.drive = DriveReading{options.card->title,
                           explainDrive(*options.card, levels, baud, stop ? std::optional(stop->value) : std::nullopt),
                           gearsWanted(*options.card, levels, baud)};
}

void readDistortion(Reading& r, const UnitFit& fit, Characters window, const std::optional<StandardSpeed>& nominal,
                    double frontEndPercent) {
    const double unit = fit.unit.value;
    const double placing = std::hypot(kPlacingPercent, frontEndPercent);
    const double reference = nominal ? nominal->unitSeconds : unit;
    DistortionReading& d = r.distortion;
    if (fit.toMark) d.biasPercent = scaled(*fit.toMark, -100.0 / reference, placing);
    if (fit.toSpace) d.endPercent = scaled(*fit.toSpace, 100.0 / reference, placing);
    d.synchronousPercent = startStopDistortion(window, unit);
    if (nominal) d.grossPercent = startStopDistortion(window, reference);
    for (const InstantStatistics& i : instantStatistics(window, unit))
        r.instants.push_back({i.k, i.to, i.count, i.mean, i.rms, i.least, i.largest});
}

// The ideal receiver runs at the nominal unit.
void readMargin(Reading& r, const std::vector<const LoggedCharacter*>& window, double unit, int levels) {
    const std::vector<const Character*> characters = plain(window);
    const auto range = samplingRange(characters, unit, levels);
    if (!range) return;
    r.margin = MarginReading{100.0 * range->low, 100.0 * range->high};
    const auto bound = [&](const std::optional<BoundingInstant>& at) -> std::optional<MarginBound> {
        if (!at) return std::nullopt;
        const auto where = std::find(characters.begin(), characters.end(), at->character) - characters.begin();
        return MarginBound{100.0 * at->fraction, at->character->number, window[static_cast<std::size_t>(where)]->name};
    };
    for (const LevelRange& l : levelRanges(characters, unit, levels))
        r.margin->levels.push_back({l.level, bound(l.low), bound(l.high)});
}

void readParts(Reading& r, const std::optional<Decomposition>& parts) {
    if (!parts) return;
    DistortionReading& d = r.distortion;
    if (parts->characteristicKnown) d.characteristicPercent = parts->characteristic;
    d.fortuitousRmsPercent = parts->restRms;
    d.fortuitousPeakPercent = parts->restPeak;
    d.fortuitousOver = parts->over;
    if (parts->together > 0.0 || parts->apart > 0.0) {
        d.togetherPercent = parts->together;
        d.apartPercent = parts->apart;
    }
    if (!parts->linesSought) return;
    d.cyclic.emplace();
    for (const PeriodicLine& l : parts->lines) {
        const double period = r.speed.characterMs ? 1e-3 * r.speed.characterMs->value : 0.0;
        d.cyclic->push_back({l.amplitude, l.hz, l.hz * period, l.shiftsStart});
    }
}

// What belongs to the stop is seen in the window itself; a speed that wanders slowly, in more than that alone.
std::optional<Steadiness> steadinessOver(const WindowOfCharacters& characters, double unit, int levels) {
    std::vector<PeriodicLine> lines;
    if (characters.parts) lines = characters.parts->lines;
    auto own = steadinessOf(plain(characters.window), unit, levels, lines);
    const auto more = characters.longer.size() > characters.window.size()
                          ? steadinessOf(plain(characters.longer), unit, levels, lines)
                          : std::nullopt;
    if (!more) return own;
    if (!own) own.emplace();  // too few for the stop
    own->wander = more->wander;
    own->wanderRatio = more->wanderRatio;
    own->blocks = more->blocks;
    return own;
}

// What is measured for the findings' sake alone, and the findings.
void diagnose(Reading& r, const WindowOfCharacters& characters, const Limits& limits, const Options& options,
              int levels, const std::optional<DisplacementPattern>& pattern,
              const std::optional<Steadiness>& steadiness) {
    Symptoms s{r,
               limits,
               options,
               levels,
               {},
               {},
               characters.tape,
               levelShares(sentCodes(characters.window), levels),
               characters.plainText};
    s.pattern = pattern;
    s.steadiness = steadiness;
    r.findings = findFaults(s);
}

}  // namespace

std::optional<StandardSpeed> nominalSpeed(const Options& options, double unitSeconds,
                                          const std::optional<StandardSpeed>& taken, double uncertainty) {
    if (options.baud) return namedSpeed(*options.baud);
    const std::optional<StandardSpeed> nearest = nearestStandardSpeed(unitSeconds);
    const auto off = [unitSeconds](const StandardSpeed& s) { return std::abs(s.unitSeconds / unitSeconds - 1.0); };
    const double bound = nearest ? off(*nearest) : kNominalWithin;
    const double holds = std::max(kHoldsNominal, nearest ? 2.0 * uncertainty / unitSeconds : 0.0);
    return taken && off(*taken) < bound + holds ? taken : nearest;
}

std::optional<Decomposition> partsOf(const WindowOfCharacters& characters) {
    const std::vector<const Character*> window = plain(characters.window);
    const auto fit = fitWindow(window, plain(characters.recent));
    return fit ? decompose(window, *fit) : std::nullopt;
}

std::optional<TapeStudy> tapeOf(const std::vector<const LoggedCharacter*>& seen, std::size_t window,
                                const Options& options) {
    const CodeTable* code = findCode(options.code);
    if (!code) return std::nullopt;
    return studyTape(*code, options.expect, sentCodes(seen), window);
}

std::optional<PlainTextStudy> plainTextOf(const std::vector<const LoggedCharacter*>& seen, const Options& options) {
    const CodeTable* code = findCode(options.code);
    if (!code || !options.expect.empty()) return std::nullopt;
    return studyPlainText(*code, sentCodes(seen));
}

Reading composeReading(const WindowOfCharacters& characters, const Options& options, const Limits& limits,
                       InputReading input) {
    Reading r;
    r.input = std::move(input);
    r.text = textOf(characters.window, options.code);
    r.verdict.limits = limits.name;
    if (characters.window.empty()) return r;

    const CodeTable* code = findCode(options.code);
    const int levels = code ? code->levels : 5;
    if (code) noteParity(r, characters.window, *code);
    const std::vector<const Character*> window = plain(characters.window);
    const std::vector<const Character*> recent = plain(characters.recent);
    const std::optional<UnitFit> fit = fitWindow(window, recent, characters.settledSince);
    if (!fit) {
        r.notes.emplace_back("These characters have too few instants to tell the unit from the bias.");
        return r;
    }
    const auto nominal = nominalSpeed(options, fit->unit.value, characters.taken, fit->unit.uncertainty);
    const std::vector<const Character*>& unitCharacters = window.size() < kUnitCharacters ? recent : window;
    const double clock = options.clockPpm == 0.0 ? kClockPercent : kTrimmedClockPercent;
    r.speed = speedReading(*fit, unitCharacters, nominal, levels, clock);
    r.speed.over = static_cast<long>(unitCharacters.size());
    const std::vector<const Character*> telling = characters.telling.empty() ? window : plain(characters.telling);
    const auto pattern = displacementPattern(telling, fit->unit.value, levels);
    if (pattern && pattern->pullsAtReadings()) {
        r.setAside = SetAsideReading{pattern->bias.value, pattern->end.value, speedErrorBy(*pattern, r.speed)};
        doubtSpeed(r.speed, *pattern);
    }
    const auto steadiness = steadinessOver(characters, fit->unit.value, levels);
    if (steadiness && steadiness->wanders()) r.speed.wanderPercent = std::numbers::sqrt2 * steadiness->wander;
    if (steadiness && steadiness->intervals > 0 && r.speed.stopUnits) r.speed.stopSpreadUnits = steadiness->stopSpread;
    readDrive(r, options, levels);
    const double frontEnd = frontEndPercent(r.input, fit->unit.value);
    const bool tone = r.input.kind == InputKind::tone;
    const bool cut = r.input.clippedPercent > kClipMatters && (tone || !r.input.couplingHz.empty());
    const double cutOff = !cut ? 0.0 : tone ? 0.1 * overdrivenToneMs(r.input) / fit->unit.value : kClippedPercent;
    const double slow = slowRisePercent(r.input, fit->unit.value);
    readDistortion(r, *fit, window, nominal,
                   std::hypot(frontEnd + slow, cutOff, bouncePercent(window, fit->unit.value)));
    if (cut) r.notes.emplace_back("The input is clipped: turn it down; the distortions are less certain.");
    readMargin(r, characters.window, nominal ? nominal->unitSeconds : fit->unit.value, levels);
    readParts(r, characters.parts);
    r.contact = contactOf(characters.window);
    noteWhatIsMissing(r);
    noteShortStop(r, options);
    noteGaps(r);
    noteLevelSteps(r);
    noteBiasChange(r, characters.parts);
    readTape(r, characters.tape, options);
    noteClock(r, options);
    const double placing = std::hypot(kPlacingPercent, frontEnd, slow);
    const bool full =
        options.windowCharacters > 0 && window.size() >= static_cast<std::size_t>(options.windowCharacters);
    r.verdict = judgeReading(r, limits, {clock, placing, std::hypot(placing, (levels + 1) * clock)},
                             {static_cast<long>(window.size()), static_cast<long>(unitCharacters.size()), full});
    for (std::string& note : openNotes(r.verdict)) r.notes.push_back(std::move(note));
    diagnose(r, characters, limits, options, levels, pattern, steadiness);
    return r;
}

}  // namespace trueunit
