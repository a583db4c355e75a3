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
constexpr int kAlike = 4;  // bins in a row

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
    const int condition = conditionOf(mean);
    alike_ = condition == condition_ ? alike_ + 1 : 1;
    if (condition != 0 && alike_ >= kAlike) {
        Place& place = rest_[condition < 0 ? 0 : 1][place_];
        place.count += 1.0;
        place.sum += newest_;
        place.squares += newest_ * newest_;
        rested_ += 1.0;
    }
    newest_ = mean;
    condition_ = condition;
    if (++place_ == kTurnBins) place_ = 0;
    if (++inSegment_ == kSegmentBins) closeSegment();
}

void HumMeter::closeSegment() {
    static const std::array kTurns = {turnOf(kMainsHz[0]), turnOf(kMainsHz[1])};
    inSegment_ = 0;
    const double n = std::exchange(rested_, 0.0);
    if (n >= kFewestRested) {
        segments_ = std::min(segments_ + 1.0, kMemorySegments);
        for (std::size_t f = 0; f < kMains; ++f) {
            const Equations e = equations(kTurns[f]);
            const auto x = e.solve();
            if (!x) continue;
            const double squares = (*x)[2] * (*x)[2] + (*x)[3] * (*x)[3];
            const double chance = 4.0 * e.left(*x) / (n * n);
            squares_[f] += (squares - squares_[f]) / segments_;
            chance_[f] += (chance - chance_[f]) / segments_;
        }
    }
    rest_ = {};
}

HumMeter::Turn HumMeter::turnOf(double hz) {
    Turn turn{};
    for (std::size_t i = 0; i < kTurnBins; ++i) {
        const double phase = 2.0 * std::numbers::pi * hz * kBinSeconds * static_cast<double>(i);
        turn[i] = {std::cos(phase), std::sin(phase)};
    }
    return turn;
}

HumMeter::Equations HumMeter::equations(const Turn& turn) const {
    Equations e;
    for (std::size_t mark = 0; mark < rest_.size(); ++mark)
        for (std::size_t i = 0; i < kTurnBins; ++i) {
            const Place& place = rest_[mark][i];
            if (place.count == 0.0) continue;
            const double mean = place.sum / place.count;
            e.add({mark ? 0.0 : 1.0, mark ? 1.0 : 0.0, turn[i][0], turn[i][1]}, mean, place.count);
            e.addSums({}, {}, place.squares - place.sum * mean);  // what the bins differ from their mean
        }
    return e;
}

std::optional<HumMeter::Hum> HumMeter::hum() const {
    const std::size_t f = squares_[1] > squares_[0] ? 1 : 0;
    if (segments_ < 1.0 || squares_[f] < kOverChance * chance_[f]) return std::nullopt;
    const Hum found{kMainsHz[f], std::sqrt(squares_[f] - chance_[f])};
    if (found.amplitude < kLeastAmplitude) return std::nullopt;
    return found;
}

}  // namespace trueunit
