// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/shown_trace.h"

#include <algorithm>
#include <cmath>

namespace trueunit {

namespace {

// Levels that came otherwise than the tape has them, level 1 is bit 0; where the text is not known, none.
unsigned wrongLevels(const CharacterTrace& trace, const Snapshot& s) {
    const auto at = std::find_if(s.tape.begin(), s.tape.end(),
                                 [&trace](const TapeCharacter& c) { return c.number == trace.number; });
    return at == s.tape.end() || !at->due ? 0U : *at->due ^ at->code;
}

// How well a character shows a finding; 0: not at all.
double showing(const CharacterTrace& trace, const EvidencePlaces& places, const Snapshot& s) {
    if (places.characters) {
        const unsigned wrong = wrongLevels(trace, s);
        if (wrong == 0) return 0.0;
        return places.level > 0 && ((wrong >> (places.level - 1)) & 1U) != 0 ? 2.0 : 1.0;
    }
    double most = 0.0;
    for (const TraceInstant& i : trace.instants)
        if (restsOn(places, i.k, i.to)) most = std::max(most, std::abs(i.displacementPercent));
    return most;
}

}  // namespace

std::shared_ptr<const CharacterTrace> shownTrace(const FrozenFrame& frame) {
    const Snapshot& s = *frame.snapshot;
    if (s.traces.empty()) return nullptr;
    for (const auto& trace : s.traces)
        if (frame.characterNumber != 0 && trace->number == frame.characterNumber) return trace;
    const auto& findings = s.reading.findings;
    if (!findings || findings->empty()) return s.traces.back();
    auto best = s.traces.back();
    double most = 0.0;
    for (auto trace = s.traces.rbegin(); trace != s.traces.rend(); ++trace)  // the newest of equals
        if (const double now = showing(**trace, findings->front().seenAt, s); now > most) {
            best = *trace;
            most = now;
        }
    return best;
}

FrozenFrame withFaultShown(FrozenFrame frame) {
    const auto& traces = frame.snapshot->traces;
    const bool newest = !traces.empty() && traces.back()->number == frame.characterNumber;
    if (newest && frame.notes.empty() && !frame.cursors[0] && !frame.cursors[1]) frame.characterNumber = 0;
    return frame;
}

}  // namespace trueunit
