// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/frame_builder.h"

#include <algorithm>
#include <vector>

#include "core/report/judge.h"

namespace trueunit::test {

namespace {

constexpr double kUnit = 0.022;

Condition element(unsigned code, int index) {  // 0 = start, 1..5 levels, 6 stop
    if (index == 0) return Condition::space;
    if (index > 5) return Condition::mark;
    return (code >> (index - 1)) & 1U ? Condition::mark : Condition::space;
}

Reading readingOfLongMarks() {
    Reading r;
    r.input.kind = InputKind::loop;
    r.input.inverted = false;
    r.input.rateHz = 48000.0;
    r.input.seconds = 42.0;
    r.input.snrDb = 43.0;
    r.input.couplingHz = {8.1};
    r.text = {"ita2", "RYRYRYRYRYRY THE QUICK BROWN FOX JUMPS OVER THE LAZY DOG 1234567890\r\nRYRYRYRY", 32, 0};
    r.speed = {45.45,
               22.0,
               22.005,
               Measured{45.444, 0.011},
               Measured{-0.02, 0.024},
               Measured{163.27, 0.09},
               Measured{367.5, 0.2},
               Measured{1.42, 0.012}};
    r.distortion.grossPercent = 9.4;
    r.distortion.synchronousPercent = 9.3;
    r.distortion.biasPercent = Measured{7.3, 0.11};
    r.distortion.endPercent = Measured{-0.08, 0.14};
    for (int k = 1; k <= 6; ++k) {
        r.instants.push_back({k, Condition::mark, 16 + k, -7.3 + 0.1 * k, 0.42, -8.9, -6.1});
        if (k < 6) r.instants.push_back({k, Condition::space, 12 + k, 0.05 * k, 0.38, -1.2, 1.4});
    }
    r.verdict = judgeReading(r, Limits{}, {0.01, 0.01, 0.06}, {32, 32});
    r.notes = {"The stop length varies with pauses of the operator; only runs without a pause were used."};
    return r;
}

}  // namespace

std::shared_ptr<const CharacterTrace> drawnTrace(std::uint64_t number, unsigned code, const std::string& print,
                                                 double biasPercent) {
    auto t = std::make_shared<CharacterTrace>();
    t->number = number;
    t->code = code;
    t->print = print;
    t->firstSampleSeconds = -0.5 * kUnit;
    t->sampleSeconds = 1.0 / 12000.0;
    for (int k = 1; k <= 6; ++k) {
        if (element(code, k) == element(code, k - 1)) continue;
        const double d = element(code, k) == Condition::mark ? -biasPercent : 0.1;
        t->instants.push_back({k, element(code, k), (k + d / 100.0) * kUnit, d});
    }
    for (double s = t->firstSampleSeconds; s < 7.8 * kUnit; s += t->sampleSeconds) {
        Condition now = s < 0.0 ? Condition::mark : Condition::space;
        for (const TraceInstant& i : t->instants)
            if (s >= i.seconds) now = i.to;
        t->level.push_back(now == Condition::mark ? 1.0F : 0.0F);
    }
    return t;
}

FrozenFrame frameOfLongMarks() {
    auto s = std::make_shared<Snapshot>();
    s->serial = 1;
    s->state = SignalState::reading;
    s->seconds = 42.0;
    s->levelDbfs = -12.0;
    s->options.windowCharacters = 32;
    s->options.stopUnits = 1.42;
    s->gridUnitSeconds = kUnit;
    s->reading = readingOfLongMarks();
    s->windowUsed = 32;
    for (std::uint64_t n = 1; n <= 32; ++n) {
        const bool r = n % 2 == 1;
        const unsigned code = r ? 0b01010U : 0b10101U;
        s->traces.push_back(drawnTrace(n, code, r ? "R" : "Y", 6.3 + 0.05 * double(n % 20)));
        s->tape.push_back({n, code, r ? "R" : "Y", true, std::nullopt});
        s->trail.push_back({n, double(n) * 0.163, 7.3, 0.4});
        for (const TraceInstant& i : s->traces.back()->instants)
            s->dots.push_back({n, i.k, i.to, i.displacementPercent});
    }
    FrozenFrame f;
    f.snapshot = s;
    f.takenSecondsUtc = 1795615402;  // 2026-11-25 14:03:22 UTC
    f.machine = "Skerry 2";
    f.remarks = "Message room, north bench. Contacts cleaned, not yet trued.";
    f.inputDescription = "Line in, left (48 kHz)";
    return f;
}

}  // namespace trueunit::test
