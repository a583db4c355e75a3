// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/speed_swing.h"

#include <cmath>
#include <numbers>

#include "core/measure/steadiness.h"

namespace trueunit {

bool isSpeedSwing(const CyclicLine& line) { return line.hz < kSlowestShaftHz; }

bool maySwingSlowly(const CyclicLine& line) {
    const double whole = std::round(line.perCharacter);
    return whole > 0.0 && std::abs(line.perCharacter - whole) * line.hz < kSlowestShaftHz * line.perCharacter;
}

double speedSwingPercent(const CyclicLine& line, double unitMs) {
    return line.amplitudePercent * 1e-3 * unitMs * 2.0 * std::numbers::pi * line.hz;
}

}  // namespace trueunit
