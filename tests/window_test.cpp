// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QDir>
#include <QElapsedTimer>
#include <QFileInfo>
#include <QImage>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QScrollArea>
#include <QTemporaryDir>
#include <QTest>
#include <functional>

#include "app/bench_panels.h"
#include "app/help_window.h"
#include "app/machine_bar.h"
#include "app/main_window.h"
#include "app/message_line.h"
#include "app/note_editor.h"
#include "app/session.h"
#include "app/source_picker.h"
#include "app/top_bar.h"
#include "tests/support/bench_window.h"
#include "widgets/bias_gauge.h"
#include "widgets/character_grid.h"
#include "widgets/eccentric_panel.h"
#include "widgets/findings_panel.h"
#include "widgets/reading_row.h"
#include "widgets/tape_view.h"

namespace trueunit {
namespace {

using Window = test::BenchWindow;

TEST_F(Window, OpensOnTheDemonstrationWhenNoInputIsChosen) {
    EXPECT_EQ(session.sourceKind(), SourceKind::scenario);
    EXPECT_TRUE(waitUntil([this] { return shown() && shown()->state == SignalState::reading; }));
    EXPECT_TRUE(panels().eccentric().isVisible());
}

TEST_F(Window, TheGaugeFollowsTheEccentric) {
    Options options = session.options();
    options.windowCharacters = 8;
    ASSERT_TRUE(session.setOptions(options));
    ASSERT_TRUE(biasIsKnown());
    const double before = *bias();
    for (int i = 0; i < 3; ++i) press(Qt::Key_Comma, Qt::ControlModifier);  // three coarse turns: marks shorter
    const double turned = -3.0 * EccentricPanel::kCoarsePercent;
    EXPECT_DOUBLE_EQ(session.eccentricPercent(), turned);
    // The scenario scatters each instant by 0.5 % rms; eight characters carry the bias to some 0.3 %.
    EXPECT_TRUE(waitUntil([&] { return bias() && std::abs(*bias() - (before + turned)) < 1.0; }))
        << "from " << before << " to " << bias().value_or(0.0);
}

TEST_F(Window, WhatIsFrozenStaysWhileTheInputGoesOn) {
    ASSERT_TRUE(biasIsKnown());
    press(Qt::Key_Space);
    ASSERT_TRUE(window.keeper().frozen());
    const auto frozen = panels().shown();
    const QString digits = panels().gauge().digits();
    ASSERT_TRUE(waitUntil([&] { return session.latest()->serial > frozen->serial + 20; }));
    EXPECT_EQ(panels().shown(), frozen);
    EXPECT_EQ(panels().gauge().digits(), digits);
    EXPECT_TRUE(panels().grid().isFrozen());
    press(Qt::Key_Space);
    EXPECT_FALSE(window.keeper().frozen());
    EXPECT_TRUE(waitUntil([&] { return panels().shown() && panels().shown()->serial > frozen->serial; }));
    EXPECT_FALSE(panels().grid().isFrozen());
}

TEST_F(Window, TheSpaceBarFreezesWhicheverButtonHasTheFocusButWritesInATextField) {
    ASSERT_TRUE(waitUntil([this] { return shown() != nullptr; }));
    window.bar().source().setFocus();
    QTest::keyClick(&window.bar().source(), Qt::Key_Space);
    EXPECT_TRUE(window.keeper().frozen());
    auto* name = window.bar().machine().findChild<QLineEdit*>();
    ASSERT_NE(name, nullptr);
    name->clear();
    name->setFocus();
    QTest::keyClicks(name, "Skerry 2");
    EXPECT_EQ(window.bar().machine().machine(), "Skerry 2");
    EXPECT_TRUE(window.keeper().frozen());
}

TEST_F(Window, AFrameThatWasLetGoComesBackWithItsNotes) {
    ASSERT_TRUE(waitUntil([this] { return shown() != nullptr; }));
    press(Qt::Key_Space);
    window.keeper().addNote(2.0, 0.5, "rounded");
    press(Qt::Key_Space);
    ASSERT_FALSE(window.keeper().frozen());
    press(Qt::Key_Space, Qt::ShiftModifier);
    ASSERT_TRUE(window.keeper().frozen());
    EXPECT_EQ(window.keeper().frame().notes.size(), 1U);
}

TEST_F(Window, ANoteIsWrittenByKeyAndChangesTheReport) {
    ASSERT_TRUE(biasIsKnown());
    press(Qt::Key_Space);
    QTemporaryDir folder;
    ASSERT_TRUE(window.writeReportTo(folder.filePath("without.png")));
    press(Qt::Key_N);
    auto* words = qobject_cast<QPlainTextEdit*>(QApplication::focusWidget());
    ASSERT_NE(words, nullptr);
    QTest::keyClicks(words, "front of the mark is early");
    QTest::keyClick(words, Qt::Key_Return);
    ASSERT_EQ(window.keeper().frame().notes.size(), 1U);
    EXPECT_EQ(window.keeper().frame().notes[0].text, "front of the mark is early");
    ASSERT_TRUE(window.writeReportTo(folder.filePath("with.png")));
    EXPECT_NE(QImage(folder.filePath("with.png")), QImage(folder.filePath("without.png")));
}

TEST_F(Window, TheBarOfAFrozenFrameEndsWhereThePanelsDo) {
    ASSERT_TRUE(biasIsKnown());
    press(Qt::Key_Space);
    QTest::qWait(100);
    const QWidget* bar = nullptr;
    for (const QLabel* label : window.messages().findChildren<QLabel*>())
        if (label->accessibleName().startsWith("Frozen")) bar = label;
    ASSERT_NE(bar, nullptr);
    const int right = bar->mapTo(&window, QPoint(bar->width(), 0)).x();
    EXPECT_EQ(right, panels().gauge().mapTo(&window, QPoint(panels().gauge().width(), 0)).x());
    EXPECT_GE(bar->width(), bar->fontMetrics().horizontalAdvance(bar->accessibleName()));
}

TEST_F(Window, ANoteOpensBelowTheGridUnderThePlaceItWasAskedForAt) {
    ASSERT_TRUE(biasIsKnown());
    const auto* slip = panels().findChild<NoteEditor*>();
    ASSERT_NE(slip, nullptr);
    for (const QSize size : {QSize(1366, 768), QSize(1440, 900)}) {
        window.resize(size);
        QTest::qWait(50);
        emit panels().grid().noteRequested(3.0, 0.5);
        ASSERT_TRUE(slip->isVisible());
        const QPoint place = panels().grid().mapTo(&panels(), panels().grid().placeOf(3.0, 0.5));
        EXPECT_LE(std::abs(slip->geometry().center().x() - place.x()), 2);
        const QRect grid(panels().grid().mapTo(&panels(), QPoint()), panels().grid().size());
        EXPECT_FALSE(slip->geometry().intersects(grid));
        EXPECT_TRUE(panels().rect().contains(slip->geometry()));
    }
}

TEST_F(Window, TheGaugeStaysNearlyAsLargeBesideTheMomentBefore) {
    ASSERT_TRUE(biasIsKnown());
    window.resize(1440, 900);
    QTest::qWait(50);
    const int alone = panels().gauge().height();
    press(Qt::Key_B);
    QTest::qWait(50);
    EXPECT_GE(panels().gauge().height(), 0.95 * alone);
}

TEST_F(Window, TwoThirdsOfTheReadingsStayInSightBesideTheMomentBefore) {
    ASSERT_TRUE(biasIsKnown());
    window.resize(1366, 748);
    press(Qt::Key_B);
    QTest::qWait(50);
    int whole = 0, all = 0;
    for (const ReadingRow* row : panels().findChildren<ReadingRow*>()) {
        ++all;
        whole += row->visibleRegion().boundingRect().height() == row->height();
    }
    EXPECT_GE(3 * whole, 2 * all) << whole << " of " << all;
}

TEST_F(Window, SpeedAndBiasStayInSightBesideTallFindings) {
    ASSERT_TRUE(biasIsKnown());
    for (const QSize size : {QSize(1366, 748), QSize(1440, 900), QSize(720, 450)}) {
        window.resize(size);
        for (const bool tall : {true, false}) {
            emit panels().findings().tallWanted(tall);
            QTest::qWait(50);
            const auto rows = panels().findChildren<ReadingRow*>();
            for (const ReadingRow* row : rows) {
                const bool stays = row == rows[0] || row == rows[3] || row->text().within == false;
                EXPECT_EQ(row->isVisible(), stays || !tall) << row->said().toStdString();
            }
            const bool scrolls = size.height() < 480;
            EXPECT_TRUE(scrolls || rows[3]->visibleRegion().boundingRect() == rows[3]->rect());
        }
    }
}

TEST_F(Window, CursorsSetBeforeFreezingStandOnTheFrame) {
    ASSERT_TRUE(biasIsKnown());
    panels().grid().toggleCursors();
    press(Qt::Key_Space);
    EXPECT_TRUE(window.keeper().frame().cursors[0].has_value());
    EXPECT_TRUE(window.keeper().frame().cursors[1].has_value());
}

TEST_F(Window, TheReportIsNamedAfterTheMachineAndTheLineSaysWhereItIs) {
    ASSERT_TRUE(biasIsKnown());
    QTemporaryDir folder;
    const QString path = folder.filePath("page.png");
    ASSERT_TRUE(window.writeReportTo(path));
    const QImage page(path);
    EXPECT_GE(page.width(), 1240);  // A4 at 150 dots an inch
    EXPECT_GE(page.height(), 1754);
    EXPECT_TRUE(page.text("Title").startsWith("Skerry 2"));  // the demonstration's machine
    EXPECT_TRUE(window.messages().sentence().contains("page.png"));
    EXPECT_FALSE(window.messages().sentence().contains(folder.path()));  // that stands in the tip
    bool told = false;
    for (const QLabel* label : window.messages().findChildren<QLabel*>())
        told = told || label->toolTip() == QDir::toNativeSeparators(folder.path());
    EXPECT_TRUE(told);
}

TEST_F(Window, F1ExplainsWhatThePointerIsOn) {
    EXPECT_EQ(HelpWindow::pageUnder(&panels().gauge()), "bias.md");
    EXPECT_EQ(HelpWindow::pageUnder(&panels().findings()), "findings.md");
    EXPECT_EQ(HelpWindow::pageUnder(&panels().tape()), "tape.md");
    EXPECT_EQ(HelpWindow::pageUnder(&panels().eccentric()), "adjusting.md");
    EXPECT_EQ(HelpWindow::pageUnder(&window.bar()), "index.md");
    QStringList pages;
    for (const ReadingRow* row : window.findChildren<ReadingRow*>()) pages << HelpWindow::pageUnder(row);
    EXPECT_TRUE(pages.contains("shaft.md"));
    for (const QString& page : pages) EXPECT_TRUE(HelpWindow::pageNames().contains(page)) << page.toStdString();
}

TEST_F(Window, AReportThatCannotBeWrittenIsOneSentenceAndNoFile) {
    ASSERT_TRUE(biasIsKnown());
    QTemporaryDir folder;
    EXPECT_FALSE(window.writeReportTo(folder.filePath("no such folder/page.png")));
    EXPECT_TRUE(window.messages().sentence().contains("could not be written"));
    EXPECT_TRUE(QDir(folder.path()).isEmpty());
}

TEST_F(Window, ASpeedThatIsNoSpeedIsRefusedInOneSentenceAndTheOldOneStays) {
    Options options = session.options();
    options.baud = 4545.0;
    emit window.bar().machine().wanted(options);
    EXPECT_FALSE(session.options().baud.has_value());
    EXPECT_EQ(window.messages().sentence(), "The speed must lie between 20 and 200 baud.");
}

TEST_F(Window, TheWindowOfCharactersGoesRoundByKey) {
    ASSERT_EQ(session.options().windowCharacters, 0);
    std::vector<int> seen;
    for (int i = 0; i < 5; ++i) {
        press(Qt::Key_W);
        seen.push_back(session.options().windowCharacters);
    }
    EXPECT_EQ(seen, (std::vector<int>{1, 8, 32, 128, 0}));
}

TEST_F(Window, TheGaugeAloneHidesAllElseAndEscapeBringsItBack) {
    press(Qt::Key_G);
    QTest::qWait(50);
    EXPECT_FALSE(panels().grid().isVisible());
    EXPECT_FALSE(window.bar().isVisible());
    EXPECT_GT(panels().gauge().width(), 1300);
    press(Qt::Key_Escape);
    EXPECT_TRUE(panels().grid().isVisible());
    EXPECT_TRUE(window.bar().isVisible());
}

TEST_F(Window, FitsSmallScreens) {
    EXPECT_LE(window.minimumSizeHint().width(), 720);  // 1440 x 900 at 200 %
    EXPECT_LE(window.minimumSizeHint().height(), 450);
    for (const QSize size : {QSize(1366, 768), QSize(720, 450)}) {
        window.resize(size);
        QTest::qWait(50);
        EXPECT_EQ(window.size(), size);
        const QRect gauge(panels().gauge().mapTo(&window, QPoint(0, 0)), panels().gauge().size());
        EXPECT_TRUE(window.rect().contains(gauge)) << size.width();  // never scrolled away
    }
}

TEST_F(Window, NoPanelIsCutOffAtItsSideAtAnyWidth) {
    for (int width = 720; width <= 1440; width += 40) {
        window.resize(width, 768);
        QTest::qWait(20);
        for (const QScrollArea* area : window.findChildren<QScrollArea*>()) {
            if (!area->isVisible()) continue;
            const auto fits = [&] { return area->widget()->width() <= area->viewport()->width(); };
            EXPECT_TRUE(QTest::qWaitFor(fits, 1000)) << width << ": " << area->widget()->width();
        }
    }
}

TEST_F(Window, EveryActionHasAKeyAndWords) {
    for (const QAction* action : window.actions()) {
        EXPECT_FALSE(action->shortcuts().isEmpty()) << action->text().toStdString();
        EXPECT_FALSE(action->statusTip().isEmpty()) << action->text().toStdString();
    }
    QStringList keys;
    for (const QAction* action : window.actions())
        for (const QKeySequence& key : action->shortcuts()) keys += key.toString();
    EXPECT_EQ(keys.removeDuplicates(), 0);
}

TEST_F(Window, EveryControlHasAnAccessibleName) {
    for (const QWidget* widget : window.findChildren<QWidget*>()) {
        if (widget->focusPolicy() == Qt::NoFocus || !widget->isVisible()) continue;
        const auto* button = qobject_cast<const QAbstractButton*>(widget);
        const bool named = !widget->accessibleName().isEmpty() || (button && !button->text().isEmpty());
        EXPECT_TRUE(named) << widget->metaObject()->className() << " in "
                           << widget->parentWidget()->metaObject()->className();
    }
}

}  // namespace
}  // namespace trueunit
