// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/nudge_words.h"

#include <array>
#include <cmath>
#include <cstdio>

namespace trueunit {

namespace {

using Kind = NudgeAdvice::Kind;

std::string signedPercent(double v) {
    const double r = std::round(10.0 * v) / 10.0;
    char text[32];
    std::snprintf(text, sizeof text, "%.1f", std::abs(r));
    return std::string(r > 0.0 ? "+" : r < 0.0 ? "\u2212" : "") + text;
}

// How many nudges of the same size reach as far, as a hand can follow it.
std::string amount(double nudges) {
    static constexpr std::array kCounts = {"one", "two", "three", "four", "five", "six"};
    if (nudges < 0.35) return "about a quarter of it";
    if (nudges < 0.7) return "about half of it";
    const auto whole = static_cast<std::size_t>(std::lround(nudges));
    if (whole > kCounts.size()) return "many of the same; take larger ones";
    return std::string("about ") + kCounts[whole - 1] + (whole == 1 ? "" : " of the same");
}

std::string onward(double nudges) {
    if (nudges < 0.7) return "go on the same way, " + amount(nudges);
    const auto whole = std::lround(nudges);
    if (whole == 1) return "go on the same way, about one more of the same";
    if (whole > 6) return "go on the same way, many more of the same; take larger ones";
    std::string words = amount(nudges);  // "about two of the same"
    words.insert(words.find(" of the same"), " more");
    return "go on the same way, " + words;
}

std::string backward(double nudges) {
    const auto whole = std::lround(nudges);
    if (nudges >= 0.7 && whole == 1) return "go back, about as much";
    if (whole > 6) return "go back, and farther; take larger ones";
    return "go back, " + amount(nudges);
}

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

NudgeAdvice inOrder(const Step& s) {
    if (s.wasIn()) return {Kind::inOrder, {}, "nearer, in limits; tighten the screws and watch that it stays"};
    return {Kind::inOrder, {}, "in limits; tighten the screws and watch that it stays"};
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
    else if (step.wasIn() && !step.nearer())
        advice = crept(step);
    else
        advice = step.isIn() ? inOrder(step) : outside(step);
    advice.did = "last nudge: " + signedPercent(step.before) + " to " + signedPercent(step.after);
    return advice;
}

}  // namespace trueunit
