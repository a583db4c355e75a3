// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording_run.h"

#include <algorithm>
#include <memory>
#include <optional>
#include <span>

#include "core/detect/line_model.h"
#include "core/pipeline.h"
#include "core/recording_ahead.h"

namespace trueunit {

namespace {

constexpr double kLearnSeconds = 60.0;

// The beginning of a recording, at most so long; of a line that is known conditioned ahead. told(seconds read) after
// each part.
void run(Pipeline& pipeline, Recording& recording, double seconds, const LineModel* model, const Progress& told) {
    const auto most = static_cast<std::uint64_t>(std::max(seconds, 0.0) * recording.rateHz()) + 1;
    RecordingAhead ahead(recording, most, model ? std::optional(model->line) : std::nullopt);
    std::uint64_t read = 0;
    while (const RecordingAhead::Batch* batch = ahead.next()) {
        std::span<const float> samples = batch->samples;
        read += samples.size();
        if (!model) pipeline.push(samples);
        for (const Conditioned& line : batch->line) {
            const std::size_t chunk = std::min(Pipeline::kChunk, samples.size());
            pipeline.push(samples.first(chunk), line);
            samples = samples.subspan(chunk);
        }
        if (told) told(static_cast<double>(read) / recording.rateHz());
    }
    if (model)
        pipeline.finish(ahead.last());
    else
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
    run(learner, recording, toLearn, nullptr, tell(0.0));
    Pipeline pipeline(recording.rateHz(), options, limits);
    if (!drawn) pipeline.drawNothing();
    const std::shared_ptr<const LineModel> learned = learner.learned();
    if (learned) pipeline.startFrom(learned);
    run(pipeline, recording, recording.seconds(), learned.get(), tell(toLearn));
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
