// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording_run.h"

#include <algorithm>
#include <vector>

#include "core/pipeline.h"

namespace trueunit {

namespace {

constexpr double kLearnSeconds = 60.0;
constexpr std::size_t kReadSamples = 65536;

void run(Pipeline& pipeline, Recording& recording, double seconds) {
    recording.rewind();
    std::vector<float> samples(kReadSamples);
    auto left = static_cast<std::uint64_t>(std::max(seconds, 0.0) * recording.rateHz()) + 1;
    while (left > 0) {
        const auto want = static_cast<std::size_t>(std::min<std::uint64_t>(left, kReadSamples));
        const std::size_t got = recording.read({samples.data(), want});
        if (got == 0) break;
        pipeline.push(std::span<const float>(samples.data(), got));
        left -= got;
    }
    pipeline.finish();
}

}  // namespace

Snapshot measureRecording(Recording& recording, const Options& options, const Limits& limits) {
    Pipeline learner(recording.rateHz(), options, limits);
    run(learner, recording, std::min(kLearnSeconds, recording.seconds()));
    Pipeline pipeline(recording.rateHz(), options, limits);
    if (auto learned = learner.learned()) pipeline.startFrom(std::move(learned));
    run(pipeline, recording, recording.seconds());
    return pipeline.snapshot();
}

Reading readingOfNothing(const Error& reason, const Options& options, const Limits& limits) {
    Reading reading;
    reading.input.slicePercent = options.slicePercent;
    reading.text.code = options.code;
    reading.verdict.limits = limits.name;
    reading.notes.push_back(reason.text);
    return reading;
}

}  // namespace trueunit
