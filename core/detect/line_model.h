// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>

#include "core/condition/line_finder.h"
#include "core/detect/edge_shape.h"

namespace trueunit {

// Everything learned of one input, enough to read it again from its beginning.
struct LineModel {
    FoundLine line;
    std::array<EdgeShape, 2> shapes;
    double unitSeconds = 0.0;  // of the sender heard on it
};

}  // namespace trueunit
