// SPDX-License-Identifier: GPL-3.0-or-later
// Adjusting through the real window: nudges and their words, across the bench, before and now, the margin.
#include <gtest/gtest.h>

#include <QAction>
#include <QDir>
#include <QImage>
#include <QTemporaryDir>
#include <QTest>
#include <functional>

#include "app/bench_panels.h"
#include "app/ear.h"
#include "app/main_window.h"
#include "app/message_line.h"
#include "app/session.h"
#include "widgets/bias_gauge.h"
#include "widgets/character_grid.h"
#include "widgets/comparison_panel.h"
#include "widgets/margin_view.h"
#include "widgets/trail_view.h"

namespace trueunit {
namespace {

Options running() {
    Options options;
    options.windowCharacters = 8;
    return options;
}

class Adjusting : public ::testing::Test {
protected:
    void open(const char* scenario) {
        ASSERT_TRUE(session.playScenario(std::string(TRUEUNIT_SCENARIOS "/") + scenario));
        window = std::make_unique<MainWindow>(session);
        window->resize(1366, 768);
        window->show();
        QTest::qWait(50);
    }
    static bool waitUntil(const std::function<bool()>& so, int seconds = 40) {
        return QTest::qWaitFor(so, seconds * 1000);
    }
    BenchPanels& panels() { return window->panels(); }
    BiasGauge& gauge() { return panels().gauge(); }
    const Snapshot& shown() { return *panels().shown(); }
    bool reads() {
        return waitUntil([this] { return panels().shown() && shown().reading.distortion.biasPercent.has_value(); });
    }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) { QTest::keyClick(window.get(), key, modifiers); }
    // With TRUEUNIT_PICTURES=folder, so that a person can look.
    void picture(const QString& name) {
        const QString folder = qEnvironmentVariable("TRUEUNIT_PICTURES");
        QTest::qWait(50);
        if (folder.isEmpty()) return;
        EXPECT_TRUE(window->grab().save(QDir(folder).filePath(name + QStringLiteral(".png"))));
    }

