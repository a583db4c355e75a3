// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/snapshot_builder.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/frame/code_table.h"
#include "core/report/judge.h"

namespace trueunit::test {

namespace {

constexpr int kLevels = 5;
constexpr int kTraces = 32, kTape = 96;

bool isMark(unsigned code, int element) {  // 0 = start, 1 .. 5, 6 = stop
    if (element == 0) return false;
    return element > kLevels || (code >> (element - 1) & 1u) != 0;
}

}  // namespace

SnapshotBuilder::Letter SnapshotBuilder::letterAt(int index) const {
    const auto codes = encode(*findCode("ita2"), text_);
    const std::size_t at = static_cast<std::size_t>(index) % codes.size();
    Decoder decoder(*findCode("ita2"));
    for (std::size_t i = 0; i < at; ++i) decoder.name(codes[i]);  // the shift that holds there
    return {codes[at], decoder.name(codes[at])};
}

std::vector<TraceInstant> SnapshotBuilder::instantsOf(unsigned code, std::mt19937& random) const {
    std::normal_distribution<double> noise(0.0, scatter_);
    std::vector<TraceInstant> instants;
    for (int k = 1; k <= kLevels + 1; ++k) {
        if (isMark(code, k) == isMark(code, k - 1)) continue;
        const bool toMark = isMark(code, k);
        const double percent = (toMark ? -bias_ : end_) + noise(random);
        instants.push_back({k, toMark ? Condition::mark : Condition::space, (k + percent / 100.0) * kUnit, percent});
    }
    return instants;
}

std::shared_ptr<const CharacterTrace> SnapshotBuilder::trace(int index, std::mt19937& random) const {
    auto t = std::make_shared<CharacterTrace>();
    const Letter letter = letterAt(index);
    t->number = static_cast<std::uint64_t>(index) + 1;
    t->code = letter.code;
    t->print = letter.print;
    t->startSeconds = index * kCharacter * kUnit;
    t->firstSampleSeconds = -0.5 * kUnit;
    t->sampleSeconds = 1.0 / kRate;
    t->stopPresent = index != characters_ - 1 - error_ || error_ < 0;
    t->instants = instantsOf(letter.code, random);
    std::normal_distribution<double> noise(0.0, 0.008);
    const auto samples = static_cast<int>((kCharacter + 0.9) * kUnit * kRate);
    for (int i = 0; i < samples; ++i) {
        const double at = t->firstSampleSeconds + i * t->sampleSeconds;
        const auto step = [&](double s) { return 0.5 + 0.5 * std::tanh((at - s) / rise_); };
        double level = 1.0 - step(0.0);
        for (const TraceInstant& e : t->instants) level += (e.to == Condition::mark ? 1.0 : -1.0) * step(e.seconds);
        level -= step(kCharacter * kUnit);  // the next character begins
        t->level.push_back(static_cast<float>(level + noise(random)));
    }
    return t;
}

void SnapshotBuilder::fillReading(Snapshot& s) const {
    Reading& r = s.reading;
    r.input.kind = InputKind::loop;
    r.input.inverted = false;
    r.input.rateHz = 48000.0;
    r.input.seconds = s.seconds;
    r.input.snrDb = 43.0;
    r.input.peakDbfs = -11.0;
    r.input.couplingHz = {8.1};
    r.text.code = "ita2";
    r.text.decoded = text_;
    r.text.characters = characters_;
    r.text.framingErrors = error_ < 0 ? 0 : 1;
    const double period = 1e3 * kCharacter * kUnit;
    r.speed.nominalBaud = 45.45;
    r.speed.nominalUnitMs = 22.0;
    r.speed.unitMs = 22.004;
    r.speed.baud = Measured{45.446, 0.01};
    r.speed.errorPercent = Measured{-0.02, 0.02};
    if (stop_) {
        r.speed.characterMs = Measured{period, 0.1};
        r.speed.operationsPerMinute = Measured{60e3 / period, 0.2};
        r.speed.stopUnits = Measured{kCharacter - 6.0, 0.01};
    } else {
        r.notes.emplace_back("The tape did not run without pause: the stop cannot be told.");
    }
    r.distortion.biasPercent = Measured{bias_, 0.2};
    r.distortion.endPercent = Measured{end_, 0.2};
    fillInstants(s);
    double furthest = 0.0;
    for (const DisplacementDot& dot : s.dots) furthest = std::max(furthest, std::abs(dot.percent));
    r.distortion.grossPercent = furthest;
    r.distortion.synchronousPercent = furthest;
    r.distortion.fortuitousRmsPercent = scatter_;
    fillMargin(s);
    r.verdict = judgeReading(r, s.limits, {0.01, 0.01, 0.06}, {characters_, characters_});
}

void SnapshotBuilder::fillMargin(Snapshot& s) const {
    MarginReading margin{0.0, 100.0, {}};
    for (int level = 1; level <= kLevels; ++level) {
        LevelMargin l{level, {}, {}};
        for (const DisplacementDot& dot : s.dots) {
            const MarginBound bound{dot.k == level ? dot.percent : 100.0 + dot.percent, dot.number,
                                    letterAt(static_cast<int>(dot.number) - 1).print};
            if (dot.k == level && (!l.low || bound.percent > l.low->percent)) l.low = bound;
            if (dot.k == level + 1 && (!l.high || bound.percent < l.high->percent)) l.high = bound;
        }
        if (l.low) margin.lowPercent = std::max(margin.lowPercent, l.low->percent);
        if (l.high) margin.highPercent = std::min(margin.highPercent, l.high->percent);
        margin.levels.push_back(l);
    }
    s.reading.margin = margin;
}

// The steps as nudges, found at once.
void SnapshotBuilder::fillNudges(Snapshot& s) const {
    double now = bias_;
    for (const auto& [ago, before] : steps_) {
        Nudge n;
        n.seconds = s.seconds - ago;
        n.number = static_cast<std::uint64_t>(n.seconds / (kCharacter * kUnit));
        n.foundBy = n.number + 1;
        n.before = {before, 0.2};
        n.after = {now, 0.2};
        n.step = {now - before, 0.3};
        s.nudges.insert(s.nudges.begin(), n);
        now = before;
    }
}

void SnapshotBuilder::fillInstants(Snapshot& s) const {
    std::map<std::pair<int, Condition>, std::vector<double>> places;
    for (const DisplacementDot& dot : s.dots) places[{dot.k, dot.to}].push_back(dot.percent);
    for (const auto& [place, values] : places) {
        double sum = 0.0, squares = 0.0;
        for (const double v : values) sum += v, squares += v * v;
        const auto n = static_cast<double>(values.size());
        const auto [least, most] = std::minmax_element(values.begin(), values.end());
        s.reading.instants.push_back({place.first, place.second, static_cast<long>(values.size()), sum / n,
                                      std::sqrt(std::max(0.0, squares / n - sum * sum / n / n)), *least, *most});
    }
}

void SnapshotBuilder::fillTrail(Snapshot& s, std::mt19937& random) const {
    std::normal_distribution<double> noise(0.0, 0.12);
    for (int i = 0; i < characters_; ++i) {
        const double at = (i + 1) * kCharacter * kUnit;
        double bias = bias_, youngest = 0.0;
        for (const auto& [ago, before] : steps_)
            if (s.seconds - at > ago && ago >= youngest) bias = before, youngest = ago;
        s.trail.push_back({static_cast<std::uint64_t>(i) + 1, at, bias + noise(random), 0.3});
    }
}

Snapshot SnapshotBuilder::value() const {
    std::mt19937 random(20261125);
    Snapshot s;
    s.serial = serial_;
    s.state = SignalState::reading;
    s.seconds = characters_ * kCharacter * kUnit;
    s.levelDbfs = -11.4;
    s.gridUnitSeconds = kUnit;
    s.windowUsed = static_cast<std::size_t>(std::min(window_, characters_));
    s.options.windowCharacters = window_;
    for (int i = std::max(0, characters_ - window_); i < characters_; ++i)
        for (const TraceInstant& e : instantsOf(letterAt(i).code, random))
            s.dots.push_back({static_cast<std::uint64_t>(i) + 1, e.k, e.to, e.displacementPercent});
    for (int i = std::max(0, characters_ - kTraces); i < characters_; ++i) s.traces.push_back(trace(i, random));
    for (int i = std::max(0, characters_ - kTape); i < characters_; ++i) {
        const Letter letter = letterAt(i);
        s.tape.push_back({static_cast<std::uint64_t>(i) + 1, letter.code, letter.print,
                          error_ < 0 || i != characters_ - 1 - error_, std::nullopt});
    }
    fillReading(s);
    fillTrail(s, random);
    fillNudges(s);
    return s;
}

std::shared_ptr<const Snapshot> SnapshotBuilder::build() const { return std::make_shared<const Snapshot>(value()); }

std::shared_ptr<const Snapshot> SnapshotBuilder::silent() {
    Snapshot s;
    s.serial = 7;
    s.state = SignalState::silent;
    s.stateText = "The input is silent: check the cable and the card's gain.";
    s.seconds = 4.0;
    s.levelDbfs = -71.0;
    s.reading.notes.emplace_back("No signal: the input is silent.");
    return std::make_shared<const Snapshot>(std::move(s));
}

}  // namespace trueunit::test
