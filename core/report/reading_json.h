// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/report/reading.h"

namespace trueunit {

// The reading as JSON, schema 1. Keys and their order are stable; what is not known is null and the reason stands in
// "notes". Numbers are rounded to four decimals, small ones to three significant digits, so none becomes a false zero.
// Pure function. Text that is not valid UTF-8 is mended with the replacement character.
std::string readingJson(const Reading& reading);

}  // namespace trueunit
