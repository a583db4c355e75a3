// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/condition/line_study.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>
#include <vector>

#include "core/condition/coupling_regression.h"
#include "core/condition/high_pass_search.h"
#include "core/condition/line_restorer.h"
#include "core/condition/line_trial.h"
#include "core/condition/mains_hum.h"

namespace trueunit {

namespace {

constexpr double kStudyRateHz = 3000.0;   // enough for corners up to 45 Hz
constexpr double kBlindSeconds = 0.0025;  // around a transition the edge's own shape rules
constexpr double kLongBlindSeconds = 0.007;
constexpr double kUnexplained = 1.4;  // residual over noise from which slow edges are suspected
constexpr double kTailGain = 0.75;
constexpr int kThoroughRounds = 8;
constexpr std::ptrdiff_t kFewestTransitions = 10;
constexpr double kLargestResidual = 0.2;  // of the swing; more is not a two-level signal
constexpr double kGoodResidual = 0.1;
constexpr double kStepSeconds = 0.0015;
constexpr double kOutstanding = 3.0;       // times the height of the steps that were taken
constexpr double kLowestCorner = 0.5;      // 1/s (0.08 Hz): lower ones are none
constexpr double kHighestCorner = 1000.0;  // 1/s (two of 80 Hz): nothing that is keyed passes through more
constexpr double kOnePoleGain = 1.01;      // a pole must lower the sum of squares by this factor to be believed
constexpr double kTwoPoleGain = 1.03;
constexpr double kSquareShare = 0.9;  // of the samples at the rail
constexpr double kSilence = 1e-5;     // full scale
constexpr double kCutGain = 0.5;      // of the residual, from which a line is held to be cut off

Stretch thin(std::span<const float> heard, double rateHz, const Rails& rails) {
    const auto q = std::max<std::size_t>(1, static_cast<std::size_t>(rateHz / kStudyRateHz));
    Stretch s;
    s.rateHz = rateHz / static_cast<double>(q);
    s.rails = rails;
    for (std::size_t i = 0; i + q <= heard.size(); i += q) {
        double sum = 0.0;
        bool clipped = false;
        for (std::size_t j = i; j < i + q; ++j) {
            if (std::isfinite(heard[j])) sum += std::clamp(static_cast<double>(heard[j]), -8.0, 8.0);
            clipped = clipped || rails.reached(heard[j]);
        }
        s.heard.push_back(sum / static_cast<double>(q));
        s.clipped.push_back(clipped ? 1 : 0);
    }
    return s;
}

// Steps of a coupled signal stand out in the difference of neighbouring means, whatever the coupling.
std::vector<double> meanSteps(const std::vector<double>& x, std::size_t w) {
    std::vector<double> sums(x.size() + 1, 0.0);
    for (std::size_t i = 0; i < x.size(); ++i) sums[i + 1] = sums[i] + x[i];
    std::vector<double> steps(x.size(), 0.0);
    for (std::size_t i = w; i + w < x.size(); ++i)
        steps[i] = (sums[i + w] - 2.0 * sums[i] + sums[i - w]) / static_cast<double>(w);
    return steps;
}

enum class Rhythm { running, pausing };  // tape, or a keyboard: most of its time may be rest

// Heights that the transitions of one direction reach, from the largest steps of short stretches: a high percentile of
// these; what no more than enough of them reach; the second largest, which is no lone spike. Of a line that rests most
// of its time the first is noise.
struct StepHeights {
    double running = 0.0;
    double pausing = 0.0;
    double tallest = 0.0;

