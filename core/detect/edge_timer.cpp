// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/detect/edge_timer.h"

#include <algorithm>
#include <cmath>

#include "core/normal_equations.h"
#include "core/straight_sums.h"

namespace trueunit {

namespace {
constexpr double kHistorySeconds = 1.2;
constexpr double kLongestReachSeconds = 0.012;  // either side of an edge; more would let hum in
constexpr double kHumReachSeconds = 0.0025;     // when hum is there: short against its period
constexpr double kHumOverNoise = 2.0;           // in power, before the reach is shortened
constexpr double kLeastHum = 0.004;             // rms, of the swing: less does no harm
constexpr double kRestedReaches = 1.6;          // an element this long has come to rest at its end
constexpr double kShareOfElement = 0.62;        // of the way to the neighbour edge
constexpr double kFewestLevelSamples = 6.0;
constexpr double kSettledSeconds = 0.003;    // measured at the end of a long element
constexpr double kFarFromRest = 0.05;        // of the swing: what an edge begins from tells in its time
constexpr double kGradualSeconds = 0.0008;   // rise of an edge that a parabola follows
constexpr double kLongTailSeconds = 0.0012;  // rise of an edge whose form is not over within the reach of learning,
constexpr double kOffMiddle = 0.05;          // which tells where it is sliced near one of its levels
constexpr double kBounceLookSeconds = 0.0015;
constexpr double kLeastStep = 0.3;    // of the swing, from one level to the other: less is no edge
constexpr double kFewestSeen = 0.02;  // of what tells the time of an edge, beside the rails
constexpr double kForgetWander = 0.015;
constexpr double kOwnChance = 1.4;  // a mean of squares that noise alone seldom exceeds

// What samples say of the time of an edge, each by the slope there.
struct Pull {
    double sum = 0.0, weight = 0.0;
    void add(double slope, double off) {
        sum += slope * off;
        weight += slope * slope;
    }
};
}  // namespace

EdgeTimer::EdgeTimer(double rateHz, double sliceFraction, std::uint64_t firstSample)
    : rateHz_(rateHz),
      sliceFraction_(sliceFraction),
      sliceHeight_(sliceFraction),
      longestReach_(std::floor(kLongestReachSeconds * rateHz)),
      shapes_{EdgeShape(rateHz, 1.0 - sliceFraction), EdgeShape(rateHz, sliceFraction)},
      kept_(static_cast<std::size_t>(kHistorySeconds * rateHz)),
      historyFrom_(firstSample),
      begin_(firstSample),
      end_(firstSample),
      settled_(rateHz) {}

void EdgeTimer::setMarkIsLow(bool low) {
    sliceHeight_ = low ? 1.0 - sliceFraction_ : sliceFraction_;
    shapes_[0].setSlice(1.0 - sliceHeight_);
    shapes_[1].setSlice(sliceHeight_);
}

void EdgeTimer::push(std::span<const float> line) {
    if (history_.size() > 2 * kept_) {
        const std::size_t spent = history_.size() - kept_;
        history_.erase(history_.begin(), history_.begin() + static_cast<std::ptrdiff_t>(spent));
        historyFrom_ += spent;
    }
    history_.insert(history_.end(), line.begin(), line.end());
    end_ += line.size();
    if (end_ - begin_ > kept_) begin_ = end_ - kept_;
}

std::span<const float> EdgeTimer::between(double from, double to) const {
    if (!(to >= from)) return {};
    const auto first = static_cast<std::uint64_t>(std::ceil(from));
    const auto past = std::min(static_cast<std::uint64_t>(to) + 1, end_);
    return first < past ? std::span(history_).subspan(first - historyFrom_, past - first) : std::span<const float>{};
}

double EdgeTimer::looksAhead() const { return std::ceil(longestReach_ / kShareOfElement) + 2.0; }

void EdgeTimer::advance(std::vector<Edge>& out) {
    const double needed = longestReach_ + 2.0;
    while (!waiting_.empty() && waiting_.front().first.time + needed < static_cast<double>(end_)) {
        out.push_back(place(waiting_.front()));
        waiting_.pop_front();
    }
}

void EdgeTimer::finish(std::vector<Edge>& out) {
    for (; !waiting_.empty(); waiting_.pop_front()) out.push_back(place(waiting_.front()));
}

Edge EdgeTimer::place(const HeldTransition& held) {
    Edge edge{held.first.time, held.first.up, held.bounces, held.settleSamples, held.glitch};
    if (held.glitch) return edge;
    const std::size_t side = held.first.up ? 1 : 0;
    EdgeShape& shape = shapes_[side];
    const double zone = std::max(shape.before(), shape.after());
    const double shortReach = std::max(kHumReachSeconds * rateHz_, 1.6 * zone + kFewestLevelSamples);
    Levels levels = levelsAround(held.first.time, held, hums() ? shortReach : longestReach_);
    if (levels.local) steadyLevels(levels, held.first.up);
    const double reference = fitForm(held.first.time, levels, held.first.up);
    edge.time = reference + shape.sliceOffset();
    followSettled(held, reference);
    if (levels.local) {
        const double settledSwing = std::max(settled_[1] - settled_[0], kLeastStep);
        settled_.fallsShort(side, 1.0 - std::abs(levels.after - levels.before) / settledSwing);
        followNoise(held, reference);
    }
    const std::optional<Halt> halt = held.bounces > 0 ? std::nullopt : haltOf(held, levels);
    if (halt) edge.haltSamples = halt->samples;
    if (held.bounces > 0)
        edge.time = crossFirst(held);
    else if (halt)
        edge.time = halt->time;
    else if (settled_.slow(side) || slicedInTail(shape) ||
             (settled_.missing(1 - side) > kFarFromRest && shape.riseSamples() > kGradualSeconds * rateHz_))
        edge.time = crossSettled(held);
    if (settled_.slow(side) && held.bounces == 0 && !halt) followSlowRise(side, edge.time, held.clearAfter);
    if (levels.local && held.bounces == 0 && !halt) learnForm(shape, reference, held.first.time, levels);
    return edge;
}

bool EdgeTimer::slicedInTail(const EdgeShape& shape) const {
    const double height = &shape == &shapes_[1] ? sliceHeight_ : 1.0 - sliceHeight_;
    return height > 0.5 + kOffMiddle && shape.riseSamples() > kLongTailSeconds * rateHz_;
}

// A level beside the edge differs from the settled one by its own noise and by what wanders. As far as noise explains
// the difference, the settled level is the better one.
void EdgeTimer::steadyLevels(Levels& levels, bool up) {
    const double noise = noiseRms() * noiseRms();
    steadied_ += 1.0;
    const auto steady = [&](double& level, double samples, double settled, double& wander) {
        const double off = level - settled;
        wander += std::max(kForgetWander, 1.0 / steadied_) * (off * off - wander);
        const double own = noise / samples;
        const double real = std::max(0.0, wander - kOwnChance * own);
        if (real + own > 0.0) level = settled + off * real / (real + own);
    };
    steady(levels.before, levels.samplesBefore, settled_[up ? 0 : 1], wander_[up ? 2 : 0]);
    steady(levels.after, levels.samplesAfter, settled_[up ? 1 : 0], wander_[up ? 3 : 1]);
}

void EdgeTimer::learnForm(EdgeShape& shape, double reference, double at, const Levels& levels) {
    const double span = std::min(shape.reach(), levels.reach);
    const auto first = static_cast<std::uint64_t>(std::max(static_cast<double>(begin_), std::ceil(reference - span)));
    const auto last = static_cast<std::uint64_t>(std::min(static_cast<double>(end_), std::floor(reference + span)));
    const double scale = 1.0 / (levels.after - levels.before);
    std::vector<double> scaled(last > first ? last - first : 0);
    for (std::size_t i = 0; i < scaled.size(); ++i)
        scaled[i] = (sample(first + i) - levels.slope * (static_cast<double>(first + i) - at) - levels.before) * scale;
    shape.learn(static_cast<double>(first) - reference, scaled, noiseRms());
}

EdgeTimer::Levels EdgeTimer::levelsAround(double at, const HeldTransition& held, double longest) const {
    Levels levels;
    const bool up = held.first.up;
    levels.before = settled_[up ? 0 : 1];
    levels.after = settled_[up ? 1 : 0];
    const EdgeShape& own = shapes_[up ? 1 : 0];
    const EdgeShape& other = shapes_[up ? 0 : 1];
    const double before = std::min(kShareOfElement * held.clearBefore, held.clearBefore - other.after());
    const double after = std::min(kShareOfElement * held.clearAfter, held.clearAfter - other.before());
    levels.reach = std::min({longest, before, after});
    if (levels.reach < std::max(own.before(), own.after()) + kFewestLevelSamples) return levels;
    if (at - levels.reach < static_cast<double>(begin_) || at + levels.reach + 1.0 >= static_cast<double>(end_))
        return levels;

    const double from = at - levels.reach;
    const double onwards = at + own.after();
    const StraightSums l = straightSums(between(from, at - own.before()));
    const StraightSums r = straightSums(between(onwards, at + levels.reach));
    const double slope = (l.xy + r.xy) / (l.xx + r.xx);
    const double low = l.mean - slope * (std::ceil(from) + l.middle() - at);
    const double high = r.mean - slope * (std::ceil(onwards) + r.middle() - at);
    if (!(std::abs(high - low) >= kLeastStep) || (high > low) != up) return levels;  // no edge here: keep what is known
    levels.slope = slope;
    levels.before = low;
    levels.after = high;
    levels.local = true;
    levels.samplesBefore = l.n;
    levels.samplesAfter = r.n;
    return levels;
}

// Gauss-Newton on the time alone; the levels are given. Converges in three or four rounds.
double EdgeTimer::fitForm(double at, const Levels& levels, bool up) const {
    const EdgeShape& shape = shapes_[up ? 1 : 0];
    const double zone = std::max(shape.before(), shape.after());
    const double scale = 1.0 / (levels.after - levels.before);
    double t = at - shape.sliceOffset();
    if (!(std::abs(levels.after - levels.before) >= kLeastStep))
        return t;  // what is overdriven may rest at one rail only
    for (int round = 0; round < 8; ++round) {
        const double from = std::max(t - shape.before(), static_cast<double>(begin_));
        const double to = std::min(t + shape.after(), static_cast<double>(end_) - 1.0);
        Pull all;
        Pull seen;  // of the samples that are not at a rail: of the others only the side is known
        for (auto i = static_cast<std::uint64_t>(std::ceil(from)); static_cast<double>(i) <= to; ++i) {
            const double r = static_cast<double>(i) - t;
            const double slope = shape.slope(r);
            const double z = (sample(i) - levels.slope * (static_cast<double>(i) - at) - levels.before) * scale;
            all.add(slope, shape.value(r) - z);
            if (!flattened(i)) seen.add(slope, shape.value(r) - z);
        }
        if (!(all.weight > 0.0)) return at - shape.sliceOffset();
        // A steep edge may have no sample between the rails; the side of those at them then tells its time.
        const Pull& pull = seen.weight < kFewestSeen * all.weight ? all : seen;
        const double move = std::clamp(pull.sum / pull.weight, -0.5 * zone, 0.5 * zone);
        t += move;
        if (std::abs(move) < 1e-4) break;
    }
    return std::abs(t - at) < 3.0 * zone ? t : at - shape.sliceOffset();
}

// A bouncing contact: its instant is the first crossing of the slice; the form of the edge is lost in the bounce.
double EdgeTimer::crossFirst(const HeldTransition& held) const {
    const double at = held.first.time;
    const double room = std::min(kBounceLookSeconds * rateHz_, 0.5 * held.clearBefore);
    const auto from = static_cast<std::uint64_t>(std::max(static_cast<double>(begin_) + 1.0, at - room));
    const auto to = static_cast<std::uint64_t>(std::min(at + room, static_cast<double>(end_) - 1.0));
    const double height = settled_.height(sliceHeight_);
    const double sign = held.first.up ? 1.0 : -1.0;
    for (std::uint64_t i = from; i < to; ++i) {
        const double here = sign * (sample(i) - height);
        const double next = sign * (sample(i + 1) - height);
        if (here < 0.0 || next < 0.0) continue;  // two samples in a row: no lone spike
        const double before = sign * (sample(i - 1) - height);
        return static_cast<double>(i) - (before < 0.0 ? here / (here - before) : 0.0);
    }
    return at;
}

// Disturbance of the level before an edge, where a long element has come to rest: what a straight line leaves there,
// and what neighbouring samples differ by, which hum and drift hardly touch.
void EdgeTimer::followNoise(const HeldTransition& held, double at) {
    if (held.clearBefore < kRestedReaches * longestReach_) return;
    const double from = std::max(at - longestReach_, static_cast<double>(begin_));
    const double to = at - shapes_[held.first.up ? 1 : 0].before() - 1.0;
    const std::span<const float> rest = between(from, to);
    const auto n = static_cast<double>(rest.size());
    if (n < 4.0) return;
    constexpr double kKeep = 0.98;
    noiseSquares_ = kKeep * noiseSquares_ + straightSums(rest).left() * n / (n - 2.0);
    stepSquares_ = kKeep * stepSquares_ + 0.5 * stepSquares(rest) * n / (n - 1.0);
    noiseCount_ = kKeep * noiseCount_ + n;
}

bool EdgeTimer::hums() const {
    const double slow = noiseSquares_ - stepSquares_;
    return slow > (kHumOverNoise - 1.0) * stepSquares_ && slow > kLeastHum * kLeastHum * noiseCount_;
}

double EdgeTimer::humRms() const { return hums() ? std::sqrt((noiseSquares_ - stepSquares_) / noiseCount_) : 0.0; }

double EdgeTimer::noiseRms() const {
    return noiseCount_ > 0.0 ? std::sqrt((hums() ? stepSquares_ : noiseSquares_) / noiseCount_) : 0.0;
}

// Levels at the end of long elements: what the line comes to when it has time.
void EdgeTimer::followSettled(const HeldTransition& held, double at) {
    const std::size_t side = held.first.up ? 0 : 1;
    if (!settled_.rests(side, held.clearBefore, riseSamples(side == 1))) return;
    const double to = at - shapes_[1 - side].before();
    const double from = to - kSettledSeconds * rateHz_;
    if (from < static_cast<double>(begin_)) return;
    const std::span<const float> rest = between(from, to);
    if (rest.empty()) return;
    settled_.take(side, sumOf(rest) / static_cast<double>(rest.size()));
}

EdgeTimer::Excerpt EdgeTimer::excerpt(double from, double to, std::size_t most) const {
    Excerpt e;
    const double first = std::max(std::ceil(from), static_cast<double>(begin_));
    const double last = std::min(to, static_cast<double>(end_) - 1.0);
    if (last <= first) return e;
    e.firstAt = first;
    e.spacing = std::max(1.0, std::floor((last - first) / static_cast<double>(most)));
    for (double i = first; i <= last; i += e.spacing)
        e.line.push_back(static_cast<float>(sample(static_cast<std::uint64_t>(i))));
    return e;
}

}  // namespace trueunit
