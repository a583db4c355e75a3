// SPDX-License-Identifier: GPL-3.0-or-later
// Files that a person opens: recordings, scenarios, machine cards, sets of limits.
#include <cmath>
#include <string>
#include <string_view>
#include <vector>

#include "core/acquire/recording.h"
#include "core/report/limits_json.h"
#include "core/report/machine_card_json.h"
#include "core/simulate/scenario_signal.h"
#include "tests/fuzz/scratch_file.h"
#include "tests/fuzz/targets.h"

namespace trueunit::fuzz {

namespace {

constexpr std::size_t kMostSamples = 1 << 20;  // a file may claim hours

std::string_view text(Bytes bytes) { return {reinterpret_cast<const char*>(bytes.data()), bytes.size()}; }

// What is accepted is written and read again as the same.
template <class Parse, class Write>
void comesBack(Bytes bytes, Parse parse, Write write) {
    const auto parsed = parse(text(bytes));
    if (!parsed) return promise(!parsed.error().text.empty());
    const std::string written = write(*parsed);
    const auto again = parse(written);
    promise(again && write(*again) == written);
}

}  // namespace

void recording(Bytes bytes) {
    const ScratchFile file("recording", bytes);
    Result<Recording> opened = Recording::open(file.path());
    if (!opened) {
        promise(!opened.error().text.empty());
        return;
    }
    promise(opened->rateHz() > 0.0 && opened->channel() < opened->channels());
    std::vector<float> block(4096);
    for (std::size_t all = 0; all < kMostSamples;) {
        const std::size_t n = opened->read(block);
        if (n == 0) break;
        promise(n <= block.size());
        all += n;
    }
}

void scenario(Bytes bytes) {
    const Result<Scenario> parsed = parseScenario(text(bytes));
    if (!parsed) {
        promise(!parsed.error().text.empty());
        return;
    }
    ScenarioSignal signal(*parsed);
    std::vector<float> block(4096);
    for (int i = 0; i < 4; ++i) {
        const std::size_t n = signal.read(block);
        for (std::size_t k = 0; k < n; ++k) promise(std::isfinite(block[k]));
    }
}

void machineCard(Bytes bytes) { comesBack(bytes, parseMachineCard, machineCardJson); }

void limits(Bytes bytes) { comesBack(bytes, parseLimits, limitsJson); }

}  // namespace trueunit::fuzz
