// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/frame/framing_search.h"

#include <gtest/gtest.h>

#include <random>
#include <span>
#include <string>

#include "tests/support/edge_train.h"
#include "tests/support/texts.h"

namespace trueunit {
namespace {

using test::CharacterBuilder;
using test::kTrainSecondsPerSample;

// The edges from one in the middle of the tape on, as when the instrument is switched on while it runs.
std::vector<Edge> from(const std::vector<Edge>& edges, std::size_t first) {
    return {edges.begin() + static_cast<std::ptrdiff_t>(first), edges.end()};
}

TEST(FramingSearch, FindsEveryStandardSpeedInEitherPolarity) {
    for (const StandardSpeed& speed : kStandardSpeeds)
        for (const bool inverted : {false, true}) {
            CharacterBuilder builder;
            builder.unit = builder.nominal = speed.unitSeconds;
            const auto edges = test::edgesOf(builder.characters(test::mixedText(22, 8)), inverted);
            const auto found = findFraming(edges, kTrainSecondsPerSample, 5);
            ASSERT_TRUE(found) << speed.baud;
            EXPECT_EQ(found->framing.inverted, inverted) << speed.baud;
            EXPECT_NEAR(found->framing.unitSeconds / speed.unitSeconds, 1.0, 1e-6) << speed.baud;
            EXPECT_EQ(found->errorShare, 0.0) << speed.baud;
        }
}

TEST(FramingSearch, ANominalSpeedIsNotNeeded) {
    CharacterBuilder builder;
    builder.unit = 0.0263;  // 38 baud: a 60 Hz machine on 50 Hz mains
    const auto found =
        findFraming(test::edgesOf(builder.characters(test::mixedText(20, 3))), kTrainSecondsPerSample, 5);
    ASSERT_TRUE(found);
    EXPECT_NEAR(found->framing.unitSeconds, 0.0263, 1e-6);
}

TEST(FramingSearch, TheTapeMayRunAlreadyAndTheMachineMayBeFarOut) {
    for (const double bias : {-25.0, 0.0, 25.0})
        for (const std::size_t first : {std::size_t{1}, std::size_t{2}, std::size_t{3}, std::size_t{6}}) {
            CharacterBuilder builder;
            builder.biasPercent = bias;
            const auto edges = from(test::edgesOf(builder.characters(test::mixedText(22, 5))), first);
            const auto found = findFraming(edges, kTrainSecondsPerSample, 5);
            ASSERT_TRUE(found) << bias << ", edge " << first;
            EXPECT_FALSE(found->framing.inverted);
            EXPECT_NEAR(found->framing.unitSeconds, 0.022, 1e-4) << bias << ", edge " << first;
            EXPECT_NEAR(found->framing.biasSeconds, -0.01 * bias * 0.022, 3e-4) << bias << ", edge " << first;
        }
}

TEST(FramingSearch, ReversalsOfRAndYAreFramedAsRAndY) {
    CharacterBuilder builder;
    std::vector<unsigned> codes;
    for (int i = 0; i < 12; ++i) codes.insert(codes.end(), {0x0A, 0x15});
    const auto edges = test::edgesOf(builder.characters(codes));
    const auto found = findFraming(edges, kTrainSecondsPerSample, 5);
    ASSERT_TRUE(found);
    EXPECT_NEAR(found->framing.unitSeconds, 0.022, 1e-5);
    EXPECT_FALSE(found->framing.inverted);
}

// One level out of place: at double the speed its instants fall into places too. Wherever the search looks, in any
// number of characters, whole or not, the true speed must win.
TEST(FramingSearch, ALevelOutOfPlaceMakesNoDoubleSpeed) {
    CharacterBuilder builder;
    builder.stopUnits = 2.0;
    for (const double late : {-15.0, -7.0, 7.0, 15.0})
        for (const int level : {1, 3, 5}) {
            builder.extraPercent = [&](std::uint64_t, int k, Condition) { return k == level ? late : 0.0; };
            const auto all = test::edgesOf(builder.characters(test::codesOf("RYRYRYRYRYRYRYRYRYRYRYRYRYRY")));
            for (std::size_t count = 40; count <= 96; count += 2) {
                const auto found = findFraming(std::span(all).first(count), kTrainSecondsPerSample, 5);
                if (!found) continue;
                EXPECT_NEAR(found->framing.unitSeconds / 0.022, 1.0, 0.04) << late << ", " << level << ", " << count;
                EXPECT_EQ(found->firstEdge, 0U);
            }
        }
}

std::vector<Edge> keyHeldDown(char key, const CharacterBuilder& builder, bool inverted = false) {
    return test::edgesOf(builder.characters(test::codesOf(std::string(24, key))), inverted);
}

// At double the speed, or the other way round, these fall into places too, but with stops of two lengths.
TEST(FramingSearch, OneCharacterRepeatedIsReadAsAMachineWithOneStopWouldSendIt) {
    FramingClues clues;
    clues.restSeconds = 1.0;
    for (const double stop : {1.0, 1.42, 1.5})
        for (const double bias : {-10.0, 4.0})
            for (const char key : {'R', 'S', 'U', 'Y'})
                for (const bool inverted : {false, true}) {
                    CharacterBuilder builder;
                    builder.stopUnits = stop;
                    builder.biasPercent = bias;
                    const auto found =
                        findFraming(keyHeldDown(key, builder, inverted), kTrainSecondsPerSample, 5, clues);
                    ASSERT_TRUE(found) << key << ", stop " << stop;
                    EXPECT_EQ(found->framing.inverted, inverted) << key << ", stop " << stop;
                    EXPECT_NEAR(found->framing.unitSeconds / 0.022, 1.0, 0.01) << key << ", stop " << stop;
                    EXPECT_NEAR(found->framing.biasSeconds, -0.01 * bias * 0.022, 3e-4) << key << ", stop " << stop;
                }
}

// With a stop of two units U is V and O in turn at double the speed, each with a stop of two units.
TEST(FramingSearch, ASpeedThatIsGivenIsKeptTo) {
    CharacterBuilder builder;
    builder.stopUnits = 2.0;
    for (const char key : {'P', 'S', 'U', 'Y'})
        for (const double off : {0.92, 1.0, 1.08}) {
            builder.unit = 0.022 / off;
            FramingClues clues;
            clues.nominalBaud = 45.45;
            const auto found = findFraming(keyHeldDown(key, builder), kTrainSecondsPerSample, 5, clues);
            ASSERT_TRUE(found) << key;
            EXPECT_NEAR(found->framing.unitSeconds / builder.unit, 1.0, 1e-3) << key << ", " << off;
        }
}

TEST(FramingSearch, ASpeedThatIsGivenWronglyHidesNoTape) {
    for (const double baud : {45.45, 50.0, 75.0, 100.0})
        for (const double given : {45.45, 50.0, 75.0, 100.0}) {
            CharacterBuilder builder;
            builder.unit = builder.nominal = 1.0 / baud;
            FramingClues clues;
            clues.nominalBaud = given;
            const auto edges = test::edgesOf(builder.characters(test::mixedText(24, 8)));
            const auto found = findFraming(edges, kTrainSecondsPerSample, 5, clues);
            ASSERT_TRUE(found) << baud << " for " << given;
            EXPECT_NEAR(found->framing.unitSeconds * baud, 1.0, 1e-6) << baud << " for " << given;
        }
}

TEST(FramingSearch, ASpeedThatIsGivenIsFoundFromTwentyToTwoHundredBaud) {
    for (const double baud : {20.0, 25.0, 33.0, 140.0, 165.0, 200.0}) {
        CharacterBuilder builder;
        builder.unit = builder.nominal = 1.0 / baud;
        FramingClues clues;
        clues.nominalBaud = baud;
        for (const auto& codes : {test::mixedText(24, 8), test::codesOf("RYRYRYRYRYRYRYRYRYRYRYRY")}) {
            const auto found = findFraming(test::edgesOf(builder.characters(codes)), kTrainSecondsPerSample, 5, clues);
            ASSERT_TRUE(found) << baud;
            EXPECT_NEAR(found->framing.unitSeconds * baud, 1.0, 1e-4) << baud;
            EXPECT_EQ(found->firstEdge, 0U);
        }
    }
}

// E with a stop of one unit is K the other way round, as regular: only the rest before it tells which is mark.
TEST(FramingSearch, ALineThatRestedDidSoAtMark) {
    CharacterBuilder builder;
    builder.stopUnits = 1.0;
    for (const bool inverted : {false, true}) {
        FramingClues clues;
        clues.restSeconds = 1.0;
        const auto found = findFraming(keyHeldDown('E', builder, inverted), kTrainSecondsPerSample, 5, clues);
        ASSERT_TRUE(found);
        EXPECT_EQ(found->framing.inverted, inverted);
    }
}

TEST(FramingSearch, ASquareWaveTellsNoUnit) {
    for (const double hz : {20.0, 25.0, 50.0}) {
        std::vector<Edge> edges;
        for (int i = 0; i < 200; ++i) {
            Edge e;
            e.time = 24000.0 / hz * i;
            e.up = i % 2 == 0;
            edges.push_back(e);
        }
        EXPECT_FALSE(findFraming(edges, kTrainSecondsPerSample, 5)) << hz;
    }
}

TEST(FramingSearch, EdgesAtRandomAreNoStartStopSignal) {
    for (unsigned seed = 1; seed <= 5; ++seed) {
        std::mt19937 random(seed);
        std::uniform_real_distribution<double> length(0.004, 0.1);
        std::vector<Edge> edges;
        double t = 0.0;
        for (int i = 0; i < 96; ++i) {
            Edge e;
            e.time = (t += length(random)) / kTrainSecondsPerSample;
            e.up = i % 2 == 0;
            edges.push_back(e);
        }
        EXPECT_FALSE(findFraming(edges, kTrainSecondsPerSample, 5)) << "seed=" << seed;
    }
}

TEST(FramingSearch, TooLittleProvesNothing) {
    const auto edges = test::edgesOf(CharacterBuilder{}.characters({0x0A, 0x15, 0x0A}));
    EXPECT_FALSE(findFraming(edges, kTrainSecondsPerSample, 5));
    EXPECT_FALSE(findFraming({}, kTrainSecondsPerSample, 5));
}

}  // namespace
}  // namespace trueunit
