// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/nudge_words.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

#include "core/report/finding_words.h"

namespace trueunit {

namespace {

using Kind = NudgeAdvice::Kind;

std::string signedPercent(double v) {
    const double r = std::round(10.0 * v) / 10.0;
    char text[32];
    std::snprintf(text, sizeof text, "%.1f", std::abs(r));
    return std::string(r > 0.0 ? "+" : r < 0.0 ? "\u2212" : "") + text;
}

// How far, measured by the last nudge, as a hand can follow it: by halves up to three.
std::string amount(double nudges) {
    if (nudges < 0.35) return "about a quarter of that nudge";
    if (nudges < 0.75) return "about half of that nudge";
    if (nudges < 1.25) return "about as much";
    if (nudges >= 6.5) return "much farther: take larger turns";
    const double halves = nudges < 3.25 ? std::round(2.0 * nudges) / 2.0 : std::round(nudges);
    char text[48];
    std::snprintf(text, sizeof text, "about %g times that nudge", halves);
    return text;
}

std::string onward(double nudges) { return "go on the same way, " + amount(nudges); }
std::string backward(double nudges) { return "go back, " + amount(nudges); }

struct Step {
    double before, after, size, limit;
    bool wasIn() const { return std::abs(before) <= limit; }
    bool isIn() const { return std::abs(after) <= limit; }
    bool nearer() const { return std::abs(after) < std::abs(before); }
    double left() const { return std::abs(after) / std::abs(size); }  // to zero, in nudges of this size
    bool past() const { return before * after < 0.0; }
};

// In limits before, and away from zero since.
NudgeAdvice crept(const Step& s) {
    if (s.isIn()) return {Kind::crept, {}, "it moved, and is still in limits; was that the tightening?"};
    return {Kind::crept, {}, "it moved out of limits: was that the tightening? set it again"};
}

constexpr const char* kInLimits = "in limits; tighten the screws and watch that it stays";

// In limits, and half of the way there is still to be had.
std::string couldBeNearer(const Step& s) {
    const std::string far = "in limits, " + percent(s.after, 0);
    return s.past() ? far + " past zero; go back, or tighten the screws"
                    : far + " from zero; go on, or tighten the screws";
}

NudgeAdvice inOrder(const Step& s) {
    if (std::abs(s.after) > 0.5 * s.limit) return {Kind::inOrder, {}, couldBeNearer(s)};
    if (s.wasIn()) return {Kind::inOrder, {}, "nearer, in limits; tighten the screws and watch that it stays"};
    return {Kind::inOrder, {}, kInLimits};
}

NudgeAdvice outside(const Step& s) {
    if (s.past()) return {Kind::back, {}, "that went too far; " + backward(s.left())};
    if (!s.nearer()) return {Kind::back, {}, "that made it worse; " + backward(s.left())};
    return {Kind::goOn, {}, onward(s.left())};
}

// The level is another one than the nudge left behind: it crept without a step.
std::optional<NudgeAdvice> drifted(const Step& s, const std::optional<Measured>& now) {
    if (!now || !s.isIn() || std::abs(now->value) - now->uncertainty <= s.limit) return std::nullopt;
    return NudgeAdvice{Kind::crept, {}, "it crept out of limits to " + signedPercent(now->value) + "; is it tight?"};
}

// Turns too small to be steps of their own brought it in since.
bool cameIn(const Step& s, const std::optional<Measured>& now) {
    return !s.isIn() && now && std::abs(now->value) + now->uncertainty <= s.limit;
}

constexpr double kSettledSeconds = 60.0;  // after this an adjustment is over, and what it did is on the trail

// Also what moved towards the limit, and stayed within it.
bool isIn(const Snapshot& s, const NudgeAdvice& advice) {
    if (advice.kind != Kind::crept) return advice.kind == Kind::inOrder;
    const double now = s.biasSinceNudge ? s.biasSinceNudge->value : s.nudges.back().after.value;
    return std::abs(now) <= s.limits.biasPercent;
}

// The reading beside the advice still covers what was before, or stands at its limit: the two must not disagree.
std::string notYetIn(const Snapshot& s) {
    const std::size_t since = charactersSinceNudge(s);
    if (since >= s.windowUsed) return "about at the limit; a little nearer to zero";
    if (s.options.windowCharacters == 0) return "in limits since; a shorter window (W) leaves out what was before";
    const std::size_t more = static_cast<std::size_t>(s.options.windowCharacters) - since;
    return "in limits since; the reading follows in " + std::to_string(more) +
           (more == 1 ? " character" : " characters");
}

}  // namespace

std::string learningWords(const Snapshot& s) {
    if (s.nudgesLearnedIn == 0 || !s.nudges.empty()) return {};
    return "still learning the scatter: " + std::to_string(s.nudgesLearnedIn) + " more " +
           (s.nudgesLearnedIn == 1 ? "character" : "characters");
}

NudgeAdvice adviceAfter(const std::vector<Nudge>& nudges, const std::optional<Measured>& biasNow,
                        const Limits& limits) {
    if (nudges.empty()) return {};
    const Nudge& last = nudges.back();
    const Step step{last.before.value, last.after.value, last.step.value, limits.biasPercent};
    NudgeAdvice advice;
    if (const auto d = drifted(step, biasNow))
        advice = *d;
    else if (cameIn(step, biasNow))
        advice = {Kind::inOrder, {}, kInLimits};
    else if (step.wasIn() && !step.nearer())
        advice = crept(step);
    else
        advice = step.isIn() ? inOrder(step) : outside(step);
    advice.did = "last nudge: " + signedPercent(step.before) + " to " + signedPercent(step.after);
    return advice;
}

std::size_t charactersSinceNudge(const Snapshot& s) { return charactersSinceNudge(s, s.windowUsed); }

std::size_t charactersSinceNudge(const Snapshot& s, std::size_t last) {
    if (s.nudges.empty() || s.traces.empty()) return last;
    const std::uint64_t first = s.nudges.back().number, newest = s.traces.back()->number;
    return newest < first ? 0 : std::min<std::size_t>(last, newest - first + 1);
}

NudgeAdvice adviceAfter(const Snapshot& s) {
    NudgeAdvice advice = adviceAfter(s.nudges, s.biasSinceNudge, s.limits);
    if (isIn(s, advice) && s.seconds - s.nudges.back().seconds > kSettledSeconds) return {};
    if (advice.kind != Kind::inOrder) return advice;
    if (const auto& now = s.biasSinceNudge; now && std::abs(now->value) + now->uncertainty > s.limits.biasPercent)
        advice.next = "in limits so far; let some more characters come";
    const auto& shown = s.reading.distortion.biasPercent;
    if (shown && std::abs(shown->value) > s.limits.biasPercent) advice.next = notYetIn(s);
    return advice;
}

}  // namespace trueunit
