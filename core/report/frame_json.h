// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/report/frozen_frame.h"
#include "core/result.h"

namespace trueunit {

// A frozen frame whole, as JSON, so that it is reopened as it was: numbers exactly, line signals as base64 of 32-bit
// little-endian floats, what is not known as null. Pure functions. A key that is missing keeps its default and one
// that is not known is passed over, so older and newer programs read each other's frames.
std::string frameJson(const FrozenFrame& frame);

// Refuses what is no frame at all; a frame without a snapshot is refused too.
Result<FrozenFrame> frameFromJson(const std::string& text);

}  // namespace trueunit
