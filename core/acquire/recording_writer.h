// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <span>
#include <string>

#include "core/result.h"

struct sf_private_tag;  // libsndfile's handle, kept out of this header

namespace trueunit {

enum class SampleFormat { pcm16, pcm24, float32 };

// Writes a sound file, in order: WAV or FLAC, as the file's name ends. Samples are +-1 full scale, interleaved.
// The file is complete once finish() has succeeded. One thread at a time.
class RecordingWriter {
public:
    // FLAC knows no float: float32 becomes 24 bits there.
    static Result<RecordingWriter> create(const std::string& path, double rateHz, int channels, SampleFormat format);

    Outcome write(std::span<const float> interleaved);
    Outcome finish();

private:
    RecordingWriter() = default;
    Error refusal(const std::string& why) const;

    std::shared_ptr<sf_private_tag> file_;
    std::string path_;
    int channels_ = 1;
};

}  // namespace trueunit
