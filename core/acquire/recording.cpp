// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acquire/recording.h"

#include <sndfile.h>

#include <algorithm>
#include <cmath>

#include "core/acquire/sound_file_refusal.h"

namespace trueunit {

namespace {
constexpr double kChannelSearchSeconds = 20.0;
constexpr std::size_t kReadFrames = 16384;
}  // namespace

Result<Recording> Recording::open(const std::string& path) {
    SF_INFO info{};
    SNDFILE* handle = sf_open(path.c_str(), SFM_READ, &info);
    if (!handle) return Error{"Cannot read \"" + path + "\": " + soundFileRefusal(nullptr)};
    Recording r;
    r.file_ = std::shared_ptr<SNDFILE>(handle, [](SNDFILE* f) { sf_close(f); });
    if (info.samplerate < 8000 || info.samplerate > 768000)
        return Error{"\"" + path + "\" has a sample rate of " + std::to_string(info.samplerate) +
                     " Hz; the instrument reads 8 to 768 kHz."};
    if (info.channels < 1 || info.channels > 64)
        return Error{"\"" + path + "\" has " + std::to_string(info.channels) + " channels; at most 64 can be read."};
    r.path_ = path;
    r.rateHz_ = info.samplerate;
    r.channels_ = info.channels;
    r.seconds_ = static_cast<double>(info.frames) / r.rateHz_;
    r.interleaved_.resize(kReadFrames * static_cast<std::size_t>(info.channels));
    if (r.channels_ > 1) r.chooseChannel();
    return r;
}

// The signal may be on either side of a stereo file: the side that swings more about its mean carries it.
void Recording::chooseChannel() {
    const auto channels = static_cast<std::size_t>(channels_);
    struct Sums {
        double n = 0.0, x = 0.0, xx = 0.0;
    };
    std::vector<Sums> sums(channels);
    auto left = static_cast<sf_count_t>(kChannelSearchSeconds * rateHz_);
    while (left > 0) {
        const sf_count_t want = std::min<sf_count_t>(left, static_cast<sf_count_t>(kReadFrames));
        const sf_count_t got = sf_readf_float(file_.get(), interleaved_.data(), want);
        if (got <= 0) break;
        for (std::size_t i = 0; i < static_cast<std::size_t>(got); ++i)
            for (std::size_t c = 0; c < channels; ++c) {
                const double v = static_cast<double>(interleaved_[i * channels + c]);
                if (!std::isfinite(v)) continue;
                sums[c].n += 1.0;
                sums[c].x += v;
                sums[c].xx += v * v;
            }
        left -= got;
    }
    const auto variance = [](const Sums& s) { return (s.xx - s.x * s.x / std::max(s.n, 1.0)) / std::max(s.n, 1.0); };
    const auto weaker = [&](const Sums& a, const Sums& b) { return variance(a) < variance(b); };
    channel_ = static_cast<int>(std::max_element(sums.begin(), sums.end(), weaker) - sums.begin());
    rewind();
}

std::size_t Recording::read(std::span<float> out) {
    if (channels_ == 1) {
        const sf_count_t got = sf_readf_float(file_.get(), out.data(), static_cast<sf_count_t>(out.size()));
        return static_cast<std::size_t>(std::max<sf_count_t>(got, 0));
    }
    const auto channels = static_cast<std::size_t>(channels_);
    std::size_t filled = 0;
    while (filled < out.size()) {
        const std::size_t want = std::min(out.size() - filled, kReadFrames);
        const sf_count_t got = sf_readf_float(file_.get(), interleaved_.data(), static_cast<sf_count_t>(want));
        if (got <= 0) break;
        for (std::size_t i = 0; i < static_cast<std::size_t>(got); ++i)
            out[filled + i] = interleaved_[i * channels + static_cast<std::size_t>(channel_)];
        filled += static_cast<std::size_t>(got);
    }
    return filled;
}

void Recording::rewind() { sf_seek(file_.get(), 0, SEEK_SET); }

}  // namespace trueunit
