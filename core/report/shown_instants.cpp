// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/shown_instants.h"

#include <cmath>
#include <optional>

namespace trueunit {

namespace {

constexpr double kMatters = 0.02;  // percent of the speed: a tenth of a percent of a unit at the beginning of stop

// Milliseconds; empty: the unit as read will do.
std::optional<double> unitWithoutTheFault(const Reading& r) {
    const std::optional<double>&own = r.speed.unitMs, &nominal = r.speed.nominalUnitMs;
    if (!own || !nominal || !r.setAside || !r.setAside->errorPercent) return std::nullopt;
    const double unit = *nominal / (1.0 + 0.01 * *r.setAside->errorPercent);
    return 100.0 * std::abs(unit / *own - 1.0) > kMatters ? std::optional(unit) : std::nullopt;
}

}  // namespace

ShownInstants shownInstants(const Reading& r) {
    ShownInstants shown{r.instants, 1e-3 * r.speed.unitMs.value_or(0.0)};
    const std::optional<double> unit = unitWithoutTheFault(r);
    if (!unit) return shown;
    const double own = *r.speed.unitMs;
    for (InstantReading& i : shown.instants) {
        for (double* percent : {&i.meanPercent, &i.minPercent, &i.maxPercent})
            *percent = (*percent * own + 100.0 * i.k * (own - *unit)) / *unit;
        i.rmsPercent *= own / *unit;
    }
    shown.unitSeconds = 1e-3 * *unit;
    shown.withoutTheFault = true;
    return shown;
}

}  // namespace trueunit
