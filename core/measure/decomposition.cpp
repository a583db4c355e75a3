// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/decomposition.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <random>

#include "core/measure/changes.h"
#include "core/measure/displacements.h"
#include "core/measure/periodic_search.h"

namespace trueunit {

namespace {

constexpr std::size_t kFewestInstants = 20;
constexpr long kFewestOfLength = 15;
constexpr int kChanceDraws = 8;
constexpr int kMostRounds = 1000;      // of parting place and length
constexpr double kSettled = 1e-4;      // percent
constexpr double kHighestTurns = 0.7;  // a unit: a quick motor turns oftener than once in two
constexpr std::size_t kMostLines = 4;
constexpr std::size_t kLineUnknowns = 3;  // frequency, amplitude, phase
constexpr double kFalseAlarm = 0.001;     // a line is named below this probability
constexpr double kSmallestLine = 0.02;    // percent; the instrument's own
constexpr double kShadow = 0.1;  // of the strongest line: what it leaves behind where instants are few and uneven
constexpr std::size_t kSearchedCharacters = 600;
constexpr double kShortestSearchSeconds = 4.0;
constexpr double kFewestGroups = 8.0;

struct LengthEffect {
    double sum = 0.0;
    long n = 0;
    double total = 0.0;  // mean displacement, gathered over the rounds
    bool known() const { return n >= kFewestOfLength; }
    double mean() const { return sum / static_cast<double>(n); }
};
using LengthEffects = std::array<std::array<LengthEffect, kMostPlaces>, 2>;  // by direction and length

// Means by direction and length of the element before, on top of the means by place: the two are not independent, so
// they are taken out in turns until they settle: where a text leaves hardly more than one length at a place, slowly.
LengthEffects takeOutLengths(std::vector<Displaced>& d) {
    LengthEffects effects{};
    const auto of = [&effects](const Displaced& i) -> LengthEffect& {
        return effects[i.toMark ? 1 : 0][static_cast<std::size_t>(i.precedingUnits)];
    };
    double most = kSettled;
    for (int round = 0; round < kMostRounds && most >= kSettled; ++round) {
        most = 0.0;
        for (auto& direction : effects)
            for (LengthEffect& e : direction) e = {0.0, 0, e.total};
        for (const Displaced& i : d) {
            of(i).sum += i.left;
            ++of(i).n;
        }
        for (Displaced& i : d)
            if (of(i).known()) i.left -= of(i).mean();
        for (auto& direction : effects)
            for (LengthEffect& e : direction) {
                if (!e.known()) continue;
                e.total += e.mean();
                most = std::max(most, std::abs(e.mean()));
            }
        takeOutMeans(d);
    }
    return effects;
}

// Largest spread of the means by length within one direction; empty with fewer than two lengths.
std::optional<double> spreadOf(const LengthEffects& effects) {
    std::optional<double> most;
    for (const auto& direction : effects) {
        double low = 1e300, high = -1e300;
        int lengths = 0;
        for (const LengthEffect& e : direction) {
            if (!e.known()) continue;
            low = std::min(low, e.total);
            high = std::max(high, e.total);
            ++lengths;
        }
        if (lengths >= 2) most = std::max(most.value_or(0.0), high - low);
    }
    return most;
}

// The spread that chance alone makes: the rest with the signs of whole characters drawn at random, taken apart again.
double spreadByChance(const std::vector<Displaced>& rest) {
    std::mt19937 random(1);
    double most = 0.0;
    for (int draw = 0; draw < kChanceDraws; ++draw) {
        std::vector<Displaced> d = rest;
        double sign = 1.0;
        std::size_t character = SIZE_MAX;
        for (Displaced& i : d) {
            if (i.character != character) sign = random() % 2 == 0 ? 1.0 : -1.0;
            character = i.character;
            i.left *= sign;
        }
        takeOutMeans(d);
        most = std::max(most, spreadOf(takeOutLengths(d)).value_or(0.0));
    }
    return most;
}

double rmsOf(const std::vector<Displaced>& d) {
    double squares = 0.0;
    for (const Displaced& i : d) squares += i.left * i.left;
    return std::sqrt(squares / static_cast<double>(d.size()));
}

// R. A. Fisher's one-way analysis of variance, with groups of unequal size (from memory).
void partByCharacter(const std::vector<Displaced>& d, Decomposition& out) {
    double groups = 0.0, total = 0.0, ofSquares = 0.0, between = 0.0, within = 0.0;
    for (std::size_t first = 0, next = 0; first < d.size(); first = next) {
        double n = 0.0, sum = 0.0, squares = 0.0;
        for (; next < d.size() && d[next].character == d[first].character; ++next) {
            n += 1.0;
            sum += d[next].left;
            squares += d[next].left * d[next].left;
        }
        groups += 1.0;
        total += n;
        ofSquares += n * n;
        between += sum * sum / n;
        within += squares - sum * sum / n;
    }
    if (groups < kFewestGroups || total - groups < kFewestGroups) return;
    const double own = within / (total - groups);
    const double size = (total - ofSquares / total) / (groups - 1.0);
    out.apart = std::sqrt(own);
    out.together = std::sqrt(std::max(0.0, (between / (groups - 1.0) - own) / size));
}

void takeOutLines(std::vector<Displaced>& d, double unitSeconds, std::vector<PeriodicLine>& lines) {
    const double span = d.back().seconds - d.front().seconds;
    while (lines.size() < kMostLines) {
        const auto line = strongestLine(d, std::max(0.05, 2.0 / span), kHighestTurns / unitSeconds);
        if (!line || line->falseAlarm > kFalseAlarm || line->amplitude < kSmallestLine) return;
        lines.push_back({line->hz, line->amplitude, line->falseAlarm, line->shiftsStart});
        for (std::size_t i = 0; i < d.size(); ++i) d[i].left -= line->part[i];
        takeOutMeans(d);
    }
}

// What places, lengths and lines leave of displacements about their means.
struct Parted {
    std::vector<Displaced> left;
    LengthEffects lengths{};
    std::vector<PeriodicLine> lines;
    std::optional<Changes> changes;

