// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acquire/recording.h"

#include <sndfile.h>

#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/acquire/sound_file_refusal.h"

namespace trueunit {

namespace {
constexpr double kChannelSearchSeconds = 20.0;
constexpr std::size_t kReadFrames = 16384;
constexpr double kSilence = 1e-5;  // rms, full scale
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
    if ((info.format & SF_FORMAT_SUBMASK) == SF_FORMAT_PCM_16) r.whole_.resize(r.interleaved_.size());
    if (r.channels_ > 1) r.rankChannels();
    return r;
}

// The signal may be on either side of a stereo file: more likely on the one that swings more about its mean.
void Recording::rankChannels() {
    const auto channels = static_cast<std::size_t>(channels_);
    struct Sums {
        double n = 0.0, x = 0.0, xx = 0.0;
    };
    std::vector<Sums> sums(channels);
    const auto most = static_cast<std::size_t>(kChannelSearchSeconds * rateHz_) * channels;
    std::size_t heard = 0;
    while (heard < most) {
        const std::size_t got = readSamples(std::span(interleaved_).first(std::min(interleaved_.size(), most - heard)));
        if (got == 0) break;
        heard += got;
        for (std::size_t i = 0; i < got; ++i) {
            const auto v = static_cast<double>(interleaved_[i]);
            if (!std::isfinite(v)) continue;
            Sums& side = sums[i % channels];
            side.n += 1.0;
            side.x += v;
            side.xx += v * v;
        }
    }
    const auto variance = [](const Sums& s) { return (s.xx - s.x * s.x / std::max(s.n, 1.0)) / std::max(s.n, 1.0); };
    byStrength_.resize(channels);
    std::iota(byStrength_.begin(), byStrength_.end(), 0);
    const auto strength = [&](int channel) { return variance(sums[static_cast<std::size_t>(channel)]); };
    std::stable_sort(byStrength_.begin(), byStrength_.end(), [&](int a, int b) { return strength(a) > strength(b); });
    channel_ = byStrength_.front();
    std::erase_if(byStrength_, [&](int c) { return c != channel_ && strength(c) < kSilence * kSilence; });
    seek(0);
}

// Samples of 16 bits come as they are and are scaled here, many at a time: the library would do it one by one.
std::size_t Recording::readSamples(std::span<float> out) {
    const auto counted = [](sf_count_t got) { return static_cast<std::size_t>(std::max<sf_count_t>(got, 0)); };
    const auto want = static_cast<sf_count_t>(out.size());
    if (whole_.empty()) return counted(sf_read_float(file_.get(), out.data(), want));
    const std::size_t got = counted(sf_read_short(file_.get(), whole_.data(), want));
    for (std::size_t i = 0; i < got; ++i) out[i] = static_cast<float>(whole_[i]) * (1.0F / 32768.0F);
    return got;
}

std::size_t Recording::read(std::span<float> out) {
    const auto channels = static_cast<std::size_t>(channels_);
    std::size_t filled = 0;
    while (filled < out.size()) {
        const std::size_t want = std::min(out.size() - filled, kReadFrames);
        const std::span<float> into =
            channels == 1 ? out.subspan(filled, want) : std::span(interleaved_).first(want * channels);
        const std::size_t got = readSamples(into) / channels;
        if (got == 0) break;
        for (std::size_t i = 0; channels > 1 && i < got; ++i)
            out[filled + i] = into[i * channels + static_cast<std::size_t>(channel_)];
        filled += got;
    }
    return filled;
}

void Recording::seek(std::uint64_t sample) { sf_seek(file_.get(), static_cast<sf_count_t>(sample), SEEK_SET); }

}  // namespace trueunit
