// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/keep_recording.h"

#include <filesystem>
#include <fstream>

#include "core/acquire/recording.h"
#include "core/acquire/recording_writer.h"
#include "core/recording_run.h"
#include "core/report/reading_json.h"

namespace trueunit {

namespace {

namespace fs = std::filesystem;

constexpr std::size_t kFrames = 65536;
constexpr double kShortestSeconds = 1.0;  // an older stretch that is shorter holds no character worth a file

// Gone unless it has been given its name.
class PartFile {
public:
    explicit PartFile(const fs::path& final)
        : final_(final),
          part_(final.parent_path() / ("." + final.stem().string() + ".part" + final.extension().string())) {}
    ~PartFile() {
        std::error_code ignored;
        if (!named_) fs::remove(part_, ignored);
    }
    PartFile(const PartFile&) = delete;
    PartFile& operator=(const PartFile&) = delete;

    std::string path() const { return part_.string(); }
    Outcome takeName() {
        std::error_code failed;
        fs::rename(part_, final_, failed);
        if (failed) return Error{"\"" + final_.string() + "\" could not be written: " + failed.message() + "."};
        named_ = true;
        return done();
    }

private:
    fs::path final_;
    fs::path part_;
    bool named_ = false;
};

Error whatStays(const Error& error) {
    std::string text = error.text;
    if (text.ends_with('.')) text.pop_back();
    return Error{text + "; what was heard is still at hand, choose another place or free some space."};
}

Outcome write(const KeptStretch& stretch, double rateHz, const std::string& path) {
    Result<RecordingWriter> writer = RecordingWriter::create(path, rateHz, 1, SampleFormat::pcm24);
    if (!writer) return writer.error();
    std::vector<float> samples(kFrames);
    std::uint64_t at = 0;
    while (const std::size_t got = stretch.read(at, samples)) {
        if (Outcome written = writer->write({samples.data(), got}); !written) return written;
        at += got;
    }
    if (Outcome finished = writer->finish(); !finished) return finished;
    const Result<Recording> back = Recording::open(path);  // an encoder may notice a full disk only at its end
    if (!back || back->seconds() * rateHz + 0.5 < static_cast<double>(at))
        return Error{"\"" + path + "\" could not be written in full"};
    return done();
}

Outcome writeText(const std::string& text, const std::string& path) {
    std::ofstream file(path, std::ios::binary);
    file << text;
    file.close();
    if (!file) return Error{"\"" + path + "\" could not be written"};
    return done();
}

// "name, before 1.flac" is the stretch before the newest, 2 the one before that.
fs::path nameOf(const fs::path& path, std::size_t before) {
    if (before == 0) return path;
    return path.parent_path() /
           (path.stem().string() + ", before " + std::to_string(before) + path.extension().string());
}

}  // namespace

Result<KeptRecording> keepRecording(const RecentInput& recent, const std::string& path, const Options& options,
                                    const Limits& limits) {
    const std::vector<KeptStretch> stretches = recent.stretches();
    if (stretches.empty()) return Error{"There is nothing to keep yet; choose an input first."};
    KeptRecording kept;
    for (std::size_t before = 0; before < stretches.size(); ++before) {
        const KeptStretch& stretch = stretches[stretches.size() - 1 - before];
        const double seconds = static_cast<double>(stretch.samples()) / recent.rateHz();
        if (before > 0 && seconds < kShortestSeconds) continue;
        const fs::path name = nameOf(path, kept.soundFiles.size());
        PartFile sound(name);
        if (Outcome written = write(stretch, recent.rateHz(), sound.path()); !written)
            return whatStays(written.error());
        if (before == 0) {
            Result<Recording> recording = Recording::open(sound.path());
            if (!recording) return whatStays(recording.error());
            kept.reading = readRecording(*recording, options, limits);
            const fs::path beside = fs::path(path).replace_extension(".reading.json");
            PartFile reading(beside);
            if (Outcome written = writeText(readingJson(kept.reading) + "\n", reading.path()); !written)
                return whatStays(written.error());
            if (Outcome named = sound.takeName(); !named) return whatStays(named.error());
            if (Outcome named = reading.takeName(); !named) return whatStays(named.error());
            kept.readingFile = beside.string();
        } else if (Outcome named = sound.takeName(); !named) {
            return whatStays(named.error());
        }
        kept.soundFiles.push_back(name.string());
        kept.seconds += seconds;
    }
    return kept;
}

}  // namespace trueunit
