// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace trueunit {

// A row of floats as base64 (RFC 4648) of their IEEE 754 single-precision bits, little end first. Pure functions.
std::string floatsToText(const std::vector<float>& values);
std::optional<std::vector<float>> floatsFromText(std::string_view text);  // empty: not such a text

}  // namespace trueunit
