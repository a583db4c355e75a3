// SPDX-License-Identifier: GPL-3.0-or-later
// The nudge finder on hours of characters: how often a steady sender is called nudged, and how soon a step is found.
// Fails beyond one false nudge in an hour with 1 % scatter, or when of steps of 3 % fewer than 95 % are found within
// three characters at 0.5 % scatter, or fewer than 45 % at 1 %.
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <numbers>
#include <string>

#include "core/pipeline.h"
#include "core/simulate/scenario_signal.h"
#include "tests/support/steady_sender.h"

namespace {

using trueunit::Character;
using trueunit::NudgeFinder;
using trueunit::test::SteadySender;

constexpr std::uint64_t kHour = 22054;  // characters at 45.45 baud and 7.42 units

// Counted without the bounded list, over separate hours.
std::size_t falseNudges(SteadySender sender, int hours) {
    std::size_t found = 0;
    for (int h = 0; h < hours; ++h) {
        NudgeFinder finder;
        std::uint64_t newest = 0;
        for (std::uint64_t i = 0; i < kHour; ++i) {
            finder.push(sender.character(), sender.unit, sender.nominal);
            if (!finder.nudges().empty() && finder.nudges().back().number != newest) {
                newest = finder.nudges().back().number;
                ++found;
            }
        }
    }
    return found;
}

bool steadyHours(const char* name, const SteadySender& sender, int hours, double mostInAnHour) {
    const auto found = static_cast<double>(falseNudges(sender, hours));
    const bool in = found <= mostInAnHour * hours;
    std::printf("%-58s %4d hours %5.0f false, %.2f an hour %s\n", name, hours, found, found / hours,
                in ? "" : "BEYOND");
    return in;
}

struct Power {
    int within3 = 0, within8 = 0, ever = 0, misplaced = 0;
    double error = 0.0;  // rms of the step, percent
    int inside = 0;      // the stated interval holds the truth
};

Power power(double step, double scatter, std::vector<unsigned> codes, bool startScatters, int trials) {
    Power p;
    for (int t = 0; t < trials; ++t) {
        SteadySender sender;
        sender.scatterPercent = scatter;
        sender.codes = codes;
        sender.startScatters = startScatters;
        sender.random.seed(static_cast<std::uint64_t>(t) + 1);
        const std::uint64_t at = 100 + static_cast<std::uint64_t>(t) % 57;
        sender.biasPercent = [&](std::uint64_t n) { return n < at ? 7.8 : 7.8 + step; };
        NudgeFinder finder;
        for (std::uint64_t i = 0; i < at + 40; ++i) finder.push(sender.character(), sender.unit, sender.nominal);
        if (finder.nudges().empty()) continue;
        const trueunit::Nudge& n = finder.nudges().back();
        ++p.ever;
        p.within3 += n.foundBy < at + 3;
        p.within8 += n.foundBy < at + 8;
        p.misplaced += n.number != at;
        p.error += std::pow(n.step.value - step, 2);
        p.inside += std::abs(n.step.value - step) <= n.step.uncertainty;
    }
    p.error = std::sqrt(p.error / std::max(1, p.ever));
    return p;
}

// A table of steps and scatters; whether steps of 3 % are found as soon as they shall be.
bool steps(const char* text, const std::vector<unsigned>& codes, bool startScatters, std::vector<double> scatters) {
    constexpr int kTrials = 400;
    const auto share = [](int n) { return 100.0 * n / kTrials; };
    std::printf("\nSteps, %s: found within 3 and 8 characters, ever; place off; rms error; interval holds\n", text);
    bool in = true;
    for (const double scatter : scatters)
        for (const double step : {-1.0, -2.0, -3.0, -5.0}) {
            const Power p = power(step, scatter, codes, startScatters, kTrials);
            const double least = step != -3.0 ? 0.0 : scatter <= 0.5 ? 95.0 : scatter == 1.0 ? 45.0 : 0.0;
            const bool soon = share(p.within3) >= least;
            std::printf("scatter %.1f %%, step %+.1f %%: %5.1f %5.1f %5.1f %%  %5.1f %%  %.2f %%  %5.1f %% %s\n",
                        scatter, step, share(p.within3), share(p.within8), share(p.ever), share(p.misplaced), p.error,
                        100.0 * p.inside / std::max(1, p.ever), soon ? "" : "BEYOND");
            in &= soon;
        }
    return in;
}

// One hour of the whole path, from samples on.
bool hourThroughThePath() {
    trueunit::Scenario s;
    s.machine.baud = 45.45;
    s.machine.stopUnits = 1.42;
    s.text.send = std::string(trueunit::test::kFox);
    s.card.rateHz = 8000.0;
    s.card.snrDb = 45.0;
    s.card.couplingHz = {8.0};
    s.faults.biasPercent = 4.0;
    s.faults.scatterPercent = 1.0;
    s.faults.startScatterPercent = 1.0;
    trueunit::ScenarioSignal signal(s);
    trueunit::Pipeline pipeline(s.card.rateHz, {}, {});
    const auto blocks = static_cast<long>(3600.0 * s.card.rateHz / trueunit::SampleBlock::kSamples);
    for (long i = 0; i < blocks; ++i) pipeline.push(*signal.nextBlock());
    const auto found = pipeline.snapshot().nudges.size();
    std::printf("%-58s    1 hours %5zu false\n", "the whole path, fox text, 8 kHz", found);
    return found <= 1;
}

}  // namespace

