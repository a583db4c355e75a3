// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/shown_trace.h"

#include <algorithm>
#include <cmath>

namespace trueunit {

namespace {

const TapeCharacter* onTape(const CharacterTrace& trace, const Snapshot& s) {
    const auto at = std::find_if(s.tape.begin(), s.tape.end(),
                                 [&trace](const TapeCharacter& c) { return c.number == trace.number; });
    return at == s.tape.end() ? nullptr : &*at;
}

// Levels that came otherwise than the tape has them, level 1 is bit 0; where the text is not known, none.
unsigned wrongLevels(const CharacterTrace& trace, const Snapshot& s) {
    const TapeCharacter* at = onTape(trace, s);
    return at == nullptr || !at->due ? 0U : *at->due ^ at->code;
}

bool slippedAt(const CharacterTrace& trace, const Snapshot& s) {
    const TapeCharacter* at = onTape(trace, s);
    return at != nullptr && at->slipped();
}

// How well a character shows a finding; 0: not at all.
double showing(const CharacterTrace& trace, const EvidencePlaces& places, const Snapshot& s) {
    if (places.slips) return slippedAt(trace, s) ? 1.0 : 0.0;
    if (places.characters) {
        const unsigned wrong = wrongLevels(trace, s);
        if (wrong == 0) return 0.0;
        return places.level > 0 && ((wrong >> (places.level - 1)) & 1U) != 0 ? 2.0 : 1.0;
    }
    double most = 0.0;
    for (const TraceInstant& i : trace.instants)
        if (places.bounces && i.to == Condition::mark)
            most = std::max(most, i.steadySeconds);
        else if (restsOn(places, i.k, i.to))
            most = std::max(most, std::abs(i.displacementPercent));
    return most;
}

// Of those allowed the one that shows the first finding best, the newest of equals.
template <class Allowed>
std::shared_ptr<const CharacterTrace> best(const Snapshot& s, Allowed allowed) {
    const auto& findings = s.reading.findings;
    std::shared_ptr<const CharacterTrace> found;
    double most = 0.0;
    for (auto trace = s.traces.rbegin(); trace != s.traces.rend(); ++trace) {
        if (!allowed(**trace)) continue;
        const double now = findings && !findings->empty() ? showing(**trace, findings->front().seenAt, s) : 0.0;
        if (found && now <= most) continue;
        found = *trace;
        most = now;
    }
    return found;
}

// What the tape should have sent, where that is known; else what came.
unsigned meant(const CharacterTrace& trace, const Snapshot& s) { return trace.code ^ wrongLevels(trace, s); }

std::shared_ptr<const CharacterTrace> bestMeant(const Snapshot& s, unsigned code) {
    return best(s, [&](const CharacterTrace& t) { return meant(t, s) == code; });
}

}  // namespace

std::shared_ptr<const CharacterTrace> shownTrace(const FrozenFrame& frame) {
    const Snapshot& s = *frame.snapshot;
    for (const auto& trace : s.traces)
        if (frame.characterNumber != 0 && trace->number == frame.characterNumber) return trace;
    return best(s, [](const CharacterTrace&) { return true; });
}

FrozenFrame withFaultShown(FrozenFrame frame) {
    const auto& traces = frame.snapshot->traces;
    const bool newest = !traces.empty() && traces.back()->number == frame.characterNumber;
    if (newest && frame.notes.empty() && !frame.cursors[0] && !frame.cursors[1]) frame.characterNumber = 0;
    return frame;
}

void showAlike(FrozenFrame& before, FrozenFrame& after) {
    const Snapshot &b = *before.snapshot, &a = *after.snapshot;
    const auto chosen = after.characterNumber == 0 ? nullptr : shownTrace(after);
    const auto shared = [&](const CharacterTrace& t) {
        return chosen ? meant(t, b) == meant(*chosen, a) : bestMeant(a, meant(t, b)) != nullptr;
    };
    if (before.characterNumber == 0)
        if (const auto found = best(b, shared)) before.characterNumber = found->number;
    const auto shown = shownTrace(before);
    if (chosen || !shown) return;
    if (const auto found = bestMeant(a, meant(*shown, b))) after.characterNumber = found->number;
}

bool areAlike(const FrozenFrame& before, const FrozenFrame& after) {
    const auto b = shownTrace(before), a = shownTrace(after);
    return b && a && meant(*b, *before.snapshot) == meant(*a, *after.snapshot);
}

}  // namespace trueunit
