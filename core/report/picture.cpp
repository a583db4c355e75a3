// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/picture.h"

#include <algorithm>
#include <cmath>

#include "core/measure/timing.h"
#include "core/report/compose_reading.h"
#include "core/report/shown_instants.h"

namespace trueunit {

namespace {
constexpr std::size_t kTraces = 96;  // as many as the tape shows, so that each can be brought to the grid
constexpr std::size_t kTracePoints = 480;
constexpr std::size_t kTrail = 4096;
constexpr std::size_t kTrailBegins = 12;   // characters; fewer tell bias from speed too badly to be looked back at
constexpr std::size_t kTrailWindow = 128;  // characters; a longer window would hide the nudge
constexpr std::size_t kTape = 96;
constexpr std::uint64_t kTurning = 3;  // characters
constexpr std::size_t kDotCharacters = 220;

std::size_t windowOf(const Options& options, std::size_t whenAll, std::size_t most) {
    const auto n = static_cast<std::size_t>(options.windowCharacters);
    return n == 0 ? whenAll : std::min(n, most);
}

// Baud. The bias is fitted beside the unit: a turn of the eccentric is no change of speed.
std::optional<Measured> speedOf(Characters characters) {
    const auto fit = fitUnit(characters);
    if (!fit) return std::nullopt;
    return Measured{1.0 / fit->unit.value, fit->unit.uncertainty / (fit->unit.value * fit->unit.value)};
}
}  // namespace

std::vector<DisplacementDot> dotsOf(const std::vector<const LoggedCharacter*>& characters, double unitSeconds) {
    std::vector<DisplacementDot> dots;
    for (const LoggedCharacter* c : characters)
        if (c->character.measurable())
            for (const Instant& i : c->character.instants)
                dots.push_back({c->character.number, i.k, i.to, displacementPercent(i, unitSeconds)});
    return dots;
}

void Picture::add(const LoggedCharacter& c, const CharacterLog& log, const Framing& framing, const EdgeTimer& timer) {
    addTrace(c, framing, timer);
    addTrailPoint(log);
    nudges_.push(c.character, framing.unitSeconds, referenceUnit(framing.unitSeconds));
}

void Picture::clear() {
    traces_.clear();
    trail_.clear();
    nudges_.clear();
}

std::uint64_t Picture::settledSince() const {
    const std::uint64_t since = nudges_.levelSince();
    return since == 0 ? 0 : since + kTurning;
}

double Picture::referenceUnit(double measured) const {
    const auto nominal = nominalSpeed(options_, measured, taken_);
    return nominal ? nominal->unitSeconds : measured;
}

void Picture::addTrace(const LoggedCharacter& logged, const Framing& framing, const EdgeTimer& timer) {
    const Character& c = logged.character;
    const double unit = framing.unitSeconds;
    const EdgeTimer::Excerpt excerpt =
        timer.excerpt((c.start - 0.6 * unit) / secondsPerSample_,
                      (c.start + (levels_ + 2.6) * unit) / secondsPerSample_, kTracePoints);
    auto trace = std::make_shared<CharacterTrace>();
    trace->number = c.number;
    trace->code = c.code;
    trace->print = logged.name;
    trace->stopPresent = c.stopPresent;
    trace->startSeconds = c.start;
    trace->firstSampleSeconds = excerpt.firstAt * secondsPerSample_ - c.start;
    trace->sampleSeconds = excerpt.spacing * secondsPerSample_;
    trace->level = excerpt.line;
    if (framing.inverted)
        for (float& v : trace->level) v = 1.0F - v;
    for (const Instant& i : c.instants) trace->instants.push_back({i.k, i.to, i.seconds, 0.0, i.steadySeconds});
    traces_.push_back(std::move(trace));
    if (traces_.size() > kTraces) traces_.erase(traces_.begin());
}

// The same fit as the reading's, so that trail, held peaks and digits never disagree.
void Picture::addTrailPoint(const CharacterLog& log) {
    if (log.size() < kTrailBegins) return;
    const auto last = [&log](std::size_t n) {
        std::vector<const Character*> characters;
        for (const LoggedCharacter* l : log.last(n)) characters.push_back(&l->character);
        return characters;
    };
    const std::size_t over = windowOf(options_, kUnitCharacters, kTrailWindow);
    const std::vector<const Character*> window = last(over);
    const auto fit = fitWindow(window, last(kUnitCharacters), settledSince());
    if (!fit || !fit->toMark) return;
    const double scale = -100.0 / referenceUnit(fit->unit.value);
    trail_.push_back({window.back()->number, window.back()->start, fit->toMark->value * scale,
                      fit->toMark->uncertainty * std::abs(scale), over, speedOf(last(kTrailSpeedOver))});
    if (trail_.size() > kTrail) trail_.erase(trail_.begin(), trail_.begin() + kTrail / 8);
}

void Picture::fill(Snapshot& s, const CharacterLog& log) const {
    const SpeedReading& speed = s.reading.speed;
    if (const auto unit = speed.nominalUnitMs ? speed.nominalUnitMs : speed.unitMs) s.gridUnitSeconds = 1e-3 * *unit;
    for (const auto& t : traces_) {
        auto placed = std::make_shared<CharacterTrace>(*t);
        if (s.gridUnitSeconds > 0.0)
            for (TraceInstant& i : placed->instants)
                i.displacementPercent = displacementPercent({i.k, i.to, i.seconds}, s.gridUnitSeconds);
        s.traces.push_back(std::move(placed));
    }
    if (const double unit = shownInstants(s.reading).unitSeconds; unit > 0.0)
        s.dots = dotsOf(log.last(windowOf(options_, kDotCharacters, kDotCharacters)), unit);
    s.trail = trail_;
    s.nudges = nudges_.nudges();
    s.nudgesLearnedIn = nudges_.charactersToLearn();
    s.biasSinceNudge = nudges_.level();
    for (const LoggedCharacter* c : log.last(kTape))
        s.tape.push_back({c->character.number, c->character.code, c->name, c->character.stopPresent, {}});
}

}  // namespace trueunit
