// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/condition/coupling_loss.h"

#include <cmath>
#include <numbers>

namespace trueunit {

namespace {
constexpr double kTwoPi = 2.0 * std::numbers::pi;
}

HighPass HighPass::ofCorners(double firstHz, double secondHz) {
    const double w1 = kTwoPi * firstHz;
    const double w2 = kTwoPi * secondHz;
    return {w1 + w2, w1 * w2};
}

std::vector<double> HighPass::cornersHz() const {
    if (a <= 0.0) return {};
    if (b <= 0.0) return {a / kTwoPi};
    const double discriminant = a * a - 4.0 * b;
    if (discriminant <= 0.0) return {std::sqrt(b) / kTwoPi, std::sqrt(b) / kTwoPi};
    const double larger = 0.5 * (a + std::sqrt(discriminant));
    return {larger / kTwoPi, b / larger / kTwoPi};
}

// State w' = M w + (a, 0) line, M = (-a -a; b/a 0): the loss is w1 + w2, so that line - loss obeys the high-pass.
CouplingLoss::CouplingLoss(const HighPass& highPass, double rateHz)
    : a_(highPass.a / rateHz), b_(highPass.b / (rateHz * rateHz)) {
    if (a_ <= 0.0) return;
    halfA_ = 0.5 * a_;
    halfRatio_ = 0.5 * b_ / a_;
    rest_ = b_ > 0.0 ? std::array{0.0, 1.0} : std::array{1.0, 0.0};
    next_ = propagator(1.0);
}

// exp(M t) of a 2 x 2 matrix: exp(m t) (C 1 + S (M - m 1)), m half the trace, C and S by the sign of m^2 - det.
std::array<double, 4> CouplingLoss::propagator(double samples) const {
    if (a_ <= 0.0) return {1.0, 0.0, 0.0, 1.0};
    const double m = -0.5 * a_;
    const double d2 = m * m - b_;
    const double d = std::sqrt(std::abs(d2));
    const double x = d * samples;
    double c = 1.0;
    double s = samples;
    if (x > 1e-9) {
        c = d2 > 0.0 ? std::cosh(x) : std::cos(x);
        s = (d2 > 0.0 ? std::sinh(x) : std::sin(x)) / d;
    }
    const double e = std::exp(m * samples);
    return {e * (c + s * (-a_ - m)), e * s * -a_, e * s * (b_ / a_), e * (c - s * m)};
}

void CouplingLoss::stepWasEarlier(double height, double samplesAgo) {
    if (a_ <= 0.0) return;
    const std::array<double, 4> p = propagator(samplesAgo);
    state_[0] += height * (rest_[0] - p[0] * rest_[0] - p[1] * rest_[1]);
    state_[1] += height * (rest_[1] - p[2] * rest_[0] - p[3] * rest_[1]);
}

}  // namespace trueunit
