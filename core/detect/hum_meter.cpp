// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/detect/hum_meter.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

#include "core/straight_sums.h"

namespace trueunit {

namespace {

constexpr double kBinSeconds = 0.001;
constexpr int kSegmentBins = 2000;
constexpr double kRested = 0.3;        // of the swing: the line rests when it is this near to a level
constexpr double kFewestRested = 300;  // bins of a segment
constexpr double kMemorySegments = 15.0;
constexpr double kOverChance = 12.0;  // in squares
constexpr double kLeastAmplitude = 0.004;
constexpr std::array kMainsHz = {50.0, 60.0};

// Cosine and sine at each bin. A tenth of a second holds whole periods of either mains.
constexpr std::size_t kTurnBins = 100;
using Turn = std::array<std::array<double, 2>, kTurnBins>;

std::array<Turn, 2> turns() {
    std::array<Turn, 2> t{};
    for (std::size_t f = 0; f < t.size(); ++f)
        for (std::size_t i = 0; i < kTurnBins; ++i) {
            const double phase = 2.0 * std::numbers::pi * kMainsHz[f] * kBinSeconds * static_cast<double>(i);
            t[f][i] = {std::cos(phase), std::sin(phase)};
        }
    return t;
}

// -1 space, +1 mark, 0 between
int conditionOf(double mean) { return mean < kRested ? -1 : mean > 1.0 - kRested ? 1 : 0; }

}  // namespace

HumMeter::HumMeter(double rateHz) : binSamples_(kBinSeconds * rateHz), filled_(binSamples_) {}

void HumMeter::push(std::span<const float> line) {
    while (!line.empty()) {
        const auto wanted = static_cast<std::size_t>(std::max(1.0, std::ceil(filled_ - count_)));
        const std::span<const float> part = line.first(std::min(wanted, line.size()));
        sum_ += sumOf(part);
        count_ += static_cast<double>(part.size());
        line = line.subspan(part.size());
        if (count_ < filled_) return;
        takeBin(sum_ / count_);
        filled_ += binSamples_ - count_;  // keeps bins a millisecond long on average
        sum_ = count_ = 0.0;
    }
}

// The bin before the newest counts when it and its neighbours, two before and one after, rest at the same level.
void HumMeter::takeBin(double mean) {
    std::rotate(recent_.begin(), recent_.begin() + 1, recent_.end());
    recent_.back() = mean;
    ++bins_;
    const int condition = conditionOf(recent_[2]);
    const bool rests =
        condition != 0 && bins_ >= recent_.size() &&
        std::all_of(recent_.begin(), recent_.end(), [&](double m) { return conditionOf(m) == condition; });
    if (rests) {
        static const std::array<Turn, kMains> kTurns = turns();
        for (std::size_t f = 0; f < kMains; ++f) {
            const auto [cosine, sine] = kTurns[f][(bins_ - 2) % kTurnBins];
            equations_[f].add({condition < 0 ? 1.0 : 0.0, condition > 0 ? 1.0 : 0.0, cosine, sine}, recent_[2]);
        }
        rested_ += 1.0;
    }
    if (++inSegment_ == kSegmentBins) closeSegment();
}

void HumMeter::closeSegment() {
    inSegment_ = 0;
    const auto equations = std::exchange(equations_, {});
    const double n = std::exchange(rested_, 0.0);
    if (n < kFewestRested) return;
    segments_ = std::min(segments_ + 1.0, kMemorySegments);
    for (std::size_t f = 0; f < kMains; ++f) {
        const auto x = equations[f].solve();
        if (!x) continue;
        const double squares = (*x)[2] * (*x)[2] + (*x)[3] * (*x)[3];
        const double chance = 4.0 * equations[f].left(*x) / (n * n);
        squares_[f] += (squares - squares_[f]) / segments_;
        chance_[f] += (chance - chance_[f]) / segments_;
    }
}

std::optional<HumMeter::Hum> HumMeter::hum() const {
    const std::size_t f = squares_[1] > squares_[0] ? 1 : 0;
    if (segments_ < 1.0 || squares_[f] < kOverChance * chance_[f]) return std::nullopt;
    const Hum found{kMainsHz[f], std::sqrt(squares_[f] - chance_[f])};
    if (found.amplitude < kLeastAmplitude) return std::nullopt;
    return found;
}

}  // namespace trueunit