    double cost() const {
        const std::size_t unknowns = kLineUnknowns * lines.size() + (changes ? changes->unknowns : 0);
        const double rms = rmsOf(left);
        return costOf(rms * rms * static_cast<double>(left.size()), left.size(), unknowns);
    }
};

// A repeating text turns characteristic distortion into lines: it goes first, and again when the lines are gone.
Parted part(std::vector<Displaced> d, double unitSeconds, bool seekLines, std::optional<Changes> changes) {
    Parted out{std::move(d), {}, {}, std::move(changes)};
    const LengthEffects first = takeOutLengths(out.left);
    if (seekLines) takeOutLines(out.left, unitSeconds, out.lines);
    std::sort(out.lines.begin(), out.lines.end(),
              [](const PeriodicLine& a, const PeriodicLine& b) { return a.amplitude > b.amplitude; });
    if (!out.lines.empty())
        std::erase_if(out.lines, [&](const PeriodicLine& l) { return l.amplitude < kShadow * out.lines[0].amplitude; });
    out.lengths = takeOutLengths(out.left);
    for (std::size_t i = 0; i < first.size(); ++i)
        for (std::size_t j = 0; j < first[i].size(); ++j) out.lengths[i][j].total += first[i][j].total;
    return out;
}

// A step or a drift looks like many lines, and a swing like many steps: the account with the fewest unknowns for what
// it leaves holds.
Parted likeliest(const std::vector<Displaced>& d, double unitSeconds, bool seekLines) {
    Parted steady = part(d, unitSeconds, seekLines, std::nullopt);
    std::vector<Displaced> rest = d;
    const auto changes = takeOutChanges(rest);
    if (!changes) return steady;
    Parted changed = part(std::move(rest), unitSeconds, seekLines, changes);
    return changed.cost() < steady.cost() ? changed : steady;
}

}  // namespace

std::optional<Decomposition> decompose(Characters characters, const UnitFit& fit, bool seekLines) {
    if (characters.size() > kSearchedCharacters) characters = characters.last(kSearchedCharacters);
    const double unit = fit.unit.value;
    const std::vector<Displaced> displaced = displacementsAboutMeans(characters, unit);
    if (displaced.size() < kFewestInstants) return std::nullopt;
    Decomposition out;
    out.over = static_cast<long>(characters.size());
    out.linesSought = seekLines && displaced.back().seconds - displaced.front().seconds > kShortestSearchSeconds;
    const Parted parted = likeliest(displaced, unit, out.linesSought);
    const std::vector<Displaced>& d = parted.left;
    out.lines = parted.lines;
    if (parted.changes) out.biasChange = parted.changes->bias;
    out.restRms = rmsOf(d);
    for (const Displaced& i : d) out.restPeak = std::max(out.restPeak, std::abs(i.left));
    partByCharacter(d, out);
    if (const auto spread = spreadOf(parted.lengths)) {
        const double chance = spreadByChance(d);
        out.characteristic = std::sqrt(std::max(0.0, *spread * *spread - chance * chance));
        out.characteristicKnown = true;
    }
    return out;
}

}  // namespace trueunit
