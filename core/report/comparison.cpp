// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/comparison.h"
#include "core/report/shown_instants.h"

#include <algorithm>
#include <cmath>

#include "core/frame/unit_fit.h"

namespace trueunit {

namespace {

constexpr long kOwnScatter = 8;  // instants that tell the scatter by themselves

Difference difference(std::string key, std::string name, std::string unit, const std::optional<Measured>& before,
                      const std::optional<Measured>& after) {
    Difference d{std::move(key), std::move(name), std::move(unit), before, after, {}};
    if (before && after)
        d.change = Measured{after->value - before->value, std::hypot(before->uncertainty, after->uncertainty)};
    return d;
}

std::optional<Measured> instantIn(const Reading& r, int k, Condition to) {
    for (const InstantReading& i : shownInstants(r).instants)
        if (i.k == k && i.to == to) return meanOf(i);
    return std::nullopt;
}

bool met(const Reading& r, int k, Condition to) {
    for (const InstantReading& i : r.instants)
        if (i.k == k && i.to == to) return true;
    return false;
}

}  // namespace

Seen Difference::seen() const {
    if (!change) return Seen::notKnown;
    const double size = std::abs(change->value);
    return size > kChangedBeyond * change->uncertainty ? Seen::changed
           : size > change->uncertainty                ? Seen::unsure
                                                       : Seen::none;
}

bool tells(const Difference& instant) {
    constexpr double kTellsPercent = 5.0;
    return instant.change && instant.change->uncertainty <= kTellsPercent;
}

std::optional<Measured> meanOf(const InstantReading& i) {
    if (i.count < 2) return std::nullopt;
    const auto n = static_cast<double>(i.count);
    return Measured{i.meanPercent, studentFactor(n - 1.0) * i.rmsPercent / std::sqrt(n)};
}

std::optional<Measured> meanAmong(const InstantReading& i, const std::vector<InstantReading>& all) {
    if (i.count >= kOwnScatter) return meanOf(i);
    double squares = 0.0, free = 0.0;
    for (const InstantReading& each : all) {
        squares += static_cast<double>(each.count) * each.rmsPercent * each.rmsPercent;
        free += static_cast<double>(each.count - 1);
    }
    if (i.count < 1 || free < 1.0) return std::nullopt;
    const double scatter = std::max(std::sqrt(squares / free), i.rmsPercent);
    return Measured{i.meanPercent, studentFactor(free) * scatter / std::sqrt(static_cast<double>(i.count))};
}

Comparison compareReadings(const Reading& before, const Reading& after) {
    Comparison c;
    const auto add = [&](const char* key, const char* name, const char* unit, const auto& b, const auto& a) {
        c.readings.push_back(difference(key, name, unit, b, a));
    };
    add("error_percent", "speed error", "%", before.speed.errorPercent, after.speed.errorPercent);
    add("operations_per_minute", "shaft", "/min", before.speed.operationsPerMinute, after.speed.operationsPerMinute);
    add("stop_units", "stop", "units", before.speed.stopUnits, after.speed.stopUnits);
    add("bias_percent", "bias", "%", before.distortion.biasPercent, after.distortion.biasPercent);
    add("end_percent", "end distortion", "%", before.distortion.endPercent, after.distortion.endPercent);
    constexpr int kMostK = 12;
    for (int k = 1; k <= kMostK; ++k)
        for (const Condition to : {Condition::mark, Condition::space}) {
            if (!met(before, k, to) && !met(after, k, to)) continue;
            const std::string name = std::to_string(k) + (to == Condition::mark ? " to mark" : " to space");
            c.instants.push_back(difference(name, name, "%", instantIn(before, k, to), instantIn(after, k, to)));
        }
    return c;
}

}  // namespace trueunit
