// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acquire/recording_writer.h"

#include <sndfile.h>

#include <algorithm>
#include <cmath>
#include <filesystem>

#include "core/acquire/sound_file_refusal.h"

namespace trueunit {

namespace {

std::string ending(const std::string& path) {
    std::string end = std::filesystem::path(path).extension().string();
    std::transform(end.begin(), end.end(), end.begin(), [](char c) { return c >= 'A' && c <= 'Z' ? char(c + 32) : c; });
    return end;
}

int subtype(SampleFormat format, bool flac) {
    if (format == SampleFormat::pcm16) return SF_FORMAT_PCM_16;
    if (format == SampleFormat::pcm24 || flac) return SF_FORMAT_PCM_24;
    return SF_FORMAT_FLOAT;
}

}  // namespace

Error RecordingWriter::refusal(const std::string& why) const { return Error{"Cannot write \"" + path_ + "\": " + why}; }

Result<RecordingWriter> RecordingWriter::create(const std::string& path, double rateHz, int channels,
                                                SampleFormat format) {
    RecordingWriter w;
    w.path_ = path;
    w.channels_ = channels;
    const std::string end = ending(path);
    if (end != ".wav" && end != ".flac") return w.refusal("the name must end in .wav or .flac.");
    const bool flac = end == ".flac";
    SF_INFO info{};
    info.samplerate = static_cast<int>(std::lround(rateHz));
    info.channels = channels;
    info.format = (flac ? SF_FORMAT_FLAC : SF_FORMAT_WAV) | subtype(format, flac);
    SNDFILE* handle = sf_open(path.c_str(), SFM_WRITE, &info);
    if (!handle) return w.refusal(soundFileRefusal(nullptr));
    w.file_ = std::shared_ptr<SNDFILE>(handle, [](SNDFILE* f) { sf_close(f); });
    sf_command(handle, SFC_SET_CLIPPING, nullptr, SF_TRUE);  // full scale flattens, it does not wrap round
    return w;
}

Outcome RecordingWriter::write(std::span<const float> interleaved) {
    const auto frames = static_cast<sf_count_t>(interleaved.size()) / channels_;
    if (sf_writef_float(file_.get(), interleaved.data(), frames) != frames)
        return refusal(soundFileRefusal(file_.get()));
    return done();
}

Outcome RecordingWriter::finish() {
    sf_write_sync(file_.get());
    const bool failed = sf_error(file_.get()) != SF_ERR_NO_ERROR;
    const std::string why = failed ? soundFileRefusal(file_.get()) : std::string();
    file_.reset();
    if (failed) return refusal(why);
    return done();
}

}  // namespace trueunit
