// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipeline.h"

#include <algorithm>
#include <cmath>
#include <deque>
#include <optional>
#include <utility>
#include <vector>

#include "core/acquire/level_meter.h"
#include "core/condition/line_finder.h"
#include "core/detect/edge_finder.h"
#include "core/frame/code_table.h"
#include "core/frame/framing_follower.h"
#include "core/frame/one_clock.h"
#include "core/measure/character_log.h"
#include "core/report/compose_reading.h"
#include "core/report/find_faults.h"
#include "core/report/picture.h"

namespace trueunit {

// Everything learned of one input, enough to read it again from its beginning.
struct LineModel {
    FoundLine line;
    std::array<EdgeShape, 2> shapes;
};

namespace {
constexpr std::size_t kChunk = 256;  // all stages move in steps of this many samples
constexpr double kHoldUnits = 0.3;   // bounce must be over within this part of a unit
constexpr double kLongestHoldSeconds = 0.006;
constexpr std::size_t kFewestCharacters = 3;
constexpr double kIdleSeconds = 2.0;
constexpr std::size_t kJudgedCharacters = 64;
constexpr double kMostErrors = 0.25;  // of the last characters: what frames so badly is not start-stop
constexpr std::size_t kStamps = 1024;
constexpr std::size_t kLivePartsCharacters = 128;
constexpr std::uint64_t kPartsEveryCharacters = 16;
}  // namespace

struct Pipeline::Stages {
    Stages(double rate, Options o, Limits l)
        : rateHz(rate),
          options(std::move(o)),
          limits(std::move(l)),
          code(findCode(options.code)),
          secondsPerSample(1.0 / (rate * (1.0 + 1e-6 * options.clockPpm))),
          finder(rate, options.input, options.tonesHz),
          framing(code->levels, secondsPerSample),
          decoder(*code),
          picture(options, code->levels, secondsPerSample) {}

    double rateHz;
    Options options;
    Limits limits;
    const CodeTable* code;
    double secondsPerSample;

    // Intake
    std::vector<float> pending;  // less than a chunk
    std::uint64_t heard = 0;     // number of the next sample, gaps included
    std::optional<std::uint64_t> expected;
    std::deque<std::pair<std::uint64_t, std::int64_t>> stamps;  // sample number after a block, its stamp
    LevelMeter meter;
    long gaps = 0;
    std::uint64_t lost = 0;

    // The path
    LineFinder finder;
    std::optional<EdgeFinder> edges;
    FramingFollower framing;
    Decoder decoder;
    CharacterLog log;
    Picture picture;
    std::shared_ptr<const LineModel> given;
    bool refused = false;  // there was a signal and it was no start-stop one

    std::optional<Decomposition> parts;  // of the last characters, for a running window
    std::optional<TapeStudy> tape;       // likewise
    std::uint64_t tapeEnd = 0;           // number of the newest character in it
    std::uint64_t partsDue = 0;          // number of the character that makes them due again
    bool finished = false;               // nothing more is to come: parts are of the whole window
    std::int64_t newestStamp = 0;
    std::uint64_t serial = 0;

