// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/speed_reading.h"

#include <cmath>

namespace trueunit {

namespace {

// Two relative uncertainties, the clock's in percent.
double withClock(double relative, double clockPercent) { return std::hypot(relative, 0.01 * clockPercent); }

}  // namespace

SpeedReading speedReading(const UnitFit& fit, Characters window, const std::optional<StandardSpeed>& nominal,
                          int levels, double clockPercent) {
    SpeedReading s;
    const double unit = fit.unit.value;
    s.unitMs = 1e3 * unit;
    const double unitRelative = withClock(fit.unit.uncertainty / unit, clockPercent);
    s.baud = Measured{1.0 / unit, unitRelative / unit};
    if (nominal) {
        s.nominalBaud = nominal->baud;
        s.nominalUnitMs = 1e3 * nominal->unitSeconds;
        s.errorPercent = Measured{100.0 * (nominal->unitSeconds / unit - 1.0), 100.0 * unitRelative};
    }
    const auto period = characterPeriod(window, unit, levels);
    if (!period) return s;
    const double relative = withClock(period->uncertainty / period->value, clockPercent);
    s.characterMs = Measured{1e3 * period->value, 1e3 * period->value * relative};
    s.operationsPerMinute = Measured{60.0 / period->value, 60.0 / period->value * relative};
    const double units = period->value / unit;
    s.stopUnits =
        Measured{units - (levels + 1), std::hypot(period->uncertainty / unit, units * fit.unit.uncertainty / unit)};
    return s;
}

std::optional<double> speedErrorBy(const DisplacementPattern& pattern, const SpeedReading& speed) {
    if (!speed.errorPercent) return std::nullopt;
    return speed.errorPercent->value - pattern.unitPercent * (1.0 + 0.01 * speed.errorPercent->value);
}

void doubtSpeed(SpeedReading& s, const DisplacementPattern& pattern) {
    if (!pattern.pullsAtReadings()) return;
    const double relative = 0.01 * std::abs(pattern.unitPercent);
    s.baud->uncertainty += relative * s.baud->value;
    if (s.errorPercent) s.errorPercent->uncertainty += 100.0 * relative;
    if (s.stopUnits && s.characterMs) s.stopUnits->uncertainty += relative * s.characterMs->value / *s.unitMs;
}

}  // namespace trueunit
