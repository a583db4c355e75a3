// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/shown_trace.h"

#include <gtest/gtest.h>

#include "tests/support/frame_builder.h"

namespace trueunit {
namespace {

// 32 characters RY of long marks; the 20th is displaced most, its tape says what was due.
FrozenFrame frameWith(const EvidencePlaces& places) {
    FrozenFrame frame = test::frameOfLongMarks();
    Snapshot s = *frame.snapshot;
    Finding f;
    f.id = "contact-offset";
    f.seenAt = places;
    s.reading.findings = {f};
    auto worst = std::make_shared<CharacterTrace>(*s.traces[19]);
    for (TraceInstant& i : worst->instants) i.displacementPercent *= i.k == 3 ? 3.0 : 1.0;
    s.traces[19] = worst;
    for (TapeCharacter& c : s.tape) c.due = c.code;
    s.tape[11].due = s.tape[11].code ^ 0b00100U;
    s.tape[25].due = s.tape[25].code ^ 0b00001U;
    frame.snapshot = std::make_shared<const Snapshot>(s);
    return frame;
}

EvidencePlaces instants(std::vector<EvidencePlace> places) {
    EvidencePlaces p;
    p.instants = std::move(places);
    return p;
}

EvidencePlaces wrongCharacters(int level) {
    EvidencePlaces p;
    p.characters = true;
    p.level = level;
    return p;
}

TEST(ShownTrace, IsTheOneDisplacedMostWhereTheFindingIsSeen) {
    EXPECT_EQ(shownTrace(frameWith(instants({{0, Condition::mark}})))->number, 20U);
    EXPECT_NE(shownTrace(frameWith(instants({{6, Condition::mark}})))->number, 20U);
}

TEST(ShownTrace, IsAWrongCharacterAndRatherOneOfTheLevel) {
    EXPECT_EQ(shownTrace(frameWith(wrongCharacters(0)))->number, 26U);
    EXPECT_EQ(shownTrace(frameWith(wrongCharacters(3)))->number, 12U);
}

TEST(ShownTrace, IsTheNewestWhereNothingPointsToAnother) {
    EXPECT_EQ(shownTrace(frameWith({}))->number, 32U);
    EXPECT_EQ(shownTrace(test::frameOfLongMarks())->number, 32U);
}

TEST(ShownTrace, IsTheChosenOneWhateverTheFindings) {
    FrozenFrame frame = frameWith(instants({{0, Condition::mark}}));
    frame.characterNumber = 7;
    EXPECT_EQ(shownTrace(frame)->number, 7U);
    EXPECT_EQ(shownTrace(withFaultShown(frame))->number, 7U);
}

TEST(ShownTrace, AFrameFrozenAtTheNewestAndLeftAloneShowsItsFault) {
    FrozenFrame frame = frameWith(instants({{0, Condition::mark}}));
    frame.characterNumber = 32;
    EXPECT_EQ(shownTrace(withFaultShown(frame))->number, 20U);
    frame.notes.push_back({2.0, 1.0, "here"});
    EXPECT_EQ(shownTrace(withFaultShown(frame))->number, 32U);
}

TEST(ShownTrace, TwoMomentsSideBySideShowACharacterThatBothHave) {
    FrozenFrame before = frameWith(instants({{0, Condition::mark}}));
    const unsigned worst = shownTrace(before)->code;
    FrozenFrame after = test::frameOfLongMarks();
    auto without = std::make_shared<Snapshot>(*after.snapshot);
    std::erase_if(without->traces, [&](const auto& t) { return t->code == worst; });
    after.characterNumber = 0;

    FrozenFrame all = after;
    showAlike(before, all);
    EXPECT_EQ(shownTrace(before)->number, 20U);
    EXPECT_EQ(shownTrace(all)->code, worst);
    EXPECT_TRUE(areAlike(before, all));

    before.characterNumber = 0;
    after.snapshot = without;
    showAlike(before, after);
    EXPECT_NE(shownTrace(before)->code, worst);
    EXPECT_TRUE(areAlike(before, after));
}

TEST(ShownTrace, AMarkThatWasMissedIsHeldAgainstTheCharacterThatWasDue) {
    FrozenFrame before = frameWith(wrongCharacters(3));
    FrozenFrame after = test::frameOfLongMarks();
    const auto wrong = shownTrace(before);
    auto right = std::make_shared<Snapshot>(*after.snapshot);
    auto due = std::make_shared<CharacterTrace>(*right->traces[4]);
    due->code = wrong->code ^ 0b00100U;
    right->tape.clear();
    right->traces[4] = due;
    after.snapshot = right;
    after.characterNumber = 0;
    showAlike(before, after);
    EXPECT_EQ(shownTrace(before)->number, 12U);
    EXPECT_EQ(shownTrace(after)->number, due->number);
}

TEST(ShownTrace, WhatAPersonChoseStaysBesideTheOtherMoment) {
    FrozenFrame before = frameWith(instants({{0, Condition::mark}})), after = test::frameOfLongMarks();
    before.characterNumber = 7;
    after.characterNumber = 8;
    showAlike(before, after);
    EXPECT_EQ(shownTrace(before)->number, 7U);
    EXPECT_EQ(shownTrace(after)->number, 8U);
    EXPECT_FALSE(areAlike(before, after)) << "R and Y in turn";
    before.characterNumber = 0;
    showAlike(before, after);
    EXPECT_EQ(shownTrace(after)->number, 8U);
    EXPECT_TRUE(areAlike(before, after));
}

TEST(ShownTrace, IsNoneBeforeACharacterHasCome) {
    FrozenFrame frame;
    frame.snapshot = std::make_shared<const Snapshot>();
    EXPECT_EQ(shownTrace(frame), nullptr);
}

}  // namespace
}  // namespace trueunit
