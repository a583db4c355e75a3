// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/acquire/dropout_watch.h"
#include "core/acquire/level_meter.h"
#include "core/condition/line_conditioner.h"

namespace trueunit {

// What became of a chunk of samples ahead of the pipeline: its line, and the level of the input up to its end.
struct ChunkAhead {
    Conditioned line;
    LevelMeter meter;                     // counts the samples from the first one on
    std::optional<DropoutWatch> dropout;  // as it was before a chunk that has one, which must be heard by itself
};

}  // namespace trueunit