    double of(Rhythm rhythm) const { return rhythm == Rhythm::running ? running : std::max(running, pausing); }
};

// The largest step of each short stretch, in order of height.
std::vector<double> largestSteps(const std::vector<double>& steps, double rateHz, double direction) {
    const auto chunk = static_cast<std::size_t>(0.05 * rateHz);
    std::vector<double> largest;
    for (std::size_t i = 0; i + chunk <= steps.size(); i += chunk) {
        double m = 0.0;
        for (std::size_t j = i; j < i + chunk; ++j) m = std::max(m, direction * steps[j]);
        largest.push_back(m);
    }
    std::sort(largest.begin(), largest.end());
    return largest;
}

StepHeights stepHeights(const std::vector<double>& steps, double rateHz, double direction) {
    const std::vector<double> largest = largestSteps(steps, rateHz, direction);
    if (std::ssize(largest) < kFewestTransitions / 2) return {};
    const auto usual = static_cast<std::size_t>(0.85 * static_cast<double>(largest.size() - 1));
    return {largest[usual], largest[largest.size() - kFewestTransitions / 2], largest[largest.size() - 2]};
}

// False: some steps stand so far out that what was taken for the others is noise.
bool findTransitions(Stretch& s, double windowSeconds, Rhythm rhythm) {
    const auto w = std::max<std::size_t>(2, static_cast<std::size_t>(windowSeconds * s.rateHz));
    const std::vector<double> steps = meanSteps(s.heard, w);
    // A slow edge behind a high corner is a small step, the sharp one the other way a large one.
    const StepHeights up = stepHeights(steps, s.rateHz, 1.0);
    const StepHeights down = stepHeights(steps, s.rateHz, -1.0);
    const double rising = 0.5 * up.of(rhythm);
    const double falling = 0.5 * down.of(rhythm);
    s.transitions.clear();
    if (!(rising > kSilence && falling > kSilence)) return false;
    double lastHeight = 0.0;
    for (std::size_t i = w; i + w < steps.size(); ++i) {
        const double height = std::abs(steps[i]);
        if (height < (steps[i] > 0.0 ? rising : falling)) continue;
        bool peak = true;
        for (std::size_t j = i - w; j <= i + w && peak; ++j)
            peak = std::abs(steps[j]) < height || steps[j] * steps[i] < 0.0 || (std::abs(steps[j]) == height && j >= i);
        if (!peak) continue;
        double moment = 0.0;
        double weight = 0.0;
        for (std::size_t j = i - w; j <= i + w; ++j) {
            if (steps[j] * steps[i] <= 0.0) continue;
            moment += std::abs(steps[j]) * static_cast<double>(j);
            weight += std::abs(steps[j]);
        }
        const Transition t{moment / weight - 0.5, steps[i] > 0.0};
        if (!s.transitions.empty() && s.transitions.back().up == t.up) {
            if (height <= lastHeight) continue;
            s.transitions.pop_back();
        }
        s.transitions.push_back(t);
        lastHeight = height;
    }
    return up.tallest < kOutstanding * up.of(rhythm) && down.tallest < kOutstanding * down.of(rhythm);
}

void markBlind(Stretch& s, double secondsAfter) {
    // A line that is hardly ever off the rails has them for its levels.
    const auto clipped = static_cast<double>(std::count(s.clipped.begin(), s.clipped.end(), 1));
    const bool square = clipped > kSquareShare * static_cast<double>(s.clipped.size());
    s.blind = square ? std::vector<char>(s.clipped.size(), 0) : s.clipped;
    const double reach = kBlindSeconds * s.rateHz;
    for (const Transition& t : s.transitions) {
        const auto from = static_cast<std::size_t>(std::max(0.0, t.time - reach));
        const auto to = static_cast<std::size_t>(std::max(0.0, t.time + secondsAfter * s.rateHz + 1.0));
        for (std::size_t i = from; i < std::min(to, s.blind.size()); ++i) s.blind[i] = 1;
    }
}

Trial bestFit(Stretch& s, bool coupled, double blindAfter, bool thorough) {
    if (std::ssize(s.transitions) < kFewestTransitions) return {};
    markBlind(s, blindAfter);
    Trial best = tryHighPass(s, HighPass{});
    if (!coupled) return best;
    if (const auto coupling = regressCoupling(s)) return coupling->a > 0.0 ? tryHighPass(s, *coupling) : best;
    const Trial one = bestOnePole(s);
    const auto audible = [](const Trial& t) { return t.fit.coupling.a > kLowestCorner; };
    if (audible(one) && best.squares > kOnePoleGain * one.squares) best = one;
    const Trial two = bestTwoPoles(s, thorough ? kThoroughRounds : 1);
    if (audible(two) && best.squares > kTwoPoleGain * two.squares) best = two;
    return best;
}

// Clicks come and go at once: most of the elements of a keyed line last longer than the window they were found with.
bool clicksOnly(const Stretch& s, double windowSeconds) {
    std::size_t brief = 0;
    for (std::size_t i = 1; i < s.transitions.size(); ++i)
        brief += s.transitions[i].time - s.transitions[i - 1].time < 2.0 * windowSeconds * s.rateHz ? 1U : 0U;
    return 3 * brief > s.transitions.size();
}

Trial firstFit(Stretch& s, bool coupled) {
    Trial best;
    for (const double window : {kStepSeconds, 0.005})
        for (const Rhythm rhythm : {Rhythm::running, Rhythm::pausing}) {
            const bool alike = findTransitions(s, window, rhythm);
            if (rhythm == Rhythm::pausing && clicksOnly(s, window)) continue;
            const Trial trial = bestFit(s, coupled, kBlindSeconds, false);
            const bool explains = trial.fit.swing > 0.0 && (alike || trial.fit.residual < kGoodResidual);
            if (explains && trial.squares < best.squares) best = trial;
            if (best.fit.swing > 0.0 && best.fit.residual < kGoodResidual) return best;
            if (alike) break;
        }
    return best;
}

// Noise by the differences of neighbours, away from transitions; fraction of the swing.
double stepNoise(const Stretch& s, double swing) {
    double squares = 0.0;
    double n = 0.0;
    for (std::size_t i = 1; i < s.heard.size(); ++i) {
        if (s.blind[i] || s.blind[i - 1]) continue;
        squares += 0.5 * (s.heard[i] - s.heard[i - 1]) * (s.heard[i] - s.heard[i - 1]);
        n += 1.0;
    }
    return n > 0.0 ? std::sqrt(squares / n) / swing : 0.0;
}

// The restorer places transitions better than the mean steps do, slow edges above all.
Stretch seenAgain(const Stretch& before, const Trial& first, std::span<const float> heard, double rateHz) {
    LineRestorer restorer(first.fit, rateHz);
    std::vector<float> line;
    Stretch s;
    restorer.push(heard, line, s.transitions);
    s.heard = before.heard;
    s.clipped = before.clipped;
    s.rateHz = before.rateHz;
    s.rails = before.rails;
    const double q = rateHz / s.rateHz;
    for (Transition& t : s.transitions) t.time = (t.time + 0.5) / q - 0.5;  // centre of the thinned samples
    return s;
}

Trial again(Stretch& s, bool coupled) {
    const Trial near = bestFit(s, coupled, kBlindSeconds, true);
    if (!(near.fit.swing > 0.0) || near.fit.residual < kUnexplained * stepNoise(s, near.fit.swing)) return near;
    // More is left than noise: perhaps slow edges, whose tails pass for coupling. Look away for longer.
    const Trial far = bestFit(s, coupled, kLongBlindSeconds, true);
    return far.fit.swing > 0.0 && far.fit.residual < kTailGain * near.fit.residual ? far : near;
}

std::optional<LineFit> studyWithin(const Rails& rails, std::span<const float> heard, double rateHz, bool coupled) {
    Stretch s = thin(heard, rateHz, rails);
    Trial best = firstFit(s, coupled);
    if (!(best.fit.swing > 0.0) || best.fit.residual > 1.5 * kLargestResidual) return std::nullopt;
    Stretch closer = seenAgain(s, best, heard, rateHz);
    if (isMainsHum(closer)) return std::nullopt;  // a line at rest swings by its hum alone
    const Trial second = again(closer, coupled);
    if (second.fit.swing > 0.0 && second.fit.residual < 1.1 * best.fit.residual) best = second;
    if (best.fit.residual > kLargestResidual || best.fit.coupling.a > kHighestCorner) return std::nullopt;
    return best.fit;
}

}  // namespace

bool hasSteps(std::span<const float> heard, double rateHz) {
    const Stretch s = thin(heard, rateHz, Rails::none());
    const auto w = std::max<std::size_t>(2, static_cast<std::size_t>(kStepSeconds * s.rateHz));
    const std::vector<double> steps = meanSteps(s.heard, w);
    return std::ranges::all_of(std::array{1.0, -1.0}, [&](double direction) {
        const std::vector<double> largest = largestSteps(steps, s.rateHz, direction);
        return largest.size() > 3 &&
               largest[largest.size() - 2] > kOutstanding * std::max(largest[largest.size() / 4], kSilence);
    });
}

std::optional<LineFit> studyLine(std::span<const float> heard, double rateHz, bool coupled) {
    if (!coupled) return studyWithin(Rails::none(), heard, rateHz, false);
    const bool beyond = std::any_of(heard.begin(), heard.end(), beyondFullScale);
    auto best = studyWithin(beyond ? Rails::none() : Rails{}, heard, rateHz, true);
    const auto cutOff = [&](const Rails& rails, bool surely) {
        const auto cut = studyWithin(rails, heard, rateHz, true);
        if (!cut || !(cut->coupling.a > 0.0)) return;  // what keeps its levels loses nothing by being cut off
        if (!best || surely || cut->residual < kCutGain * best->residual) best = cut;
    };
    if (beyond) cutOff(Rails{}, false);  // resampled, it may overshoot the rail it was cut off at
    // Flat tops may as well be the levels of a line that is not coupled: then nothing is gained by looking away.
    if (const auto flat = flatTops(heard, rateHz)) cutOff(*flat, noisyBetween(*flat, heard));
    return best;
}

}  // namespace trueunit
