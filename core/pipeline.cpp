// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipeline.h"

#include <algorithm>
#include <cmath>
#include <deque>
#include <optional>
#include <vector>

#include "core/condition/line_restorer.h"
#include "core/condition/line_study.h"
#include "core/detect/bounce_gate.h"
#include "core/detect/edge_timer.h"
#include "core/frame/code_table.h"
#include "core/frame/framing_search.h"
#include "core/frame/unit_fit.h"
#include "core/measure/character_log.h"
#include "core/measure/timing.h"
#include "core/report/compose_reading.h"

namespace trueunit {

// Everything learned of one input, enough to read it again from its beginning.
struct LineModel {
    LineFit line;
    std::array<EdgeShape, 2> shapes;
};

namespace {

constexpr std::size_t kChunk = 256;         // all stages move in steps of this many samples
constexpr double kFirstStudySeconds = 1.0;  // of samples before a line is looked for
constexpr double kStudyEverySeconds = 0.5;
constexpr double kLongestWaitSeconds = 6.0;  // of samples kept while there is no line
constexpr double kFirstRefineSeconds = 8.0;  // after which the coupling is measured once more
constexpr double kHoldBeforeFramingSeconds = 0.0034;
constexpr double kHoldUnits = 0.3;  // once the unit is known
constexpr double kLongestHoldSeconds = 0.006;
constexpr std::size_t kSearchEveryEdges = 8;
constexpr std::size_t kSearchEdges = 96;
constexpr std::size_t kGiveUpEdges = 240;  // edges without framing: this is no start-stop signal
constexpr std::size_t kJudgedCharacters = 12;
constexpr std::size_t kTraces = 32;
constexpr std::size_t kTracePoints = 480;
constexpr std::size_t kTrail = 4096;
constexpr std::size_t kTape = 96;
constexpr std::size_t kDotCharacters = 220;
constexpr std::size_t kFewestCharacters = 3;
constexpr float kClipLevel = 0.999F;
constexpr float kFaintest = 3e-5F;  // -90 dBFS: below it nothing can be measured
constexpr double kIdleSeconds = 2.0;

float clean(float v) { return std::isfinite(v) ? v : 0.0F; }

}  // namespace

struct Pipeline::Stages {
    Stages(double rate, Options o, Limits l)
        : rateHz(rate), options(std::move(o)), limits(std::move(l)), code(findCode(options.code)), decoder(*code) {
        secondsPerSample = 1.0 / (rateHz * (1.0 + 1e-6 * options.clockPpm));
    }

    // Fixed for the run
    double rateHz;
    Options options;
    Limits limits;
    const CodeTable* code;
    double secondsPerSample = 0.0;

    // Intake
    std::vector<float> pending;
    std::uint64_t heard = 0;  // samples processed, gaps included
    std::uint64_t expected = 0;
    bool anyBlock = false;
    std::deque<std::pair<std::uint64_t, std::int64_t>> stamps;  // sample number after a block, its stamp
    long gaps = 0;
    std::uint64_t lost = 0;
    std::uint64_t clipped = 0;
    std::uint64_t counted = 0;
    float peak = 0.0F;
    float recentPeak = 0.0F;
    bool recentClip = false;

    // Line not yet found
    std::vector<float> waiting;  // samples since waitingFrom
    std::uint64_t waitingFrom = 0;
    std::uint64_t nextStudy = 0;
    bool refused = false;  // there was a signal and it was no start-stop one
    std::shared_ptr<const LineModel> given;

    // Line found
    std::optional<LineFit> fit;
    std::optional<LineRestorer> restorer;
    std::optional<BounceGate> gate;
    std::optional<EdgeTimer> timer;
    std::vector<float> recentHeard;  // for the refinement of the coupling
    std::uint64_t recentFrom = 0;
    std::uint64_t refineAt = 0;

    // Framing
    std::vector<Edge> edges;  // while searching, and until the framing is confirmed
    bool confirmed = false;
    std::optional<CharacterFramer> framer;
    std::deque<bool> recentErrors;
    std::uint64_t numberBase = 0;
    long glitches = 0;

    // Record
    Decoder decoder;
    CharacterLog log;
    std::vector<std::shared_ptr<const CharacterTrace>> traces;
    std::vector<TrailPoint> trail;
    std::int64_t newestStamp = 0;
    std::uint64_t serial = 0;

