// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <memory>
#include <span>
#include <string>
#include <vector>

#include "core/result.h"

struct sf_private_tag;  // libsndfile's handle, kept out of this header

namespace trueunit {

// A sound file (WAV, FLAC and whatever else libsndfile reads), one channel of it, read in order.
// Opens with the channel that swings most; which of several carries the telegraph signal is found by reading them
// (learnWiring). One thread at a time.
class Recording {
public:
    static Result<Recording> open(const std::string& path);

    double rateHz() const { return rateHz_; }
    double seconds() const { return seconds_; }
    int channel() const { return channel_; }  // 0 = left
    int channels() const { return channels_; }
    const std::vector<int>& channelsByStrength() const { return byStrength_; }  // strongest first, silent ones left out
    void setChannel(int channel) { channel_ = channel; }                        // that the next read is of
    const std::string& path() const { return path_; }

    std::size_t read(std::span<float> out);  // samples read, 0 at the end; +-1 full scale
    void seek(std::uint64_t sample);         // where the next read begins; 0 is the first one

private:
    Recording() = default;
    void rankChannels();
    std::size_t readSamples(std::span<float> out);  // of all channels by turns, whole frames; 0 at the end

    std::shared_ptr<sf_private_tag> file_;
    std::string path_;
    std::vector<float> interleaved_;
    std::vector<std::int16_t> whole_;  // as read; only of a file of 16 bits a sample
    double rateHz_ = 0.0;
    double seconds_ = 0.0;
    int channels_ = 1;
    int channel_ = 0;
    std::vector<int> byStrength_{0};
};

}  // namespace trueunit
