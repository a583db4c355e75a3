// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording_run.h"

#include <algorithm>
#include <vector>

#include "core/pipeline.h"

namespace trueunit {

namespace {

constexpr double kLearnSeconds = 60.0;
constexpr std::size_t kReadSamples = 65536;

// told(seconds read) after each part.
void run(Pipeline& pipeline, Recording& recording, double seconds, const Progress& told) {
    recording.rewind();
    std::vector<float> samples(kReadSamples);
    double heard = 0.0;
    auto left = static_cast<std::uint64_t>(std::max(seconds, 0.0) * recording.rateHz()) + 1;
    while (left > 0) {
        const auto want = static_cast<std::size_t>(std::min<std::uint64_t>(left, kReadSamples));
        const std::size_t got = recording.read({samples.data(), want});
        if (got == 0) break;
        pipeline.push(std::span<const float>(samples.data(), got));
        left -= got;
        heard += static_cast<double>(got) / recording.rateHz();
        if (told) told(heard);
    }
    pipeline.finish();
}

// Through two pipelines; the second one, with all that it heard.
Pipeline heard(Recording& recording, const Options& options, const Limits& limits, const Progress& progress,
               bool drawn) {
    const double toLearn = std::min(kLearnSeconds, recording.seconds());
    const double whole = std::max(toLearn + recording.seconds(), 1e-9);
    const auto tell = [&](double before) -> Progress {
        if (!progress) return {};
        return [&progress, whole, before](double done) { progress(std::min(1.0, (before + done) / whole)); };
    };
    Pipeline learner(recording.rateHz(), options, limits);
    learner.drawNothing();
    run(learner, recording, toLearn, tell(0.0));
    Pipeline pipeline(recording.rateHz(), options, limits);
    if (!drawn) pipeline.drawNothing();
    if (auto learned = learner.learned()) pipeline.startFrom(std::move(learned));
    run(pipeline, recording, recording.seconds(), tell(toLearn));
    return pipeline;
}

}  // namespace

Snapshot measureRecording(Recording& recording, const Options& options, const Limits& limits,
                          const Progress& progress) {
    return heard(recording, options, limits, progress, true).snapshot();
}

Reading readRecording(Recording& recording, const Options& options, const Limits& limits, const Progress& progress) {
    return heard(recording, options, limits, progress, false).reading();
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