    void intake(std::span<const float> samples);
    void chunk(std::span<const float> samples);
    void meter(std::span<const float> samples);
    void lookForLine(std::span<const float> samples);
    void openLine(const LineFit& found, std::uint64_t from);
    void closeLine();
    void track(std::span<const float> samples, bool last = false);
    void refineCoupling(std::span<const float> samples);
    void takeEdges(const std::vector<Edge>& found);
    void searchFraming();
    void confirmFraming();
    void takeCharacters(std::vector<Character>& characters);
    void followUnit();
    void keepTrace(const Character& c, const std::string& name);
    void keepTrail(const Character& c);
    void gap(std::uint64_t missing);
    double edgesKnownTo() const;  // seconds before which every edge has been passed on
    InputReading inputReading() const;
    Reading reading() const;
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
        if (pending.size() == kChunk) {
            chunk(pending);
            pending.clear();
        }
    }
}

void Pipeline::Stages::chunk(std::span<const float> samples) {
    meter(samples);
    if (restorer)
        track(samples);
    else
        lookForLine(samples);
    heard += samples.size();
}

void Pipeline::Stages::meter(std::span<const float> samples) {
    float most = 0.0F;
    std::uint64_t clips = 0;
    for (const float raw : samples) {
        const float v = std::abs(clean(raw));
        most = std::max(most, v);
        clips += v >= kClipLevel ? 1U : 0U;
    }
    clipped += clips;
    counted += samples.size();
    peak = std::max(peak, most);
    const auto keep = static_cast<float>(std::exp(-static_cast<double>(samples.size()) / (0.1 * rateHz)));
    recentPeak = std::max(most, recentPeak * keep);
    recentClip = clips > 0 || (recentClip && recentPeak > 0.9F);
}

void Pipeline::Stages::lookForLine(std::span<const float> samples) {
    if (waiting.empty()) waitingFrom = heard;
    waiting.insert(waiting.end(), samples.begin(), samples.end());
    if (given) {
        openLine(given->line, waitingFrom);
        return;
    }
    const auto most = static_cast<std::size_t>(kLongestWaitSeconds * rateHz);
    if (waiting.size() > most) {
        const std::size_t drop = waiting.size() / 2;
        waiting.erase(waiting.begin(), waiting.begin() + static_cast<std::ptrdiff_t>(drop));
        waitingFrom += drop;
    }
    const std::uint64_t now = heard + samples.size();
    if (static_cast<double>(waiting.size()) < kFirstStudySeconds * rateHz || now < nextStudy) return;
    nextStudy = now + static_cast<std::uint64_t>(kStudyEverySeconds * rateHz);
    if (recentPeak < kFaintest) return;
    if (const auto found = studyLine(waiting, rateHz)) openLine(*found, waitingFrom);
}

void Pipeline::Stages::openLine(const LineFit& found, std::uint64_t from) {
    fit = found;
    restorer.emplace(found, rateHz, from);
    gate.emplace(kHoldBeforeFramingSeconds * rateHz);
    timer.emplace(rateHz, 0.01 * options.slicePercent, from);
    if (given) timer->setShapes(given->shapes);
    recentHeard.clear();
    recentFrom = from;
    refineAt = given ? UINT64_MAX : from + static_cast<std::uint64_t>(kFirstRefineSeconds * rateHz);
    std::vector<float> replay;
    replay.swap(waiting);
    for (std::size_t i = 0; i < replay.size() && restorer; i += kChunk)
        track(std::span(replay).subspan(i, std::min(kChunk, replay.size() - i)));
}

void Pipeline::Stages::closeLine() {
    restorer.reset();
    gate.reset();
    timer.reset();
    framer.reset();
    edges.clear();
    recentErrors.clear();
    waiting.clear();
    nextStudy = 0;
}

void Pipeline::Stages::track(std::span<const float> samples, bool last) {
    std::vector<float> line;
    std::vector<Transition> raw;
    restorer->push(samples, line, raw);
    if (last) restorer->finish(line);
    timer->push(line);
    for (const Transition& t : raw) gate->push(t);
    std::vector<HeldTransition> held;
    const double end = static_cast<double>(timer->end());
    gate->advance(last ? end + gate->hold() + 1.0 : end, held);
    for (const HeldTransition& h : held) timer->time(h);
    std::vector<Edge> found;
    if (last)
        timer->finish(found);
    else
        timer->advance(found);
    takeEdges(found);
    if (framer) {
        std::vector<Character> characters;
        framer->advance(last ? end * secondsPerSample + 1.0 : edgesKnownTo(), characters);
        takeCharacters(characters);
    }
    if (!last && restorer) refineCoupling(samples);
}

