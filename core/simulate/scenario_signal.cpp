// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/simulate/scenario_signal.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/frame/code_table.h"

namespace trueunit {

namespace {
constexpr double kRestAfterText = 1.0;   // seconds at mark behind a text that is not repeated
constexpr double kRestBeforeEnd = 0.05;  // seconds at mark, at least, behind the last character of a limited run
}  // namespace

ScenarioSignal::ScenarioSignal(Scenario scenario)
    : scenario_(std::move(scenario)),
      keyer_(scenario_),
      line_(scenario_.line, scenario_.card.rateHz),
      card_(scenario_),
      keyAhead_(line_.leadSeconds() + scenario_.nominalUnitSeconds()),
      endSeconds_(scenario_.seconds) {
    if (endSeconds_ > 0.0) endSample_ = static_cast<std::uint64_t>(std::llround(endSeconds_ * samplesPerSecond()));
}

std::size_t ScenarioSignal::read(std::span<float> out) {
    std::size_t written = 0;
    for (float& value : out) {
        if (endSample_ && sample_ >= *endSample_) break;
        const double seconds = card_.secondsOf(sample_);
        keyUntil(seconds);
        value = card_.next(line_.levelAt(seconds));
        ++sample_;
        ++written;
    }
    return written;
}

void ScenarioSignal::keyUntil(double seconds) {
    while (keying_ && keyer_.nextBeat() - keyAhead_ <= seconds) {
        const int levels = findCode(scenario_.machine.code)->levels;
        const double needed = (levels + 1 + scenario_.machine.stopUnits) * scenario_.nominalUnitSeconds() * 1.25;
        if (endSeconds_ > 0.0 && keyer_.nextBeat() + needed + kRestBeforeEnd > endSeconds_) {
            keying_ = false;
        } else if (keyer_.next(keyed_)) {
            note(keyed_);
        } else {
            keying_ = false;
            const double ends = keyer_.lastInstant() + kRestAfterText;
            if (!endSample_) endSample_ = static_cast<std::uint64_t>(std::llround(ends * samplesPerSecond()));
        }
    }
}

void ScenarioSignal::note(const KeyedCharacter& character) {
    for (const TrueInstant& instant : character.instants) {
        line_.push(instant.seconds, instant.to);
        truth_.instants.push_back(instant);
    }
    truth_.characters.push_back(character.sent);
    ++truth_.charactersSent;
    while (truth_.instants.size() > Truth::kMostInstants) truth_.instants.pop_front();
    while (truth_.characters.size() > Truth::kMostCharacters) truth_.characters.pop_front();
}

void ScenarioSignal::skipGaps() {
    std::array<float, SampleBlock::kSamples> lost;
    for (; gap_ < scenario_.card.gaps.size(); ++gap_) {
        const Scenario::Gap& gap = scenario_.card.gaps[gap_];
        if (card_.secondsOf(sample_) < gap.atSeconds) return;
        for (std::size_t left = gap.samples; left > 0;) {
            const std::size_t got = read(std::span(lost).first(std::min(left, lost.size())));
            if (got == 0) return;
            left -= got;
        }
    }
}

std::optional<SampleBlock> ScenarioSignal::nextBlock() {
    skipGaps();
    SampleBlock block;
    block.firstSample = sample_;
    if (read(block.samples) < block.samples.size()) return std::nullopt;
    return block;
}

}  // namespace trueunit