    Session session{running()};
    std::unique_ptr<MainWindow> window;
};

// The moves stand in the scenario file: 14, 9 at 15 s, 4 at 30 s, -1.5 at 45 s, 0 at 60 s; limit 5 %. After the last a
// hand at the window makes it worse, which no scenario could know.
TEST_F(Adjusting, EveryNudgeIsFoundAsItHappensAndTheWordsSayWhatToDo) {
    open("nudged.json");
    struct Move {
        double seconds, before, after;
        const char* next;
    };
    const Move moves[] = {
        {15, 14, 9, "go on the same way, about 2 times that nudge"},
        {30, 9, 4, "in limits, 4 % from zero; go on, or tighten the screws"},
        {45, 4, -1.5, "nearer, in limits; tighten the screws and watch that it stays"},
        {60, -1.5, 0, "nearer, in limits; tighten the screws and watch that it stays"},
    };
    constexpr double kCharacter = 7.42 * 0.022;
    std::size_t count = 0;
    EXPECT_TRUE(waitUntil(
        [&] { return window->findChild<TrailView*>()->remark().startsWith("still learning the scatter: "); }));
    EXPECT_TRUE(waitUntil([&] { return window->findChild<TrailView*>()->remark().startsWith("last "); }));
    for (const Move& move : moves) {
        ASSERT_TRUE(waitUntil([&] { return panels().shown() && shown().nudges.size() > count; })) << move.seconds;
        const Nudge found = shown().nudges.back();
        EXPECT_NEAR(found.seconds, move.seconds, 1.5 * kCharacter);
        EXPECT_LT(found.foundBy - found.number, 3U) << move.seconds;
        EXPECT_EQ(shown().nudges.size(), ++count);
        waitUntil([&] { return shown().seconds > move.seconds + 5.0; });  // firmer with some characters more
        EXPECT_NEAR(shown().nudges.back().before.value, move.before, 0.6);
        EXPECT_NEAR(shown().nudges.back().after.value, move.after, 0.6);
        EXPECT_TRUE(gauge().lastNudge().startsWith("last nudge: ")) << gauge().lastNudge().toStdString();
        EXPECT_EQ(gauge().nextNudge().toStdString(), move.next);
        if (count == 1) picture("nudged-window");
    }
    for (int i = 0; i < 4; ++i) press(Qt::Key_Period, Qt::ControlModifier);  // eight percent at once
    ASSERT_TRUE(waitUntil([&] { return shown().nudges.size() == 5; }));
    EXPECT_TRUE(gauge().nextNudge().startsWith("it moved out of limits")) << gauge().nextNudge().toStdString();
    QTest::qWait(6000);
    press(Qt::Key_Period, Qt::ControlModifier);
    press(Qt::Key_Period, Qt::ControlModifier);
    ASSERT_TRUE(waitUntil([&] { return shown().nudges.size() == 6; }));
    EXPECT_TRUE(waitUntil([&] {
        return gauge().nextNudge() == "that made it worse; go back, about 3 times that nudge";
    })) << gauge().nextNudge().toStdString();
    picture("nudged-worse");
    for (int i = 0; i < 10; ++i) press(Qt::Key_Comma, Qt::ControlModifier);  // from 12 to -8
    EXPECT_TRUE(waitUntil([&] {
        return gauge().nextNudge() == "that went too far; go back, about half of that nudge";
    })) << gauge().nextNudge().toStdString();
}

TEST_F(Adjusting, AcrossTheBenchTheDigitsAreAQuarterOfTheScreen) {
    open("marking-bias.json");
    ASSERT_TRUE(reads());
    press(Qt::Key_G);
    ASSERT_TRUE(waitUntil([this] { return gauge().digitHeight() > 0.0 && gauge().width() > 1200; }));
    QTest::qWait(300);
    EXPECT_GE(gauge().digitHeight(), 768.0 / 4.0);
    EXPECT_TRUE(gauge().words().contains("make them shorter")) << gauge().words().toStdString();
    picture("across-the-bench");
    ASSERT_TRUE(waitUntil([&] { return shown().seconds > 8.0; }));  // the finder has learned the scatter
    for (int i = 0; i < 3; ++i) press(Qt::Key_Comma, Qt::ControlModifier);
    ASSERT_TRUE(waitUntil([&] { return !gauge().lastNudge().isEmpty(); }));
    QTest::qWait(2500);
    EXPECT_GE(gauge().digitHeight(), 768.0 / 4.0);  // with the words of the nudge too
    picture("across-the-bench-nudged");
    press(Qt::Key_Escape);
    EXPECT_TRUE(panels().grid().isVisible());
}

TEST_F(Adjusting, WhatWasBeforeStaysAndTheDifferenceIsJudged) {
    open("marking-bias.json");
    EXPECT_FALSE(panels().comparison().isVisible());
    ASSERT_TRUE(reads());
    QTest::qWait(2500);
    press(Qt::Key_B);
    EXPECT_TRUE(panels().comparison().isVisible());
    const double before = shown().reading.distortion.biasPercent->value;
    for (int i = 0; i < 3; ++i) press(Qt::Key_Comma, Qt::ControlModifier);
    const auto change = [this]() -> std::optional<Difference> {
        for (const Difference& d : panels().comparison().comparison().readings)
            if (d.key == "bias_percent" && d.change) return d;
        return std::nullopt;
    };
    ASSERT_TRUE(waitUntil([&] { return change() && std::abs(change()->change->value + 6.0) < 1.0; }));
    EXPECT_NEAR(change()->before->value, before, 1.0);
    EXPECT_EQ(change()->seen(), Seen::changed);
    picture("before-and-now");
    QTemporaryDir folder;
    ASSERT_TRUE(window->writeReportTo(folder.filePath("with.png")));
    if (const QString keep = qEnvironmentVariable("TRUEUNIT_PICTURES"); !keep.isEmpty()) {
        ASSERT_TRUE(window->writeReportTo(QDir(keep).filePath("before-report.png")));
    }
    press(Qt::Key_B, Qt::ShiftModifier);
    EXPECT_FALSE(panels().comparison().isVisible());
    ASSERT_TRUE(window->writeReportTo(folder.filePath("without.png")));
    EXPECT_NE(QImage(folder.filePath("with.png")), QImage(folder.filePath("without.png")));
}

TEST_F(Adjusting, TheMarginSaysWhichCharacterAndLevelWouldMisreadFirst) {
    open("late-fourth-level.json");
    ASSERT_TRUE(reads());
    press(Qt::Key_M);
    ASSERT_TRUE(waitUntil([this] { return panels().margin().lowWords().contains("level 4"); }));
    EXPECT_TRUE(panels().margin().isVisible());
    EXPECT_TRUE(panels().margin().lowWords().contains("reads as level 3"))
        << panels().margin().lowWords().toStdString();
    window->resize(1440, 900);
    QTest::qWait(1500);
    picture("margin");
    press(Qt::Key_M);
    EXPECT_FALSE(panels().margin().isVisible());
}

TEST_F(Adjusting, TheToneNeverStartsByItself) {
    open("marking-bias.json");
    ASSERT_TRUE(reads());
    EXPECT_FALSE(window->ear().on());
    press(Qt::Key_Up, Qt::ControlModifier);  // the volume alone does not start it
    press(Qt::Key_U);
    EXPECT_FALSE(window->ear().on());
}

}  // namespace
}  // namespace trueunit
