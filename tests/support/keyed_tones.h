// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>
#include <numbers>
#include <random>
#include <vector>

#include "tests/support/plain_sender.h"

namespace trueunit::test {

// Tones keyed by a plain sender, switched at once at its instants.
struct KeyedTones {
    double markHz = 1000.0;
    double spaceHz = 0.0;  // 0: the tone is interrupted
    double spaceStrength = 1.0;
    bool onePhase = true;  // the phase runs on from one tone into the other
    double amplitude = 0.3;
    double snrDb = 30.0;  // rms of the tone over the rms noise

    std::vector<float> send(PlainSender& sender, const std::vector<unsigned>& codes) const {
        constexpr double kTwoPi = 2.0 * std::numbers::pi;
        std::vector<float> samples = sender.send(codes);
        std::mt19937_64 random(3);
        std::normal_distribution<double> normal(0.0, amplitude / std::numbers::sqrt2 * std::pow(10.0, -snrDb / 20.0));
        double phase = 0.0;
        std::size_t next = 0;
        bool mark = true;
        for (std::size_t n = 0; n < samples.size(); ++n) {
            const double t = static_cast<double>(n) / sender.rateHz;
            while (next < sender.instants.size() && sender.instants[next].seconds <= t)
                mark = sender.instants[next++].toMark;
            const double hz = mark ? markHz : spaceHz;
            phase += kTwoPi * hz / sender.rateHz;
            const double strength = mark ? amplitude : spaceHz == 0.0 ? 0.0 : amplitude * spaceStrength;
            const double angle = onePhase && spaceHz > 0.0 ? phase : kTwoPi * hz * t + (mark ? 0.0 : 1.0);
            samples[n] = static_cast<float>(strength * std::sin(angle) + normal(random));
        }
        return samples;
    }
};

}  // namespace trueunit::test
