// SPDX-License-Identifier: GPL-3.0-or-later
// Scatter of the instants against the Cramer-Rao bound: the variance of the arrival time of a known shape in white
// noise is at least noise^2 / sum(slope^2) (S. M. Kay, Fundamentals of Statistical Signal Processing, 1993, 3.5; from
// memory). The program does not know the shape. The start of a character scatters as much as the instant itself, so
// the displacement scatters by root two of the bound.
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "tests/bench/metrology/parallel.h"
#include "tests/bench/metrology/studies.h"
#include "tests/support/measure_twice.h"

namespace trueunit::bench {

namespace {

using Edge = test::PlainSender::Edge;

constexpr double kLimit = 1.10;
constexpr std::size_t kCharacters = 400;
constexpr int kRepeats = 3;

double step(Edge edge, double rise, double t) {
    switch (edge) {
        case Edge::linear:
            return std::clamp(0.5 + t / (rise / 0.8), 0.0, 1.0);
        case Edge::gaussian:
            return 0.5 * std::erfc(-t / (rise / 2.5631) / std::numbers::sqrt2);
        case Edge::exponential: {
            const double tau = rise / std::log(9.0);
            const double late = t + tau * std::numbers::ln2;
            return late > 0.0 ? 1.0 - std::exp(-late / tau) : 0.0;
        }
    }
    return 0.0;
}

// Seconds; averaged over where between two samples the edge falls.
double cramerRaoBound(Edge edge, double rise, double snrDb, double rateHz) {
    constexpr int kPhases = 200;
    constexpr int kReach = 400;  // samples
    constexpr double kDelta = 1e-8;
    const double noise = 0.5 * std::pow(10.0, -snrDb / 20.0);
    double variance = 0.0;
    for (int phase = 0; phase < kPhases; ++phase) {
        double information = 0.0;
        for (int n = -kReach; n < kReach; ++n) {
            const double t = (n + phase / static_cast<double>(kPhases)) / rateHz;
            const double slope = (step(edge, rise, t + kDelta) - step(edge, rise, t - kDelta)) / (2.0 * kDelta);
            information += slope * slope;
        }
        variance += noise * noise / information;
    }
    return std::sqrt(variance / kPhases);
}

double scatterOfInstants(const test::PlainSender& like) {
    double squares = 0.0;
    long count = 0;
    for (int repeat = 0; repeat < kRepeats; ++repeat) {
        test::PlainSender sender = like;
        sender.seed = 77 + static_cast<std::uint64_t>(repeat);
        const auto samples = sender.send(foxCodes(kCharacters));
        const Reading reading = test::measureTwice(samples, sender.rateHz).reading();
        for (const InstantReading& i : reading.instants) {
            squares += i.rmsPercent * i.rmsPercent * static_cast<double>(i.count);
            count += i.count;
        }
    }
    return count == 0 ? 1e9 : std::sqrt(squares / static_cast<double>(count) / 2.0) / 100.0 * like.unit;
}

}  // namespace

void studyInstants(Table& table) {
    table.heading("Scatter of the instants: reading = scatter, truth = Cramer-Rao bound, held against 1.10 of it",
                  "us");
    struct Case {
        Edge edge;
        double rise;
        double snrDb;
    };
    static constexpr std::array kNames = {"linear", "gaussian", "exponential"};
    std::vector<Case> cases;
    for (const Edge edge : {Edge::linear, Edge::gaussian, Edge::exponential})
        for (const double rise : {60e-6, 300e-6, 1e-3})
            for (const double snrDb : {20.0, 30.0, 40.0}) cases.push_back({edge, rise, snrDb});
    const auto rows = onTwoThreads(cases.size(), [&](std::size_t i) {
        const Case& c = cases[i];
        test::PlainSender sender;
        sender.edge = c.edge;
        sender.rise = c.rise;
        sender.snrDb = c.snrDb;
        const double bound = 1e6 * cramerRaoBound(c.edge, c.rise, c.snrDb, sender.rateHz);
        const double scatter = 1e6 * scatterOfInstants(sender);
        char name[80];
        std::snprintf(name, sizeof name, "edge %s, %.0f us, %.0f dB", kNames[static_cast<std::size_t>(c.edge)],
                      1e6 * c.rise, c.snrDb);
        Row row{name, bound, scatter, {}, scatter, kLimit * bound, scatter <= kLimit * bound, {}};
        std::snprintf(name, sizeof name, "%.3f of the bound", scatter / bound);
        row.remark = name;
        return row;
    });
    for (const Row& row : rows) table.add(row);
}

}  // namespace trueunit::bench
