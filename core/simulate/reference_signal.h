// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>

#include "core/result.h"
#include "core/simulate/scenario_signal.h"

namespace trueunit {

// What the reference sender is to send. Percentages are of the nominal unit, marking positive; speed fast positive.
struct SenderSettings {
    enum class Keying { baseband, tone };

    std::string text = "RYRYRY THE QUICK BROWN FOX JUMPS OVER THE LAZY DOG 1234567890\r\n";
    bool repeat = true;                // round and round, or once
    std::string code = "ita2";         // a name codeNames() lists
    double baud = 50.0;                // 20..200
    double stopUnits = 1.5;            // 1..2.5
    double biasPercent = 0.0;          // -40..40
    double endPercent = 0.0;           // -40..40
    double scatterPercent = 0.0;       // 0..10, standard deviation of each instant but the start
    double speedPercent = 0.0;         // -15..15
    Keying keying = Keying::baseband;  // tone: on for mark, off for space
    double toneHz = 1000.0;            // 300..10000
    double levelDbfs = -12.0;          // -60..-1, of the peaks
    double seconds = 0.0;              // 0..86400; 0: until it is stopped, or once through the text
    std::uint64_t seed = 1;            // of the scatter

    std::optional<Error> problem() const;  // the first value out of range, in words
    std::string words() const;             // "50 baud, bias +5.0 %, ... on a tone of 1000 Hz"
};

// The samples of the reference sender at a given rate: known instants, edges of 300 us that cross half the swing at
// them, or a tone whose envelope does. It begins softly, while the line is at rest: a step out of silence would be a
// third level for whoever listens. The same samples however they are asked for. One thread.
class ReferenceSignal {
public:
    static constexpr double kRampSeconds = 0.1;  // raised cosine

    ReferenceSignal(const SenderSettings& settings, double rateHz);  // REQUIRES: settings.problem() is empty

    std::size_t read(std::span<float> out);  // samples written, 0 at the end
    const Truth& truth() const { return signal_.truth(); }

private:
    ScenarioSignal signal_;
    double rateHz_;
    double peak_;
    std::optional<double> toneHz_;
    std::uint64_t sample_ = 0;
};

}  // namespace trueunit
