// SPDX-License-Identifier: GPL-3.0-or-later
// A day at the bench in some minutes: the pipeline reads a sender for hours of signal, with pauses and losses, and must
// neither grow nor drift nor fall behind. Prints the first minute and then an hour a line; fails when memory grows, a
// reading leaves the truth, other blocks are missed than were left out, or an hour takes an hour.
#include <chrono>
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
constexpr double kGrowthMiB = 4.0;            // after the first minute; the record of what was sent fills for five more
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

class Soak {
public:
    Soak() : signal_(sender()), pipeline_(kRate, window128(), {}) {}

    // False: there is no more signal.
    bool hearUntil(double seconds) {
        const auto until = static_cast<std::uint64_t>(seconds * kRate / SampleBlock::kSamples);
        for (; blocks_ < until; ++blocks_) {
            const auto block = signal_.nextBlock();
            if (!block) return false;
            if (blocks_ % kLossEvery == kLossEvery - 1)
                ++leftOut_;
            else
                pipeline_.push(*block);
            if (blocks_ % 4 == 0) pipeline_.snapshot();
        }
        return true;
    }

    // Prints a line; whether the reading is as good as ever and no block was missed but those left out.
    bool inOrder(const char* when) {
        const Snapshot s = pipeline_.snapshot();
        const auto bias = s.reading.distortion.biasPercent;
        std::printf("%s: bias %+.2f %%, %ld gaps, %.1f MiB\n", when, bias ? bias->value : NAN, s.reading.input.gaps,
                    residentMiB());
        std::fflush(stdout);
        return bias && std::abs(bias->value - kBias) <= kBiasWithin &&
               s.lostSamples == leftOut_ * SampleBlock::kSamples;
    }

private:
    static Options window128() {
        Options options;
        options.windowCharacters = 128;
        return options;
    }

    ScenarioSignal signal_;
    Pipeline pipeline_;
    std::uint64_t blocks_ = 0;
    std::uint64_t leftOut_ = 0;
};

}  // namespace

int main(int argc, char** argv) {
    using Clock = std::chrono::steady_clock;
    const int hours = argc > 1 ? std::atoi(argv[1]) : 8;
    Soak soak;
    if (!soak.hearUntil(60.0) || !soak.inOrder("first minute")) return 1;
    const double atFirst = residentMiB();
    for (int hour = 1; hour <= hours; ++hour) {
        const Clock::time_point began = Clock::now();
        if (!soak.hearUntil(3600.0 * hour) || !soak.inOrder(("hour " + std::to_string(hour)).c_str())) return 1;
        if (Clock::now() - began > std::chrono::hours(1)) return 1;
        if (residentMiB() - atFirst > kGrowthMiB) return 1;
    }
    return 0;
}
