// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/steadiness.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>
#include <vector>

#include "core/measure/displacements.h"
#include "core/normal_equations.h"

namespace trueunit {

namespace {

constexpr std::size_t kFewestIntervals = 10;
constexpr std::size_t kBlock = 8;         // characters
constexpr std::size_t kTrimmedSteps = 4;  // one odd interval makes two odd steps
constexpr std::size_t kTrimmedPart = 50;

struct Sample {
    double seconds = 0.0;
    double value = 0.0;
    bool follows = false;  // the sample before is its neighbour
};

// From one sample to the next, as a rule: of some characters there is none.
double usualSpacing(const std::vector<Sample>& samples) {
    std::vector<double> spacings;
    for (std::size_t i = 1; i < samples.size(); ++i) spacings.push_back(samples[i].seconds - samples[i - 1].seconds);
    const auto middle = spacings.begin() + static_cast<std::ptrdiff_t>(spacings.size() / 2);
    std::nth_element(spacings.begin(), middle, spacings.end());
    return *middle;
}

// One sample a character: a line near a whole number of turns in each looks like a slow one, and stays.
bool looksSlow(double hz, double period) {
    const double turns = hz * period;
    return std::abs(turns - std::round(turns)) < kSlowestShaftHz * period;
}

void takeOutLines(std::vector<Sample>& samples, std::span<const PeriodicLine> lines) {
    if (samples.size() < kFewestIntervals) return;
    const double period = usualSpacing(samples);
    for (const PeriodicLine& line : lines) {
        if (looksSlow(line.hz, period)) continue;
        const double w = 2.0 * std::numbers::pi * line.hz;
        NormalEquations<3> equations;
        for (const Sample& s : samples) equations.add({1.0, std::cos(w * s.seconds), std::sin(w * s.seconds)}, s.value);
        const auto x = equations.solve();
        if (!x) continue;
        for (Sample& s : samples) s.value -= (*x)[1] * std::cos(w * s.seconds) + (*x)[2] * std::sin(w * s.seconds);
    }
}

// Start to start in units; those of a running tape only.
std::vector<Sample> runningIntervals(Characters characters, double unit, int levels, Steadiness& out) {
    std::vector<Sample> all;
    for (std::size_t i = 1; i < characters.size(); ++i) {
        const Character& a = *characters[i - 1];
        const Character& b = *characters[i];
        if (b.number != a.number + 1 || b.afterGap || !a.stopPresent) continue;
        all.push_back({b.start, (b.start - a.start) / unit, !all.empty() && all.back().seconds == a.start});
    }
    out.intervals = static_cast<long>(all.size());
    std::vector<double> values;
    for (const Sample& s : all)
        if (s.value < levels + 5.0) values.push_back(s.value);
    if (values.size() < kFewestIntervals) return {};
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    std::vector<Sample> running;
    bool broken = true;
    for (const Sample& s : all) {
        const bool runs = std::abs(s.value - *middle) < 1.6;  // a stop irregular by half a unit stays within
        if (runs) running.push_back({s.seconds, s.value, s.follows && !broken});
        broken = !runs;
    }
    out.runningShare = static_cast<double>(running.size()) / static_cast<double>(all.size());
    return running;
}

// Standard deviation from the differences of neighbours, which slow changes hardly enter (J. von Neumann, 1941, from
// memory).
std::vector<double> neighbourSteps(const std::vector<Sample>& samples) {
    std::vector<double> squares;
    for (std::size_t i = 1; i < samples.size(); ++i)
        if (samples[i].follows) squares.push_back(0.5 * std::pow(samples[i].value - samples[i - 1].value, 2));
    std::sort(squares.begin(), squares.end());
    return squares;
}

double rootMean(std::span<const double> squares) {
    if (squares.empty()) return 0.0;
    return std::sqrt(std::accumulate(squares.begin(), squares.end(), 0.0) / static_cast<double>(squares.size()));
}

// How much longer each character's unit is than the given one, percent, the means by place taken out. An offset of its
// instants to mark is fitted beside it, so that a contact being adjusted does not pass for a change of speed.
std::vector<Sample> unitOfEach(Characters characters, double unit) {
    std::vector<Sample> out;
    NormalEquations<2> equations;
    int marks = 0;
    int spaces = 0;
    const std::vector<Displaced> displaced = displacementsAboutMeans(characters, unit);
    for (std::size_t i = 0; i < displaced.size(); ++i) {
        const Displaced& d = displaced[i];
        equations.add({static_cast<double>(d.k), d.toMark ? 1.0 : 0.0}, d.left);
        ++(d.toMark ? marks : spaces);
        if (i + 1 < displaced.size() && displaced[i + 1].character == d.character) continue;
        if (const auto x = equations.solve(); x && marks > 0 && spaces > 0)
            out.push_back({d.startSeconds, (*x)[0], true});
        equations = {};
        marks = spaces = 0;
    }
    return out;
}

struct Blocks {
    double count = 0.0;
    double within = 0.0;   // variance, their mean
    double between = 0.0;  // of their means; 0 with fewer than two
};

Blocks blocksOf(const std::vector<Sample>& samples) {
    Blocks blocks;
    double within = 0.0, sum = 0.0, squares = 0.0;
    for (std::size_t first = 0; first + kBlock <= samples.size(); first += kBlock) {
        double s = 0.0, ss = 0.0;
        for (std::size_t i = first; i < first + kBlock; ++i) {
            s += samples[i].value;
            ss += samples[i].value * samples[i].value;
        }
        const double mean = s / kBlock;
        within += std::max(0.0, ss - s * mean) / (kBlock - 1.0);
        sum += mean;
        squares += mean * mean;
        blocks.count += 1.0;
    }
    if (blocks.count > 0.0) blocks.within = within / blocks.count;
    if (blocks.count > 1.0) blocks.between = (squares - sum * sum / blocks.count) / (blocks.count - 1.0);
    return blocks;
}

void measureWander(const std::vector<Sample>& units, Steadiness& out) {
    const Blocks blocks = blocksOf(units);
    out.blocks = static_cast<long>(blocks.count);
    if (blocks.count < 2.0) return;
    const double chance = blocks.within / kBlock;
    out.wander = std::sqrt(std::max(0.0, blocks.between - chance));
    out.wanderRatio = blocks.between / std::max(chance, 1e-9);
}

}  // namespace

std::optional<Steadiness> steadinessOf(Characters characters, double unitSeconds, int levels,
                                       std::span<const PeriodicLine> lines) {
    Steadiness out;
    std::vector<Sample> intervals = runningIntervals(characters, unitSeconds, levels, out);
    if (intervals.size() < kFewestIntervals) return std::nullopt;
    takeOutLines(intervals, lines);
    const std::vector<double> steps = neighbourSteps(intervals);
    out.stopScatter = rootMean(steps);
    out.stopSpread = std::sqrt(blocksOf(intervals).within);  // a slow change of the speed hardly enters
    const std::size_t trimmed = kTrimmedSteps + steps.size() / kTrimmedPart;
    out.stopScatterTrimmed = rootMean(std::span(steps).first(steps.size() - std::min(trimmed, steps.size())));
    std::vector<Sample> units = unitOfEach(characters, unitSeconds);
    takeOutLines(units, lines);
    measureWander(units, out);
    return out;
}

}  // namespace trueunit
