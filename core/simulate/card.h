// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <vector>

#include "core/simulate/scenario.h"
#include "core/simulate/seeded_random.h"

namespace trueunit {

// One high-pass pole, exact for an input that runs straight from sample to sample.
class CouplingPole {
public:
    CouplingPole(double cornerHz, double rateHz, double restingInput);
    double next(double input);

private:
    double decay_;
    double gain_;
    double input_;
    double output_ = 0.0;
};

// The sound card: line level in, samples out. In this order: size and polarity, coupling poles (at rest on mark to
// begin with), hum, noise, offset, flattening. Noise and hum are added behind the coupling, so that their stated
// size is the size in the samples.
class SimulatedCard {
public:
    explicit SimulatedCard(const Scenario& scenario);

    float next(double lineLevel);
    double secondsOf(std::uint64_t sample) const { return static_cast<double>(sample) / samplesPerSecond_; }
    double samplesPerSecond() const { return samplesPerSecond_; }  // true seconds: the card's clock error included

private:
    double humNow() const;

    double samplesPerSecond_;
    double swing_;  // of full scale, signed by polarity
    std::vector<CouplingPole> poles_;
    double noise_ = 0.0;                 // rms, of full scale
    std::vector<double> humAmplitudes_;  // of full scale; fundamental first
    double humHz_ = 0.0;
    double offset_;
    double limit_;  // of full scale
    SeededRandom random_;
    std::uint64_t sample_ = 0;
};

}  // namespace trueunit
