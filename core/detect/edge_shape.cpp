// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/detect/edge_shape.h"

#include <algorithm>
#include <cmath>

#include "core/normal_equations.h"

namespace trueunit {

namespace {
constexpr double kReachSeconds = 0.004;
constexpr int kFinePerSample = 4;
constexpr double kFirstRiseSeconds = 0.0004;
constexpr double kFirstZoneSeconds = 0.0035;
constexpr double kZoneFloorSeconds = 0.00012;
constexpr double kZoneLevel = 0.009;   // the form's zone ends where it is this close to 0 or 1,
constexpr double kZoneNoise = 0.12;    // and as much of the noise more
constexpr double kFormNoise = 0.0015;  // of the swing; the form need not be known better
constexpr int kYoungEdges = 100;
constexpr int kMemoryEdges = 600;  // older edges fade, so that the form follows a changing contact
}  // namespace

EdgeShape::EdgeShape(double rateHz, double sliceFraction)
    : rateHz_(rateHz),
      reach_(std::floor(kReachSeconds * rateHz)),
      sliceFraction_(sliceFraction),
      smallestZone_(std::max(3.0, kZoneFloorSeconds * rateHz)) {
    const auto n = static_cast<std::size_t>(2.0 * reach_ * kFinePerSample) + 1;
    sum_.assign(n, 0.0);
    count_.assign(n, 0.0);
    seed(kFirstRiseSeconds * rateHz);
}

void EdgeShape::seed(double rise) {
    std::vector<double> smooth(sum_.size());
    const double scale = rise / 2.1972;  // 10 to 90 % of a logistic step
    for (std::size_t i = 0; i < smooth.size(); ++i)
        smooth[i] = 1.0 / (1.0 + std::exp(-(static_cast<double>(i) / kFinePerSample - reach_) / (0.5 * scale)));
    adopt(smooth, kZoneLevel);
    // Look far away from the edge for its levels until its form is known: a slow edge would spoil them for good.
    before_ = after_ = std::min(reach_, kFirstZoneSeconds * rateHz_);
}

void EdgeShape::setSlice(double fraction) {
    sliceFraction_ = fraction;
    slice_ = smoothCrossing(fraction);
}

void EdgeShape::learn(double firstOffset, std::span<const double> scaled, double noise) {
    auto bin = static_cast<std::ptrdiff_t>(std::floor((firstOffset + reach_) * kFinePerSample + 0.5));
    const auto bins = static_cast<std::ptrdiff_t>(sum_.size());
    for (const double v : scaled) {
        if (bin >= 0 && bin < bins) {
            sum_[static_cast<std::size_t>(bin)] += v;
            count_[static_cast<std::size_t>(bin)] += 1.0;
        }
        bin += kFinePerSample;
    }
    if (++edges_ >= nextRebuild_) {
        rebuild(noise);
        nextRebuild_ = edges_ + std::min(edges_, 100);
    }
}

// Local straight-line fits, over as few samples as the noise allows: the form's corners stay.
void EdgeShape::rebuild(double noise) {
    const auto n = static_cast<std::ptrdiff_t>(sum_.size());
    double perSample = 0.0;  // samples gathered per sample of time, where the edge is
    for (std::size_t i = sum_.size() / 2 - kFinePerSample; i < sum_.size() / 2 + kFinePerSample; ++i)
        perSample += 0.5 * count_[i];
    const double needed = std::pow(noise / kFormNoise, 2.0) / std::max(perSample, 1.0);
    const double reachSamples = std::clamp(needed, 0.5, std::clamp(rise_ / 6.0, 0.5, reach_ / 8.0));
    const auto half = static_cast<std::ptrdiff_t>(reachSamples * kFinePerSample + 0.5);
    std::vector<double> smooth(sum_.size());
    for (std::ptrdiff_t i = 0; i < n; ++i) {
        double w = 0.0, x = 0.0, xx = 0.0, y = 0.0, xy = 0.0;
        std::ptrdiff_t reach = half;
        for (; reach <= n; reach *= 2) {
            w = x = xx = y = xy = 0.0;
            for (std::ptrdiff_t j = std::max<std::ptrdiff_t>(0, i - reach); j <= std::min(n - 1, i + reach); ++j) {
                const double d = static_cast<double>(j - i);
                const double weight =
                    count_[static_cast<std::size_t>(j)] * (1.0 - std::abs(d) / static_cast<double>(reach + 1));
                const double mean = count_[static_cast<std::size_t>(j)] > 0.0
                                        ? sum_[static_cast<std::size_t>(j)] / count_[static_cast<std::size_t>(j)]
                                        : 0.0;
                w += weight;
                x += weight * d;
                xx += weight * d * d;
                y += weight * mean;
                xy += weight * d * mean;
            }
            if (w > 1.0) break;
        }
        const double det = w * xx - x * x;
        smooth[static_cast<std::size_t>(i)] = det > 1e-9 * w * w ? (y * xx - x * xy) / det : (w > 0.0 ? y / w : 0.0);
    }
    adopt(smooth, kZoneLevel + kZoneNoise * noise);
    // The first edges were aligned by a form not yet known, and very old ones may have been another form.
    const double keep = edges_ < kYoungEdges ? 0.3 : edges_ > kMemoryEdges ? 0.85 : 1.0;
    for (double& v : sum_) v *= keep;
    for (double& v : count_) v *= keep;
}

void EdgeShape::adopt(const std::vector<double>& smooth, double zoneLevel) {
    value_ = smooth;
    slope_.assign(value_.size(), 0.0);
    for (std::size_t i = 1; i + 1 < value_.size(); ++i)
        slope_[i] = 0.5 * (value_[i + 1] - value_[i - 1]) * kFinePerSample;
    rise_ = std::max(0.0, crossing(0.9) - crossing(0.1));
    slice_ = smoothCrossing(sliceFraction_);
    const auto middle = static_cast<std::ptrdiff_t>((reach_ + crossing(0.5)) * kFinePerSample);
    before_ = std::clamp(1.15 * (reach_ - settles(middle, -1, 0.0, zoneLevel)) + 1.0, smallestZone_, reach_);
    after_ = std::clamp(1.15 * (settles(middle, 1, 1.0, zoneLevel) - reach_) + 1.0, smallestZone_, reach_);
}

// Samples from the start of the grid to where the form has come to the target and stays there: three stretches in a
// row, each a third of the rise time long, must average to it.
double EdgeShape::settles(std::ptrdiff_t from, int direction, double target, double level) const {
    const auto last = static_cast<std::ptrdiff_t>(value_.size()) - 1;
    const auto width =
        std::max<std::ptrdiff_t>(kFinePerSample, static_cast<std::ptrdiff_t>(rise_ * kFinePerSample / 3.0));
    const auto off = [&](std::ptrdiff_t at) {
        double sum = 0.0;
        double n = 0.0;
        for (std::ptrdiff_t i = 0; i < width; ++i, n += 1.0)
            sum += value_[static_cast<std::size_t>(std::clamp<std::ptrdiff_t>(at + direction * i, 0, last))];
        return std::abs(sum / n - target);
    };
    std::ptrdiff_t at = from;
    for (; at > 0 && at < last; at += direction)
        if (off(at) < level && off(at + direction * width) < level && off(at + 2 * direction * width) < level) break;
    return static_cast<double>(at) / kFinePerSample;
}

// The crossing nearest to the middle of the swing, walking outwards from it.
double EdgeShape::crossing(double fraction) const {
    std::size_t steepest = 0;
    for (std::size_t i = 0; i < value_.size(); ++i)
        if (slope_.size() == value_.size() && slope_[i] > slope_[steepest]) steepest = i;
    std::size_t i = steepest;
    if (value_[i] < fraction)
        while (i + 1 < value_.size() && value_[i + 1] < fraction) ++i;
    else
        while (i > 0 && value_[i] >= fraction) --i;
    if (i + 1 >= value_.size()) return reach_;
    const double rise = value_[i + 1] - value_[i];
    const double part = rise > 0.0 ? std::clamp((fraction - value_[i]) / rise, 0.0, 1.0) : 0.0;
    return (static_cast<double>(i) + part) / kFinePerSample - reach_;
}

// The same by a parabola through the form around it: a crossing between two noisy values would move every instant
// alike.
double EdgeShape::smoothCrossing(double fraction) const {
    const double at = crossing(fraction);
    const double half = rise_ / 6.0;
    if (half * kFinePerSample < 2.0) return at;
    NormalEquations<3> parabola;
    for (double t = at - half; t <= at + half; t += 1.0 / kFinePerSample) {
        const double u = (t - at) / half;
        parabola.add({1.0, u, u * u}, value(t) - fraction);
    }
    const auto c = parabola.solve();
    if (!c || !((*c)[1] > 0.0)) return at;
    double u = 0.0;
    for (int i = 0; i < 4; ++i) u = -((*c)[0] + (*c)[2] * u * u) / (*c)[1];
    return at + half * std::clamp(u, -0.5, 0.5);
}

double EdgeShape::value(double t) const {
    const double at = (t + reach_) * kFinePerSample;
    if (at <= 0.0) return value_.front();
    if (at >= static_cast<double>(value_.size() - 1)) return value_.back();
    const auto i = static_cast<std::size_t>(at);
    const double part = at - static_cast<double>(i);
    return value_[i] + part * (value_[i + 1] - value_[i]);
}

double EdgeShape::slope(double t) const {
    const double at = (t + reach_) * kFinePerSample;
    if (at <= 0.0 || at >= static_cast<double>(slope_.size() - 1)) return 0.0;
    const auto i = static_cast<std::size_t>(at);
    const double part = at - static_cast<double>(i);
    return slope_[i] + part * (slope_[i + 1] - slope_[i]);
}

}  // namespace trueunit
