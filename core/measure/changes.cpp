// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/changes.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <numeric>
#include <span>

#include "core/normal_equations.h"

namespace trueunit {

namespace {

constexpr std::size_t kMostSteps = 4;
constexpr std::size_t kFewestOfStretch = 40;  // instants of a stretch: some twelve characters
constexpr std::size_t kStepUnknowns = 4;      // three means and where it is
constexpr std::size_t kDriftUnknowns = 6;
constexpr double kClearly = 10.0;        // of the cost: chance looks at every place for a step
constexpr double kSmallestChange = 0.3;  // percent of a unit, of the bias

using Stretch = std::span<Displaced>;
using Row = std::array<double, 3>;
using DriftRow = std::array<double, kDriftUnknowns>;

Row rowOf(const Displaced& i) { return {i.toMark ? 1.0 : 0.0, i.toMark ? 0.0 : 1.0, static_cast<double>(i.k)}; }

double squaresOf(std::span<const Displaced> d) {
    double s = 0.0;
    for (const Displaced& i : d) s += i.left * i.left;
    return s;
}

// What three means leave of the first 0, 1, 2 ... instants; of so few as cannot tell them, everything.
std::vector<double> leftOfFirst(std::span<const Displaced> d, bool backwards) {
    std::vector<double> left{0.0};
    NormalEquations<3> equations;
    double squares = 0.0;
    for (std::size_t n = 0; n < d.size(); ++n) {
        const Displaced& i = d[backwards ? d.size() - 1 - n : n];
        equations.add(rowOf(i), i.left);
        squares += i.left * i.left;
        const auto means = n + 1 < kFewestOfStretch ? std::nullopt : equations.solve();
        left.push_back(means ? equations.left(*means) : squares);
    }
    return left;
}

struct Step {
    std::size_t at = 0;  // first instant after it
    double left = 1e300;
};

// Between two characters.
Step bestStep(std::span<const Displaced> d) {
    Step best;
    if (d.size() < 2 * kFewestOfStretch) return best;
    const std::vector<double> before = leftOfFirst(d, false), after = leftOfFirst(d, true);
    for (std::size_t at = kFewestOfStretch; at + kFewestOfStretch <= d.size(); ++at) {
        if (d[at].character == d[at - 1].character) continue;
        const double left = before[at] + after[d.size() - at];
        if (left < best.left) best = {at, left};
    }
    return best;
}

double leftByMeans(std::span<const Displaced> d) { return leftOfFirst(d, false).back(); }

struct Stretches {
    std::vector<std::size_t> begins{0};
    double cost = 0.0;
};

// Where the stretches begin that steps part.
Stretches stretchesOf(std::span<const Displaced> d, std::size_t unknowns) {
    Stretches out;
    std::vector<std::size_t>& begins = out.begins;
    double left = leftByMeans(d);
    while (begins.size() <= kMostSteps) {
        Step best;
        double whole = 0.0;
        for (std::size_t s = 0; s < begins.size(); ++s) {
            const std::size_t end = s + 1 < begins.size() ? begins[s + 1] : d.size();
            const std::span<const Displaced> stretch = d.subspan(begins[s], end - begins[s]);
            const Step step = bestStep(stretch);
            if (step.left > 1e299) continue;
            const double own = leftByMeans(stretch);
            if (own - step.left > whole - best.left || best.left > 1e299) {
                best = {begins[s] + step.at, step.left};
                whole = own;
            }
        }
        if (best.left > 1e299) break;
        const double then = left - whole + best.left;
        if (costOf(then, d.size(), kStepUnknowns) + kClearly > costOf(left, d.size(), 0)) break;
        left = then;
        begins.insert(std::upper_bound(begins.begin(), begins.end(), best.at), best.at);
    }
    out.cost = costOf(left, d.size(), unknowns + kStepUnknowns * (begins.size() - 1));
    return out;
}

// The same three, growing straight on from the first instant to the last, and the speed by slow waves besides, up to
// twice up and down in all; whether they say enough.
bool takeOutDrift(std::vector<Displaced>& d) {
    constexpr double kPi = std::numbers::pi;
    const double from = d.front().seconds, whole = std::max(d.back().seconds - from, 1e-9);
    const auto drifting = [&](const Displaced& i) {
        const double u = (i.seconds - from) / whole, straight = u - 0.5;
        const Row r = rowOf(i);
        return DriftRow{r[0] * straight,
                        r[1] * straight,
                        r[2] * straight,
                        r[2] * std::cos(2.0 * kPi * u),
                        r[2] * std::cos(3.0 * kPi * u),
                        r[2] * std::cos(4.0 * kPi * u)};
    };
    NormalEquations<kDriftUnknowns> equations;
    for (const Displaced& i : d) equations.add(drifting(i), i.left);
    const auto by = equations.solve();
    if (!by) return false;
    const double cost = costOf(squaresOf(d), d.size(), 0);
    if (costOf(equations.left(*by), d.size(), kDriftUnknowns) + kClearly > cost) return false;
    for (Displaced& i : d) {
        const DriftRow row = drifting(i);
        i.left -= std::inner_product(row.begin(), row.end(), by->begin(), 0.0);
    }
    return true;
}

// Means of a stretch, taken out of it; the bias among them, longer marks positive.
double takeOutMeansOf(Stretch stretch) {
    NormalEquations<3> equations;
    for (const Displaced& i : stretch) equations.add(rowOf(i), i.left);
    const auto means = equations.solve();
    if (!means) return 0.0;
    for (Displaced& i : stretch) {
        const Row row = rowOf(i);
        i.left -= row[0] * (*means)[0] + row[1] * (*means)[1] + row[2] * (*means)[2];
    }
    return -(*means)[0];
}

}  // namespace

double costOf(double squares, std::size_t n, std::size_t unknowns) {
    const auto of = static_cast<double>(n);
    return of * std::log(std::max(squares, 1e-12) / of) + static_cast<double>(unknowns) * std::log(of);
}

std::optional<Changes> takeOutChanges(std::vector<Displaced>& d) {
    if (d.size() < 2 * kFewestOfStretch) return std::nullopt;
    Changes changes;
    Stretches stretches = stretchesOf(d, 0);
    if (std::vector<Displaced> straight = d; takeOutDrift(straight)) {
        Stretches besides = stretchesOf(straight, kDriftUnknowns);
        if (besides.cost < stretches.cost) {
            d = std::move(straight);
            stretches = std::move(besides);
            changes.unknowns = kDriftUnknowns;
        }
    }
    const std::vector<std::size_t>& begins = stretches.begins;
    if (begins.size() < 2) return changes.unknowns > 0 ? std::optional(changes) : std::nullopt;
    changes.unknowns += kStepUnknowns * (begins.size() - 1);
    Changes::OfBias bias;
    for (std::size_t s = 0; s < begins.size(); ++s) {
        const std::size_t end = s + 1 < begins.size() ? begins[s + 1] : d.size();
        bias.last = takeOutMeansOf(Stretch(d).subspan(begins[s], end - begins[s]));
        if (s == 0) bias.first = bias.last;
    }
    bias.since = d[begins.back()].character;
    if (std::abs(bias.last - bias.first) > kSmallestChange) changes.bias = bias;
    takeOutMeans(d);
    return changes;
}

}  // namespace trueunit
