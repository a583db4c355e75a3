// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTest>

#include "tests/support/snapshot_builder.h"
#include "tests/support/widget_rig.h"
#include "widgets/character_grid.h"

namespace trueunit::test {
namespace {

TEST(CharacterGrid, FlagsEveryInstantOfTheNewestCharacter) {
    const auto snapshot = SnapshotBuilder().text("RYT").build();
    CharacterGrid grid;
    grid.show(snapshot);
    EXPECT_EQ(grid.flagCount(), static_cast<int>(snapshot->traces.back()->instants.size()));
    grid.select(snapshot->traces[10]->number);
    EXPECT_EQ(grid.flagCount(), static_cast<int>(snapshot->traces[10]->instants.size()));
}

// One unit is 22 ms; one turn of the cam sleeve is a character of 7.42 units, so a unit is 360 / 7.42 = 48.518 degrees.
TEST(CharacterGrid, CursorsReadMillisecondsUnitsAndDegrees) {
    CharacterGrid grid;
    grid.show(SnapshotBuilder().build());
    grid.setCursors({1.0, 3.5});
    EXPECT_EQ(grid.cursorText(), u("A  22.00 ms  1.000 units  48.5°\n"
                                   "B  77.00 ms  3.500 units  169.8°\n"
                                   "B − A  +55.00 ms  +2.500 units  +121.3°"));
}

TEST(CharacterGrid, CursorsGiveNoDegreesWhileTheCharacterPeriodIsUnknown) {
    CharacterGrid grid;
    grid.show(SnapshotBuilder().withoutStop().build());
    grid.setCursors({2.0, std::nullopt});
    EXPECT_EQ(grid.cursorText(), u("A  44.00 ms  2.000 units"));
    grid.show(nullptr);
    EXPECT_TRUE(grid.cursorText().isEmpty());
}

TEST(CharacterGrid, ANoteStandsAtTheCursorThatWasMovedLast) {
    CharacterGrid grid;
    grid.show(SnapshotBuilder().build());
    grid.setCursors({1.0, std::nullopt});
    EXPECT_EQ(grid.noteUnits(), 1.0);
    grid.setCursors({1.0, 3.5});
    EXPECT_EQ(grid.noteUnits(), 3.5);
    grid.setCursors({1.2, 3.5});
    EXPECT_EQ(grid.noteUnits(), 1.2);
}

TEST(CharacterGrid, TheCursorsComeWhereTheyReadSomethingAndANoteWithThem) {
    CharacterGrid grid;
    grid.show(SnapshotBuilder().build());
    const double furthest = grid.noteUnits();  // without cursors
    grid.toggleCursors();
    EXPECT_EQ(grid.cursors()[1].value(), furthest);
    EXPECT_NEAR(grid.cursors()[0].value(), furthest, 1.1);
    EXPECT_EQ(grid.cursors()[0].value(), std::round(grid.cursors()[0].value()));
    EXPECT_EQ(grid.noteUnits(), furthest);
}

TEST(CharacterGrid, ADraggedCursorCatchesOnAnEdgeUnlessCtrlIsHeld) {
    CharacterGrid grid;
    grid.resize(960, 376);
    grid.show(SnapshotBuilder().build());
    static_cast<QWidget&>(grid).show();
    settle();
    const double edge = grid.noteUnits();
    grid.setCursors({edge + 0.4, std::nullopt});
    auto* plot = grid.findChild<QWidget*>(QStringLiteral("plot"));
    const auto at = [&](double units) { return grid.placeOf(units, 0.5) - plot->pos(); };
    const QPoint beside = at(edge) + QPoint(3, 0);  // nearer to the boundary
    QTest::mousePress(plot, Qt::LeftButton, {}, at(edge + 0.4));
    QTest::mouseMove(plot, beside);
    EXPECT_EQ(grid.cursors()[0].value(), edge);
    QMouseEvent free(QEvent::MouseMove, beside, plot->mapToGlobal(beside), Qt::LeftButton, Qt::LeftButton,
                     Qt::ControlModifier);
    QCoreApplication::sendEvent(plot, &free);
    EXPECT_NEAR(grid.cursors()[0].value(), edge, 0.1);
    EXPECT_NE(grid.cursors()[0].value(), edge);
}

TEST(CharacterGrid, KeysMoveTheCursorsAndSayWhere) {
    CharacterGrid grid;
    grid.show(SnapshotBuilder().build());
    QSignalSpy moved(&grid, &CharacterGrid::cursorsChanged);
    QTest::keyClick(&grid, Qt::Key_C);
    const Cursors before = grid.cursors();
    QTest::keyClick(&grid, Qt::Key_Right, Qt::ShiftModifier);
    QTest::keyClick(&grid, Qt::Key_Left, Qt::ControlModifier);
    EXPECT_EQ(moved.count(), 3);
    EXPECT_NEAR(grid.cursors()[0].value(), before[0].value() + 0.01, 1e-9);
    EXPECT_NEAR(grid.cursors()[1].value(), before[1].value() - 0.01, 1e-9);
    QTest::keyClick(&grid, Qt::Key_C);
    EXPECT_FALSE(grid.cursors()[0].has_value());
}

TEST(CharacterGrid, KeysChooseAnOlderCharacterAndComeBackToTheNewest) {
    const auto snapshot = SnapshotBuilder().build();
    CharacterGrid grid;
    grid.show(snapshot);
    QSignalSpy chosen(&grid, &CharacterGrid::characterSelected);
    QTest::keyClick(&grid, Qt::Key_Left);
    ASSERT_EQ(chosen.count(), 1);
    EXPECT_EQ(chosen.at(0).at(0).toULongLong(), snapshot->traces[snapshot->traces.size() - 2]->number);
    QTest::keyClick(&grid, Qt::Key_Right);
    EXPECT_EQ(chosen.at(1).at(0).toULongLong(), 0u);
}

TEST(CharacterGrid, StaysFrozenWhileNewSnapshotsArrive) {
    FrozenFrame frame;
    frame.snapshot = SnapshotBuilder().text("R").build();
    CharacterGrid grid;
    grid.showFrame(frame);
    const QString frozen = grid.accessibleDescription();
    grid.show(SnapshotBuilder().text("T").build());
    EXPECT_EQ(grid.accessibleDescription(), frozen);
    grid.showLive();
    EXPECT_NE(grid.accessibleDescription(), frozen);
}

TEST(CharacterGrid, DoubleClickAsksForANoteThere) {
    CharacterGrid grid;
    grid.resize(960, 376);
    grid.show(SnapshotBuilder().build());
    static_cast<QWidget&>(grid).show();
    settle();
    QSignalSpy asked(&grid, &CharacterGrid::noteRequested);
    auto* plot = grid.findChild<QWidget*>(QStringLiteral("plot"));
    ASSERT_NE(plot, nullptr);
    QTest::mouseDClick(plot, Qt::LeftButton, {}, plot->rect().center());
    ASSERT_EQ(asked.count(), 1);
    EXPECT_GT(asked.at(0).at(0).toDouble(), 2.0);
    EXPECT_LT(asked.at(0).at(0).toDouble(), 5.0);
}

}  // namespace
}  // namespace trueunit::test
