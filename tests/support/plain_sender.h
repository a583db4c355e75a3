// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>
#include <cstdint>
#include <functional>
#include <numbers>
#include <random>
#include <string>
#include <vector>

namespace trueunit::test {

// A second, deliberately plain way to make a keyed signal with a known truth, sharing no code with core/simulate:
// tests of the measurement use it so that an error common to simulator and instrument cannot hide.
struct PlainSender {
    double rateHz = 48000.0;
    double unit = 0.022;     // actual unit, seconds
    double nominal = 0.022;  // percentages are of this
    double stopUnits = 1.42;
    int levels = 5;
    double biasPercent = 0.0;     // marking positive
    double endPercent = 0.0;      // marking positive
    double scatterPercent = 0.0;  // each instant but the start
    double startScatterPercent = 0.0;
    double stopScatterPercent = 0.0;
    std::function<double(int k, bool toMark, double seconds)> extraPercent;  // further displacement, late positive

    double rise = 300e-6;  // 10 to 90 %, seconds
    double fall = 0.0;     // the same for edges to space; 0: as the rise
    enum class Edge { linear, gaussian, exponential } edge = Edge::gaussian;
    std::vector<double> polesHz;
    double swing = 0.5;       // full scale = 1
    double snrDb = 60.0;      // half the swing over the rms noise
    double humPercent = 0.0;  // peak to peak, of the swing
    double humHz = 50.0;
    std::vector<double> humHarmonics;  // strength of the second, third ... against the first
    double offset = 0.0;
    bool inverted = false;
    double leadIn = 0.4;  // seconds of steady mark
    std::uint64_t seed = 1;

    struct Instant {
        double seconds;
        bool toMark;
    };
    std::vector<Instant> instants;

    std::vector<float> send(const std::vector<unsigned>& codes, double tail = 0.3);

private:
    double step(double t, double length) const;  // 0 to 1, half at t = 0
};

inline double PlainSender::step(double t, double length) const {
    switch (edge) {
        case Edge::linear:
            return std::min(1.0, std::max(0.0, 0.5 + t / (length / 0.8)));
        case Edge::gaussian:
            return 0.5 * std::erfc(-t / (length / 2.5631) / std::numbers::sqrt2);
        case Edge::exponential: {
            const double tau = length / std::log(9.0);
            const double late = t + tau * std::numbers::ln2;
            return late > 0.0 ? 1.0 - std::exp(-late / tau) : 0.0;
        }
    }
    return 0.0;
}

inline std::vector<float> PlainSender::send(const std::vector<unsigned>& codes, double tail) {
    std::mt19937_64 random(seed);
    std::normal_distribution<double> normal;
    instants.clear();
    double start = leadIn;
    for (const unsigned code : codes) {
        const double s = start + 0.01 * startScatterPercent * nominal * normal(random);
        instants.push_back({s, false});
        bool mark = false;
        for (int k = 1; k <= levels + 1; ++k) {
            const bool now = k == levels + 1 || ((code >> (k - 1)) & 1U) != 0;
            if (now == mark) continue;
            mark = now;
            double d = scatterPercent * normal(random) + (now ? -biasPercent : endPercent);
            if (extraPercent) d += extraPercent(k, now, start);
            instants.push_back({start + k * unit + 0.01 * d * nominal, now});
        }
        start += (levels + 1 + stopUnits + 0.01 * stopScatterPercent * normal(random)) * unit;
    }
    // Each edge is drawn where it happens; from the end of its reach on its change is part of the level.
    std::vector<double> line(static_cast<std::size_t>((start + tail) * rateHz), 0.0);
    std::vector<double> jumps(line.size() + 1, 0.0);
    const auto sampleAfter = [&](double seconds) {
        return std::min(line.size(), static_cast<std::size_t>(std::max(0.0, std::ceil(seconds * rateHz))));
    };
    for (const Instant& i : instants) {
        const double change = i.toMark ? 1.0 : -1.0;
        const double length = i.toMark || fall <= 0.0 ? rise : fall;
        const double reach = (edge == Edge::exponential ? 6.0 : 2.5) * length;
        const std::size_t end = sampleAfter(i.seconds + reach);
        for (std::size_t n = sampleAfter(i.seconds - reach); n < end; ++n)
            line[n] += change * step(static_cast<double>(n) / rateHz - i.seconds, length);
        jumps[end] += change;
    }
    double level = 1.0;
    for (std::size_t n = 0; n < line.size(); ++n) line[n] += level += jumps[n];
    for (double& v : line) v = (inverted ? 0.5 - v : v - 0.5) * swing;
    for (const double hz : polesHz) {  // exact for a signal held between samples
        const double decay = std::exp(-2.0 * std::numbers::pi * hz / rateHz);
        double low = line.empty() ? 0.0 : line.front();
        double previous = low;
        for (double& v : line) {
            low += (0.5 * (v + previous) - low) * (1.0 - decay);
            previous = v;
            v -= low;
        }
    }
    const double noise = 0.5 * swing * std::pow(10.0, -snrDb / 20.0);
    std::vector<float> out(line.size());
    for (std::size_t n = 0; n < line.size(); ++n) {
        const double turn = 2.0 * std::numbers::pi * humHz * static_cast<double>(n) / rateHz;
        double hum = std::sin(turn);
        for (std::size_t h = 0; h < humHarmonics.size(); ++h)
            hum += humHarmonics[h] * std::sin(static_cast<double>(h + 2) * turn + 1.0);
        hum *= 0.005 * humPercent * swing;
        out[n] = static_cast<float>(line[n] + hum + offset + noise * normal(random));
    }
    return out;
}

}  // namespace trueunit::test
