// SPDX-License-Identifier: GPL-3.0-or-later
// Known parts are composed and taken apart again. The kinds of distortion are those of ITU-T R.140 (from memory); the
// false-alarm probability of a line counts the independent frequencies looked at (J. D. Scargle, 1982, from memory).
#include "core/measure/decomposition.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <random>

#include "core/measure/displacements.h"
#include "tests/support/character_builder.h"
#include "tests/support/texts.h"

using namespace trueunit;
using namespace trueunit::test;

namespace {

struct Line {
    double amplitude;  // percent of a unit
    double hz;
};

// What a test composes. All of it displaces the instants, not the start, late positive.
struct Parts {
    double bias = 0.0;
    double end = 0.0;
    double characteristic = 0.0;  // instants to mark after a space of two units and more come late by this
    std::vector<Line> lines;
    double scatter = 0.0;
    std::uint64_t seed = 1;
    double startScatter = 0.0;  // standard deviation of the start: all instants counted from it move together
    double afterSingle = 0.0;   // instants that end a single unit come late by this, to mark and to space alike
};

int unitsBefore(unsigned code, int k) {
    const auto markAt = [code](int place) { return place > 0 && ((code >> (place - 1)) & 1U) != 0; };
    int place = k - 1;
    while (place > 0 && markAt(place) == markAt(k - 1)) --place;
    return k - (place == 0 && !markAt(k - 1) ? 0 : place + 1);
}

std::vector<Character> compose(const Parts& parts, const std::vector<unsigned>& codes) {
    std::mt19937_64 random(parts.seed);
    std::normal_distribution<double> normal;
    CharacterBuilder builder;
    builder.biasPercent = parts.bias;
    builder.endPercent = parts.end;
    std::vector<double> together;
    for (std::size_t i = 0; i <= codes.size(); ++i) together.push_back(parts.startScatter * normal(random));
    builder.extraPercent = [&](std::uint64_t number, int k, Condition to) {
        const double start =
            1.0 + static_cast<double>(number) * (builder.levels + 1 + builder.stopUnits) * builder.unit;
        double late = parts.scatter * normal(random) - together[number];
        for (const Line& line : parts.lines)
            late += line.amplitude * std::sin(2.0 * std::numbers::pi * line.hz * (start + k * builder.unit));
        if (to == Condition::mark && unitsBefore(codes[number], k) >= 2) late += parts.characteristic;
        if (unitsBefore(codes[number], k) == 1) late += parts.afterSingle;
        return late;
    };
    return builder.characters(codes);
}

double variance(const std::vector<Displaced>& displaced) {
    double squares = 0.0;
    for (const Displaced& d : displaced) squares += d.left * d.left;
    return squares / static_cast<double>(displaced.size());
}

struct Taken {
    UnitFit fit;
    Decomposition parts;
    double variance = 0.0;  // of the displacement about its means, percent squared
};

Taken takeApart(const std::vector<Character>& characters) {
    const auto window = pointersTo(characters);
    const auto fit = fitUnit(window);
    EXPECT_TRUE(fit);
    const auto parts = decompose(window, *fit);
    EXPECT_TRUE(parts);
    return {*fit, *parts, variance(displacementsAboutMeans(window, fit->unit.value))};
}

}  // namespace

TEST(Decomposition, KnownPartsAreTakenApartAgain) {
    const Parts composed{6.0, -2.0, 2.0, {{3.0, 1.7}, {1.5, 4.1}}, 0.5};
    const Taken taken = takeApart(compose(composed, mixedText(400, 3)));
    EXPECT_NEAR(taken.parts.characteristic, 2.0, 0.25);
    ASSERT_EQ(taken.parts.lines.size(), 2U);
    constexpr double kSpan = 400 * 7.42 * 0.022;  // seconds; a line is found to a small part of 1/span
    EXPECT_NEAR(taken.parts.lines[0].hz, 1.7, 0.1 / kSpan);
    EXPECT_NEAR(taken.parts.lines[0].amplitude, 3.0, 0.1);
    EXPECT_NEAR(taken.parts.lines[1].hz, 4.1, 0.1 / kSpan);
    EXPECT_NEAR(taken.parts.lines[1].amplitude, 1.5, 0.1);
    for (const PeriodicLine& line : taken.parts.lines) EXPECT_LT(line.falseAlarm, 1e-6);
    EXPECT_NEAR(taken.parts.restRms, 0.5, 0.04);
    EXPECT_GT(taken.parts.restPeak, 2.5 * taken.parts.restRms);
    EXPECT_LT(taken.parts.restPeak, 6.0 * taken.parts.restRms);
    // The end stands as composed; the bias carries the mean of the characteristic part, which belongs to it.
    EXPECT_NEAR(100.0 * taken.fit.toSpace->value / 0.022, -2.0, 100.0 * taken.fit.toSpace->uncertainty / 0.022 + 0.3);
}

TEST(Decomposition, BiasAndEndAloneLeaveNothingToTheOtherParts) {
    const Taken taken = takeApart(compose({8.0, -4.0, 0.0, {}, 0.0}, mixedText(200, 5)));
    EXPECT_NEAR(-100.0 * taken.fit.toMark->value / 0.022, 8.0, 1e-6);
    EXPECT_NEAR(100.0 * taken.fit.toSpace->value / 0.022, -4.0, 1e-6);
    EXPECT_NEAR(taken.parts.characteristic, 0.0, 1e-6);
    EXPECT_TRUE(taken.parts.lines.empty());
    EXPECT_NEAR(taken.parts.restRms, 0.0, 1e-6);
}

