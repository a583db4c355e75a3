// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/timing.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

namespace trueunit {

namespace {

template <class F>  // f(instant, units of the element that it ends)
void forEachElement(Characters characters, F f) {
    for (const Character* c : characters) {
        if (!c->measurable()) continue;
        int previous = 0;
        for (const Instant& i : c->instants) {
            f(i, i.k - previous);
            previous = i.k;
        }
    }
}

template <class F>
void forEachInstant(Characters characters, F f) {
    forEachElement(characters, [&f](const Instant& i, int) { f(i); });
}

}  // namespace

std::optional<double> startStopDistortion(Characters characters, double unitSeconds) {
    std::optional<double> most;
    forEachInstant(characters, [&](const Instant& i) {
        most = std::max(most.value_or(0.0), std::abs(displacementPercent(i, unitSeconds)));
    });
    return most;
}

std::vector<InstantStatistics> instantStatistics(Characters characters, double unitSeconds, double afterShortPercent) {
    struct Sums {
        long n = 0;
        double mean = 0.0, m2 = 0.0, least = 1e300, largest = -1e300;
    };
    std::map<std::pair<int, int>, Sums> sums;
    forEachElement(characters, [&](const Instant& i, int units) {
        Sums& s = sums[{i.k, i.to == Condition::mark ? 0 : 1}];
        const double d = displacementPercent(i, unitSeconds) - (units == 1 ? afterShortPercent : 0.0);
        const double delta = d - s.mean;
        s.mean += delta / static_cast<double>(++s.n);
        s.m2 += delta * (d - s.mean);
        s.least = std::min(s.least, d);
        s.largest = std::max(s.largest, d);
    });
    std::vector<InstantStatistics> out;
    for (const auto& [key, s] : sums)
        out.push_back({key.first, key.second == 0 ? Condition::mark : Condition::space, s.n, s.mean,
                       s.n > 1 ? std::sqrt(s.m2 / static_cast<double>(s.n - 1)) : 0.0, s.least, s.largest});
    return out;
}

std::optional<Measured> characterPeriod(Characters characters, double unitSeconds, int levels) {
    std::vector<double> all;
    for (std::size_t i = 1; i < characters.size(); ++i) {
        const double interval = characters[i]->start - characters[i - 1]->start;
        const bool whole = characters[i]->number == characters[i - 1]->number + 1 && !characters[i]->afterGap;
        all.push_back(whole && interval < (levels + 5.0) * unitSeconds ? interval : -1.0);
    }
    std::vector<double> running;
    std::copy_if(all.begin(), all.end(), std::back_inserter(running), [](double v) { return v > 0.0; });
    if (running.size() < 2) return std::nullopt;
    std::nth_element(running.begin(), running.begin() + static_cast<std::ptrdiff_t>(running.size() / 2), running.end());
    const double median = running[running.size() / 2];
    const auto inRun = [&](double v) { return v > 0.0 && std::abs(v - median) < unitSeconds; };
    double sum = 0.0;
    double n = 0.0;
    for (const double v : all)
        if (inRun(v)) {
            sum += v;
            n += 1.0;
        }
    if (n < 2.0) return std::nullopt;
    const double mean = sum / n;
    // Neighbouring intervals share a start instant: a late one lengthens the first and shortens the second.
    double variance = 0.0;
    double covariance = 0.0;
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (!inRun(all[i])) continue;
        variance += (all[i] - mean) * (all[i] - mean);
        if (i > 0 && inRun(all[i - 1])) covariance += (all[i] - mean) * (all[i - 1] - mean);
    }
    const double ofMean = std::max(variance + 2.0 * covariance, variance / n) / (n * (n - 1.0));
    return Measured{mean, studentFactor(n - 1.0) * std::sqrt(ofMean)};
}

// An ideal receiver samples level i at (i + r) units. The instant at k bounds level k from below and level k - 1 from
// above; the start element is not sampled, nor is the stop. While a contact bounces nothing is sampled correctly.
std::optional<SamplingRange> samplingRange(Characters characters, double unitSeconds, int levels) {
    double latest = -1e300;
    double earliest = 1e300;
    forEachInstant(characters, [&](const Instant& i) {
        const double d = (i.seconds - i.k * unitSeconds) / unitSeconds;
        if (i.k <= levels) latest = std::max(latest, d + i.steadySeconds / unitSeconds);
        if (i.k >= 2) earliest = std::min(earliest, d);
    });
    if (latest < -1e299 || earliest > 1e299) return std::nullopt;
    return SamplingRange{latest, 1.0 + earliest};
}

}  // namespace trueunit
