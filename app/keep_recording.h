// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "core/acquire/recent_input.h"
#include "core/options.h"
#include "core/report/limits.h"
#include "core/report/reading.h"
#include "core/result.h"

namespace trueunit {

// What has been written: the sound files (several when the input had gaps; the newest stretch has the name asked for)
// and the reading beside it.
struct KeptRecording {
    std::vector<std::string> soundFiles;
    std::string readingFile;
    Reading reading;  // of the newest stretch, as it is measured again from the file
    double seconds = 0.0;
};

// Writes what is at hand to a WAV or FLAC file of 24 bits, as the name ends, measures that file and puts the reading
// beside it as JSON ("name.reading.json"). A file takes its name only when all of it is written, so that nothing is
// lost when the disk is full; then one sentence comes back and what is at hand stays. Slow (seconds); any thread.
Result<KeptRecording> keepRecording(const RecentInput& recent, const std::string& path, const Options& options,
                                    const Limits& limits);

}  // namespace trueunit
