// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/window_fit.h"

#include <algorithm>
#include <cmath>

namespace trueunit {

namespace {

constexpr std::size_t kSettledCharacters = 12;  // since a nudge, that give a unit of their own

// A few characters tell their own scatter badly, a single one not at all: it is pooled with that of `settled`, more of
// the same sender. Both are fits with the unit given.
void poolScatter(UnitFit& few, const UnitFit& settled) {
    const auto n = static_cast<double>(few.characters), m = static_cast<double>(settled.characters);
    const double own = n > 1.0 ? std::pow(1.0 / studentFactor(n - 1.0), 2) : 0.0;
    const double wide = m / n * std::pow(1.0 / studentFactor(m - 1.0), 2);
    const auto pool = [&](std::optional<Measured>& mean, const std::optional<Measured>& from) {
        if (!mean || !from) return;
        const double variance =
            ((n - 1.0) * own * std::pow(mean->uncertainty, 2) + (m - 1.0) * wide * std::pow(from->uncertainty, 2)) /
            (n + m - 2.0);
        mean->uncertainty = studentFactor(m - 1.0) * std::sqrt(variance);
    };
    pool(few.toMark, settled.toMark);
    pool(few.toSpace, settled.toSpace);
}

// What the doubt of a unit taken from elsewhere leaves open about the delays.
void doubtUnit(UnitFit& few, Characters window, const Measured& unit) {
    few.unit = unit;
    const std::optional<UnitFit> off = fitUnit(window, unit.value + unit.uncertainty);
    if (!off) return;
    const auto widen = [](std::optional<Measured>& mean, const std::optional<Measured>& moved) {
        if (mean && moved) mean->uncertainty = std::hypot(mean->uncertainty, moved->value - mean->value);
    };
    widen(few.toMark, off->toMark);
    widen(few.toSpace, off->toSpace);
}

}  // namespace

std::optional<UnitFit> fitWindow(Characters window, Characters recent, std::uint64_t settledSince) {
    if (window.size() >= kUnitCharacters) return fitUnit(window);
    const auto since = std::find_if(recent.begin(), recent.end(), [=](auto* c) { return c->number >= settledSince; });
    const Characters settled(since, recent.end());
    // A nudge among them would pass for a part of the speed.
    const std::optional<UnitFit> wide = fitUnit(settled.size() >= kSettledCharacters ? settled : recent);
    if (!wide) return std::nullopt;
    std::optional<UnitFit> fit = fitUnit(window, wide->unit.value);
    if (!fit) return fit;
    const auto same = fitUnit(settled, wide->unit.value);
    if (same && same->characters > fit->characters) poolScatter(*fit, *same);
    doubtUnit(*fit, window, wide->unit);
    return fit;
}

}  // namespace trueunit
