// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "app/logbook/frame_search.h"

namespace trueunit {

// The readings of frames as a table (RFC 4180, UTF-8, one line a frame, oldest first) or as JSON with each frame's
// whole reading. What is not known is an empty field, or null.
Result<std::string> readingsCsv(const Store& store, const std::vector<FoundFrame>& frames);
Result<std::string> readingsJson(const Store& store, const std::vector<FoundFrame>& frames);

}  // namespace trueunit
