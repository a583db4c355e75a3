// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/report/snapshot.h"

namespace trueunit {

// A remark pinned to a point of the grid.
struct Note {
    double units = 0.0;  // after the start instant, in grid units
    double level = 0.0;  // 0 = space, 1 = mark
    std::string text;
};

// What the person froze and wrote: a moment that stays while acquisition goes on. Owned by the window's thread.
struct FrozenFrame {
    std::shared_ptr<const Snapshot> snapshot;
    std::uint64_t characterNumber = 0;             // the trace on the grid; 0 = the newest
    std::int64_t takenSecondsUtc = 0;              // since 1970
    std::int64_t fileSecondsUtc = 0;               // date of the recording's file; 0: measured as it came
    std::array<std::optional<double>, 2> cursors;  // in grid units after the start instant
    std::vector<Note> notes;
    std::string machine;  // owner's name of it
    std::string remarks;
    std::string inputDescription;
    std::string selfCheck{};                 // of the instrument: the last one, in one line; empty: none was made
    std::shared_ptr<const Snapshot> before;  // a moment to hold this one against; empty: none
    std::int64_t beforeTakenSecondsUtc = 0;
};

}  // namespace trueunit