    void intake(std::span<const float> samples);
    void chunk(std::span<const float> samples);
    void gap(std::uint64_t missing);
    void openLine(const FoundLine& line);
    void closeLine();
    void takeEdges(const std::vector<Edge>& found, double knownTo);
    void heed(FramingFollower::Event event);
    void takeCharacters(const std::vector<Character>& characters);
    void keepStamp(const Character& c);
    InputReading inputReading() const;
    NoReading whyNoReading() const;
    bool onOneClock(const std::vector<const LoggedCharacter*>& recent) const;
    Reading reading(bool final);
    void studyTape(std::size_t seen, std::size_t window);
    void fillDue(std::vector<TapeCharacter>& characters) const;
    void describe(Snapshot& s) const;
};

void Pipeline::Stages::intake(std::span<const float> samples) {
    while (!samples.empty()) {
        if (pending.empty() && samples.size() >= kChunk) {  // the common case copies nothing
            chunk(samples.first(kChunk));
            samples = samples.subspan(kChunk);
            continue;
        }
        const std::size_t take = std::min(kChunk - pending.size(), samples.size());
        pending.insert(pending.end(), samples.begin(), samples.begin() + static_cast<std::ptrdiff_t>(take));
        samples = samples.subspan(take);
        if (pending.size() == kChunk) chunk(std::exchange(pending, {}));
    }
}

void Pipeline::Stages::chunk(std::span<const float> samples) {
    meter.push(samples, rateHz);
    const std::uint64_t now = std::exchange(heard, heard + samples.size());
    if (edges) {
        std::vector<Edge> found;
        edges->push(samples, found);
        takeEdges(found, edges->knownTo());
    } else if (finder.push(samples, now, meter.hearing() && !given)) {
        openLine(finder.found());
    } else if (given) {
        openLine(given->line);
    }
}

void Pipeline::Stages::openLine(const FoundLine& line) {
    edges.emplace(line, rateHz, 0.01 * options.slicePercent, finder.heldFrom());
    if (given) {
        edges->setShapes(given->shapes);
        edges->keepCoupling();
    }
    const std::vector<float> held = finder.release();
    for (std::size_t i = 0; i < held.size() && edges; i += kChunk) {
        std::vector<Edge> found;
        edges->push(std::span(held).subspan(i, std::min(kChunk, held.size() - i)), found);
        takeEdges(found, edges->knownTo());
    }
}

void Pipeline::Stages::closeLine() {
    edges.reset();
    given.reset();
    framing.reset();
    finder.release();
}

void Pipeline::Stages::takeEdges(const std::vector<Edge>& found, double knownTo) {
    heed(framing.push(found));
    if (!edges) return;
    std::vector<Character> characters;
    framing.advance(knownTo * secondsPerSample, characters);
    takeCharacters(characters);
}

void Pipeline::Stages::heed(FramingFollower::Event event) {
    using Event = FramingFollower::Event;
    if (event == Event::none) return;
    if (event == Event::refused) {
        refused = true;
        closeLine();
        return;
    }
    if (event == Event::takenBack) {
        log.clear();
        picture.clear();
        parts.reset();
        tape.reset();
        partsDue = 0;
    }
    decoder.reset();
    if (!framing.framed()) return;
    refused = false;
    edges->setMarkIsLow(framing.framing().inverted);
    edges->setHold(rateHz * std::min(kLongestHoldSeconds, kHoldUnits * framing.framing().unitSeconds));
}

void Pipeline::Stages::takeCharacters(const std::vector<Character>& characters) {
    for (const Character& c : characters) {
        LoggedCharacter entry;
        entry.name = decoder.name(c.code);
        entry.text = decoder.text(c.code);
        entry.character = c;
        log.add(std::move(entry));
        picture.add(log.back(), log, framing.framing(), edges->timer());
        keepStamp(c);
    }
    if (characters.empty()) return;
    std::vector<const Character*> recent;
    for (const LoggedCharacter* c : log.last(kUnitCharacters)) recent.push_back(&c->character);
    heed(framing.follow(recent));
}

void Pipeline::Stages::keepStamp(const Character& c) {
    const double ended = (c.start + (code->levels + 1) * framing.framing().unitSeconds) / secondsPerSample;
    while (stamps.size() > 1 && static_cast<double>(stamps.front().first) < ended) stamps.pop_front();
    if (!stamps.empty()) newestStamp = stamps.front().second;
}

// Nothing is carried over the missing samples: the line is looked for again, the framing begins anew.
void Pipeline::Stages::gap(std::uint64_t missing) {
    ++gaps;
    lost += missing;
    pending.clear();
    heard = *expected + missing;
    closeLine();
    meter.forgetRecent();
}

InputReading Pipeline::Stages::inputReading() const {
    InputReading in;
    in.rateHz = rateHz;
    in.seconds = static_cast<double>(heard + pending.size()) / rateHz;
    in.slicePercent = options.slicePercent;
    in.gaps = gaps;
    in.clippedPercent = meter.clippedPercent();
    if (meter.peak() > 0.0F) in.peakDbfs = 20.0 * std::log10(static_cast<double>(meter.peak()));
    if (!edges) return in;
    in.kind = edges->line().tones ? edges->line().tones->kind : InputKind::loop;
    in.frontEndRiseMs = 1e3 * edges->frontEndRiseSeconds();
    if (framing.framed()) in.inverted = framing.framing().inverted;
    in.couplingHz = edges->line().fit.coupling.cornersHz();
    const EdgeTimer& timer = edges->timer();
    if (const double hum = edges->humPeakToPeak(); hum > 0.0) in.humPercent = 100.0 * hum;
    in.riseToMarkMs = 1e3 * timer.riseSamples(!in.inverted.value_or(false)) / rateHz;
    in.riseToSpaceMs = 1e3 * timer.riseSamples(in.inverted.value_or(false)) / rateHz;
    if (const double noise = timer.noiseRms(); noise > 0.0) in.snrDb = 20.0 * std::log10(0.5 / noise);
    return in;
}

NoReading Pipeline::Stages::whyNoReading() const {
    if (!meter.everHeard()) return NoReading::silent;
    return refused || edges ? NoReading::notStartStop : NoReading::steady;
}

void Pipeline::Stages::studyTape(std::size_t seen, std::size_t window) {
    tape = tapeOf(log.last(seen), window, options);
    tapeEnd = log.back().character.number;
}

// What each character of the tape should have been.
void Pipeline::Stages::fillDue(std::vector<TapeCharacter>& characters) const {
    if (!tape) return;
    for (TapeCharacter& c : characters)
        if (c.number <= tapeEnd && tapeEnd - c.number < tape->expected.size())
            c.due = tape->expected[tape->expected.size() - 1 - (tapeEnd - c.number)];
}

bool Pipeline::Stages::onOneClock(const std::vector<const LoggedCharacter*>& recent) const {
    if (!framing.framed()) return false;
    std::vector<const Character*> characters;
    for (const LoggedCharacter* c : recent) characters.push_back(&c->character);
    return runsOnOneClock(characters, framing.framing().unitSeconds);
}

// A running window takes the parts of the displacement anew every few characters only.
Reading Pipeline::Stages::reading(bool final) {
    const auto recent = log.last(kJudgedCharacters);
    const auto bad = std::count_if(recent.begin(), recent.end(), [](auto* c) { return !c->character.measurable(); });
    if (log.size() < kFewestCharacters || static_cast<double>(bad) > kMostErrors * static_cast<double>(recent.size()) ||
        onOneClock(recent)) {
        Reading r = composeReading({}, options, limits, inputReading());
        r.notes.push_back(sentenceOf(whyNoReading()));
        r.findings = findingsOfNothing(whyNoReading(), r.input);
        return r;
    }
    const auto n = static_cast<std::size_t>(options.windowCharacters);
    WindowOfCharacters characters{log.last(n), log.last(n == 0 ? 0 : std::max(kUnitCharacters, n)), {}, {}};
    const std::size_t seen = n == 0 && final ? 0 : std::max(kTapeCharacters, n);
    if (final) {
        characters.parts = partsOf(characters);
        studyTape(seen, characters.window.size());
    } else {
        if (log.back().character.number >= partsDue) {
            const std::size_t take = n == 0 ? kLivePartsCharacters : std::min(n, kLivePartsCharacters);
            parts = partsOf({log.last(take), characters.recent, {}, {}});
            studyTape(seen, characters.window.size());
            partsDue = log.back().character.number + kPartsEveryCharacters;
        }
        characters.parts = parts;
    }
    characters.tape = tape;
    return composeReading(characters, options, limits, inputReading());
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
        s.stateText = refused ? "There is a signal, but it does not fall into start-stop characters."
                              : "Listening for characters. Let the tape run.";
    }
}

