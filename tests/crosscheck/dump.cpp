// SPDX-License-Identifier: GPL-3.0-or-later
// Prints, as JSON, inputs of the spectral and least-squares parts with what they make of them, for compare.py to
// compute again.
#include <cmath>
#include <cstdio>
#include <nlohmann/json.hpp>
#include <numbers>
#include <random>

#include "core/condition/spectrum.h"
#include "core/frame/unit_fit.h"
#include "core/measure/periodic_search.h"
#include "tests/support/character_builder.h"
#include "tests/support/texts.h"

using namespace trueunit;
using Json = nlohmann::json;

namespace {

constexpr double kTwoPi = 2.0 * std::numbers::pi;

std::vector<Character> scatteredCharacters() {
    std::mt19937_64 random(17);
    std::normal_distribution<double> normal;
    test::CharacterBuilder builder;
    builder.unit = 0.0221;
    builder.biasPercent = 7.0;
    builder.endPercent = -3.0;
    builder.extraPercent = [&](std::uint64_t number, int k, Condition) {
        const double start = 1.0 + static_cast<double>(number) * 7.42 * builder.unit;
        return 1.0 * std::sin(kTwoPi * 2.37 * (start + k * builder.unit)) + normal(random);
    };
    return builder.characters(test::mixedText(300, 5));
}

Json unitFit(const std::vector<Character>& characters) {
    const auto fit = fitUnit(test::pointersTo(characters));
    Json j = {{"unit", fit->unit.value},
              {"to_mark", fit->toMark->value},
              {"to_space", fit->toSpace->value},
              {"rms", fit->rms}};
    for (const Character& c : characters)
        for (const Instant& i : c.instants) j["instants"].push_back({i.k, i.to == Condition::mark, i.seconds});
    return j;
}

Json periodicLine(const std::vector<Character>& characters) {
    const auto window = test::pointersTo(characters);
    const auto displaced = displacementsAboutMeans(window, fitUnit(window)->unit.value);
    const auto line = strongestLine(displaced, 0.2, 18.0);
    Json j = {{"hz", line->hz}, {"amplitude", line->amplitude}, {"lowest_hz", 0.2}, {"highest_hz", 18.0}};
    for (const Displaced& d : displaced) j["series"].push_back({d.seconds, d.left});
    return j;
}

Json spectrum() {
    constexpr double kRate = 8000.0;
    std::mt19937_64 random(3);
    std::normal_distribution<double> normal(0.0, 0.05);
    std::vector<float> samples(20000);
    for (std::size_t i = 0; i < samples.size(); ++i) {
        const double t = static_cast<double>(i) / kRate;
        samples[i] = static_cast<float>(0.3 * std::sin(kTwoPi * 700.0 * t) + 0.1 * std::sin(kTwoPi * 1330.0 * t) +
                                        normal(random));
    }
    const Spectrum s = averagedSpectrum(samples, kRate, 12.0);
    return {{"rate_hz", kRate}, {"bin_hz", s.binHz}, {"power", s.power}, {"samples", samples}};
}

Json studentFactors() {
    Json j;
    for (const double v : {1.0, 2.0, 3.0, 4.0, 6.0, 10.0, 20.0, 31.0, 60.0, 200.0, 1000.0})
        j.push_back({v, studentFactor(v)});
    return j;
}

}  // namespace

int main() {
    const auto characters = scatteredCharacters();
    const Json all = {{"unit_fit", unitFit(characters)},
                      {"periodic_line", periodicLine(characters)},
                      {"spectrum", spectrum()},
                      {"student", studentFactors()}};
    std::puts(all.dump().c_str());
}
