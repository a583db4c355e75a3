// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/compose_reading.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/frame/code_table.h"
#include "tests/support/character_builder.h"
#include "tests/support/texts.h"

namespace trueunit {
namespace {

using test::CharacterBuilder;

// A log that prints as the pipeline's does.
CharacterLog printedLog(const std::vector<Character>& characters) {
    CharacterLog log;
    Decoder decoder(*findCode("ita2"));
    for (const Character& c : characters) log.add({c, decoder.text(c.code), ""});
    return log;
}

Reading readingOf(const std::vector<Character>& characters, std::size_t window = 0, const Options& options = {}) {
    const CharacterLog log = printedLog(characters);
    WindowOfCharacters w;
    w.window = log.last(window);
    w.recent = log.last(window == 0 ? 0 : std::max(kUnitCharacters, window));
    return composeReading(w, options, Limits{}, InputReading{});
}

bool noted(const Reading& r, const std::string& part) {
    return std::any_of(r.notes.begin(), r.notes.end(),
                       [&](const std::string& n) { return n.find(part) != std::string::npos; });
}

TEST(ComposeReading, PutsSpeedAndDistortionTogether) {
    CharacterBuilder builder;
    builder.unit = 0.020 / 1.004;
    builder.nominal = 0.020;
    builder.stopUnits = 1.5;
    builder.biasPercent = 6.0;
    builder.endPercent = -2.0;
    const Reading r = readingOf(builder.characters(test::allCodes(2)));
    EXPECT_TRUE(r.valid());
    EXPECT_EQ(r.speed.nominalBaud, std::optional(50.0));
    EXPECT_NEAR(*r.speed.unitMs, 20.0 / 1.004, 1e-9);
    EXPECT_NEAR(r.speed.baud->value, 50.2, 1e-9);
    EXPECT_NEAR(r.speed.errorPercent->value, 0.4, 1e-9);  // fast is positive
    EXPECT_NEAR(r.speed.stopUnits->value, 1.5, 1e-9);
    EXPECT_NEAR(r.distortion.biasPercent->value, 6.0, 1e-9);
    EXPECT_NEAR(r.distortion.endPercent->value, -2.0, 1e-9);
    EXPECT_EQ(r.text.characters, 64);
    EXPECT_EQ(r.text.code, "ita2");
    ASSERT_TRUE(r.margin && r.contact);
    EXPECT_EQ(r.contact->bounces, 0);
}

TEST(ComposeReading, EvenAPerfectSignalHasTheUncertaintyOfTheInstrument) {
    const Reading r = readingOf(CharacterBuilder{}.characters(test::allCodes()));
    EXPECT_GE(r.speed.errorPercent->uncertainty, 0.01);  // 100 parts in a million: a card's clock untrimmed
    EXPECT_GT(r.distortion.biasPercent->uncertainty, 0.0);
    Options trimmed;
    trimmed.clockPpm = 3.0;
    const Reading t = readingOf(CharacterBuilder{}.characters(test::allCodes()), 0, trimmed);
    EXPECT_LT(t.speed.errorPercent->uncertainty, r.speed.errorPercent->uncertainty);
}

TEST(ComposeReading, AShortWindowTakesItsUnitFromTheLastCharactersAndItsBiasFromItself) {
    CharacterBuilder builder;
    auto characters = builder.characters(test::allCodes());
    builder.biasPercent = 10.0;
    characters.push_back(builder.character(32, 0x0A));
    const Reading one = readingOf(characters, 1);
    EXPECT_EQ(one.text.characters, 1);
    ASSERT_TRUE(one.distortion.biasPercent && one.speed.stopUnits);
    EXPECT_NEAR(one.distortion.biasPercent->value, 10.0, 0.6);
    EXPECT_NEAR(one.speed.stopUnits->value, 1.42, 0.02);
    const Reading eight = readingOf(characters, 8);
    EXPECT_LT(eight.distortion.biasPercent->value, 4.0);
    EXPECT_EQ(eight.text.characters, 8);
}

TEST(ComposeReading, ASingleCharacterClaimsNoRepeatability) {
    CharacterBuilder builder;
    builder.extraPercent = [](std::uint64_t n, int k, Condition) {
        return static_cast<double>((static_cast<int>(n) * 7 + k * 3) % 5) - 2.0;
    };
    const auto characters = builder.characters(test::allCodes(2));
    const Reading one = readingOf(characters, 1);
    const Reading all = readingOf(characters, 0);
    ASSERT_TRUE(one.distortion.biasPercent && all.distortion.biasPercent);
    EXPECT_GT(one.distortion.biasPercent->uncertainty, all.distortion.biasPercent->uncertainty);
}

TEST(ComposeReading, TheUncertaintyOfAShortWindowHoldsTheTruthAndIsSteady) {
    // Of 200 windows, fewer than 178 held would come by chance once in 1000 (binomial distribution, 95 %).
    int held = 0;
    std::vector<double> stated;
    for (unsigned seed = 1; seed <= 200; ++seed) {
        std::mt19937_64 random(seed);
        std::normal_distribution<double> normal;
        CharacterBuilder builder;
        builder.biasPercent = 3.0;
        builder.extraPercent = [&](std::uint64_t, int, Condition) { return normal(random); };
        const Reading r = readingOf(builder.characters(test::mixedText(40, seed)), 8);
        ASSERT_TRUE(r.distortion.biasPercent);
        held += std::abs(r.distortion.biasPercent->value - 3.0) <= r.distortion.biasPercent->uncertainty;
        stated.push_back(r.distortion.biasPercent->uncertainty);
    }
    EXPECT_GE(held, 178);
    std::sort(stated.begin(), stated.end());
    EXPECT_LT(stated.back(), 2.5 * stated.front());
}

TEST(ComposeReading, WhatWasNudgedBeforeAShortWindowDoesNotWidenItsUncertainty) {
    CharacterBuilder builder;
    std::mt19937_64 random(5);
    std::normal_distribution<double> normal;
    builder.extraPercent = [&](std::uint64_t, int, Condition) { return 0.3 * normal(random); };
    builder.biasPercent = 12.0;
    auto characters = builder.characters(test::mixedText(20, 5));
    builder.biasPercent = 2.0;
    for (std::uint64_t n = 20; n < 36; ++n) characters.push_back(builder.character(n, n % 2 == 0 ? 0x0AU : 0x15U));
    const CharacterLog log = printedLog(characters);
    WindowOfCharacters w;
    w.window = log.last(8);
    w.recent = log.last(kUnitCharacters);
    w.settledSince = 20;
    const Reading r = composeReading(w, Options{}, Limits{}, InputReading{});
    ASSERT_TRUE(r.distortion.biasPercent);
    EXPECT_LT(r.distortion.biasPercent->uncertainty, 1.0);
    EXPECT_NEAR(r.distortion.biasPercent->value, 2.0, r.distortion.biasPercent->uncertainty);
}

TEST(ComposeReading, WithoutANominalSpeedErrorAndGrossAreUnknownAndANoteSaysSo) {
    CharacterBuilder builder;
    builder.unit = builder.nominal = 0.0264;  // 37.9 baud
    const Reading r = readingOf(builder.characters(test::allCodes()));
    EXPECT_FALSE(r.speed.nominalBaud);
    EXPECT_FALSE(r.speed.errorPercent);
    EXPECT_FALSE(r.distortion.grossPercent);
    EXPECT_TRUE(r.speed.baud && r.distortion.biasPercent && r.distortion.synchronousPercent);
    EXPECT_TRUE(noted(r, "nominal speed"));
}

TEST(ComposeReading, ANominalSpeedThatWasSetStandsHoweverFarTheMachineIs) {
    CharacterBuilder builder;
    builder.unit = 0.0264;
    Options options;
    options.baud = 45.45;
    const Reading r = readingOf(builder.characters(test::allCodes()), 0, options);
    ASSERT_TRUE(r.speed.errorPercent && r.distortion.grossPercent);
    EXPECT_NEAR(r.speed.errorPercent->value, 100.0 * (22.0 / 26.4 - 1.0), 1e-6);  // 16.7 % slow: 60 Hz motor on 50 Hz
    EXPECT_NEAR(*r.distortion.grossPercent, 120.0, 1e-6);
}

TEST(ComposeReading, TheVerdictNamesEveryReadingOutOfLimits) {
    CharacterBuilder builder;
    builder.biasPercent = 4.9;
    const Reading in = readingOf(builder.characters(test::allCodes()));
    EXPECT_EQ(in.verdict.within, std::optional(true));
    EXPECT_TRUE(in.verdict.exceeded.empty());
    EXPECT_EQ(in.verdict.limits, "bench");
    builder.biasPercent = -12.0;
    builder.endPercent = 5.2;
    builder.unit = builder.nominal * 1.01;
    const Reading out = readingOf(builder.characters(test::allCodes()));
    EXPECT_EQ(out.verdict.within, std::optional(false));
    EXPECT_EQ(out.verdict.exceeded, (std::vector<std::string>{"error_percent", "gross_percent", "synchronous_percent",
                                                              "bias_percent", "end_percent"}));
}

TEST(ComposeReading, NothingIsJudgedAndNothingKnownWithoutCharacters) {
    const Reading r = composeReading({}, Options{}, Limits{}, InputReading{});
    EXPECT_FALSE(r.valid());
    EXPECT_FALSE(r.verdict.within);
    EXPECT_EQ(r.text.characters, 0);
    EXPECT_FALSE(r.margin);
    EXPECT_FALSE(r.contact);
    EXPECT_TRUE(r.instants.empty());
}

TEST(ComposeReading, CharactersWithOneInstantEachTellNothingAndSaySo) {
    const Reading r = readingOf(CharacterBuilder{}.characters(std::vector<unsigned>(40, 0x00)));
    EXPECT_FALSE(r.distortion.biasPercent);
    EXPECT_FALSE(r.speed.baud);
    EXPECT_FALSE(r.verdict.within);
    EXPECT_FALSE(r.notes.empty());
    EXPECT_EQ(r.text.characters, 40);
}

TEST(ComposeReading, FramingErrorsAndBouncesOfTheWindowAreCounted) {
    auto characters = CharacterBuilder{}.characters(test::allCodes());
    characters[5].stopPresent = false;
    characters[7].bounces = 2;
    characters[7].longestBounceSeconds = 0.0015;
    characters[9].bounces = 1;
    characters[9].longestBounceSeconds = 0.0004;
    const Reading r = readingOf(characters);
    EXPECT_EQ(r.text.framingErrors, 1);
    EXPECT_EQ(r.contact->bounces, 3);
    EXPECT_NEAR(r.contact->longestMs, 1.5, 1e-9);
    EXPECT_EQ(readingOf(characters, 8).contact->bounces, 0);
}

TEST(ComposeReading, WhenEveryCharacterStandsAloneTheStopIsUnknownAndANoteSaysSo) {
    auto characters = CharacterBuilder{}.characters(test::allCodes());
    for (std::size_t i = 0; i < characters.size(); ++i) characters[i].start += 2.0 * static_cast<double>(i);
    const Reading r = readingOf(characters);
    EXPECT_TRUE(r.distortion.biasPercent);
    EXPECT_FALSE(r.speed.stopUnits);
    EXPECT_FALSE(r.speed.operationsPerMinute);
    EXPECT_TRUE(noted(r, "stop"));
}

TEST(NominalSpeed, IsTheOneSetElseTheNearest) {
    Options options;
    EXPECT_DOUBLE_EQ(nominalSpeed(options, 0.0201)->baud, 50.0);
    EXPECT_FALSE(nominalSpeed(options, 0.0264));
    options.baud = 45.45;
    EXPECT_DOUBLE_EQ(nominalSpeed(options, 0.0201)->unitSeconds, 0.022);
}

// 3 % off 45.45 baud, and half way between 74.2 and 75: what was taken stays until the other is clearly nearer.
TEST(NominalSpeed, StaysWhereTheSpeedScattersAboutABound) {
    const Options options;
    const auto taken = [&](double baud, double before) {
        const auto nominal = nominalSpeed(options, 1.0 / baud, namedSpeed(before));
        return nominal ? nominal->baud : 0.0;
    };
    EXPECT_FALSE(nominalSpeed(options, 0.022 / 0.9695));
    EXPECT_EQ(taken(0.9695 / 0.022, 45.45), 45.45);
    EXPECT_EQ(taken(0.964 / 0.022, 45.45), 0.0);
    EXPECT_EQ(nominalSpeed(options, 1.0 / 74.65)->baud, 75.0);
    EXPECT_EQ(taken(74.65, 74.2), 74.2);
    EXPECT_EQ(taken(74.9, 74.2), 75.0);
    EXPECT_EQ(taken(50.0, 45.45), 50.0);
    const auto doubtful = nominalSpeed(options, 1.0 / 74.4, namedSpeed(75.0), 0.005 / 74.4);  // 0.5 %
    EXPECT_EQ(doubtful->baud, 75.0);
    EXPECT_EQ(nominalSpeed(options, 1.0 / 74.4, namedSpeed(75.0), 0.0005 / 74.4)->baud, 74.2);
}

}  // namespace
}  // namespace trueunit
