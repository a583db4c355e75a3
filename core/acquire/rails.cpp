// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acquire/rails.h"

#include <cmath>
#include <cstddef>
#include <vector>

namespace trueunit {

namespace {

constexpr double kRunSeconds = 0.0002;  // at one level, to be flat
constexpr std::size_t kFewestInARow = 4;
constexpr double kFewest = 0.002;             // of the samples: fewer do no harm
constexpr float kNear = 0.001F;               // of the way from rail to rail
constexpr float kNoise = 0.003F;              // of that way, between neighbours,
constexpr float kFewSteps = 4.0F / 32768.0F;  // and more than whole numbers make of a slope

// Samples at a level that come so many in a row.
std::size_t flatAt(std::span<const float> samples, float level, std::size_t inARow) {
    std::size_t flat = 0;
    std::size_t run = 0;
    for (const float v : samples) {
        run = v == level ? run + 1 : 0;
        if (run >= inARow) flat += run == inARow ? run : 1;
    }
    return flat;
}

}  // namespace

std::optional<Rails> flatTops(std::span<const float> samples, double rateHz) {
    float least = kLargestSample;
    float most = -kLargestSample;
    for (const float v : samples) {
        if (!(std::abs(v) <= kLargestSample)) continue;
        least = std::min(least, v);
        most = std::max(most, v);
    }
    if (!(most > least)) return std::nullopt;
    const auto inARow = std::max(kFewestInARow, static_cast<std::size_t>(kRunSeconds * rateHz));
    const auto flat = [&](float level) {
        return static_cast<double>(flatAt(samples, level, inARow)) > kFewest * static_cast<double>(samples.size());
    };
    const float near = kNear * (most - least);
    Rails rails = beyondFullScale(most) || beyondFullScale(least) ? Rails::none() : Rails{};
    const Rails before = rails;
    if (least > rails.low && flat(least)) rails.low = least + near;
    if (most < rails.high && flat(most)) rails.high = most - near;
    return rails == before ? std::nullopt : std::optional(rails);
}

// By how far a sample is off the middle of its neighbours: slopes and slow edges hardly matter.
bool noisyBetween(const Rails& rails, std::span<const float> samples) {
    std::vector<float> off;
    float least = rails.high;
    float most = rails.low;
    for (std::size_t i = 1; i + 1 < samples.size(); ++i) {
        if (!std::isfinite(samples[i]) || rails.reached(samples[i])) continue;
        least = std::min(least, samples[i]);
        most = std::max(most, samples[i]);
        off.push_back(std::abs(samples[i - 1] - 2.0F * samples[i] + samples[i + 1]));
    }
    if (off.empty()) return false;
    const auto middle = off.begin() + static_cast<std::ptrdiff_t>(off.size() / 2);
    std::nth_element(off.begin(), middle, off.end());
    return *middle > std::max(kNoise * (most - least), kFewSteps);
}

}  // namespace trueunit
