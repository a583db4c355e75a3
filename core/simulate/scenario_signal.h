// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <span>

#include "core/acquire/sample_block.h"
#include "core/simulate/card.h"
#include "core/simulate/keyer.h"
#include "core/simulate/line.h"
#include "core/simulate/scenario.h"
#include "core/simulate/truth.h"

namespace trueunit {

// The samples of a scenario, and what was imposed on them. The same samples however they are asked for. One thread at
// a time; allocates a little per character. In a run of limited length only whole characters are sent.
class ScenarioSignal {
public:
    explicit ScenarioSignal(Scenario scenario);

    std::size_t read(std::span<float> out);  // samples written, 0 at the end; without the scenario's gaps
    std::optional<SampleBlock> nextBlock();  // with the gaps, as missing numbers; empty when no whole block is left

    void turnEccentric(double biasPercent) { keyer_.turnEccentric(biasPercent); }  // relative, marking positive
    double rateHz() const { return scenario_.card.rateHz; }                        // as the card claims
    double samplesPerSecond() const { return card_.samplesPerSecond(); }           // as it is
    const Scenario& scenario() const { return scenario_; }
    const Truth& truth() const { return truth_; }  // may run a character ahead of the samples

private:
    void keyUntil(double seconds);
    void note(const KeyedCharacter& character);
    void skipGaps();

    Scenario scenario_;
    Keyer keyer_;
    SimulatedLine line_;
    SimulatedCard card_;
    Truth truth_;
    KeyedCharacter keyed_;
    bool keying_ = true;
    double keyAhead_;                         // seconds between a character's making and its beat
    double endSeconds_;                       // of limited runs; 0: none set
    std::optional<std::uint64_t> endSample_;  // empty: not known, or never
    std::uint64_t sample_ = 0;                // number of the next one
    std::size_t gap_ = 0;
};

}  // namespace trueunit
