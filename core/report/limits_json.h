// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/report/limits.h"
#include "core/result.h"

namespace trueunit {

// A set of limits as JSON: name, title, origin ("published", "practice", "own"), source, and the limits it states
// under the keys of the JSON reading. Either the set or one sentence naming the key that is wrong.
Result<Limits> parseLimits(std::string_view json);
std::string limitsJson(const Limits& limits);

std::optional<Error> problemOf(const Limits& limits);  // the first value out of range, in words
Limits withoutGaps(Limits limits);  // what is not stated becomes the largest that the stated ones leave room for

}  // namespace trueunit