Pipeline::Pipeline(double rateHz, Options options, Limits limits)
    : stages_(std::make_unique<Stages>(rateHz, std::move(options), std::move(limits))) {}
Pipeline::~Pipeline() = default;
Pipeline::Pipeline(Pipeline&&) noexcept = default;
Pipeline& Pipeline::operator=(Pipeline&&) noexcept = default;

void Pipeline::push(const SampleBlock& block) {
    Stages& s = *stages_;
    if (!s.expected) {
        s.expected = block.firstSample;
        s.heard = block.firstSample;
    }
    if (block.firstSample != *s.expected || block.lossBefore) {
        s.gap(block.firstSample > *s.expected ? block.firstSample - *s.expected : 0);
        s.expected = std::max(*s.expected, block.firstSample);
    }
    *s.expected += block.samples.size();
    s.stamps.emplace_back(*s.expected, block.stampNs);
    if (s.stamps.size() > kStamps) s.stamps.pop_front();
    s.intake(block.samples);
}

void Pipeline::push(std::span<const float> samples) { stages_->intake(samples); }

void Pipeline::finish() {
    Stages& s = *stages_;
    s.finished = true;
    if (const std::vector<float> rest = std::exchange(s.pending, {}); !rest.empty()) s.chunk(rest);
    if (!s.edges && s.meter.everHeard() && s.finder.lookNow()) s.openLine(s.finder.found());
    if (!s.edges) return;
    std::vector<Edge> last;
    s.edges->finish(last);
    const double end = static_cast<double>(s.edges->timer().end());  // what is cut off is no character
    s.takeEdges(last, end);
    if (s.edges && !s.framing.framed()) s.heed(s.framing.searchNow());
    if (s.edges) s.takeEdges({}, end);
}

