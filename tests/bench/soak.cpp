// SPDX-License-Identifier: GPL-3.0-or-later
// A day at the bench in some minutes: the pipeline reads a sender for hours of signal, with pauses and losses, and must
// neither grow nor drift. Prints an hour a line; fails when memory grows or the reading leaves the truth.
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <string>

#include "core/pipeline.h"
#include "core/simulate/scenario_signal.h"

using namespace trueunit;

namespace {

constexpr double kRate = 48000.0;
constexpr double kBias = 4.0;
constexpr double kBiasWithin = 0.3;
constexpr double kGrowthMiB = 8.0;            // after the first hour, when every bounded store is full
constexpr std::uint64_t kLossEvery = 500000;  // blocks; about three quarters of an hour

double residentMiB() {
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);)
        if (line.rfind("VmRSS:", 0) == 0) return std::atof(line.c_str() + 6) / 1024.0;
    return 0.0;
}

Scenario sender() {
    Scenario s;
    s.machine.baud = 45.45;
    s.text.send = "RYRYRY THE LAMP IS LIT ";
    s.faults.biasPercent = kBias;
    s.faults.scatterPercent = 0.5;
    s.faults.pauses = {{.everyCharacters = 400, .atSeconds = 0.0, .seconds = 7.0}};
    s.card.couplingHz = {8.0};
    s.card.snrDb = 45.0;
    return s;
}

}  // namespace

int main(int argc, char** argv) {
    const int hours = argc > 1 ? std::atoi(argv[1]) : 8;
    ScenarioSignal signal(sender());
    Options options;
    options.windowCharacters = 128;
    Pipeline pipeline(kRate, options, {});
    double first = 0.0;
    std::uint64_t blocks = 0;
    for (int hour = 1; hour <= hours; ++hour) {
        const auto until = static_cast<std::uint64_t>(hour * 3600.0 * kRate / SampleBlock::kSamples);
        for (; blocks < until; ++blocks) {
            const auto block = signal.nextBlock();
            if (!block) return 2;
            if (blocks % kLossEvery != kLossEvery - 1) pipeline.push(*block);
            if (blocks % 4 == 0) pipeline.snapshot();
        }
        const Snapshot s = pipeline.snapshot();
        const auto bias = s.reading.distortion.biasPercent;
        const double resident = residentMiB();
        if (hour == 1) first = resident;
        std::printf("hour %d: bias %+.2f %%, %ld gaps, %.1f MiB\n", hour, bias ? bias->value : NAN,
                    s.reading.input.gaps, resident);
        std::fflush(stdout);
        if (!bias || std::abs(bias->value - kBias) > kBiasWithin) return 1;
        if (resident - first > kGrowthMiB) return 1;
    }
    return 0;
}
