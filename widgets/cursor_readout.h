// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <array>
#include <optional>

#include "core/report/snapshot.h"

namespace trueunit {

using Cursors = std::array<std::optional<double>, 2>;  // in grid units after the start instant

// A cursor's place, or the distance between two, in the three measures of the bench.
struct CursorPlace {
    double units = 0.0;  // of the grid
    double ms = 0.0;
    std::optional<double> degrees;  // of cam rotation; one character, stop included, is one turn of the sleeve
};

// Nothing while the grid unit is not known. No degrees while the character period is not known.
std::optional<CursorPlace> cursorPlace(double units, const Snapshot& snapshot);

// "22.11 ms  1.005 units  48.7°"; a distance carries its sign.
QString cursorWords(const CursorPlace& place, bool distance);

// "A ...", "B ...", "B − A ..." for the cursors that are set.
std::array<QString, 3> cursorLines(const Cursors& cursors, const Snapshot& snapshot);

}  // namespace trueunit