double Pipeline::Stages::edgesKnownTo() const {
    double known = static_cast<double>(timer->end()) - gate->hold() - 1.0;
    if (timer->waits()) known = std::min(known, timer->waitsSince());
    return known * secondsPerSample;
}

// The first look may have had two seconds only; a longer stretch tells low corners better.
void Pipeline::Stages::refineCoupling(std::span<const float> samples) {
    if (refineAt == UINT64_MAX) return;
    recentHeard.insert(recentHeard.end(), samples.begin(), samples.end());
    if (recentFrom + recentHeard.size() < refineAt) return;
    const std::vector<float> stretch = std::exchange(recentHeard, {});
    refineAt = UINT64_MAX;
    const auto again = studyLine(stretch, rateHz);
    if (!again) return;
    restorer->setCoupling(again->coupling);
    fit->coupling = again->coupling;
    if (fit->lossAtStart == std::array<double, 2>{0.0, 0.0} || recentFrom == 0) fit->lossAtStart = again->lossAtStart;
}

void Pipeline::Stages::takeEdges(const std::vector<Edge>& found) {
    for (const Edge& e : found) {
        if (e.glitch) {
            ++glitches;
            continue;
        }
        if (framer) framer->push(e, secondsPerSample);
        if (framer && confirmed) continue;
        edges.push_back(e);
        if (!framer && edges.size() % kSearchEveryEdges == 0) searchFraming();
        if (framer && edges.size() >= kSearchEdges) confirmFraming();
    }
    if (!framer && edges.size() > kGiveUpEdges) {
        refused = true;
        given.reset();
        closeLine();
    }
}

void Pipeline::Stages::searchFraming() {
    const std::size_t skip = edges.size() > kSearchEdges ? edges.size() - kSearchEdges : 0;
    const auto found = findFraming(std::span(edges).subspan(skip), secondsPerSample, code->levels);
    if (!found) return;
    refused = false;
    framer.emplace(code->levels, found->framing);
    numberBase = log.empty() ? 0 : log.back().character.number + 1;
    decoder.reset();
    timer->setMarkIsLow(found->framing.inverted);
    gate->setHold(rateHz * std::min(kLongestHoldSeconds, kHoldUnits * found->framing.unitSeconds));
    for (std::size_t i = skip + found->firstEdge; i < edges.size(); ++i) framer->push(edges[i], secondsPerSample);
    confirmed = edges.size() >= kSearchEdges;
    if (confirmed) edges.clear();
    recentErrors.clear();
}

// A second of a repeating text can be read in more than one way: with more of it, look again, and if the first reading
// was wrong take it back.
void Pipeline::Stages::confirmFraming() {
    const Framing before = framer->framing();
    const auto found = findFraming(edges, secondsPerSample, code->levels);
    confirmed = true;
    const bool same = found && found->framing.inverted == before.inverted &&
                      std::abs(found->framing.unitSeconds / before.unitSeconds - 1.0) < 0.03;
    if (same || !found) {
        edges.clear();
        return;
    }
    log.clear();
    traces.clear();
    trail.clear();
    searchFraming();
}

void Pipeline::Stages::takeCharacters(std::vector<Character>& characters) {
    for (Character& c : characters) {
        c.number += numberBase;
        LoggedCharacter entry;
        entry.name = decoder.name(c.code);
        entry.text = decoder.text(c.code);
        entry.character = c;
        log.add(std::move(entry));
        keepTrace(c, log.back().name);
        keepTrail(c);
        const double ended = (c.start + (code->levels + 1) * framer->framing().unitSeconds) / secondsPerSample;
        while (stamps.size() > 1 && static_cast<double>(stamps.front().first) < ended) stamps.pop_front();
        if (!stamps.empty()) newestStamp = stamps.front().second;
        recentErrors.push_back(!c.measurable());
        if (recentErrors.size() > kJudgedCharacters) recentErrors.pop_front();
    }
    if (characters.empty()) return;
    followUnit();
    const auto bad = static_cast<std::size_t>(std::count(recentErrors.begin(), recentErrors.end(), true));
    if (recentErrors.size() == kJudgedCharacters && 2 * bad > kJudgedCharacters) {  // the framing no longer holds
        framer.reset();
        edges.clear();
        recentErrors.clear();
        gate->setHold(kHoldBeforeFramingSeconds * rateHz);
    }
}

