// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/simulate/card.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace trueunit {

namespace {
constexpr std::uint64_t kNoiseStream = 4;
}

CouplingPole::CouplingPole(double cornerHz, double rateHz, double restingInput) : input_(restingInput) {
    const double step = 2.0 * std::numbers::pi * cornerHz / rateHz;
    decay_ = std::exp(-step);
    gain_ = -std::expm1(-step) / step;
}

double CouplingPole::next(double input) {
    output_ = decay_ * output_ + gain_ * (input - input_);
    input_ = input;
    return output_;
}

SimulatedCard::SimulatedCard(const Scenario& scenario)
    : samplesPerSecond_(scenario.card.rateHz * (1.0 + scenario.card.clockPpm * 1e-6)),
      offset_(scenario.card.dcOffset),
      limit_(1.0),
      random_(scenario.seed, kNoiseStream) {
    const Scenario::Card& card = scenario.card;
    const double swing = 2.0 * std::pow(10.0, card.levelDbfs / 20.0) * scenario.line.swing;
    swing_ = card.inverted ? -swing : swing;
    double resting = 0.5 * swing_;
    for (const double corner : card.couplingHz) {
        poles_.emplace_back(corner, samplesPerSecond_, resting);
        resting = 0.0;
    }
    if (card.snrDb) noise_ = 0.5 * swing * std::pow(10.0, -*card.snrDb / 20.0);
    if (card.clip) limit_ = std::min(limit_, *card.clip * swing);
    if (card.hum) {
        humHz_ = card.hum->hz;
        humAmplitudes_.push_back(0.5 * card.hum->percent / 100.0 * swing);
        for (const double harmonic : card.hum->harmonics) humAmplitudes_.push_back(harmonic * humAmplitudes_[0]);
    }
}

double SimulatedCard::humNow() const {
    const double phase = 2.0 * std::numbers::pi * std::fmod(humHz_ * secondsOf(sample_), 1.0);
    double sum = 0.0;
    for (std::size_t h = 0; h < humAmplitudes_.size(); ++h)
        sum += humAmplitudes_[h] * std::sin(static_cast<double>(h + 1) * phase);
    return sum;
}

float SimulatedCard::next(double lineLevel) {
    double value = swing_ * (lineLevel - 0.5);
    for (CouplingPole& pole : poles_) value = pole.next(value);
    if (!humAmplitudes_.empty()) value += humNow();
    if (noise_ > 0.0) value += noise_ * random_.gaussian();
    ++sample_;
    return static_cast<float>(std::clamp(value + offset_, -limit_, limit_));
}

}  // namespace trueunit
