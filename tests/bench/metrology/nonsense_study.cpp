// SPDX-License-Identifier: GPL-3.0-or-later
// No reading from no signal: of each kind of nonsense, looked at every second, not one bias.
#include <algorithm>
#include <cmath>
#include <functional>
#include <numbers>
#include <random>

#include "tests/bench/metrology/parallel.h"
#include "tests/bench/metrology/studies.h"

namespace trueunit::bench {

namespace {

constexpr double kRate = 48000.0;
constexpr double kTwoPi = 2.0 * std::numbers::pi;

// What the generators share: chance, a phase, a level with the samples left of it.
struct State {
    std::mt19937_64 random{5};
    std::normal_distribution<double> normal;
    double phase = 0.0;
    double left = 0.0;
    double walk = 0.0;
    bool high = true;

    double noise() { return normal(random); }
    double turn(double hz) { return phase += kTwoPi * hz / kRate; }
    double bits(double perSecond) {  // synchronous data
        if (left <= 0.0) {
            high = (random() & 1U) != 0;
            left += kRate / perSecond;
        }
        left -= 1.0;
        return high ? 0.4 : -0.4;
    }
};

struct Kind {
    const char* name;
    std::function<double(State&, double t)> at;
};

double square(double t, double hz, double duty) { return std::fmod(t * hz, 1.0) < duty ? 0.4 : -0.4; }

double randomTelegraph(State& s, double) {
    if (s.left <= 0.0) {
        s.high = !s.high;
        s.left = -std::log((static_cast<double>(s.random() % 1000000) + 1.0) / 1000001.0) * 0.03 * kRate;
    }
    s.left -= 1.0;
    return s.high ? 0.4 : -0.4;
}

double dotsAndDashes(State& s, double t) {  // a hand key and its tone
    if (s.left <= 0.0) {
        s.high = !s.high;
        const double mark = s.random() % 3 == 0 ? 3.0 : 1.0;
        const double space = s.random() % 5 == 0 ? 7.0 : mark;
        s.left = kRate * 0.06 * (s.high ? mark : space);
    }
    s.left -= 1.0;
    return s.high ? 0.3 * std::sin(kTwoPi * 700.0 * t) : 0.0;
}

double buzzingVoice(State& s, double t) {
    const double loud = std::max(0.0, std::sin(kTwoPi * 3.1 * t) + 0.3 * std::sin(kTwoPi * 0.7 * t));
    s.turn(110.0 + 20.0 * std::sin(kTwoPi * 0.6 * t));
    double v = 0.0;
    for (int h = 1; h < 12; ++h) v += std::sin(h * s.phase) / h * (1.0 + 0.8 * std::sin(kTwoPi * 0.4 * h * t));
    return 0.1 * loud * v + 0.002 * s.noise();
}

std::vector<Kind> kinds() {
    return {
        {"silence", [](State&, double) { return 0.0; }},
        {"steady voltage", [](State&, double) { return 0.3; }},
        {"white noise", [](State& s, double) { return 0.1 * s.noise(); }},
        {"faint noise", [](State& s, double) { return 1e-4 * s.noise(); }},
        {"coloured noise", [](State& s, double) { return 0.01 * (s.walk = 0.999 * s.walk + s.noise()); }},
        {"brown noise", [](State& s, double) { return 0.001 * (s.walk = 0.99999 * s.walk + s.noise()); }},
        {"hum of 50 Hz with its third",
         [](State& s, double t) {
             return 0.3 * std::sin(kTwoPi * 50.0 * t) + 0.1 * std::sin(kTwoPi * 150.0 * t) + 0.003 * s.noise();
         }},
        {"hum of 60 Hz, clipped",
         [](State&, double t) { return std::clamp(1.5 * std::sin(kTwoPi * 60.0 * t), -1.0, 1.0); }},
        {"sweep of 20 to 2000 Hz",
         [](State& s, double t) { return 0.5 * std::sin(s.turn(20.0 * std::pow(100.0, std::fmod(t, 20.0) / 20.0))); }},
        {"square wave of 6.1 Hz, 30 %", [](State&, double t) { return square(t, 6.1, 0.3); }},
        {"square wave of 12 Hz", [](State&, double t) { return square(t, 12.0, 0.5); }},
        {"square wave of 22.7 Hz", [](State&, double t) { return square(t, 22.7, 0.5); }},
        {"square sweep",
         [](State& s, double t) {
             return std::fmod(s.turn(3.0 + 1.5 * std::fmod(t, 20.0)), kTwoPi) < std::numbers::pi ? 0.4 : -0.4;
         }},
        {"random telegraph", randomTelegraph},
        {"synchronous data, 50 a second", [](State& s, double) { return s.bits(50.0); }},
        {"synchronous data, 300 a second", [](State& s, double) { return s.bits(300.0); }},
        {"split-phase data, 50 a second",
         [](State& s, double t) { return s.bits(50.0) * (std::fmod(50.0 * t, 1.0) < 0.5 ? 1.0 : -1.0); }},
        {"dots and dashes of a tone", dotsAndDashes},
        {"tone of 1000 Hz", [](State& s, double t) { return 0.3 * std::sin(kTwoPi * 1000.0 * t) + 0.001 * s.noise(); }},
        {"swelling tone",
         [](State&, double t) {
             return 0.3 * (1.0 + 0.8 * std::sin(kTwoPi * 10.0 * t)) * std::sin(kTwoPi * 1000.0 * t);
         }},
        {"buzzing voice", buzzingVoice},
    };
}

Row nonsenseRow(const Kind& kind, double seconds) {
    State state;
    Pipeline pipeline(kRate, Options{}, Limits{});
    std::vector<float> block(static_cast<std::size_t>(kRate / 10.0));
    Row row{kind.name, 0.0, 0.0, {}, 0.0, 0.0, true, {}};
    long looks = 0;
    const auto look = [&] {
        const Reading r = pipeline.reading();
        if (r.valid()) row.measure += 1.0;
        row.remark = r.valid() || r.notes.empty() ? r.text.decoded.substr(0, 24) : r.notes.front();
    };
    for (double t = 0.0; t < seconds;) {
        for (float& v : block) {
            v = static_cast<float>(kind.at(state, t));
            t += 1.0 / kRate;
        }
        pipeline.push(block);
        if (++looks % 10 == 0) look();
    }
    pipeline.finish();
    look();
    row.reading = row.measure;
    row.ok = row.measure == 0.0;
    return row;
}

}  // namespace

void studyNonsense(Table& table, double seconds) {
    char title[100];
    std::snprintf(title, sizeof title, "Readings from %.0f s of nonsense, looked at every second", seconds);
    table.heading(title, "readings");
    const auto all = kinds();
    for (const Row& row : onTwoThreads(all.size(), [&](std::size_t i) { return nonsenseRow(all[i], seconds); }))
        table.add(row);
}

}  // namespace trueunit::bench
