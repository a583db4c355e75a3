// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acquire/recent_input.h"

#include <algorithm>
#include <cmath>

namespace trueunit {

namespace {

constexpr std::size_t kBytes = 3;
constexpr double kFullScale = 8388608.0;  // as sound files of 24 bits have it

void append(KeptStretch::Chunk& chunk, float sample) {
    const double scaled = std::clamp(std::round(static_cast<double>(sample) * kFullScale), -kFullScale, kFullScale - 1);
    const auto bits = static_cast<std::uint32_t>(static_cast<std::int32_t>(scaled));
    for (const unsigned shift : {0U, 8U, 16U}) chunk.push_back(static_cast<std::uint8_t>(bits >> shift & 0xFFU));
}

float sampleAt(const KeptStretch::Chunk& chunk, std::size_t index) {
    const std::uint8_t* b = chunk.data() + kBytes * index;
    const std::uint32_t bits = std::uint32_t{b[0]} << 8 | std::uint32_t{b[1]} << 16 | std::uint32_t{b[2]} << 24;
    return static_cast<float>(static_cast<std::int32_t>(bits) / 256) / static_cast<float>(kFullScale);
}

}  // namespace

std::uint64_t KeptStretch::samples() const {
    return chunks.empty() ? 0 : (chunks.size() - 1) * kChunkSamples + chunks.back()->size() / kBytes;
}

// All chunks but the last are full.
std::size_t KeptStretch::read(std::uint64_t from, std::span<float> out) const {
    std::size_t written = 0;
    for (const std::uint64_t end = samples(); written < out.size() && from + written < end; ++written) {
        const std::uint64_t at = from + written;
        out[written] = sampleAt(*chunks[at / kChunkSamples], at % kChunkSamples);
    }
    return written;
}

std::vector<float> lastSamples(const std::vector<KeptStretch>& stretches, std::uint64_t end, std::uint64_t most) {
    if (stretches.empty()) return {};
    const KeptStretch* from = &stretches.back();
    std::uint64_t here = from->samples();  // of that stretch
    for (const KeptStretch& s : stretches)
        if (end > s.firstSample && end <= s.firstSample + s.samples()) {
            from = &s;
            here = end - s.firstSample;
        }
    const std::uint64_t wanted = std::min(here, most);
    std::vector<float> samples(static_cast<std::size_t>(wanted));
    samples.resize(from->read(here - wanted, samples));
    return samples;
}

RecentInput::RecentInput(double rateHz, double seconds)
    : rateHz_(rateHz), most_(static_cast<std::uint64_t>(std::llround(rateHz * seconds))) {}

void RecentInput::push(const SampleBlock& block) {
    const std::scoped_lock lock(mutex_);
    if (!expected_ || block.firstSample != *expected_ || block.lossBefore) {
        if (!filling_.empty()) {
            kept_ += filling_.size() / kBytes;
            stretches_.back().chunks.push_back(std::make_shared<const KeptStretch::Chunk>(std::move(filling_)));
        }
        filling_ = {};
        stretches_.emplace_back();
        stretches_.back().firstSample = block.firstSample;
    }
    expected_ = block.firstSample + block.samples.size();
    if (filling_.capacity() == 0) filling_.reserve(kBytes * KeptStretch::kChunkSamples);
    for (const float sample : block.samples) append(filling_, sample);  // a chunk is a whole number of blocks
    if (filling_.size() == kBytes * KeptStretch::kChunkSamples) {
        stretches_.back().chunks.push_back(std::make_shared<const KeptStretch::Chunk>(std::move(filling_)));
        filling_ = {};
        kept_ += KeptStretch::kChunkSamples;
    }
    forgetOldest();
}

void RecentInput::forgetOldest() {
    while (kept_ > most_) {
        KeptStretch& oldest = stretches_.front();
        if (!oldest.chunks.empty()) {
            const std::uint64_t gone = oldest.chunks.front()->size() / kBytes;
            kept_ -= gone;
            oldest.firstSample += gone;
            oldest.chunks.erase(oldest.chunks.begin());
        }
        if (oldest.chunks.empty() && stretches_.size() > 1) stretches_.pop_front();
    }
}

void RecentInput::clear() {
    const std::scoped_lock lock(mutex_);
    stretches_.clear();
    filling_ = {};
    expected_.reset();
    kept_ = 0;
}

std::vector<KeptStretch> RecentInput::stretches() const {
    const std::scoped_lock lock(mutex_);
    std::vector<KeptStretch> all(stretches_.begin(), stretches_.end());
    if (!filling_.empty()) all.back().chunks.push_back(std::make_shared<const KeptStretch::Chunk>(filling_));
    return all;
}

double RecentInput::seconds() const {
    const std::scoped_lock lock(mutex_);
    const std::uint64_t samples = kept_ + filling_.size() / kBytes;
    return static_cast<double>(samples) / rateHz_;
}

}  // namespace trueunit
