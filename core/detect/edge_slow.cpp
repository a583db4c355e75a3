// SPDX-License-Identifier: GPL-3.0-or-later
// Edges that are not over when their neighbourhood is: timed by the settled levels.
#include <algorithm>
#include <cmath>

#include "core/detect/edge_timer.h"
#include "core/normal_equations.h"
#include "core/straight_sums.h"

namespace trueunit {

namespace {
constexpr double kRiseStepSeconds = 0.00025;
constexpr double kForgetRise = 0.05;
}  // namespace

// The sample nearest to `at` from which on, or back to which, the line is on the other side of the height.
double EdgeTimer::walkTo(double height, const HeldTransition& held) const {
    const double at = held.first.time;
    const double sign = held.first.up ? 1.0 : -1.0;
    const auto beyond = [&](double t) { return sign * (sample(static_cast<std::uint64_t>(t)) - height) >= 0.0; };
    const double first = std::max(at - held.clearBefore, static_cast<double>(begin_));
    const double last = std::min(at + held.clearAfter, static_cast<double>(end_) - 1.0);
    double t = std::clamp(std::round(at), first, last);
    if (beyond(t))
        while (t - 1.0 >= first && beyond(t - 1.0)) t -= 1.0;
    else
        while (t + 1.0 <= last && !beyond(t)) t += 1.0;
    return t;
}

// Where the line crosses the slice between the settled levels: a parabola through the samples around it.
double EdgeTimer::crossSettled(const HeldTransition& held) const {
    const EdgeShape& shape = shapes_[held.first.up ? 1 : 0];
    const double height = settled_.height(sliceHeight_);
    const double half = std::clamp(0.25 * shape.riseSamples(), 0.0003 * rateHz_, 0.0015 * rateHz_);
    const double at = slicedInTail(shape) ? walkTo(height, held) : held.first.time;
    double t = at;
    for (int round = 0; round < 3; ++round) {
        NormalEquations<3> parabola;
        const double from = std::max(t - half, static_cast<double>(begin_));
        const double to = std::min(t + half, static_cast<double>(end_) - 1.0);
        for (auto i = static_cast<std::uint64_t>(std::ceil(from)); static_cast<double>(i) <= to; ++i) {
            if (flattened(i)) continue;
            const double u = (static_cast<double>(i) - t) / half;
            parabola.add({1.0, u, u * u}, sample(i) - height);
        }
        const auto c = parabola.solve();
        if (!c || std::abs((*c)[1]) < 1e-6) return at;
        double u = -(*c)[0] / (*c)[1];
        for (int i = 0; i < 3; ++i) u = -((*c)[0] + (*c)[2] * u * u) / (*c)[1];
        t += half * std::clamp(u, -1.0, 1.0);
    }
    return t;
}

// From the middle of the swing to three quarters of it: of an exponential, and of a straight ramp, the whole way from
// 10 to 90 % takes 3.2 times as long, and is not over before the next edge.
void EdgeTimer::followSlowRise(std::size_t side, double middle, double clearAfter) {
    constexpr double kWhole = 3.17;
    const double step = kRiseStepSeconds * rateHz_;
    const double height = settled_.height(side == 1 ? 0.75 : 0.25);
    const double sign = side == 1 ? 1.0 : -1.0;
    double before = 0.0;  // how much is left to the height
    for (double at = middle; at + step < std::min(middle + clearAfter, static_cast<double>(end_)); at += step) {
        const std::span<const float> here = between(at - 0.5 * step, at + 0.5 * step);
        if (here.empty()) return;
        const double left = sign * (height - sumOf(here) / static_cast<double>(here.size()));
        if (left <= 0.0) {
            const double quarter = at - middle - step * left / (left - before);
            slowRise_[side] += (slowRise_[side] > 0.0 ? kForgetRise : 1.0) * (kWhole * quarter - slowRise_[side]);
            return;
        }
        before = left;
    }
}

double EdgeTimer::riseSamples(bool up) const {
    const std::size_t side = up ? 1 : 0;
    return settled_.slow(side) && slowRise_[side] > 0.0 ? slowRise_[side] : shapes_[side].riseSamples();
}

}  // namespace trueunit
