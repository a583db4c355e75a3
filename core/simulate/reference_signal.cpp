// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/simulate/reference_signal.h"

#include <cmath>
#include <cstdio>
#include <numbers>

#include "core/frame/code_table.h"

namespace trueunit {

namespace {

constexpr double kEdgeUs = 300.0;
constexpr double kToneEdgeUs = 1500.0;  // softer: a tone that is switched hard spreads over its neighbours
constexpr std::size_t kLongestText = 100000;

// At full scale, so that the level restored from the samples is exact; the size is applied here.
Scenario scenarioOf(const SenderSettings& s, double rateHz) {
    Scenario scenario;
    scenario.machine = {"Reference sender", s.code, s.baud, s.stopUnits};
    scenario.text.send = s.text;
    scenario.text.repeat = s.repeat;
    scenario.seconds = s.seconds;
    const bool tone = s.keying == SenderSettings::Keying::tone;
    scenario.line.riseUs = scenario.line.fallUs = tone ? kToneEdgeUs : kEdgeUs;
    scenario.card.rateHz = rateHz;
    scenario.card.levelDbfs = 0.0;
    scenario.faults.biasPercent = s.biasPercent;
    scenario.faults.endPercent = s.endPercent;
    scenario.faults.scatterPercent = s.scatterPercent;
    scenario.faults.speedPercent = s.speedPercent;
    scenario.seed = s.seed;
    return scenario;
}

bool within(double value, double least, double most) { return value >= least && value <= most; }  // false for NaN

}  // namespace

std::optional<Error> SenderSettings::problem() const {
    const CodeTable* table = findCode(code);
    if (!table) return Error{"There is no code \"" + code + "\"; there are " + codeNames() + "."};
    if (text.size() > kLongestText || encode(*table, text).empty())
        return Error{"The text to send must hold at least one character of the code, and 100000 at most."};
    if (!within(baud, 20.0, 200.0)) return Error{"The speed must lie between 20 and 200 baud."};
    if (!within(stopUnits, 1.0, 2.5)) return Error{"The stop must lie between 1 and 2.5 units."};
    if (!within(biasPercent, -40.0, 40.0) || !within(endPercent, -40.0, 40.0))
        return Error{"Bias and end distortion to send must lie between -40 and 40 %."};
    if (!within(scatterPercent, 0.0, 10.0)) return Error{"The scatter to send must lie between 0 and 10 %."};
    if (!within(speedPercent, -15.0, 15.0)) return Error{"The speed error to send must lie between -15 and 15 %."};
    if (!within(toneHz, 300.0, 10000.0)) return Error{"The tone to send must lie between 300 and 10000 Hz."};
    if (!within(levelDbfs, -60.0, -1.0)) return Error{"The level to send must lie between -60 and -1 dBFS."};
    if (!within(seconds, 0.0, 86400.0)) return Error{"The time to send must lie between 0 and 86400 seconds."};
    return std::nullopt;
}

std::string SenderSettings::words() const {
    char text_[200];
    std::snprintf(text_, sizeof text_, "%g baud, bias %+g %%, end %+g %%, scatter %g %%, speed error %+g %%, %s", baud,
                  biasPercent, endPercent, scatterPercent, speedPercent,
                  keying == Keying::tone ? "as an interrupted tone" : "as it is keyed");
    return text_;
}

ReferenceSignal::ReferenceSignal(const SenderSettings& settings, double rateHz)
    : signal_(scenarioOf(settings, rateHz)), rateHz_(rateHz), peak_(std::pow(10.0, settings.levelDbfs / 20.0)) {
    if (settings.keying == SenderSettings::Keying::tone) toneHz_ = settings.toneHz;
}

std::size_t ReferenceSignal::read(std::span<float> out) {
    const std::size_t got = signal_.read(out);
    for (std::size_t i = 0; i < got; ++i, ++sample_) {
        double value = static_cast<double>(out[i]);  // -1 space, +1 mark
        if (toneHz_) {
            const double turns = std::fmod(*toneHz_ * static_cast<double>(sample_) / rateHz_, 1.0);
            value = (0.5 + 0.5 * value) * std::sin(2.0 * std::numbers::pi * turns);
        }
        const double ramp = static_cast<double>(sample_) / (kRampSeconds * rateHz_);
        if (ramp < 1.0) value *= 0.5 - 0.5 * std::cos(std::numbers::pi * ramp);
        out[i] = static_cast<float>(peak_ * value);
    }
    return got;
}

}  // namespace trueunit
