// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/nudge_finder.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <span>
#include <utility>

#include "core/frame/unit_fit.h"
#include "core/measure/nudge_contrast.h"

namespace trueunit {

namespace {

constexpr std::size_t kMemory = 160;     // characters
constexpr std::size_t kReference = 32;   // before a nudge, and after it
constexpr std::size_t kUnsettled = 24;   // the newest, which may hold a step not yet found, teach nothing
constexpr std::size_t kLeastBefore = 4;  // characters of the old level
constexpr std::array<std::size_t, 9> kTrials = {2, 3, 4, 6, 8, 10, 12, 16, 24};
constexpr std::size_t kSoon = 3;         // characters within which most steps shall be found
constexpr double kRareSoon = 4.5;        // standard deviations: 6.8 in a million, both sides; most of what is allowed
constexpr double kRare = 4.8;            // for the other trials: 1.6 in a million
constexpr double kUnitMoved = 0.003;     // then the displacements are taken anew
constexpr double kOneTurnSeconds = 2.0;  // a step so soon after another is part of the same turn of the screwdriver
constexpr std::size_t kMostNudges = 64;

void finish(Nudge& nudge, const Measured& after) {
    nudge.after = after;
    nudge.step = {after.value - nudge.before.value, std::hypot(nudge.before.uncertainty, after.uncertainty)};
}

}  // namespace

void NudgeFinder::clear() { *this = NudgeFinder{}; }

void NudgeFinder::place(BiasPoint& point, const Character& c) const {
    point.instants.clear();
    for (const Instant& i : c.instants)
        if (i.k > 0 && static_cast<std::size_t>(i.k) < kMostPlaces)
            point.instants.push_back({i.k, i.to == Condition::mark, 100.0 * (i.seconds - i.k * fixedUnit_) / nominal_});
    scatter_.estimate(point);
}

void NudgeFinder::push(const Character& c, double unitSeconds, double nominalSeconds) {
    if (!c.measurable()) return;
    if (nominalSeconds != nominal_ || std::abs(unitSeconds / fixedUnit_ - 1.0) > kUnitMoved) {
        nominal_ = nominalSeconds;
        fixedUnit_ = unitSeconds;
        for (std::size_t i = 0; i < points_.size(); ++i) place(points_[i], characters_[i]);
        for (int pass = 0; pass < 3; ++pass) relearn();
    }
    BiasPoint point{c.number, c.start, segment_, {}, 0.0, 1.0, 0.0};
    place(point, c);
    if (std::none_of(point.instants.begin(), point.instants.end(), [](const auto& i) { return i.toMark; })) return;
    characters_.push_back(c);
    points_.push_back(std::move(point));
    if (points_.size() > kMemory) {
        characters_.pop_front();
        points_.erase(points_.begin());
    }
    std::vector<const Character*> all;
    for (const Character& known : characters_) all.push_back(&known);
    const auto fit = fitUnit(all);
    unit_ = fit && fit->toMark ? fit->unit.value : unitSeconds;
    relearn();
    look();
    settle();
}

void NudgeFinder::relearn() {
    const std::size_t unsettled = std::clamp(points_.size() / 3, BiasScatter::kFewest, kUnsettled);
    if (points_.size() <= unsettled) return;
    scatter_.learn(std::span(points_).first(points_.size() - unsettled));
    for (BiasPoint& p : points_) scatter_.estimate(p);
}

// A third of what is there, at the least kFewest, is held back as not settled.
std::size_t NudgeFinder::charactersToLearn() const {
    constexpr std::size_t kEnough = 2 * BiasScatter::kFewest;
    if (scatter_.known()) return 0;
    return points_.size() < kEnough ? kEnough - points_.size() : 1;
}

std::size_t NudgeFinder::segmentStart() const {
    std::size_t i = points_.size();
    while (i > 0 && points_[i - 1].segment == segment_) --i;
    return i;
}

std::uint64_t NudgeFinder::levelSince() const {
    if (nudges_.empty() || points_.empty()) return 0;
    return std::max(nudges_.back().number, points_[std::min(segmentStart(), points_.size() - 1)].number);
}

// The trial that stands out most says where the step was.
void NudgeFinder::look() {
    if (!scatter_.known()) return;
    const std::size_t start = segmentStart(), end = points_.size();
    double most = 0.0;
    std::optional<std::size_t> first;
    for (const std::size_t m : kTrials) {
        if (end - start < m + kLeastBefore) break;
        const std::size_t from = std::max(start, end - m - std::min(end - m, kReference));
        const auto before = std::span(points_).subspan(from, end - m - from);
        const double found = contrastOf(before, std::span(points_).last(m), scatter_);
        const double beyond = found - (m == kSoon ? kRareSoon : kRare);
        if (beyond <= most) continue;
        most = beyond;
        first = end - m;
    }
    if (!first) return;
    const std::size_t from = std::max(start, *first - std::min(*first, kReference));
    begin(*first, stated(meanBias(std::span(points_).subspan(from, *first - from), scatter_)));
}

// What was after the last nudge is what is before this one, without the characters that have turned out to be new.
void NudgeFinder::begin(std::size_t first, const Measured& before) {
    if (!nudges_.empty() && first - segmentStart() <= kReference) finish(nudges_.back(), before);
    ++segment_;
    for (std::size_t i = first; i < points_.size(); ++i) points_[i].segment = segment_;
    const BiasPoint& p = points_[first];
    const bool goesOn = p.seconds - std::exchange(steppedAt_, p.seconds) < kOneTurnSeconds;
    if (goesOn && !nudges_.empty()) return;  // the same turn
    nudges_.push_back({p.number, p.seconds, points_.back().number, before, {}, {}});
    if (nudges_.size() > kMostNudges) nudges_.erase(nudges_.begin());
}

// Both the level of now and the level after the last nudge follow the characters that came since.
void NudgeFinder::settle() {
    const std::size_t start = segmentStart();
    const auto since = std::span(points_).subspan(start);
    level_ = stated(meanBias(since.last(std::min(since.size(), kReference)), scatter_));
    if (nudges_.empty() || since.size() > kReference) return;
    finish(nudges_.back(), *level_);
    if (since.size() == kReference) takeBackIdle(start);
}

// A few characters that strayed together look like a step until as many have come after it as count before it.
void NudgeFinder::takeBackIdle(std::size_t start) {
    const Measured& step = nudges_.back().step;
    if (std::abs(step.value) > step.uncertainty || start == 0) return;
    nudges_.pop_back();
    segment_ = points_[start - 1].segment;
    for (std::size_t i = start; i < points_.size(); ++i) points_[i].segment = segment_;
}

// A mean as the person is told it: on the actual unit, with its 95 % half-width.
Measured NudgeFinder::stated(const Measured& mean) const {
    const double unitError = 100.0 * scatter_.markPlace() * (unit_ - fixedUnit_) / nominal_;
    return {mean.value + unitError, studentFactor(std::max(scatter_.degrees(), 1.0)) * mean.uncertainty};
}

}  // namespace trueunit