int main(int argc, char** argv) {
    const int hours = argc > 1 ? std::atoi(argv[1]) : 20;
    bool in = true;
    const auto fox = trueunit::test::codesOf(trueunit::test::kFox);
    std::puts("Steady senders");
    SteadySender s;
    in &= steadyHours("1 % scatter, RY", s, hours, 1.0);
    s.codes = fox;
    in &= steadyHours("1 % scatter, fox text", s, hours, 1.0);
    s.codes = {};
    in &= steadyHours("1 % scatter, random text", s, hours, 1.0);
    s.scatterPercent = 4.0;
    in &= steadyHours("4 % scatter, random text", s, hours / 2, 1.0);
    s.scatterPercent = 1.0;
    s.codes = fox;
    s.extraPercent = [](int k, bool mark, double) { return k == 4 && mark ? 9.0 : 0.0; };
    in &= steadyHours("1 % scatter, fox text, fourth level late by 9 %", s, hours / 2, 1.0);
    s.extraPercent = nullptr;
    s.biasPercent = [](std::uint64_t n) {
        return 3.0 * std::sin(2 * std::numbers::pi * static_cast<double>(n) / 2200);
    };
    in &= steadyHours("1 % scatter, fox text, drift up to 3 % in a minute", s, hours / 2, 1.0);
    s.biasPercent = [](std::uint64_t) { return 0.0; };
    s.extraPercent = [](int, bool, double t) { return 3.0 * std::sin(2 * std::numbers::pi * 2.3 * t); };
    in &= steadyHours("1 % scatter, fox text, cyclic 3 % at 2.3 Hz", s, hours / 2, 1.0);
    s.extraPercent = [](int k, bool, double t) { return k * 1.0 * std::sin(2 * std::numbers::pi * 0.1 * t); };
    in &= steadyHours("1 % scatter, fox text, speed wanders 1 % at 0.1 Hz", s, hours / 2, 1.0);

    s.extraPercent = [](int, bool mark, double t) { return mark || std::fmod(t, 20.0) < 10.0 ? 0.0 : 4.0; };
    in &= steadyHours("1 % scatter, fox text, ends of marks step by 4 %", s, hours / 2, 1.0);

    in &= steps("fox text", fox, true, {0.2, 0.5, 1.0, 2.0});
    in &= steps("RY", {21, 10}, true, {1.0});
    in &= steps("fox text, the start does not scatter", fox, false, {1.0});
    in &= hourThroughThePath();
    return in ? 0 : 1;
}