TEST(Decomposition, TheVariancesOfThePartsMakeUpThatOfTheDisplacement) {
    const std::vector<unsigned> codes = mixedText(500, 7);
    const Parts composed{3.0, 1.0, 2.5, {{2.0, 2.3}}, 0.8};
    const Taken taken = takeApart(compose(composed, codes));
    const std::vector<Character> characteristicAlone = compose({0.0, 0.0, 2.5, {}, 0.0}, codes);
    const double ofCharacteristic = variance(displacementsAboutMeans(pointersTo(characteristicAlone), 0.022));
    double explained = ofCharacteristic + taken.parts.restRms * taken.parts.restRms;
    for (const PeriodicLine& line : taken.parts.lines) explained += 0.5 * line.amplitude * line.amplitude;
    EXPECT_NEAR(explained / taken.variance, 1.0, 0.05);
}

TEST(Decomposition, ScatterAloneIsAllFortuitous) {
    const Taken taken = takeApart(compose({0.0, 0.0, 0.0, {}, 1.5}, mixedText(400, 9)));
    EXPECT_NEAR(taken.parts.restRms, 1.5, 0.08);
    EXPECT_LT(taken.parts.characteristic, 0.4);
    EXPECT_NEAR(taken.parts.restRms * taken.parts.restRms / taken.variance, 1.0, 0.03);
}

// A sentence leaves at some places hardly more than one length of element: what depends on it is parted all the same.
TEST(Decomposition, ATextThatTiesLengthToPlaceLeavesNoScatterBehind) {
    std::vector<unsigned> codes;
    for (int round = 0; round < 9; ++round)
        for (const unsigned c : codesOf("THE QUICK BROWN FOX JUMPS OVER THE LAZY DOG 1234567890\r\n"))
            codes.push_back(c);
    Parts parts;
    parts.scatter = 0.35;
    parts.afterSingle = 12.5;
    for (const std::size_t n : {std::size_t{128}, codes.size()}) {
        const Taken taken = takeApart(compose(parts, {codes.end() - static_cast<long>(n), codes.end()}));
        EXPECT_NEAR(taken.parts.restRms, 0.35, 0.05) << n;
        EXPECT_LT(taken.parts.restPeak, 6.0 * 0.35) << n;
        EXPECT_NEAR(taken.parts.characteristic, 12.5, 0.4) << n;
    }
}

TEST(Decomposition, WhatTheStartScattersIsToldFromWhatEachInstantDoes) {
    for (const auto& [start, each] : {std::pair{3.0, 0.5}, {0.0, 1.5}, {1.0, 1.0}}) {
        Parts parts;
        parts.scatter = each;
        parts.startScatter = start;
        const Taken taken = takeApart(compose(parts, mixedText(600, 3)));
        EXPECT_NEAR(taken.parts.together, start, 0.05 * start + 0.2) << start;
        EXPECT_NEAR(taken.parts.apart, each, 0.07 * each) << start;
    }
}

TEST(Decomposition, ALineIsFoundInATextThatRepeatsToo) {
    std::vector<unsigned> codes;
    for (int i = 0; i < 300; ++i) codes.push_back(i % 2 == 0 ? 10U : 21U);
    const Taken taken = takeApart(compose({2.0, 0.0, 0.0, {{1.2, 2.3}}, 0.4}, codes));
    ASSERT_EQ(taken.parts.lines.size(), 1U);
    EXPECT_NEAR(taken.parts.lines[0].hz, 2.3, 0.01);
    EXPECT_NEAR(taken.parts.lines[0].amplitude, 1.2, 0.1);
}

// Motors of 1500 and 1800 turns a minute: more than one turn in two units. What shows at other frequencies is the same
// line, seen once a unit; it must not be told in its place.
TEST(Decomposition, AQuickMotorIsFoundAtItsOwnFrequency) {
    for (const double hz : {25.0, 29.2, 30.0}) {
        const Taken taken = takeApart(compose({2.0, 0.0, 0.0, {{2.5, hz}}, 0.3}, mixedText(300, 4)));
        ASSERT_EQ(taken.parts.lines.size(), 1U) << hz;
        EXPECT_NEAR(taken.parts.lines[0].hz, hz, 0.01);
        EXPECT_NEAR(taken.parts.lines[0].amplitude, 2.5, 0.15) << hz;
        EXPECT_NEAR(taken.parts.restRms, 0.3, 0.04) << hz;
    }
}

TEST(Decomposition, NoiseShowsALineNoMoreOftenThanStated) {
    // At a false-alarm probability of 0.001, forty windows of noise show more than one line once in a thousand times.
    int found = 0;
    for (unsigned seed = 1; seed <= 40; ++seed) {
        const auto characters = compose({0.0, 0.0, 0.0, {}, 1.0, seed}, mixedText(150, 100 + seed));
        const Taken taken = takeApart(characters);
        EXPECT_TRUE(taken.parts.linesSought);
        if (!taken.parts.lines.empty()) ++found;
    }
    EXPECT_LE(found, 1);
}

TEST(Decomposition, TooFewInstantsAreNotTakenApart) {
    const auto characters = compose({1.0, 0.0, 0.0, {}, 0.5}, mixedText(4, 1));
    const auto window = pointersTo(characters);
    const auto fit = fitUnit(window);
    ASSERT_TRUE(fit);
    EXPECT_FALSE(decompose(window, *fit));
}

TEST(Decomposition, AShortWindowSeeksNoLinesAndSaysSo) {
    const auto characters = compose({1.0, 0.0, 0.0, {}, 0.5}, mixedText(16, 1));
    const auto window = pointersTo(characters);
    const auto parts = decompose(window, *fitUnit(window));
    ASSERT_TRUE(parts);
    EXPECT_FALSE(parts->linesSought);
}
