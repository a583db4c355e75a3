// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace trueunit {

// trueunit limits: every set of limits with its origin, and where own ones are kept. Returns 0.
int runLimits();

}  // namespace trueunit
