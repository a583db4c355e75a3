// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <span>
#include <utility>

#include "core/pipeline.h"

namespace trueunit::test {

constexpr double kLearnSeconds = 9.0;

// As a recording is measured: a first pass learns the wiring, a second one reads from the first character on.
inline Pipeline measureTwice(std::span<const float> samples, double rateHz, const Options& options = {}) {
    Pipeline learner(rateHz, options, Limits{});
    learner.push(samples.first(std::min(samples.size(), static_cast<std::size_t>(kLearnSeconds * rateHz))));
    learner.finish();
    Pipeline pipeline(rateHz, options, Limits{});
    if (auto learned = learner.learned()) pipeline.startFrom(std::move(learned));
    pipeline.push(samples);
    pipeline.finish();
    return pipeline;
}

// As a sound input is measured: once, from the beginning, knowing nothing.
inline Pipeline measureOnce(std::span<const float> samples, double rateHz, const Options& options = {}) {
    Pipeline pipeline(rateHz, options, Limits{});
    pipeline.push(samples);
    pipeline.finish();
    return pipeline;
}

}  // namespace trueunit::test
