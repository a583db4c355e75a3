// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/condition/high_pass_search.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <tuple>
#include <utility>

namespace trueunit {

namespace {

constexpr double kHopeless = 0.4;  // residual, of the swing

// No high-pass will make two levels of this: not worth refining.
bool hopeless(const Trial& t) { return !(t.fit.swing > 0.0) || t.fit.residual > kHopeless; }

// Smallest value of f on [low, high] by golden section; f has one minimum there.
template <class F>
double goldenMinimum(F f, double low, double high, int steps) {
    constexpr double kGolden = 0.6180339887498949;
    double a = high - kGolden * (high - low);
    double b = low + kGolden * (high - low);
    double fa = f(a);
    double fb = f(b);
    for (int i = 0; i < steps; ++i) {
        if (fa < fb) {
            high = b;
            b = a;
            fb = fa;
            fa = f(a = high - kGolden * (high - low));
        } else {
            low = a;
            a = b;
            fa = fb;
            fb = f(b = low + kGolden * (high - low));
        }
    }
    return 0.5 * (low + high);
}

// A pair of poles by natural frequency and damping: nearly independent of each other. Logarithms.
HighPass pairOf(double logHz, double logDamping) {
    const double w = 2.0 * std::numbers::pi * std::exp(logHz);
    return {2.0 * w * std::exp(logDamping), w * w};
}

}  // namespace

Trial bestOnePole(const Stretch& s) {
    const auto trial = [&s](double logHz) { return tryHighPass(s, HighPass::ofCorners(std::exp(logHz))); };
    constexpr double kStep = 0.45;
    double best = 0.0;
    Trial least;
    for (double x = std::log(0.1); x < std::log(70.0); x += kStep)
        if (Trial t = trial(x); t.squares < least.squares) {
            least = std::move(t);
            best = x;
        }
    if (hopeless(least)) return least;
    return trial(goldenMinimum([&](double x) { return trial(x).squares; }, best - kStep, best + kStep, 14));
}

Trial bestTwoPoles(const Stretch& s, int rounds) {
    const auto trial = [&s](double f, double d) { return tryHighPass(s, pairOf(f, d)); };
    const auto squares = [&trial](double f, double d) { return trial(f, d).squares; };
    double bestF = 0.0;
    double bestD = 0.0;
    Trial first;
    for (const double hz : {0.7, 1.5, 3.0, 6.0, 12.0, 22.0, 40.0})
        for (const double damping : {0.7, 1.0, 1.8, 4.0})
            if (Trial t = trial(std::log(hz), std::log(damping)); t.squares < first.squares) {
                first = std::move(t);
                bestF = std::log(hz);
                bestD = std::log(damping);
            }
    if (hopeless(first)) return first;
    const double lowest = std::log(0.5);
    double least = first.squares;
    double reach = 0.6;
    for (int round = 0; round < rounds; ++round, reach *= 0.6) {
        const double before = least;
        const double fromF = bestF;
        const double fromD = bestD;
        bestF = goldenMinimum([&](double f) { return squares(f, bestD); }, bestF - reach, bestF + reach, 9);
        const double low = std::max(bestD - reach, lowest);
        bestD = goldenMinimum([&](double d) { return squares(bestF, d); }, low, bestD + reach, 9);
        // The valley lies across both axes: once more along the way that this round has gone.
        const auto further = [&, f = bestF, damping = bestD](double x) {
            return std::pair{f + x * (f - fromF), std::max(damping + x * (damping - fromD), lowest)};
        };
        const auto onTheWay = [&](double x) { return squares(further(x).first, further(x).second); };
        const double x = goldenMinimum(onTheWay, -0.5, 4.0, 9);
        if (onTheWay(x) < squares(bestF, bestD)) std::tie(bestF, bestD) = further(x);
        least = squares(bestF, bestD);
        if (round > 1 && least > 0.999 * before) break;
    }
    return tryHighPass(s, pairOf(bestF, bestD));
}

}  // namespace trueunit
