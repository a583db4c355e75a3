// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <string>

#include "core/result.h"

namespace trueunit {

// Writes a text file: complete, or what was there stays.
Outcome saveText(const QString& path, const std::string& text);

}  // namespace trueunit
