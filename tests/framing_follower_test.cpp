// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/frame/framing_follower.h"

#include <gtest/gtest.h>

#include <string>

#include "tests/support/edge_train.h"
#include "tests/support/texts.h"

namespace trueunit {
namespace {

using test::CharacterBuilder;
using test::kTrainSecondsPerSample;
using Event = FramingFollower::Event;

// Pushes edges one by one and gathers what comes out.
struct Reader {
    FramingFollower follower{5, kTrainSecondsPerSample};
    std::vector<Character> characters;
    std::vector<Event> events;

    void push(const std::vector<Edge>& edges) {
        for (const Edge& e : edges) {
            note(follower.push({e}));
            const std::size_t before = characters.size();
            follower.advance(e.time * kTrainSecondsPerSample, characters);
            if (characters.size() == before) continue;
            std::vector<const Character*> recent;
            const std::size_t first = characters.size() > 32 ? characters.size() - 32 : 0;
            for (std::size_t i = first; i < characters.size(); ++i) recent.push_back(&characters[i]);
            note(follower.follow(recent));
        }
    }
    void note(Event e) {
        if (e != Event::none) events.push_back(e);
        if (e == Event::takenBack) characters.clear();
    }
};

TEST(FramingFollower, FindsTheFramingAndLosesNoCharacterThatCameBefore) {
    const auto codes = test::mixedText(40, 4);
    Reader reader;
    reader.push(test::edgesOf(CharacterBuilder{}.characters(codes)));
    EXPECT_EQ(reader.events, std::vector<Event>{Event::found});
    ASSERT_GE(reader.characters.size(), 39U);
    for (std::size_t i = 0; i < reader.characters.size(); ++i) {
        EXPECT_EQ(reader.characters[i].code, codes[i]);
        EXPECT_EQ(reader.characters[i].number, i);
    }
}

TEST(FramingFollower, FollowsAMachineThatChangesItsSpeedAndBias) {
    CharacterBuilder builder;
    Reader reader;
    double at = 0.0;
    std::vector<Edge> edges;
    for (int i = 0; i < 120; ++i) {  // 4 % slower in the end, and the bias goes from 0 to 20 %
        builder.unit = 0.022 * (1.0 + 0.04 * i / 120.0);
        builder.biasPercent = 20.0 * i / 120.0;
        Character c = builder.character(0, test::mixedText(120, 6)[static_cast<std::size_t>(i)]);
        c.start = at += 7.42 * builder.unit;
        for (const Edge& e : test::edgesOf({c})) edges.push_back(e);
    }
    reader.push(edges);
    EXPECT_EQ(reader.events, std::vector<Event>{Event::found});
    EXPECT_NEAR(reader.follower.framing().unitSeconds / 0.022, 1.035, 0.01);  // the mean of the last 32
    EXPECT_LT(reader.follower.framing().biasSeconds, -0.14 * 0.022);
    for (const Character& c : reader.characters) EXPECT_TRUE(c.measurable());
}

TEST(FramingFollower, KnowsARestBeforeTheFirstEdge) {
    CharacterBuilder builder;
    builder.stopUnits = 1.0;
    for (const bool inverted : {false, true}) {
        Reader reader;
        reader.follower.seenFrom(0.0);  // the first character starts a second later
        reader.push(test::edgesOf(builder.characters(test::codesOf(std::string(40, 'E'))), inverted));
        ASSERT_TRUE(reader.follower.framed());
        EXPECT_EQ(reader.follower.framing().inverted, inverted);
        EXPECT_EQ(reader.events, std::vector<Event>{Event::found});
    }
}

TEST(FramingFollower, LetsGoOfASpeedThatCannotBeTheOneThatIsGiven) {
    CharacterBuilder builder;
    builder.stopUnits = 2.0;  // with it U is V and O in turn at double the speed
    const auto edges = test::edgesOf(builder.characters(test::codesOf(std::string(90, 'U'))));
    const auto middle = edges.begin() + static_cast<std::ptrdiff_t>(edges.size() / 2 / 4 * 4);
    Reader reader;
    reader.push({edges.begin(), middle});
    ASSERT_TRUE(reader.follower.framed());
    reader.follower.setNominal(1.0 / 0.022);
    reader.push({middle, edges.end()});
    ASSERT_TRUE(reader.follower.framed());
    EXPECT_NEAR(reader.follower.framing().unitSeconds, 0.022, 1e-5);
    reader.follower.setNominal(1.0 / 0.024);  // may be this machine's: it goes on
    EXPECT_TRUE(reader.follower.framed());
}

TEST(FramingFollower, RefusesManyEdgesThatAreNoCharacters) {
    std::vector<Edge> square;
    for (int i = 0; i < 400; ++i) {
        Edge e;
        e.time = 960.0 * i;
        e.up = i % 2 == 0;
        square.push_back(e);
    }
    Reader reader;
    reader.push(square);
    ASSERT_FALSE(reader.events.empty());
    EXPECT_EQ(reader.events.front(), Event::refused);
    EXPECT_TRUE(reader.characters.empty());
    EXPECT_FALSE(reader.follower.framed());
    EXPECT_TRUE(reader.follower.onlyAlternates());
}

TEST(FramingFollower, LetsGoWhenTheFramingNoLongerHolds) {
    CharacterBuilder builder;
    auto edges = test::edgesOf(builder.characters(test::mixedText(40, 4)));
    builder.unit = 0.01;  // another machine is switched to the line
    auto other = builder.characters(test::mixedText(60, 5));
    for (Character& c : other) c.start += 8.0;
    for (const Edge& e : test::edgesOf(other)) edges.push_back(e);
    Reader reader;
    reader.push(edges);
    EXPECT_NE(std::find(reader.events.begin(), reader.events.end(), Event::lost), reader.events.end());
    ASSERT_TRUE(reader.follower.framed());
    EXPECT_NEAR(reader.follower.framing().unitSeconds, 0.01, 1e-4);
    // What the first machine sent is of no account for the second.
    EXPECT_NE(std::find(reader.events.begin(), reader.events.end(), Event::takenBack), reader.events.end());
    for (const Character& c : reader.characters) EXPECT_GE(c.number, reader.follower.since());
    EXPECT_GE(reader.characters.size(), 30U);
}

TEST(FramingFollower, AfterAResetNumbersGoOnAndNothingIsReadAcross) {
    CharacterBuilder builder;
    Reader reader;
    reader.push(test::edgesOf(builder.characters(test::mixedText(30, 4))));
    const std::size_t before = reader.characters.size();
    reader.follower.reset();
    EXPECT_FALSE(reader.follower.framed());
    auto later = builder.characters(test::mixedText(30, 5));
    for (Character& c : later) c.start += 10.0;
    reader.push(test::edgesOf(later));
    ASSERT_GT(reader.characters.size(), before + 20);
    EXPECT_TRUE(reader.characters[before].afterGap);
    for (std::size_t i = 1; i < reader.characters.size(); ++i)
        EXPECT_GT(reader.characters[i].number, reader.characters[i - 1].number);
}

}  // namespace
}  // namespace trueunit
