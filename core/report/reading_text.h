// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/report/limits.h"
#include "core/report/reading.h"

namespace trueunit {

// The reading as a plain table for a terminal: value with uncertainty, limit, and in words whether it is in limits.
// UTF-8, lines of at most 100 columns apart from the notes. Pure function.
std::string readingText(const Reading& reading, const Limits& limits);

}  // namespace trueunit
