// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/simulate/line.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace trueunit {

namespace {

constexpr double kQuickestSamples = 2.0;
constexpr double kLinearSpan = 1.0 / 0.8;                      // whole edge / (10 to 90 %)
constexpr double kRaisedCosineSpan = 1.6939549523;             // pi / (2 asin 0.8)
constexpr double kGaussianSigma = 1.0 / (2.0 * 1.2815515655);  // quantile of 90 %
constexpr double kGaussianReach = 6.0;                         // sigmas; 1e-9 of the swing is left
constexpr double kExponentialReach = 20.0;                     // time constants; 2e-9 of the swing is left

}  // namespace

SimulatedLine::SimulatedLine(const Scenario::Line& line, double rateHz)
    : edge_(line.edge),
      rise_(shapeOf(std::max(line.riseUs * 1e-6, kQuickestSamples / rateHz))),
      fall_(shapeOf(std::max(line.fallUs * 1e-6, kQuickestSamples / rateHz))) {}

SimulatedLine::Shape SimulatedLine::shapeOf(double riseSeconds) const {
    switch (edge_) {
        case Scenario::Edge::linear: {
            const double span = riseSeconds * kLinearSpan;
            return {span, span / 2, span / 2};
        }
        case Scenario::Edge::raisedCosine: {
            const double span = riseSeconds * kRaisedCosineSpan;
            return {span, span / 2, span / 2};
        }
        case Scenario::Edge::gaussian: {
            const double sigma = riseSeconds * kGaussianSigma;
            return {sigma, kGaussianReach * sigma, kGaussianReach * sigma};
        }
        case Scenario::Edge::exponential:
            break;
    }
    const double constant = riseSeconds / std::log(9.0);
    return {constant, constant * std::numbers::ln2, kExponentialReach * constant};
}

double SimulatedLine::progress(const Shape& shape, double sinceInstant) const {
    if (sinceInstant <= -shape.before) return 0.0;
    switch (edge_) {
        case Scenario::Edge::linear:
            return std::min(sinceInstant / shape.span + 0.5, 1.0);
        case Scenario::Edge::raisedCosine:
            if (sinceInstant >= shape.after) return 1.0;
            return 0.5 + 0.5 * std::sin(std::numbers::pi * sinceInstant / shape.span);
        case Scenario::Edge::gaussian:
            return 0.5 * std::erfc(-sinceInstant / (shape.span * std::numbers::sqrt2));
        case Scenario::Edge::exponential:
            break;
    }
    return 1.0 - std::exp(-(sinceInstant + shape.before) / shape.span);
}

double SimulatedLine::leadSeconds() const { return std::max(rise_.before, fall_.before); }

void SimulatedLine::push(double seconds, Condition to) { ahead_.push_back({seconds, to}); }

double SimulatedLine::levelAt(double seconds) {
    while (!ahead_.empty() && seconds >= ahead_.front().seconds - leadSeconds()) {
        moving_.push_back(ahead_.front());
        ahead_.pop_front();
    }
    if (moving_.empty()) return settled_;
    double level = settled_;
    for (const Moving& m : moving_) {
        const double sign = m.to == Condition::mark ? 1.0 : -1.0;
        level += sign * progress(shape(m.to), seconds - m.seconds);
    }
    const auto complete = [&](const Moving& m) { return seconds >= m.seconds + shape(m.to).after; };
    while (!moving_.empty() && complete(moving_.front())) {
        settled_ += moving_.front().to == Condition::mark ? 1.0 : -1.0;
        moving_.erase(moving_.begin());
    }
    return std::clamp(level, 0.0, 1.0);  // a slow edge cut short by a quick one
}

}  // namespace trueunit
