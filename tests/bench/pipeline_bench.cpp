// SPDX-License-Identifier: GPL-3.0-or-later
// How fast the analysis runs against real time, at the usual and at the highest rate, snapshots at the live pace
// included. Budget: 50 times at 48 kHz, 20 times at 192 kHz. Counted in processor time, so that what else the machine
// is doing does not enter.
#include <algorithm>
#include <cstdio>
#include <ctime>
#include <vector>

#include "core/pipeline.h"
#include "core/simulate/scenario_signal.h"

using namespace trueunit;

namespace {

double processorSeconds() { return static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }

constexpr double kSeconds = 60.0;
constexpr double kSnapshotsPerSecond = 40.0;

bool measure(double rateHz, double budget) {
    Scenario s;
    s.machine.baud = 45.45;
    s.text.send = "RYRYRY THE LAMP IS LIT ";
    s.seconds = kSeconds;
    s.faults.biasPercent = 5.0;
    s.card.rateHz = rateHz;
    s.card.couplingHz = {8.0};
    s.card.snrDb = 45.0;
    ScenarioSignal signal(s);
    std::vector<SampleBlock> blocks;
    while (auto block = signal.nextBlock()) blocks.push_back(*block);

    const auto every = static_cast<std::size_t>(rateHz / kSnapshotsPerSecond / SampleBlock::kSamples);
    const double begin = processorSeconds();
    Pipeline pipeline(rateHz, {}, {});
    double slowest = 0.0;
    for (std::size_t i = 0; i < blocks.size(); ++i) {
        const double before = processorSeconds();
        pipeline.push(blocks[i]);
        if (i % every == 0) pipeline.snapshot();
        slowest = std::max(slowest, processorSeconds() - before);
    }
    const double times = kSeconds / (processorSeconds() - begin);
    std::printf("analysis at %.0f kHz: %.0f times real time, budget %.0f; slowest block %.1f ms: %s\n", rateHz / 1e3,
                times, budget, 1e3 * slowest, times >= budget ? "held" : "EXCEEDED");
    return times >= budget;
}

}  // namespace

int main() {
    const bool usual = measure(48000.0, 50.0);
    const bool highest = measure(192000.0, 20.0);
    return usual && highest ? 0 : 1;
}
