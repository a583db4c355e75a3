// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/symptoms.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/report/speed_reading.h"

namespace trueunit {

namespace {

constexpr double kOrdinaryRiseMs = 0.5;
constexpr double kStrayPercent = 12.0;
constexpr double kStraySigmas = 5.0;  // of a few thousand normal deviates none lies so far out

double withoutFrontEnd(double riseMs, const InputReading& in) {
    return std::sqrt(std::max(0.0, riseMs * riseMs - in.frontEndRiseMs * in.frontEndRiseMs));
}

}  // namespace

// A smoothed step of 10 to 90 % rise d is placed no better than (s / A) sqrt(2 sqrt(pi) tau / f) with tau = d / 2.56
// (S. M. Kay, Estimation Theory, 1993, from memory); the levels either side and the form learned add a third. The
// displacement is the difference of two instants.
double Symptoms::noisePercent() const {
    const InputReading& in = reading.input;
    if (!in.snrDb || in.rateHz <= 0.0) return 0.0;
    const double noise = 0.5 * std::pow(10.0, -*in.snrDb / 20.0);
    const double riseMs = std::max(in.riseToMarkMs.value_or(kOrdinaryRiseMs), in.riseToSpaceMs.value_or(0.0));
    const double tauSamples = std::max(1.0, 1e-3 * riseMs * in.rateHz / 2.563);
    const double samples = 1.33 * noise * std::sqrt(2.0 * std::sqrt(std::numbers::pi) * tauSamples);
    return 100.0 * std::numbers::sqrt2 * samples / in.rateHz / (1e-3 * unitMs());
}

double Symptoms::wanderPercent() const { return steadiness && steadiness->wanders() ? steadiness->wander : 0.0; }

std::optional<double> Symptoms::speedErrorByPattern() const {
    return pattern ? speedErrorBy(*pattern, reading.speed) : std::nullopt;
}

double Symptoms::riseDelayPercent() const {
    const InputReading& in = reading.input;
    if (!in.riseToMarkMs || !in.riseToSpaceMs) return 0.0;
    // An exponential rise takes ln 9 time constants from 10 to 90 % and ln 2 to the middle.
    const double share = std::numbers::ln2 / std::log(9.0);
    const double ms = share * (withoutFrontEnd(*in.riseToMarkMs, in) - withoutFrontEnd(*in.riseToSpaceMs, in));
    return 100.0 * ms / unitMs();
}

double Symptoms::largestLinePercent() const {
    double most = 0.0;
    if (reading.distortion.cyclic)
        for (const CyclicLine& line : *reading.distortion.cyclic) most = std::max(most, line.amplitudePercent);
    return most;
}

bool Symptoms::strays() const {
    const auto& d = reading.distortion;
    const double rms = d.fortuitousRmsPercent.value_or(0.0);
    const double peak = d.fortuitousPeakPercent.value_or(0.0);
    return peak > kStrayPercent && peak > kStraySigmas * rms;
}

double Symptoms::slowestRiseMs() const {
    const InputReading& in = reading.input;
    if (!in.riseToMarkMs || !in.riseToSpaceMs) return 0.0;
    return withoutFrontEnd(std::max(*in.riseToMarkMs, *in.riseToSpaceMs), in);
}

}  // namespace trueunit
