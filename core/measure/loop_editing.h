// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

#include "core/measure/loop_learning.h"

namespace trueunit {

// Slips that the rounds share are the loop's own, though they do not agree where: one hole more, less or another at a
// time, as long as that costs less. What is certain stays. Pure.
LearnedLoop editedWhereRoundsSlip(std::span<const SentCode> sent, LearnedLoop learned);

}  // namespace trueunit
