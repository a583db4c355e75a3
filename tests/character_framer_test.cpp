// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/frame/character_framer.h"

#include <gtest/gtest.h>

#include "tests/support/edge_train.h"
#include "tests/support/texts.h"

namespace trueunit {
namespace {

using test::CharacterBuilder;
using test::kTrainSecondsPerSample;

std::vector<Character> framed(const std::vector<Edge>& edges, Framing framing = {false, 0.022, 0.0}) {
    CharacterFramer framer(5, framing);
    for (const Edge& e : edges) framer.push(e, kTrainSecondsPerSample);
    std::vector<Character> out;
    framer.advance(1e9, out);
    return out;
}

TEST(CharacterFramer, ReadsAllCombinationsWithTheirInstants) {
    CharacterBuilder builder;
    builder.endPercent = 4.0;
    const auto sent = builder.characters(test::allCodes());
    const auto got = framed(test::edgesOf(sent));
    ASSERT_EQ(got.size(), sent.size());
    for (std::size_t i = 0; i < sent.size(); ++i) {
        EXPECT_EQ(got[i].code, sent[i].code);
        EXPECT_EQ(got[i].number, i);
        EXPECT_TRUE(got[i].measurable());
        EXPECT_NEAR(got[i].start, sent[i].start, 1e-9);
        ASSERT_EQ(got[i].instants.size(), sent[i].instants.size());
        for (std::size_t j = 0; j < sent[i].instants.size(); ++j) {
            EXPECT_EQ(got[i].instants[j].k, sent[i].instants[j].k);
            EXPECT_EQ(got[i].instants[j].to, sent[i].instants[j].to);
            EXPECT_NEAR(got[i].instants[j].seconds, sent[i].instants[j].seconds, 1e-9);
        }
    }
}

TEST(CharacterFramer, ReadsALineWhoseMarkIsTheLowLevel) {
    const auto sent = CharacterBuilder{}.characters({0x0A, 0x15});
    const auto got = framed(test::edgesOf(sent, true), {true, 0.022, 0.0});
    ASSERT_EQ(got.size(), 2U);
    EXPECT_EQ(got[0].code, 0x0AU);
    EXPECT_EQ(got[1].code, 0x15U);
}

TEST(CharacterFramer, KnownBiasUpToAThirdOfAUnitDoesNotMisplaceAnInstant) {
    for (const double bias : {-35.0, 35.0}) {
        CharacterBuilder builder;
        builder.biasPercent = bias;
        const auto sent = builder.characters(test::allCodes());
        const auto got = framed(test::edgesOf(sent), {false, 0.022, -0.01 * bias * 0.022});
        ASSERT_EQ(got.size(), sent.size());
        for (std::size_t i = 0; i < sent.size(); ++i) {
            EXPECT_EQ(got[i].code, sent[i].code) << bias;
            EXPECT_TRUE(got[i].measurable()) << bias;
        }
    }
}

TEST(CharacterFramer, AStopThatNeverCameIsAFramingErrorAndTheNextCharacterIsReadAgain) {
    CharacterBuilder builder;
    const Character second = builder.character(1, 0x05);  // ends in space, so only its stop closes the line
    auto edges = test::edgesOf({builder.character(0, 0x0A), second, builder.character(3, 0x15)});
    const double stop = second.start + 6.0 * 0.022;
    for (Edge& e : edges)  // the line closes a unit and a half late
        if (std::abs(e.time * kTrainSecondsPerSample - stop) < 1e-6)
            e.time += 1.5 * 0.022 / kTrainSecondsPerSample + 100.0;
    const auto got = framed(edges);
    ASSERT_EQ(got.size(), 3U);
    EXPECT_TRUE(got[0].measurable());
    EXPECT_FALSE(got[1].stopPresent);
    EXPECT_FALSE(got[1].measurable());
    EXPECT_TRUE(got[2].measurable());
    EXPECT_EQ(got[2].code, 0x15U);
}

TEST(CharacterFramer, ALongSpaceIsOneFramingErrorAndStartsNothing) {
    // The line opens: space for two seconds, then mark, then a character.
    std::vector<Edge> edges = test::edgesOf({CharacterBuilder{}.character(20, 0x0A)});
    Edge open;
    open.time = 1.0 / kTrainSecondsPerSample;
    open.up = false;
    Edge closed;
    closed.time = 3.0 / kTrainSecondsPerSample;
    closed.up = true;
    edges.insert(edges.begin(), {open, closed});
    const auto got = framed(edges);
    ASSERT_EQ(got.size(), 2U);
    EXPECT_FALSE(got[0].stopPresent);
    EXPECT_FALSE(got[0].measurable());
    EXPECT_TRUE(got[1].measurable());
    EXPECT_EQ(got[1].code, 0x0AU);
    EXPECT_TRUE(got[1].afterGap);
}

TEST(CharacterFramer, AStartThatDoesNotLastHalfAUnitStartsNothing) {
    std::vector<Edge> edges = test::edgesOf({CharacterBuilder{}.character(1, 0x0A)});
    Edge blip;
    blip.time = 0.9 / kTrainSecondsPerSample;
    blip.up = false;
    Edge back;
    back.time = 0.905 / kTrainSecondsPerSample;
    back.up = true;
    edges.insert(edges.begin(), {blip, back});
    const auto got = framed(edges);
    ASSERT_EQ(got.size(), 1U);
    EXPECT_EQ(got[0].code, 0x0AU);
}

TEST(CharacterFramer, TwoInstantsThatClaimOnePlaceProveNothing) {
    auto sent = CharacterBuilder{}.characters({0x0A});
    auto edges = test::edgesOf(sent);
    Edge extra = edges[1];  // a short opening just after the first closure
    extra.time += 0.1 * 0.022 / kTrainSecondsPerSample;
    extra.up = false;
    Edge again = edges[1];
    again.time += 0.2 * 0.022 / kTrainSecondsPerSample;
    edges.insert(edges.begin() + 2, {extra, again});
    const auto got = framed(edges);
    ASSERT_EQ(got.size(), 1U);
    EXPECT_TRUE(got[0].stopPresent);
    EXPECT_FALSE(got[0].regular);
    EXPECT_FALSE(got[0].measurable());
}

TEST(CharacterFramer, ACharacterIsHandedOutOnceItsStopIsSureAndNotBefore) {
    const Character sent = CharacterBuilder{}.character(0, 0x0A);
    CharacterFramer framer(5, {false, 0.022, 0.0});
    for (const Edge& e : test::edgesOf({sent})) framer.push(e, kTrainSecondsPerSample);
    std::vector<Character> out;
    framer.advance(sent.start + 6.4 * 0.022, out);
    EXPECT_TRUE(out.empty());
    framer.advance(sent.start + 6.6 * 0.022, out);
    EXPECT_EQ(out.size(), 1U);
}

TEST(CharacterFramer, TheFirstCharacterAndTheOneAfterAGapSaySo) {
    const auto edges = test::edgesOf(CharacterBuilder{}.characters({0x0A, 0x15, 0x0A}));
    CharacterFramer framer(5, {false, 0.022, 0.0});
    std::vector<Character> out;
    for (const Edge& e : edges) {
        framer.push(e, kTrainSecondsPerSample);
        framer.advance(e.time * kTrainSecondsPerSample, out);
    }
    framer.advance(1e9, out);
    ASSERT_EQ(out.size(), 3U);
    EXPECT_TRUE(out[0].afterGap);
    EXPECT_FALSE(out[1].afterGap);
    EXPECT_FALSE(out[2].afterGap);
    framer.markGap();
    for (const Edge& e : test::edgesOf({CharacterBuilder{}.character(9, 0x0A)})) framer.push(e, kTrainSecondsPerSample);
    framer.advance(1e9, out);
    ASSERT_EQ(out.size(), 4U);
    EXPECT_TRUE(out[3].afterGap);
}

TEST(CharacterFramer, BouncesOfAllItsEdgesAreCountedAndTheLongestKept) {
    auto edges = test::edgesOf(CharacterBuilder{}.characters({0x0A}));
    edges[1].bounces = 2;
    edges[1].settleSamples = 48.0;
    edges.back().bounces = 1;
    edges.back().settleSamples = 96.0;
    const auto got = framed(edges);
    ASSERT_EQ(got.size(), 1U);
    EXPECT_EQ(got[0].bounces, 3);
    EXPECT_NEAR(got[0].longestBounceSeconds, 0.002, 1e-9);
}

}  // namespace
}  // namespace trueunit