void Pipeline::Stages::followUnit() {
    std::vector<const Character*> recent;
    for (const LoggedCharacter* c : log.last(kUnitCharacters))
        if (c->character.number >= numberBase) recent.push_back(&c->character);
    const auto found = fitUnit(recent);
    if (!found || found->characters < 6 || !found->toMark) return;
    if (std::abs(found->unit.value / framer->framing().unitSeconds - 1.0) > 0.05) return;
    framer->follow(found->unit.value, found->toMark->value);
}

void Pipeline::Stages::keepTrace(const Character& c, const std::string& name) {
    const double unit = framer->framing().unitSeconds;
    const double from = (c.start - 0.6 * unit) / secondsPerSample;
    const double to = (c.start + (code->levels + 2.6) * unit) / secondsPerSample;
    const EdgeTimer::Excerpt excerpt = timer->excerpt(from, to, kTracePoints);
    auto trace = std::make_shared<CharacterTrace>();
    trace->number = c.number;
    trace->code = c.code;
    trace->print = name;
    trace->stopPresent = c.stopPresent;
    trace->startSeconds = c.start;
    trace->firstSampleSeconds = excerpt.firstAt * secondsPerSample - c.start;
    trace->sampleSeconds = excerpt.spacing * secondsPerSample;
    trace->level = excerpt.line;
    if (framer->framing().inverted)
        for (float& v : trace->level) v = 1.0F - v;
    for (const Instant& i : c.instants) trace->instants.push_back({i.k, i.to, i.seconds, 0.0});
    traces.push_back(std::move(trace));
    if (traces.size() > kTraces) traces.erase(traces.begin());
}

void Pipeline::Stages::keepTrail(const Character& c) {
    const std::size_t n = options.windowCharacters == 0
                              ? kUnitCharacters
                              : std::min<std::size_t>(static_cast<std::size_t>(options.windowCharacters), 128);
    std::vector<const Character*> window;
    for (const LoggedCharacter* l : log.last(n)) window.push_back(&l->character);
    const double unit = framer->framing().unitSeconds;
    const auto found = fitUnit(window, unit);
    if (!found || !found->toMark) return;
    const auto nominal = nominalSpeed(options, unit);
    const double scale = -100.0 / (nominal ? nominal->unitSeconds : unit);
    trail.push_back({c.number, c.start, found->toMark->value * scale, found->toMark->uncertainty * std::abs(scale)});
    if (trail.size() > kTrail) trail.erase(trail.begin(), trail.begin() + kTrail / 8);
}

void Pipeline::Stages::gap(std::uint64_t missing) {
    ++gaps;
    lost += missing;
    pending.clear();
    heard = expected + missing;
    const std::shared_ptr<const LineModel> keep = given;
    closeLine();
    recentPeak = 0.0F;
    given = keep;
}

InputReading Pipeline::Stages::inputReading() const {
    InputReading in;
    in.kind = restorer ? InputKind::loop : InputKind::automatic;
    in.rateHz = rateHz;
    in.seconds = static_cast<double>(heard + pending.size()) / rateHz;
    in.slicePercent = options.slicePercent;
    in.gaps = gaps;
    in.clippedPercent = counted ? 100.0 * static_cast<double>(clipped) / static_cast<double>(counted) : 0.0;
    if (peak > 0.0F) in.peakDbfs = 20.0 * std::log10(static_cast<double>(peak));
    if (restorer && framer) {
        in.inverted = framer->framing().inverted;
        in.couplingHz = fit->coupling.cornersHz();
        if (const double noise = timer->noiseRms(); noise > 0.0) in.snrDb = 20.0 * std::log10(0.5 / noise);
    }
    return in;
}

Reading Pipeline::Stages::reading() const {
    const WindowOfCharacters characters{
        log.last(static_cast<std::size_t>(options.windowCharacters)),
        log.last(std::max(kUnitCharacters, static_cast<std::size_t>(options.windowCharacters)))};
    if (log.size() < kFewestCharacters) {
        Reading r = composeReading({}, options, limits, inputReading());
        if (peak < kFaintest)
            r.notes.emplace_back("No signal: the input is silent.");
        else if (refused || restorer)
            r.notes.emplace_back("Not start-stop: there is a signal, but it does not fall into characters.");
        else
            r.notes.emplace_back("No signal: nothing that switches between two levels.");
        return r;
    }
    return composeReading(characters, options, limits, inputReading());
}

