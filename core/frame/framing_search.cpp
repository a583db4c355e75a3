// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/frame/framing_search.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <vector>

#include "core/frame/unit_fit.h"

namespace trueunit {

namespace {

constexpr double kSlowestBaud = 35.0;
constexpr double kFastestBaud = 130.0;
constexpr double kStep = 1.012;
constexpr std::size_t kFewestEdges = 20;
constexpr double kShortestSeconds = 1.1;  // of tape, unless it runs fast
constexpr std::size_t kManyEdges = 64;
constexpr std::size_t kFewestCharacters = 5;
constexpr std::size_t kStartsTried = 5;
constexpr double kMostErrors = 0.12;
constexpr double kAlikeShare = 0.85;
constexpr double kMostScatter = 0.13;  // units
constexpr double kMostBias = 0.45;     // units
constexpr double kAsGood = 1.25;       // times the scatter
constexpr double kAlways = 0.002;      // units
constexpr double kNearNominal = 1.4;   // times as fast or slow
// What speaks against an attempt, in the units of its scatter.
constexpr double kOffNominal = 0.15;      // a speed e times the nominal one,
constexpr double kMostOffNominal = 0.05;  // or that cannot be of a machine of that speed
constexpr double kRestAtSpace = 0.05;     // for longer than any character
constexpr double kUnsteadyStop = 0.06;    // for each unit that stops differ by
constexpr double kMostUnsteady = 0.6;     // units
constexpr double kLongestStop = 4.0;      // units; more is a pause
constexpr std::size_t kFewestStops = 4;

struct Attempt {
    double cost = 1e300;
    FramingFound found;
};

std::vector<Character> frame(std::span<const Edge> edges, double secondsPerSample, int levels, const Framing& framing) {
    CharacterFramer framer(levels, framing);
    std::vector<Character> characters;
    for (const Edge& e : edges) framer.push(e, secondsPerSample);
    framer.advance(edges.back().time * secondsPerSample, characters);
    return characters;
}

std::vector<const Character*> pointers(const std::vector<Character>& characters) {
    std::vector<const Character*> p;
    for (const Character& c : characters) p.push_back(&c);
    return p;
}

// Edges that an attempt must account for: the last ones may belong to a character that is not whole yet.
double accountable(std::span<const Edge> edges, double secondsPerSample, int levels, const Character& last,
                   double unitSeconds) {
    const double end = last.start + (levels + 1.25) * unitSeconds;
    const auto whole =
        std::find_if(edges.begin(), edges.end(), [&](const Edge& e) { return e.time * secondsPerSample > end; });
    return static_cast<double>(edges.size()) - std::min(static_cast<double>(edges.end() - whole), levels + 1.0);
}

// Mean difference of the stops from their middle one, in units. A machine keeps to one length, but for pauses.
double stopUnsteadiness(const std::vector<Character>& characters, int levels, double unitSeconds) {
    std::vector<double> stops;
    for (std::size_t i = 1; i < characters.size(); ++i) {
        const double stop = (characters[i].start - characters[i - 1].start) / unitSeconds - (levels + 1);
        if (stop < kLongestStop && characters[i - 1].measurable()) stops.push_back(stop);
    }
    if (stops.size() < kFewestStops) return 0.0;
    const auto middle = stops.begin() + std::ssize(stops) / 2;
    std::nth_element(stops.begin(), middle, stops.end());
    const double usual = *middle;
    double sum = 0.0;
    for (const double stop : stops) sum += std::abs(stop - usual);
    return std::min(sum / static_cast<double>(stops.size()), kMostUnsteady);
}

Attempt attempt(std::span<const Edge> edges, double secondsPerSample, int levels, Framing framing) {
    Attempt a;
    std::vector<Character> characters = frame(edges, secondsPerSample, levels, framing);
    if (characters.size() < kFewestCharacters) return a;
    for (int round = 0; round < 2; ++round) {  // the second round with the unit and bias that the first one found
        const auto fit = fitUnit(pointers(characters));
        if (!fit || std::abs(fit->unit.value / framing.unitSeconds - 1.0) > 0.04) return a;
        if (!fit->toMark || std::abs(fit->toMark->value) > kMostBias * fit->unit.value) return a;
        framing.unitSeconds = fit->unit.value;
        framing.biasSeconds = fit->toMark->value;
        characters = frame(edges, secondsPerSample, levels, framing);
    }
    const auto fit = fitUnit(pointers(characters));
    if (!fit || !fit->toMark || characters.size() < kFewestCharacters) return a;
    framing.unitSeconds = fit->unit.value;  // what these characters say, not what they were framed with
    framing.biasSeconds = fit->toMark->value;
    std::size_t bad = 0;
    std::set<unsigned> codes;
    for (const Character& c : characters) {
        bad += c.measurable() ? 0U : 1U;
        codes.insert(c.code);
    }
    a.found.framing = framing;
    a.found.scatterUnits = fit->rms / fit->unit.value;
    a.found.errorShare = static_cast<double>(bad) / static_cast<double>(characters.size());
    // Edges that no character owns speak against the attempt as framing errors do.
    const double owned = static_cast<double>(fit->instants + characters.size() - bad);
    const double all = accountable(edges, secondsPerSample, levels, characters.back(), framing.unitSeconds);
    const double unowned = std::max(0.0, 1.0 - owned / all);
    a.cost = a.found.scatterUnits + a.found.errorShare + 0.5 * unowned +
             0.05 * std::abs(framing.biasSeconds) / framing.unitSeconds + (codes.size() < 2 ? 0.02 : 0.0) +
             kUnsteadyStop * stopUnsteadiness(characters, levels, framing.unitSeconds);
    return a;
}

// What is known beside the edges and speaks against a framing.
double costByClues(const Framing& framing, bool firstUp, int levels, const FramingClues& clues) {
    double cost = 0.0;
    if (clues.nominalBaud)
        cost += std::min(kMostOffNominal, kOffNominal * std::abs(std::log(*clues.nominalBaud * framing.unitSeconds)));
    const bool restedAtSpace = firstUp != framing.inverted;
    if (restedAtSpace && clues.restSeconds > (levels + 3) * framing.unitSeconds) cost += kRestAtSpace;
    return cost;
}

// The same framing from the earliest start at which it holds as well: no character is left out for a chance in the
// cost.
FramingFound fromEarliest(std::span<const Edge> edges, double secondsPerSample, int levels, const FramingFound& found) {
    for (std::size_t first = 0; first < found.firstEdge; ++first) {
        if (edges[first].up != found.framing.inverted) continue;
        Attempt a = attempt(edges.subspan(first), secondsPerSample, levels, found.framing);
        if (a.cost > 1e299 || a.found.errorShare > found.errorShare) continue;
        if (a.found.scatterUnits > kAsGood * found.scatterUnits + kAlways) continue;
        a.found.firstEdge = first;
        return a.found;
    }
    return found;
}

}  // namespace

bool nearNominal(double baud, double nominalBaud) {
    return baud < kNearNominal * nominalBaud && nominalBaud < kNearNominal * baud;
}

bool onlyAlternate(std::span<const Edge> edges) {
    if (edges.size() < kFewestEdges) return false;
    std::size_t alike = 0;
    for (std::size_t i = 3; i < edges.size(); ++i) {
        const double ratio = (edges[i].time - edges[i - 1].time) / (edges[i - 2].time - edges[i - 3].time);
        alike += ratio > 0.87 && ratio < 1.15 ? 1U : 0U;
    }
    return static_cast<double>(alike) > kAlikeShare * static_cast<double>(edges.size() - 3);
}

std::optional<FramingFound> findFraming(std::span<const Edge> edges, double secondsPerSample, int levels,
                                        const FramingClues& clues) {
    if (edges.size() < kFewestEdges || onlyAlternate(edges)) return std::nullopt;
    const double span = (edges.back().time - edges.front().time) * secondsPerSample;
    if (span < kShortestSeconds && edges.size() < kManyEdges) return std::nullopt;
    const double nominal = clues.nominalBaud.value_or(kSlowestBaud);
    const double slowest = std::min(kSlowestBaud, nominal / kNearNominal);
    const double fastest = std::max(kFastestBaud, nominal * kNearNominal);
    Attempt best;
    for (const bool inverted : {false, true})
        for (std::size_t first = 0, starts = 0; first < edges.size() && starts < kStartsTried; ++first) {
            if (edges[first].up != inverted) continue;  // a start goes to space
            ++starts;
            for (double baud = slowest; baud < fastest; baud *= kStep) {
                Attempt a = attempt(edges.subspan(first), secondsPerSample, levels, {inverted, 1.0 / baud, 0.0});
                a.cost += 1e-3 * static_cast<double>(starts);
                if (a.cost >= best.cost) continue;
                a.cost += costByClues(a.found.framing, edges.front().up, levels, clues);
                if (a.cost >= best.cost) continue;
                a.found.firstEdge = first;
                best = a;
            }
        }
    if (best.cost > 1e299 || best.found.errorShare > kMostErrors || best.found.scatterUnits > kMostScatter)
        return std::nullopt;
    return fromEarliest(edges, secondsPerSample, levels, best.found);
}

}  // namespace trueunit
