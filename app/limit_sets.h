// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <string>
#include <vector>

#include "core/report/limits.h"
#include "core/result.h"

namespace trueunit {

// The sets of limits there are: those built in (resources/limits) and the person's own, one JSON file each in their
// folder. Files that are no sets of limits are passed over. Any thread; reads the disk.
std::vector<Limits> limitSets();                        // built in first
Result<Limits> limitSetNamed(const std::string& name);  // or a sentence that lists the names
bool isBuiltIn(const std::string& name);
QString ownLimitsFolder();

// Keeps an own set under its name, which no built-in one may have; what had that name before is replaced.
Outcome keepOwnLimits(Limits limits);
Outcome removeOwnLimits(const std::string& name);

}  // namespace trueunit
