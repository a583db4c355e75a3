// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/trail_line.h"

#include <numeric>

namespace trueunit {

namespace {

// Points hold the speed itself until its nominal is known.
void refer(TrailLine& line, const std::optional<double>& nominalBaud) {
    if (line.points.empty()) return;
    const auto add = [](double sum, const TrailLine::Point& p) { return sum + p.percent; };
    const double mean =
        std::accumulate(line.points.begin(), line.points.end(), 0.0, add) / static_cast<double>(line.points.size());
    const double reference = nominalBaud.value_or(mean);
    for (TrailLine::Point& p : line.points) {
        p.percent = 100.0 * (p.percent / reference - 1.0);
        p.uncertainty *= 100.0 / reference;
    }
}

}  // namespace

TrailLine trailLine(const Snapshot& s, TrailOf of, double since) {
    const Limits& limits = s.limits;
    TrailLine line;
    for (const TrailPoint& p : s.trail) {
        if (p.seconds < since) continue;
        if (of == TrailOf::bias)
            line.points.push_back({p.seconds, p.biasPercent, p.uncertainty});
        else if (p.baud)
            line.points.push_back({p.seconds, p.baud->value, p.baud->uncertainty});
    }
    if (of == TrailOf::bias) {
        line.limit = limits.statesBias ? limits.biasPercent : 0.0;
        return line;
    }
    const std::optional<double> nominal = s.reading.speed.nominalBaud;
    line.aboutMean = !nominal;
    line.limit = nominal && limits.statesSpeed ? limits.speedPercent : 0.0;
    refer(line, nominal);
    return line;
}

}  // namespace trueunit