void Pipeline::Stages::describe(Snapshot& s) const {
    const double now = static_cast<double>(heard) * secondsPerSample;
    if (counted == 0) {
        s.state = SignalState::waiting;
        s.stateText = "Waiting for the first samples.";
    } else if (framer) {
        const bool rests = !log.empty() && now - log.back().character.start > kIdleSeconds;
        s.state = rests ? SignalState::idle : SignalState::reading;
        if (rests) s.stateText = "The line rests; the readings are those of the last characters.";
    } else if (recentPeak < kFaintest) {
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
    if (!s.anyBlock) {
        s.expected = block.firstSample;
        s.heard = block.firstSample;
        s.anyBlock = true;
    }
    if (block.firstSample != s.expected || block.lossBefore) {
        s.gap(block.firstSample > s.expected ? block.firstSample - s.expected : 0);
        s.expected = std::max(s.expected, block.firstSample);
    }
    s.expected += block.samples.size();
    s.stamps.emplace_back(s.expected, block.stampNs);
    if (s.stamps.size() > 1024) s.stamps.pop_front();
    s.intake(block.samples);
}

void Pipeline::push(std::span<const float> samples) { stages_->intake(samples); }

void Pipeline::finish() {
    Stages& s = *stages_;
    const std::vector<float> rest = std::exchange(s.pending, {});
    if (!rest.empty()) s.chunk(rest);
    if (!s.restorer && s.waiting.size() > static_cast<std::size_t>(0.2 * s.rateHz))
        if (const auto found = studyLine(s.waiting, s.rateHz)) s.openLine(*found, s.waitingFrom);
    if (s.restorer && !s.framer) s.searchFraming();
    if (s.restorer) s.track({}, true);
}

Reading Pipeline::reading() { return stages_->reading(); }

Snapshot Pipeline::snapshot() {
    Stages& s = *stages_;
    Snapshot out;
    out.serial = ++s.serial;
    s.describe(out);
    out.seconds = static_cast<double>(s.heard) / s.rateHz;
    out.newestStampNs = s.newestStamp;
    out.levelDbfs = s.recentPeak > 1e-10F ? 20.0 * std::log10(static_cast<double>(s.recentPeak)) : -200.0;
    out.clippingNow = s.recentClip;
    out.lostSamples = s.lost;
    out.options = s.options;
    out.limits = s.limits;
    out.levels = s.code->levels;
    out.reading = s.reading();
    out.windowUsed = static_cast<std::size_t>(out.reading.text.characters);
    if (out.reading.speed.nominalUnitMs)
        out.gridUnitSeconds = 1e-3 * *out.reading.speed.nominalUnitMs;
    else if (out.reading.speed.unitMs)
        out.gridUnitSeconds = 1e-3 * *out.reading.speed.unitMs;
    for (const auto& t : s.traces) {
        auto placed = std::make_shared<CharacterTrace>(*t);
        if (out.gridUnitSeconds > 0.0)
            for (TraceInstant& i : placed->instants)
                i.displacementPercent = displacementPercent({i.k, i.to, i.seconds}, out.gridUnitSeconds);
        out.traces.push_back(std::move(placed));
    }
    if (out.reading.speed.unitMs) {
        const std::size_t n =
            s.options.windowCharacters == 0
                ? kDotCharacters
                : std::min<std::size_t>(static_cast<std::size_t>(s.options.windowCharacters), kDotCharacters);
        for (const LoggedCharacter* c : s.log.last(n))
            if (c->character.measurable())
                for (const Instant& i : c->character.instants)
                    out.dots.push_back(
                        {c->character.number, i.k, i.to, displacementPercent(i, 1e-3 * *out.reading.speed.unitMs)});
    }
    out.trail = s.trail;
    for (const LoggedCharacter* c : s.log.last(kTape))
        out.tape.push_back({c->character.number, c->character.code, c->name, c->character.stopPresent});
    return out;
}

std::shared_ptr<const LineModel> Pipeline::learned() const {
    const Stages& s = *stages_;
    if (!s.restorer || !s.timer || !s.framer) return nullptr;
    return std::make_shared<const LineModel>(LineModel{*s.fit, {s.timer->shapes()[0], s.timer->shapes()[1]}});
}

void Pipeline::startFrom(std::shared_ptr<const LineModel> model) { stages_->given = std::move(model); }

}  // namespace trueunit