bool Pipeline::adopt(const Options& options, const Limits& limits) {
    Stages& s = *stages_;
    if (options.code != s.options.code || options.input != s.options.input || options.tonesHz != s.options.tonesHz ||
        options.slicePercent != s.options.slicePercent || options.clockPpm != s.options.clockPpm)
        return false;
    s.options = options;
    s.limits = limits;
    s.partsDue = 0;
    return true;
}

Reading Pipeline::reading() { return stages_->reading(true); }

Snapshot Pipeline::snapshot() {
    Stages& s = *stages_;
    Snapshot out;
    out.serial = ++s.serial;
    s.describe(out);
    out.seconds = static_cast<double>(s.heard) / s.rateHz;
    out.newestStampNs = s.newestStamp;
    out.levelDbfs = s.meter.recent() > 1e-10F ? 20.0 * std::log10(static_cast<double>(s.meter.recent())) : -200.0;
    out.clippingNow = s.meter.clippingNow();
    out.lostSamples = s.lost;
    out.options = s.options;
    out.limits = s.limits;
    out.levels = s.code->levels;
    out.reading = s.reading(s.finished);
    out.windowUsed = static_cast<std::size_t>(out.reading.text.characters);
    s.picture.fill(out, s.log);
    s.fillDue(out.tape);
    return out;
}

std::shared_ptr<const LineModel> Pipeline::learned() const {
    const Stages& s = *stages_;
    if (!s.edges || !s.framing.framed()) return nullptr;
    const auto shapes = s.edges->timer().shapes();
    return std::make_shared<const LineModel>(LineModel{s.edges->line(), {shapes[0], shapes[1]}});
}

void Pipeline::startFrom(std::shared_ptr<const LineModel> model) { stages_->given = std::move(model); }

}  // namespace trueunit
