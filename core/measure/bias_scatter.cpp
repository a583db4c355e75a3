// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/bias_scatter.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace trueunit {

namespace {

constexpr double kPlacing = 0.03;   // percent: what the instrument itself scatters an instant by, at the least
constexpr double kSeen = 4.0;       // times, until a place's mean may be taken out
constexpr double kNoWeight = 1e12;  // variance of a character that tells nothing
constexpr double kClip = 4.0;       // standard deviations; one wild character must not blind the finder for long

// Mean bias of each point's segment.
std::vector<double> segmentMeans(std::span<const BiasPoint> points) {
    std::map<int, std::pair<double, double>> sums;
    for (const BiasPoint& p : points) {
        sums[p.segment].first += p.bias / p.variance;
        sums[p.segment].second += 1.0 / p.variance;
    }
    std::vector<double> means;
    means.reserve(points.size());
    for (const BiasPoint& p : points) means.push_back(sums[p.segment].first / sums[p.segment].second);
    return means;
}

double clippedSquare(double v, double limit) { return std::min(v * v, limit * limit); }

double robustDeviation(std::vector<double> v) {
    for (double& x : v) x = std::abs(x);
    const auto middle = v.begin() + static_cast<std::ptrdiff_t>(v.size() / 2);
    std::nth_element(v.begin(), middle, v.end());
    return std::max(1.4826 * *middle, kPlacing);
}

}  // namespace

bool BiasScatter::told(const BiasPoint::Displacement& d) const {
    return !known() || counts_[static_cast<std::size_t>(d.k)][d.toMark ? 1 : 0] >= kSeen;
}

double BiasScatter::shareOf(double spaces) const {
    return shared_ > 0.0 ? shared_ * spaces / (shared_ * spaces + within_) : 0.0;
}

double BiasScatter::varianceOf(double marks, double spaces) const {
    return within_ / marks + shared_ * (1.0 - shareOf(spaces));
}

void BiasScatter::estimate(BiasPoint& point) const {
    std::array<double, 2> sums{}, counts{}, unsure{};  // unsure: variance of the pattern itself, of places seldom seen
    for (const BiasPoint::Displacement& i : point.instants) {
        if (!told(i)) continue;
        const std::size_t way = i.toMark ? 1 : 0;
        sums[way] += i.percent - patternOf(i.k, i.toMark);
        counts[way] += 1.0;
        if (known()) unsure[way] += instantVariance() / counts_[static_cast<std::size_t>(i.k)][way];
    }
    point.marks = counts[1];
    point.spaces = known() ? counts[0] : 0.0;  // what they are without a nudge is not known sooner
    point.markMean = point.marks > 0.0 ? sums[1] / point.marks : 0.0;
    point.spaceMean = point.spaces > 0.0 ? sums[0] / point.spaces : 0.0;
    point.variance = kNoWeight;
    if (point.marks == 0.0) return;
    const double share = shareOf(point.spaces);
    point.bias = share * point.spaceMean - point.markMean;
    point.variance =
        left_ + varianceOf(point.marks, point.spaces) + kPlacing * kPlacing + unsure[1] / (point.marks * point.marks);
    if (share > 0.0) point.variance += share * share * unsure[0] / (point.spaces * point.spaces);
}

void BiasScatter::learn(std::span<const BiasPoint> settled) {
    if (settled.size() < kFewest) return;
    const std::vector<double> means = segmentMeans(settled);
    learnPlaces(settled, means);
    learnVariances(settled, means);
    std::vector<double> residuals;
    for (std::size_t i = 0; i < settled.size(); ++i)
        if (settled[i].marks > 0.0) residuals.push_back((settled[i].bias - means[i]) / std::sqrt(settled[i].variance));
    learnWidening(residuals);
}

// Means by place about the segment's bias; those to mark are centred, since their common part is the bias.
void BiasScatter::learnPlaces(std::span<const BiasPoint> settled, const std::vector<double>& means) {
    std::array<std::array<double, 2>, kMostPlaces> sums{};
    counts_ = {};
    double all = 0.0, marks = 0.0, places = 0.0;
    for (std::size_t i = 0; i < settled.size(); ++i)
        for (const BiasPoint::Displacement& d : settled[i].instants) {
            const std::size_t way = d.toMark ? 1 : 0;
            const auto k = static_cast<std::size_t>(d.k);
            const double left = d.percent + (d.toMark ? means[i] : 0.0);
            sums[k][way] += left;
            counts_[k][way] += 1.0;
            if (!d.toMark) continue;
            all += left;
            places += d.k;
            marks += 1.0;
        }
    if (marks == 0.0) return;
    meanPlace_ = places / marks;
    for (std::size_t k = 0; k < kMostPlaces; ++k)
        for (std::size_t way = 0; way < 2; ++way)
            if (counts_[k][way] > 0.0)
                places_[k][way] = sums[k][way] / counts_[k][way] - (way == 1 ? all / marks : 0.0);
}

