// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/simulate/keyer.h"
#include "core/simulate/scenario.h"
#include "core/simulate/scenario_signal.h"

namespace trueunit {

// A machine without a fault on a perfect line: 45.45 baud (22 ms), no coupling, no noise. Tests add what they are
// about.
inline Scenario faultlessScenario(const std::string& text = "RY") {
    Scenario s;
    s.title = "test";
    s.machine.baud = 45.45;
    s.machine.stopUnits = 1.42;
    s.text.send = text;
    s.line.edge = Scenario::Edge::linear;
    s.card.levelDbfs = -12.0;
    return s;
}

inline std::vector<KeyedCharacter> keyed(const Scenario& scenario, std::size_t characters) {
    Keyer keyer(scenario);
    std::vector<KeyedCharacter> all(characters);
    std::size_t n = 0;
    while (n < characters && keyer.next(all[n])) ++n;
    all.resize(n);
    return all;
}

inline std::vector<float> samplesOf(ScenarioSignal& signal, std::size_t most) {
    std::vector<float> samples(most);
    samples.resize(signal.read(samples));
    return samples;
}

struct Crossing {
    double sample;
    bool rising;
};

// As plain as can be: where a straight line between two samples crosses zero.
inline std::vector<Crossing> zeroCrossings(const std::vector<float>& samples) {
    std::vector<Crossing> all;
    for (std::size_t i = 1; i < samples.size(); ++i) {
        const double a = static_cast<double>(samples[i - 1]);
        const double b = static_cast<double>(samples[i]);
        if ((a < 0.0) == (b < 0.0)) continue;
        all.push_back({static_cast<double>(i - 1) + a / (a - b), b > a});
    }
    return all;
}

}  // namespace trueunit
