// SPDX-License-Identifier: GPL-3.0-or-later
// How often the stated 95 % intervals hold the truth, over a thousand drawn senders: scatter 0.2 to 3 %, bias -15 to
// +15 %. Characters are made as a perfect framer hands them over, so that the intervals alone are on trial.
#include <algorithm>
#include <array>
#include <cmath>
#include <random>

#include "core/frame/unit_fit.h"
#include "core/measure/timing.h"
#include "core/report/compose_reading.h"
#include "tests/bench/metrology/parallel.h"
#include "tests/bench/metrology/studies.h"

namespace trueunit::bench {

namespace {

constexpr int kSenders = 1000;
constexpr double kNominal = 0.022;

struct Sender {
    double unit, scatter, toMark, toSpace, stop;  // seconds; stop in units
};

Sender draw(std::mt19937_64& random) {
    const auto between = [&](double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(random);
    };
    return {kNominal * between(0.99, 1.01), 0.01 * kNominal * std::exp(between(std::log(0.2), std::log(3.0))),
            0.01 * kNominal * between(-15.0, 15.0), 0.01 * kNominal * between(-5.0, 5.0), between(1.0, 2.0)};
}

std::vector<Character> charactersOf(const Sender& s, int n, bool startScatters, bool mixed, std::mt19937_64& random) {
    std::normal_distribution<double> normal(0.0, s.scatter);
    std::vector<Character> out(static_cast<std::size_t>(n));
    double turn = 1.0;
    for (std::size_t i = 0; i < out.size(); ++i, turn += (6.0 + s.stop) * s.unit) {
        Character& c = out[i];
        c.number = i;
        c.start = turn + (startScatters ? normal(random) : 0.0);
        c.code = mixed ? static_cast<unsigned>(random() % 32) : (i % 2 != 0 ? 21U : 10U);
        bool mark = false;
        for (int k = 1; k <= 6; ++k) {
            const bool now = k == 6 || ((c.code >> (k - 1)) & 1U) != 0;
            if (now == mark) continue;
            mark = now;
            const double at = turn + k * s.unit + (now ? s.toMark : s.toSpace) + normal(random);
            c.instants.push_back({k, now ? Condition::mark : Condition::space, at - c.start});
        }
    }
    return out;
}

struct Held {
    long hits = 0;
    long n = 0;
    void count(const Measured& m, double truth) {
        ++n;
        if (std::abs(m.value - truth) <= m.uncertainty) ++hits;
    }
};

enum Quantity : std::size_t { kUnit, kBias, kEnd, kStop, kQuantities };

std::array<Held, kQuantities> tryIntervals(int n, bool startScatters, bool mixed) {
    std::mt19937_64 random(static_cast<std::uint64_t>(n) * 7 + (mixed ? 1 : 0));
    std::array<Held, kQuantities> held;
    for (int i = 0; i < kSenders; ++i) {
        const Sender s = draw(random);
        const int shortest = static_cast<int>(kUnitCharacters);
        const auto characters = charactersOf(s, std::max(n, shortest), startScatters, mixed, random);
        std::vector<const Character*> recent;
        for (const Character& c : characters) recent.push_back(&c);
        const std::vector<const Character*> window(recent.end() - n, recent.end());
        const auto fit = fitWindow(window, recent);
        if (!fit) continue;
        if (fit->toMark) held[kBias].count(*fit->toMark, s.toMark);
        if (fit->toSpace) held[kEnd].count(*fit->toSpace, s.toSpace);
        if (n < shortest) continue;
        held[kUnit].count(fit->unit, s.unit);
        if (const auto period = characterPeriod(window, fit->unit.value, 5)) {
            const double units = period->value / fit->unit.value;
            const double part =
                std::hypot(period->uncertainty / period->value, fit->unit.uncertainty / fit->unit.value);
            held[kStop].count({units - 6.0, units * part}, s.stop);
        }
    }
    return held;
}

}  // namespace

void studyCoverage(Table& table) {
    table.heading("Share of the 95 % intervals that hold the truth, 1,000 senders each; 93 to 97 %", "%");
    struct Case {
        int characters;
        bool startScatters;
        bool mixed;
    };
    std::vector<Case> cases;
    for (const int n : {4, 8, 16, 32, 60, 128, 200})
        for (const bool startScatters : {false, true})
            for (const bool mixed : {false, true}) cases.push_back({n, startScatters, mixed});
    const auto held = onTwoThreads(cases.size(), [&](std::size_t i) {
        return tryIntervals(cases[i].characters, cases[i].startScatters, cases[i].mixed);
    });
    static constexpr std::array kNames = {"speed", "bias", "end", "stop"};
    for (std::size_t i = 0; i < cases.size(); ++i)
        for (std::size_t q = 0; q < kQuantities; ++q) {
            if (held[i][q].n == 0) continue;
            const double share = 100.0 * static_cast<double>(held[i][q].hits) / static_cast<double>(held[i][q].n);
            char name[80];
            std::snprintf(name, sizeof name, "%s, %d characters, %s%s", kNames[q], cases[i].characters,
                          cases[i].mixed ? "mixed" : "RY", cases[i].startScatters ? ", start scatters" : "");
            table.add({name, 95.0, share, {}, std::abs(share - 95.0), 2.0, share >= 93.0 && share <= 97.0, {}});
        }
}

}  // namespace trueunit::bench
