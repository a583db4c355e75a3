// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/tape_view.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QSignalSpy>
#include <QTest>
#include <memory>
#include <utility>

#include "tests/support/snapshot_builder.h"
#include "tests/support/widget_rig.h"
#include "widgets/tape_words.h"

namespace trueunit::test {
namespace {

TEST(TapeView, ClickEmitsTheNumberOfTheCharacter) {
    const auto snapshot = SnapshotBuilder().build();
    TapeView tape;
    tape.resize(960, 120);
    tape.show(snapshot);
    const auto number = snapshot->tape[snapshot->tape.size() - 3].number;
    QSignalSpy clicked(&tape, &TapeView::characterClicked);
    QTest::mouseClick(&tape, Qt::LeftButton, {}, tape.cellOf(number).center().toPoint());
    ASSERT_EQ(clicked.count(), 1);
    EXPECT_EQ(clicked.at(0).at(0).toULongLong(), number);
    QTest::mouseClick(&tape, Qt::LeftButton, {}, QPoint(3, 3));
    EXPECT_EQ(clicked.count(), 1);
}

TEST(TapeView, IsDrawnAnewWhenATextIsGivenThoughNoCharacterCame) {
    Snapshot s = SnapshotBuilder().value();
    for (TapeCharacter& c : s.tape) c.due = c.code;
    TapeView tape;
    tape.resize(960, 120);
    tape.show(std::make_shared<const Snapshot>(s));
    const QImage before = tape.grab().toImage();
    s.tape[s.tape.size() - 4].due = s.tape[s.tape.size() - 4].code ^ 4U;  // the newest is as it was
    tape.show(std::make_shared<const Snapshot>(s));
    EXPECT_NE(tape.grab().toImage(), before);
}

// Combinations of ITU-T Recommendation S.1, level 1 as bit 0: letters 31, figures 27, T or 5 16, E or 3 1.
Snapshot tapeOf(std::initializer_list<TapeCharacter> characters) {
    Snapshot s = SnapshotBuilder().value();
    s.tape.clear();
    for (TapeCharacter c : characters) {
        c.number = s.tape.size() + 1;
        s.tape.push_back(std::move(c));
    }
    return s;
}

TEST(TapeWords, ALostShiftExplainsTheFiguresBehindIt) {
    const Snapshot s = tapeOf({{0, 1, "3", true, 1U},
                               {0, 27, "figures", true, 31U},  // the mark of its third level is lost
                               {0, 16, "5", true, 16U},
                               {0, 4, "space", true, 4U},
                               {0, 1, "3", true, 1U},
                               {0, 31, "letters", true, 31U},
                               {0, 16, "T", true, 16U}});
    const auto causes = wrongCase(s);
    ASSERT_EQ(causes.size(), 7U);
    EXPECT_EQ(causes[2], 1U);
    EXPECT_FALSE(causes[3]);  // a space is one in either case
    EXPECT_EQ(causes[4], 1U);
    EXPECT_FALSE(causes[6]);
    TapeView tape;
    tape.resize(960, 120);
    tape.show(std::make_shared<const Snapshot>(s));
    EXPECT_TRUE(tape.wordsOf(5).startsWith(
        u("3, prints as a figure because the shift to letters 3 characters before was lost")))
        << tape.wordsOf(5).toStdString();
    EXPECT_TRUE(tape.wordsOf(2).contains(u("wrong: level 3 lost")));
}

TEST(TapeWords, ACharacterThatCameAsAShiftIsNamed) {
    const Snapshot s = tapeOf({{0, 31, "letters", true, 31U},
                               {0, 27, "figures", true, 26U},  // G with the space of its first level filled
                               {0, 16, "5", true, 16U}});
    EXPECT_EQ(wrongCase(s)[2], 1U);
    const QString words = characterWords(s.tape, 2, wrongCase(s));
    EXPECT_TRUE(words.contains(u("because the one 1 character before came as the shift to figures")))
        << words.toStdString();
}

TEST(TapeWords, ATapeInItsRightCaseNeedsNoExplanation) {
    Snapshot s = tapeOf({{0, 27, "figures", true, 27U}, {0, 16, "5", true, 16U}, {0, 1, "3", true, 5U}});
    for (const auto& cause : wrongCase(s)) EXPECT_FALSE(cause);
    s.options.code = "ita2-unshift";  // the space itself returns to letters
    s.tape[1] = {2, 4, "space", true, 4U};
    s.tape[2] = {3, 16, "T", true, 16U};
    for (const auto& cause : wrongCase(s)) EXPECT_FALSE(cause);
}

TEST(TapeWords, ACharacterThatCameWrongNamesTheOneThatWasDue) {
    Snapshot s = tapeOf({{0, 27, "figures", true, 27U}, {0, 7, "7", true, 6U}, {0, 4, "space", true, 4U}});
    s.tape[1].duePrint = "8";
    s.tape[2].duePrint = "space";
    const auto causes = wrongCase(s);
    EXPECT_TRUE(characterWords(s.tape, 1, causes).startsWith(u("7, wrong: level 1 filled, due \u201c8\u201d")))
        << characterWords(s.tape, 1, causes).toStdString();
    EXPECT_EQ(characterWords(s.tape, 2, causes), u("space"));
}

TEST(TapeWords, AFeedThatPassesOverAShiftIsWhyLettersPrintAsFigures) {
    Snapshot s = tapeOf({{0, 27, "figures", true, 27U}, {0, 16, "5", true, 16U}, {0, 1, "3", true, {}}});
    s.tape[2].passed = {31U};
    s.tape[2].passedPrint = {"letters"};
    EXPECT_EQ(wrongCase(s)[2], 2U);
    EXPECT_FALSE(wrongCase(s)[1]);
    const QString words = characterWords(s.tape, 2, wrongCase(s));
    EXPECT_TRUE(words.contains(u("prints as a figure because the feed passed over the shift to letters")))
        << words.toStdString();
    EXPECT_TRUE(words.contains(u("passed over before it: \u201cletters\u201d"))) << words.toStdString();
}

TEST(TapeWords, ThePrintSixBehindIsCountedAlongThePaperWhichASlippingFeedDoesNotMove) {
    Snapshot s = tapeOf({{0, 1, "A", true, {}},
                         {0, 2, "B", true, {}},
                         {0, 3, "C", true, {}},
                         {0, 3, "C", true, {}},
                         {0, 4, "D", true, {}},
                         {0, 6, "F", true, {}},
                         {0, 7, "G", true, {}},
                         {0, 8, "H", true, {}}});
    s.tape[3].again = true;
    s.tape[5].passed = {5U};
    s.tape[5].passedPrint = {"E"};
    const QString last = printWords(s.tape, 6);  // A, six holes before
    EXPECT_TRUE(last.contains(u("\u201cA\u201d is printed beside these holes"))) << last.toStdString();
    EXPECT_TRUE(characterWords(s.tape, 3, {}).startsWith(u("C, sent once before")));
    EXPECT_TRUE(characterWords(s.tape, 5, {}).startsWith(u("F, passed over before it: \u201cE\u201d")));
}

TEST(TapeView, CannotTellWhatStandsTooCloseToASlip) {
    TapeView view;
    view.resize(900, 140);
    Snapshot s = tapeOf({{0, 24, "O", true, {}}, {0, 4, "space", true, {}}, {0, 4, "space", true, {}}});
    s.tape[0].instead = 26U;
    s.tape[2].again = true;
    view.show(std::make_shared<const Snapshot>(s));
    EXPECT_TRUE(view.remark().endsWith(u("grey: cannot tell, too close to a slip"))) << view.remark().toStdString();
    const QString words = characterWords(s.tape, 0, {});
    EXPECT_EQ(words, u("O, not what the text has here, but too close to a slip to say why"));
}

TEST(TapeView, SaysHowOftenTheFeedSlipped) {
    TapeView view;
    view.resize(900, 140);
    Snapshot s = tapeOf({{0, 16, "T", true, 16U}, {0, 16, "T", true, {}}, {0, 20, "H", true, 20U}});
    s.tape[1].again = true;
    view.show(std::make_shared<const Snapshot>(s));
    EXPECT_EQ(view.remark(), u("1 slip of the feed on this tape: \u2500 sent twice, \u2502 passed over"));
    s.tape[1].again = false;
    s.reading.text.feedSlips = 39;
    s.reading.text.wrongCharacters = 0;
    view.show(std::make_shared<const Snapshot>(s));
    EXPECT_EQ(view.remark(), u("39 slips of the feed, none marked here"));
}

// What is looked at stands still while the tape runs on, and the newest come back.
TEST(TapeView, GoesBackAlongTheTapeAndStandsThere) {
    Snapshot s = SnapshotBuilder().value();
    s.tape.clear();
    const auto add = [&s](quint64 number) { s.tape.push_back({number, 16, "T", true, 16U}); };
    for (quint64 n = 1; n <= 90; ++n) add(n);
    s.tape[9].code = 0;
    TapeView view;
    view.resize(700, 120);
    view.show(std::make_shared<const Snapshot>(s));
    ASSERT_LT(view.visibleCharacters(), 60);
    EXPECT_TRUE(view.cellOf(10).isEmpty());
    EXPECT_TRUE(view.remark().endsWith(u("elsewhere on the tape (turn the wheel)"))) << view.remark().toStdString();
    QTest::keyClick(&view, Qt::Key_Home);
    const QRectF there = view.cellOf(10);
    EXPECT_FALSE(there.isEmpty());
    EXPECT_TRUE(view.cellOf(90).isEmpty());
    EXPECT_TRUE(view.remark().contains(u(" back: 1 character wrong on this tape"))) << view.remark().toStdString();
    add(91);
    view.show(std::make_shared<const Snapshot>(s));
    EXPECT_EQ(view.cellOf(10), there);
    s.tape.erase(s.tape.begin(), s.tape.begin() + 60);  // what was in view is no longer kept
    view.show(std::make_shared<const Snapshot>(s));
    EXPECT_FALSE(view.cellOf(61).isEmpty());
    QTest::keyClick(&view, Qt::Key_End);
    EXPECT_FALSE(view.cellOf(91).isEmpty());
    EXPECT_FALSE(view.remark().contains(u(" back: ")));
}

TEST(TapeView, BringsTheSelectedCharacterIntoView) {
    Snapshot s = SnapshotBuilder().value();
    s.tape.clear();
    for (quint64 n = 1; n <= 90; ++n) s.tape.push_back({n, 16, "T", true, 16U});
    TapeView view;
    view.resize(700, 120);
    view.show(std::make_shared<const Snapshot>(s));
    view.setSelected(20);
    EXPECT_FALSE(view.cellOf(20).isEmpty());
    view.setSelected(0);
    EXPECT_FALSE(view.cellOf(90).isEmpty());
    EXPECT_TRUE(view.cellOf(20).isEmpty());
}

}  // namespace
}  // namespace trueunit::test