// How much of a character's displacements is common to its instants to mark and to space; chance alone makes something
// of it, so one standard error less.
double BiasScatter::learnShared(std::span<const BiasPoint> settled, const std::vector<double>& means) const {
    std::vector<double> marks, spaces;
    for (std::size_t i = 0; i < settled.size(); ++i) {
        if (settled[i].marks == 0.0 || settled[i].spaces == 0.0) continue;
        marks.push_back(settled[i].markMean + means[i]);
        spaces.push_back(settled[i].spaceMean);
    }
    if (marks.size() < kFewest) return 0.0;
    const double mostMark = kClip * robustDeviation(marks), mostSpace = kClip * robustDeviation(spaces);
    double product = 0.0, markSquares = 0.0, spaceSquares = 0.0;
    for (std::size_t i = 0; i < marks.size(); ++i) {
        const double m = std::clamp(marks[i], -mostMark, mostMark), s = std::clamp(spaces[i], -mostSpace, mostSpace);
        product += m * s;
        markSquares += m * m;
        spaceSquares += s * s;
    }
    const auto n = static_cast<double>(marks.size());
    return std::max(0.0, product / n - std::sqrt(markSquares * spaceSquares / n) / n);
}

void BiasScatter::learnVariances(std::span<const BiasPoint> settled, const std::vector<double>& means) {
    double squares = 0.0, freedom = 0.0, modelled = 0.0;
    std::vector<double> residuals;
    for (std::size_t i = 0; i < settled.size(); ++i) {
        const BiasPoint& p = settled[i];
        if (p.marks == 0.0) continue;
        residuals.push_back(p.bias - means[i]);
        for (const BiasPoint::Displacement& d : p.instants)
            if (told(d) && (d.toMark || p.spaces > 0.0))
                squares += std::pow(d.percent - patternOf(d.k, d.toMark) - (d.toMark ? p.markMean : p.spaceMean), 2);
        freedom += p.marks - 1.0 + std::max(0.0, p.spaces - 1.0);
    }
    if (residuals.size() < kFewest) return;
    double fitted =
        settled.back().segment - settled.front().segment;  // means taken out, the first of the segments left
    for (const auto& ways : counts_) fitted += ways[1] >= kSeen ? 1.0 : 0.0;
    const auto n = static_cast<double>(residuals.size());
    degrees_ = std::max(n - fitted, 1.0);
    const double clip = kClip * robustDeviation(residuals);
    double total = 0.0;
    for (const double r : residuals) total += clippedSquare(r, clip) / degrees_;
    within_ = freedom > 0.0 ? squares / freedom : 0.0;
    shared_ = learnShared(settled, means);
    for (const BiasPoint& p : settled)
        if (p.marks > 0.0) modelled += varianceOf(p.marks, p.spaces) / n;
    if (modelled > total) {
        within_ *= total / modelled;
        shared_ *= total / modelled;
    }
    left_ = std::max(0.0, total - modelled);
}

// Variance of running means of 2^j neighbours, against that of independent ones. Chance alone lifts it above one
// half of the time, so its own standard deviation is allowed for.
void BiasScatter::learnWidening(const std::vector<double>& residuals) {
    widening_.fill(1.0);
    const std::size_t n = residuals.size();
    for (std::size_t j = 1; j < widening_.size(); ++j) {
        const std::size_t m = std::size_t{1} << j;
        widening_[j] = widening_[j - 1];
        if (n < 4 * m) continue;
        double squares = 0.0, sum = 0.0;
        for (std::size_t i = 0; i < n; ++i) {
            sum += residuals[i] - (i >= m ? residuals[i - m] : 0.0);
            if (i + 1 >= m) squares += sum * sum;
        }
        const double size = static_cast<double>(m), count = static_cast<double>(n - m + 1);
        const double ratio = squares / (count * size);
        widening_[j] = std::max(widening_[j], ratio / (1.0 + std::sqrt(2.0 * size / static_cast<double>(n))));
    }
}

double BiasScatter::widening(std::size_t characters) const {
    std::size_t j = 0;
    while (j + 1 < widening_.size() && (std::size_t{1} << j) < characters) ++j;
    return std::max(widening_[j], 1.0);
}

}  // namespace trueunit
