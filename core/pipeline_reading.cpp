// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/frame/one_clock.h"
#include "core/measure/steadiness.h"
#include "core/pipeline_stages.h"
#include "core/report/speed_swing.h"

namespace trueunit {

namespace {
constexpr std::size_t kFewestCharacters = 3;
constexpr double kIdleSeconds = 2.0;
constexpr double kListenSeconds = 4.0;  // before a signal is called no start-stop one
constexpr const char* kListening = "Listening for characters. Let the tape run.";
constexpr std::size_t kJudgedCharacters = 64;
constexpr double kMostErrors = 0.25;  // of the last characters: what frames so badly is not start-stop
constexpr std::size_t kLivePartsCharacters = 128;
constexpr std::size_t kLongestParts = 512;  // a slow swing wants some of its turns
constexpr std::uint64_t kPartsEveryCharacters = 16;
constexpr std::size_t kMostTelling = 128;
constexpr double kTellingSeconds = 4.5;  // periodic lines are sought in no less
constexpr std::size_t kMostLonger = 256;
constexpr double kLongerSeconds = 24.0;  // a governor that hunts takes some ten for each swing
constexpr double kDepends = 1.0;         // percent of a unit, on the element before
constexpr std::size_t kShortText = 256;  // characters, held against the last ones in 4 ms

// Whether the tape stands in letters or in figures is known once readers that began in either agree.
void nameDue(std::vector<TapeCharacter>& characters, const std::vector<TapePlace>& places, const CodeTable& code) {
    Decoder inLetters(code, Shift::letters), inFigures(code, Shift::figures);
    const auto nameOf = [&](unsigned hole) {
        const std::string name = inLetters.name(hole);
        return inFigures.name(hole) == name ? name : std::string();
    };
    for (std::size_t i = 0; i < characters.size(); ++i) {
        TapeCharacter& c = characters[i];
        for (const unsigned hole : c.passed) c.passedPrint.push_back(nameOf(hole));
        const std::string name = nameOf(places[i].hole.value_or(c.code));
        if (c.due || places[i].hole == c.code) c.duePrint = name;
    }
}

// A few turns of a slow swing look like quick lines, and until it is found itself nothing is said of what swings.
void leaveTheSwingOpen(DistortionReading& d) {
    if (!d.cyclic) return;
    std::erase_if(*d.cyclic, maySwingSlowly);
    if (d.cyclic->empty()) d.cyclic.reset();
}

// What was made by the step itself.
void forgetWhatStraddles(Reading& r) {
    r.distortion.cyclic.reset();
    r.distortion.fortuitousRmsPercent.reset();
    r.distortion.fortuitousPeakPercent.reset();
}

}  // namespace

InputReading Pipeline::Stages::inputReading() const {
    InputReading in;
    in.rateHz = rateHz;
    in.seconds = static_cast<double>(heard + pending.size()) / rateHz;
    in.slicePercent = options.slicePercent;
    in.gaps = gaps;
    in.levelSteps = levelSteps;
    in.clippedPercent = meter.clippedPercent();
    if (meter.peak() > 0.0F) in.peakDbfs = 20.0 * std::log10(static_cast<double>(meter.peak()));
    if (!edges) return in;
    if (const auto& tones = line().tones) {
        in.frontEndRiseMs = 1e3 * ToneDemodulator(*tones, rateHz).riseSeconds();
        in.toneHz = tones->lowHz;
        in.shiftHz = tones->kind == InputKind::twoTone ? tones->highHz - tones->lowHz : 0.0;
    }
    in.kind = line().tones ? line().tones->kind : InputKind::loop;
    if (framing.framed()) in.inverted = framing.framing().inverted;
    in.couplingHz = line().fit.coupling.cornersHz();
    const EdgeTimer& timer = edges->timer();
    if (const double hum = edges->humPeakToPeak(line().fit.coupling); hum > 0.0) in.humPercent = 100.0 * hum;
    in.riseToMarkMs = 1e3 * timer.riseSamples(!in.inverted.value_or(false)) / rateHz;
    in.riseToSpaceMs = 1e3 * timer.riseSamples(in.inverted.value_or(false)) / rateHz;
    if (const double noise = timer.noiseRms(); noise > 0.0) in.snrDb = 20.0 * std::log10(0.5 / noise);
    return in;
}

// A signal that begins in the middle of a character may be refused at first.
bool Pipeline::Stages::stillListening() const {
    return meter.everHeard() && static_cast<double>(heard) * secondsPerSample < kListenSeconds;
}

NoReading Pipeline::Stages::whyNoReading() const {
    if (!meter.everHeard()) return NoReading::silent;
    const bool few = log.size() < kFewestCharacters && !refused;
    if ((refused || edges) && framing.onlyAlternates()) return NoReading::alternates;
    if (edges && few && framing.mayYetFrame()) return NoReading::tooFew;
    if (refused || edges) return NoReading::notStartStop;
    return finished && finder.heldHasSteps() ? NoReading::tooFew : NoReading::steady;
}

void Pipeline::Stages::studyTape(std::size_t seen, std::size_t window) {
    tape = tapeOf(log.last(seen), std::max(window, std::min(kLevelsCharacters, log.size())), options);
    plainText.reset();
    if (!tape) plainText = plainTextOf(log.last(std::max(kPlainTextCharacters, window)), options);
    tapeEnd = log.back().character.number;
}

// What each character of the tape should have been.
void Pipeline::Stages::fillDue(std::vector<TapeCharacter>& characters) const {
    const bool presumed = !tape && plainText && plainText->probability >= kPlainTextTold;
    if (!tape && !presumed) return;
    const auto asHole = [](std::optional<unsigned> meant) { return TapePlace{meant, meant.has_value(), false, {}}; };
    const std::size_t known = tape ? tape->places.size() : plainText->meant.size();
    std::vector<TapePlace> places(characters.size());
    for (std::size_t i = 0; i < characters.size(); ++i) {
        TapeCharacter& c = characters[i];
        if (c.number > tapeEnd || tapeEnd - c.number >= known) continue;
        const std::size_t at = known - 1 - (tapeEnd - c.number);
        places[i] = tape ? tape->places[at] : asHole(plainText->meant[at]);
        if (places[i].tells)
            c.due = places[i].hole;
        else if (places[i].hole != c.code && c.stopPresent)
            c.instead = places[i].hole;
        c.presumed = presumed && c.due;
        c.again = places[i].again;
        c.passed = places[i].passed;
    }
    nameDue(characters, places, *code);
}

bool Pipeline::Stages::onOneClock(const std::vector<const LoggedCharacter*>& recent) const {
    std::vector<const Character*> characters;
    for (const LoggedCharacter* c : recent) characters.push_back(&c->character);
    return runsOnOneClock(characters, newestUnit);
}

// A running window takes anew every few characters only what is slow to find; what is quick with each.
void Pipeline::Stages::followParts(const WindowOfCharacters& asked, std::size_t seen) {
    const std::uint64_t newest = log.back().character.number;
    const std::size_t take = std::min(asked.window.size(), wanders ? kLongestParts : kLivePartsCharacters);
    const std::uint64_t since = picture.settledSince();
    const bool clean = partsFirst < since && newest + 1 - std::min<std::uint64_t>(take, newest + 1) >= since;
    const bool due = newest >= partsDue || partsSince != since || clean;
    if (due) partsDue = newest + kPartsEveryCharacters;
    partsSince = since;
    if (due || (asked.window.size() < kUnitCharacters && newest != partsEnd)) {
        partsFirst = log.last(take).front()->character.number;
        parts = partsOf({log.last(take), asked.recent, {}, {}, {}});
        partsEnd = newest;
    }
    if (due || (!causeParts && telling(asked).size() < asked.window.size())) studyCause(asked);
    const bool known = !options.expect.empty() && options.expect.size() <= kShortText;  // need not be looked for
    if (due || (known && newest != tapeEnd)) studyTape(seen, asked.window.size());
}

Reading Pipeline::Stages::reading(bool final) {
    firm.reset();
    findingsOver = 0;
    const auto recent = log.last(kJudgedCharacters);
    const auto bad = std::count_if(recent.begin(), recent.end(), [](auto* c) { return !c->character.measurable(); });
    if (log.size() < kFewestCharacters || static_cast<double>(bad) > kMostErrors * static_cast<double>(recent.size()) ||
        onOneClock(recent)) {
        Reading r = composeReading({}, options, limits, inputReading());
        if (!final && stillListening()) {
            r.notes.emplace_back(kListening);
            return r;
        }
        const NoReading why = whyNoReading();
        r.notes.push_back(sentenceOf(why));
        r.findings = findingsOfNothing(why, r.input);
        if (r.findings->empty()) r.findings.reset();  // no cause can be told
        return r;
    }
    const auto n = static_cast<std::size_t>(options.windowCharacters);
    WindowOfCharacters characters{log.last(n), log.last(n == 0 ? 0 : std::max(kUnitCharacters, n)), {}, {}, {}};
    characters.longer = lastSeconds(kLongerSeconds, kMostLonger);
    wanders = speedWanders();
    const std::size_t seen = n == 0 && final ? 0 : std::max(kTapeCharacters, n);
    if (final) {
        characters.parts = partsOf(characters);
        studyTape(seen, characters.window.size());
        studyCause(characters);
    } else {
        followParts(characters, seen);
        characters.parts = parts;
    }
    characters.tape = tape;
    characters.plainText = plainText;
    characters.telling = telling(characters);
    characters.settledSince = picture.settledSince();
    if (!final) characters.taken = taken;
    Reading r = composeReading(characters, options, limits, inputReading());
    firmUp(r, characters);
    if (wanders && (!final || n != 0)) leaveTheSwingOpen(r.distortion);
    takeNominal(r.speed);
    if (findingsOver >= kFewestForFindings) return r;
    r.findings.reset();
    r.notes.emplace_back("Too few characters yet to tell a cause: let the tape run.");
    return r;
}

std::vector<const LoggedCharacter*> Pipeline::Stages::lastSeconds(double seconds, std::size_t most) const {
    std::vector<const LoggedCharacter*> last = log.last(most);
    const double since = last.back()->character.start - seconds;
    std::erase_if(last, [since](auto* c) { return c->character.start < since; });
    return last;
}

// To a few seconds a slow swing is a wrong speed, and the next ones another.
bool Pipeline::Stages::speedWanders() const {
    std::vector<const Character*> longer;
    for (const LoggedCharacter* c : lastSeconds(kLongerSeconds, kMostLonger)) longer.push_back(&c->character);
    const std::optional<Decomposition>& known = causeParts ? causeParts : parts;
    const auto steadiness =
        steadinessOf(longer, newestUnit, code->levels, known ? known->lines : std::vector<PeriodicLine>{});
    return steadiness && steadiness->wanders();
}

// A window for adjusting is too short to tell a cause by, or to prove a repair: the last seconds are asked, as many as
// it takes to tell what is periodic from what is random. What came before the last nudge is left out: a step
// made by hand would pass for scatter, or for a shaft. All of a recording is all of it.
std::vector<const LoggedCharacter*> Pipeline::Stages::telling(const WindowOfCharacters& asked) const {
    std::vector<const LoggedCharacter*> last =
        wanders ? lastSeconds(kLongerSeconds, kMostLonger) : lastSeconds(kTellingSeconds, kMostTelling);
    if (last.size() < asked.recent.size()) last = asked.recent;
    if (last.size() < asked.window.size()) last = asked.window;
    if (options.windowCharacters != 0)
        std::erase_if(last, [since = picture.settledSince()](auto* c) { return c->character.number < since; });
    return last;
}

void Pipeline::Stages::studyCause(const WindowOfCharacters& asked) {
    const auto characters = telling(asked);
    causeParts.reset();
    if (characters.size() != asked.window.size()) causeParts = partsOf({characters, characters, {}, {}, {}});
}

void Pipeline::Stages::takeNominal(const SpeedReading& speed) {
    taken.reset();
    if (speed.nominalBaud) taken = StandardSpeed{*speed.nominalBaud, 1e-3 * *speed.nominalUnitMs};
    picture.take(taken);
}

void Pipeline::Stages::firmUp(Reading& r, const WindowOfCharacters& asked) {
    const auto characters = telling(asked);
    findingsOver = characters.size();
    if (characters.size() == asked.window.size()) return;
    const bool straddles = characters.size() < asked.window.size();
    if (straddles && characters.size() < kFewestForFindings) return forgetWhatStraddles(r);
    const WindowOfCharacters wide{characters,   characters,      causeParts || straddles ? causeParts : asked.parts,
                                  asked.tape,   asked.plainText, {},
                                  asked.longer, asked.taken};
    FirmReading more{characters.size(), composeReading(wide, options, limits, inputReading()), {}};
    if (drawn && more.reading.speed.unitMs) more.dots = dotsOf(characters, 1e-3 * *more.reading.speed.unitMs);
    const DistortionReading& told = more.reading.distortion;
    r.findings = more.reading.findings;
    // To a window too short to tell it from chance a swing is scatter, and so is what the element before does.
    // A few turns of a slow swing look like a quick one.
    const bool depends = !r.distortion.characteristicPercent && told.characteristicPercent.value_or(0.0) > kDepends;
    const bool swings =
        depends || straddles || wanders || (!r.distortion.cyclic && told.cyclic && !told.cyclic->empty());
    if (straddles || wanders || !r.distortion.cyclic) r.distortion.cyclic = told.cyclic;
    if (swings || !r.distortion.fortuitousRmsPercent) r.distortion.fortuitousRmsPercent = told.fortuitousRmsPercent;
    if (swings) r.distortion.fortuitousPeakPercent = told.fortuitousPeakPercent;
    if (!straddles) firm = std::make_shared<const FirmReading>(std::move(more));
}

void Pipeline::Stages::describe(Snapshot& s) const {
    const double now = static_cast<double>(heard) * secondsPerSample;
    if (meter.count() == 0) {
        s.state = SignalState::waiting;
        s.stateText = "Waiting for the first samples.";
    } else if (framing.framed()) {
        const bool rests = !log.empty() && now - log.back().character.start > kIdleSeconds;
        s.state = rests ? SignalState::idle : SignalState::reading;
        if (rests) s.stateText = "The line rests; the readings are those of the last characters.";
    } else if (!meter.hearing()) {
        s.state = SignalState::silent;
        s.stateText = "The input is silent. Is the loop connected and the right input chosen?";
    } else {
        s.state = SignalState::searching;
        s.stateText = !refused || stillListening() ? kListening
                      : framing.onlyAlternates()
                          ? "One mark and one space only repeat: send RY, or any text."
                          : "There is a signal, but it does not fall into start-stop characters.";
    }
}

}  // namespace trueunit
