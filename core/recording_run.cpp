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
constexpr std::size_t kPartSamples = 65536;

// From where the recording stands, so many samples at most. told(seconds read) after each part.
void hear(Pipeline& pipeline, Recording& recording, std::uint64_t most, const Progress& told) {
    std::vector<float> samples(kPartSamples);
    std::uint64_t read = 0;
    while (read < most) {
        const std::size_t got =
            recording.read(std::span(samples).first(std::min<std::uint64_t>(most - read, kPartSamples)));
        if (got == 0) break;
        read += got;
        pipeline.push(std::span<const float>(samples).first(got));
        if (told) told(static_cast<double>(read) / recording.rateHz());
    }
    pipeline.finish();
}

// The whole of it, its line conditioned ahead. Where the line gives way to something else it goes on without.
void hearAhead(Pipeline& pipeline, Recording& recording, const FoundLine& line, const Progress& told) {
    std::uint64_t heard = 0;
    {
        RecordingAhead ahead(recording, line);
        bool holds = true;
        while (holds) {
            const RecordingAhead::Batch* batch = ahead.next();
            if (!batch) return pipeline.finish(ahead.last());
            for (auto chunk = batch->begin(); holds && chunk != batch->end(); ++chunk) {
                holds = pipeline.push(*chunk);
                if (!chunk->dropout) heard = chunk->meter.count();
            }
            if (told) told(static_cast<double>(heard) / recording.rateHz());
        }
    }
    recording.seek(heard);
    const double before = static_cast<double>(heard) / recording.rateHz();
    hear(pipeline, recording, UINT64_MAX, told ? [&](double seconds) { told(before + seconds); } : Progress{});
}

std::shared_ptr<const LineModel> learnChannel(Recording& recording, const Options& options, const Limits& limits,
                                              const Progress& told) {
    Pipeline learner(recording.rateHz(), options, limits);
    learner.drawNothing();
    recording.seek(0);
    hear(learner, recording, static_cast<std::uint64_t>(kLearnSeconds * recording.rateHz()) + 1, told);
    return learner.learned();
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
    const auto learned = learnWiring(recording, options, limits, tell(0.0));
    Pipeline pipeline(recording.rateHz(), options, limits);
    if (!drawn) pipeline.drawNothing();
    if (learned) {
        pipeline.startFrom(learned);
        hearAhead(pipeline, recording, learned->line, tell(toLearn));
    } else {
        recording.seek(0);
        hear(pipeline, recording, UINT64_MAX, tell(toLearn));
    }
    return pipeline;
}

}  // namespace

std::shared_ptr<const LineModel> learnWiring(Recording& recording, const Options& options, const Limits& limits,
                                             const Progress& progress) {
    const std::vector<int>& channels = recording.channelsByStrength();
    const double toLearn = std::min(kLearnSeconds, recording.seconds());
    for (std::size_t i = 0; i < channels.size(); ++i) {
        const auto tell = [&](double done) {
            progress((static_cast<double>(i) * toLearn + done) / static_cast<double>(channels.size()));
        };
        recording.setChannel(channels[i]);
        if (auto learned = learnChannel(recording, options, limits, progress ? Progress(tell) : Progress{}))
            return learned;
    }
    recording.setChannel(channels.front());
    return nullptr;
}

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
