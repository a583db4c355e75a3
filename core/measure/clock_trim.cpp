// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/clock_trim.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <numbers>

#include "core/frame/unit_fit.h"
#include "core/normal_equations.h"

namespace trueunit {

namespace {

constexpr double kTwoPi = 2.0 * std::numbers::pi;
constexpr double kStretchSeconds = 0.04;  // a card 1000 parts in a million off turns 10 kHz by less than half a turn
constexpr double kFewestSeconds = 5.0;
constexpr double kLeastShare = 0.1;      // of the power, in the tone
constexpr double kStrengthWithin = 0.3;  // of the median strength
constexpr double kPhaseWithin = 0.7;     // radians off the straight line
constexpr double kFarthestPpm = 1000.0;
constexpr double kLeastSure = 20.0;  // parts in a million

std::string inWords(const char* format, double a, double b = 0.0) {
    char text[200];
    std::snprintf(text, sizeof text, format, a, b);
    return text;
}

double median(std::vector<double> v) {
    const auto middle = v.begin() + static_cast<std::ptrdiff_t>(v.size() / 2);
    std::nth_element(v.begin(), middle, v.end());
    return *middle;
}

// The longest run of stretches in which the tone is as strong as usual.
std::span<const std::complex<double>> steadyRun(const std::vector<std::complex<double>>& stretches, double usual) {
    std::size_t from = 0, bestFrom = 0, bestLength = 0;
    for (std::size_t i = 0; i <= stretches.size(); ++i) {
        if (i < stretches.size() && std::abs(std::abs(stretches[i]) / usual - 1.0) <= kStrengthWithin) continue;
        if (i - from > bestLength) {
            bestFrom = from;
            bestLength = i - from;
        }
        from = i + 1;
    }
    return std::span(stretches).subspan(bestFrom, bestLength);
}

std::vector<double> unwrappedPhase(std::span<const std::complex<double>> stretches) {
    std::vector<double> phase = {std::arg(stretches.front())};
    for (std::size_t i = 1; i < stretches.size(); ++i)
        phase.push_back(phase.back() + std::arg(stretches[i] * std::conj(stretches[i - 1])));
    return phase;
}

struct Slope {
    Measured perStretch;    // radians
    double farthest = 0.0;  // off the line, radians
};

// A source that wanders leaves neighbouring phases off the line to the same side: that widens the interval.
Slope slopeOf(const std::vector<double>& phase) {
    const auto n = static_cast<double>(phase.size());
    NormalEquations<2> equations;
    const auto centred = [n](std::size_t i) { return static_cast<double>(i) - 0.5 * (n - 1.0); };
    for (std::size_t i = 0; i < phase.size(); ++i) equations.add({centred(i), 1.0}, phase[i]);
    const auto x = *equations.solve();
    Slope slope;
    double squares = 0.0;
    double products = 0.0;
    double previous = 0.0;
    for (std::size_t i = 0; i < phase.size(); ++i) {
        const double off = phase[i] - x[0] * centred(i) - x[1];
        slope.farthest = std::max(slope.farthest, std::abs(off));
        squares += off * off;
        products += off * previous;
        previous = off;
    }
    const double alike = squares > 0.0 ? std::clamp(products / squares, 0.0, 0.99) : 0.0;
    const double variance = squares / (n - 2.0) * 12.0 / (n * (n * n - 1.0)) * (1.0 + alike) / (1.0 - alike);
    slope.perStretch = {x[0], studentFactor(n - 2.0) * std::sqrt(variance)};
    return slope;
}

}  // namespace

ClockMeter::ClockMeter(double rateHz, double toneHz)
    : rateHz_(rateHz), toneHz_(toneHz), length_(static_cast<std::size_t>(kStretchSeconds * rateHz)) {
    for (std::size_t i = 0; i < length_; ++i)
        window_.push_back((1.0 - std::cos(kTwoPi * static_cast<double>(i) / static_cast<double>(length_))) /
                          static_cast<double>(length_));
}

void ClockMeter::push(std::span<const float> samples) {
    for (const float v : samples) {
        gathered_.push_back(std::isfinite(v) ? v : 0.0F);
        if (gathered_.size() == length_) closeStretch();
    }
}

void ClockMeter::closeStretch() {
    double mean = 0.0;
    for (const float v : gathered_) mean += static_cast<double>(v) / static_cast<double>(length_);
    std::complex<double> sum;
    double squares = 0.0;
    for (std::size_t i = 0; i < length_; ++i) {
        const double v = static_cast<double>(gathered_[i]) - mean;
        const double turns = toneHz_ * static_cast<double>(first_ + i) / rateHz_;
        sum += window_[i] * v * std::polar(1.0, -kTwoPi * (turns - std::floor(turns)));
        squares += v * v;
    }
    stretches_.push_back(sum);
    power_ += squares / static_cast<double>(length_);
    first_ += length_;
    gathered_.clear();
}

Result<ClockTrim> ClockMeter::result() const {
    const double stretchSeconds = static_cast<double>(length_) / rateHz_;
    const auto fewest = static_cast<std::size_t>(std::ceil(kFewestSeconds / stretchSeconds - 1e-9));
    if (stretches_.size() < fewest)
        return Error{inWords("At least %.0f seconds of the tone are needed.", kFewestSeconds)};
    std::vector<double> strengths;
    double inTone = 0.0;
    for (const auto& s : stretches_) {
        strengths.push_back(std::abs(s));
        inTone += 0.5 * std::norm(s);
    }
    if (!(inTone > kLeastShare * power_))
        return Error{inWords("There is no tone of %.6g Hz in it; check what the source is set to.", toneHz_)};
    const auto run = steadyRun(stretches_, median(std::move(strengths)));
    if (run.size() < std::max(fewest, stretches_.size() / 2))
        return Error{"The tone comes and goes: let it stand for the whole recording."};
    const Slope slope = slopeOf(unwrappedPhase(run));
    const double toPpm = 1e6 / (kTwoPi * toneHz_ * stretchSeconds);  // of the frequency heard
    const double heard = toPpm * slope.perStretch.value;
    if (std::abs(heard) > kFarthestPpm)
        return Error{
            inWords("The tone lies %.0f parts in a million beside %.6g Hz: no sound card is that far off, so the "
                    "source must be.",
                    heard, toneHz_)};
    const double unsure = toPpm * slope.perStretch.uncertainty;
    if (slope.farthest > kPhaseWithin || unsure > kLeastSure)
        return Error{
            inWords("The tone is not steady enough: its phase strays by up to %.1f radians, which leaves the "
                    "clock unsure by %.1f parts in a million.",
                    slope.farthest, unsure)};
    return ClockTrim{{1e6 * (1.0 / (1.0 + 1e-6 * heard) - 1.0), unsure},
                     static_cast<double>(run.size()) * stretchSeconds};
}

}  // namespace trueunit
