// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <string_view>

namespace trueunit {

// Every id a finding can have: what rules tell, scenarios expect and the logbook is searched for.
inline constexpr std::array<std::string_view, 20> kFindingIds = {
    "in-order",     "contact-offset", "end-offset",      "level-dropout",
    "level-stuck",  "level-late",     "wrong-speed",     "unsteady-speed",
    "cyclic-drive", "contact-bounce", "contact-scatter", "slow-rise",
    "trip-late",    "feed-slip",      "weak-signal",     "hum",
    "clipped",      "reversed",       "not-start-stop",  "no-signal"};

}  // namespace trueunit
