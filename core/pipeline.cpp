// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipeline.h"

#include <algorithm>
#include <cmath>

#include "core/pipeline_stages.h"

namespace trueunit {

namespace {
constexpr std::size_t kStamps = 1024;
}  // namespace

Pipeline::Pipeline(double rateHz, Options options, Limits limits)
    : stages_(std::make_unique<Stages>(rateHz, std::move(options), std::move(limits))) {}
Pipeline::~Pipeline() = default;
Pipeline::Pipeline(Pipeline&&) noexcept = default;
Pipeline& Pipeline::operator=(Pipeline&&) noexcept = default;

void Pipeline::drawNothing() { stages_->drawn = false; }

void Pipeline::push(const SampleBlock& block) {
    Stages& s = *stages_;
    if (!s.expected) {
        s.expected = block.firstSample;
        s.heard = block.firstSample;
    }
    if (block.firstSample != *s.expected || block.lossBefore) {
        s.gap(block.firstSample > *s.expected ? block.firstSample - *s.expected : 0);
        s.expected = std::max(*s.expected, block.firstSample);
    }
    *s.expected += block.samples.size();
    s.stamps.emplace_back(*s.expected, block.stampNs);
    if (s.stamps.size() > kStamps) s.stamps.pop_front();
    s.intake(block.samples);
}

void Pipeline::push(std::span<const float> samples) { stages_->intake(samples); }

bool Pipeline::push(const ChunkAhead& chunk) { return stages_->chunkAhead(chunk); }

void Pipeline::finish() {
    Stages& s = *stages_;
    if (const std::vector<float> rest = std::exchange(s.pending, {}); !rest.empty()) s.chunk(rest);
    s.finish({});
}

void Pipeline::finish(const Conditioned& last) { stages_->finish(last); }

bool Pipeline::sameRecord(const Options& a, const Options& b) {
    return a.code == b.code && a.input == b.input && a.tonesHz == b.tonesHz && a.slicePercent == b.slicePercent &&
           a.clockPpm == b.clockPpm;
}

bool Pipeline::adopt(const Options& options, const Limits& limits) {
    Stages& s = *stages_;
    if (!sameRecord(options, s.options)) return false;
    if (options.baud != s.options.baud) s.framing.setNominal(options.baud);
    s.options = options;
    s.limits = limits;
    s.partsDue = 0;
    return true;
}

Reading Pipeline::reading() { return stages_->reading(true); }

Snapshot Pipeline::snapshot() {
    Stages& s = *stages_;
    Snapshot out;
    out.serial = ++s.serial;
    s.describe(out);
    out.seconds = static_cast<double>(s.heard) / s.rateHz;
    out.newestStampNs = s.newestStamp;
    out.levelDbfs = s.meter.recent() > 1e-10F ? 20.0 * std::log10(static_cast<double>(s.meter.recent())) : -200.0;
    out.clippingNow = s.meter.clippingNow();
    out.lostSamples = s.lost;
    out.options = s.options;
    out.limits = s.limits;
    out.levels = s.code->levels;
    out.reading = s.reading(s.finished);
    out.windowUsed = static_cast<std::size_t>(out.reading.text.characters);
    out.firm = s.firm;
    out.findingsUsed = out.reading.findings ? s.findingsOver : out.windowUsed;
    s.picture.fill(out, s.log);
    s.fillDue(out.tape);
    return out;
}

std::shared_ptr<const LineModel> Pipeline::learned() const {
    const Stages& s = *stages_;
    if (!s.edges || !s.framing.framed()) return nullptr;
    const auto shapes = s.edges->timer().shapes();
    return std::make_shared<const LineModel>(
        LineModel{s.line(), {shapes[0], shapes[1]}, s.framing.framing().unitSeconds});
}

void Pipeline::startFrom(std::shared_ptr<const LineModel> model) { stages_->given = std::move(model); }

}  // namespace trueunit
