// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <span>

#include "core/acquire/sample_block.h"
#include "core/options.h"
#include "core/report/limits.h"
#include "core/report/snapshot.h"

namespace trueunit {

struct ChunkAhead;
struct Conditioned;
struct LineModel;

// Block in, snapshot out: the one place that knows every stage. Analysis thread only; owns the stages.
// The result depends on the samples alone, not on how they are chopped into pushes.
class Pipeline {
public:
    Pipeline(double rateHz, Options options, Limits limits);
    ~Pipeline();
    Pipeline(Pipeline&&) noexcept;
    Pipeline& operator=(Pipeline&&) noexcept;

    void drawNothing();                         // readings only: no traces, trail and nudges; before the first push
    void push(const SampleBlock& block);        // live: gaps show in the block's number
    void push(std::span<const float> samples);  // gapless
    void finish();                              // no more samples: what waits for its surroundings is let go

    // The same of a line that was conditioned ahead, from the first sample on and as learned (startFrom), chunk by
    // chunk, the last one perhaps shorter. False: the line has given way to something else, and what comes next is
    // wanted as samples. last: what the conditioner let go at the end.
    static constexpr std::size_t kChunk = 256;  // all stages move in steps of this many samples
    bool push(const ChunkAhead& chunk);
    void finish(const Conditioned& last);

    // Takes over what concerns the readings only: speed, stop, window, expected text, limits. The record goes on.
    // False: something else differs too (code, input, tones, slice, clock), which asks for a new pipeline; nothing was
    // done.
    bool adopt(const Options& options, const Limits& limits);
    static bool sameRecord(const Options& a, const Options& b);  // what differs concerns the readings only

    Snapshot snapshot();  // the present moment, over the window
    Reading reading();    // numbers only, cheaper

    // What has been learned of the wiring (coupling, edges, polarity), to start another run of the same input with.
    std::shared_ptr<const LineModel> learned() const;
    void startFrom(std::shared_ptr<const LineModel> model);

private:
    struct Stages;
    std::unique_ptr<Stages> stages_;
};

}  // namespace trueunit
