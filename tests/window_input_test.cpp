// SPDX-License-Identifier: GPL-3.0-or-later
// The window and what it listens to: another input, a recording that plays and ends.
#include <gtest/gtest.h>

#include <QImage>
#include <QLabel>
#include <QTemporaryDir>
#include <QTest>

#include "app/machine_bar.h"
#include "app/message_line.h"
#include "app/playback_bar.h"
#include "app/top_bar.h"
#include "core/acquire/recording_writer.h"
#include "tests/support/bench_window.h"
#include "widgets/comparison_panel.h"
#include "widgets/level_meter.h"

namespace trueunit {
namespace {

using InputOfTheWindow = test::BenchWindow;

QString silence(const QString& path, int seconds) {
    auto writer = RecordingWriter::create(path.toStdString(), 48000.0, 1, SampleFormat::pcm16);
    const std::vector<float> samples(48000U * static_cast<unsigned>(seconds), 0.0F);
    EXPECT_TRUE(writer && writer->write(samples) && writer->finish());
    return path;
}

TEST_F(InputOfTheWindow, NameAndRemarksDoNotGoOnToAnotherMachine) {
    ASSERT_TRUE(biasIsKnown());
    press(Qt::Key_B);
    Options options = session.options();
    options.expect = "RY";
    ASSERT_TRUE(session.setOptions(options));
    press(Qt::Key_Space);
    window.keeper().sign("Skerry 2", "found marks 10 % long, turned the eccentric");
    QTemporaryDir folder;
    const QString wav = silence(folder.filePath("friend.wav"), 8);
    window.openFile(wav);
    EXPECT_EQ(window.bar().machine().machine(), "friend");
    EXPECT_FALSE(window.keeper().frozen());
    const auto reported = [&](const char* name) {
        EXPECT_TRUE(window.writeReportTo(folder.filePath(name)));
        return QImage(folder.filePath(name)).text("Title");
    };
    ASSERT_TRUE(waitUntil([this] { return shown() && shown()->seconds < 2.0; }));
    EXPECT_TRUE(reported("friend.png").startsWith("friend"));
    EXPECT_TRUE(window.panels().comparison().isHidden());  // it was of the machine before,
    EXPECT_TRUE(session.options().expect.empty());         // as was the text of the tape
    press(Qt::Key_Space, Qt::ShiftModifier);               // the frame of the machine before keeps its own
    EXPECT_EQ(window.keeper().frame().machine, "Skerry 2");
    EXPECT_EQ(window.keeper().frame().remarks, "found marks 10 % long, turned the eccentric");
    EXPECT_TRUE(reported("skerry.png").startsWith("Skerry 2"));
    press(Qt::Key_Space);
    press(Qt::Key_D, Qt::ControlModifier);
    EXPECT_EQ(window.bar().machine().machine(), "Skerry 2");
    press(Qt::Key_Space);
    EXPECT_EQ(window.keeper().frame().remarks, "");
}

TEST_F(InputOfTheWindow, ARecordingTellsHowFarItIsAndItsEndIsNoFault) {
    QTemporaryDir folder;
    const QString wav = silence(folder.filePath("tape.wav"), 3);
    EXPECT_FALSE(window.playback().isVisible());
    window.openFile(wav);
    EXPECT_TRUE(window.playback().isVisible());
    press(Qt::Key_P, Qt::ControlModifier);
    EXPECT_TRUE(window.playback().words().startsWith("paused at 0:0")) << window.playback().words().toStdString();
    EXPECT_EQ(window.bar().stateShown(), QString::fromUtf8("□ paused"));
    press(Qt::Key_P, Qt::ControlModifier | Qt::ShiftModifier);
    press(Qt::Key_P, Qt::ControlModifier);
    ASSERT_TRUE(waitUntil([this] { return window.playback().words() == "ended after 0:03"; }));
    EXPECT_EQ(window.playback().percentDone(), 100);
    EXPECT_EQ(window.bar().stateShown(), QString::fromUtf8("■ ended"));
    EXPECT_EQ(window.messages().sentence(), "tape.wav has come to its end. It is silent throughout.");
    EXPECT_FALSE(window.messages().warns());
    EXPECT_EQ(window.findChild<LevelMeter*>()->levelWords(), QString::fromUtf8("—"));
    ASSERT_TRUE(waitUntil([this] { return session.latest()->seconds > 2.9; }));
    QTest::qWait(100);     // the window has shown it
    press(Qt::Key_Space);  // the place in the recording, and nothing of a "now" that there is not
    QTest::qWait(50);
    QStringList said;
    for (const QLabel* label : window.messages().findChildren<QLabel*>()) said << label->accessibleName();
    EXPECT_TRUE(said.contains(QString::fromUtf8("Frozen at 0:03 · space lets go"))) << said.join('|').toStdString();
    press(Qt::Key_Space);
    press(Qt::Key_P, Qt::ControlModifier | Qt::ShiftModifier);
    press(Qt::Key_Home, Qt::ControlModifier);
    EXPECT_NE(window.bar().stateShown(), QString::fromUtf8("■ ended"));
    EXPECT_EQ(window.bar().machine().machine(), "tape");  // the same machine still
    window.openFile(folder.filePath("none.wav"));
    EXPECT_TRUE(window.messages().warns());
    EXPECT_TRUE(window.messages().sentence().endsWith("tape.wav goes on as before."));
}

TEST_F(InputOfTheWindow, AnInputThatFailsLeavesTheRunningOneAlone) {
    ASSERT_TRUE(biasIsKnown());
    const auto before = session.latest()->serial;
    EXPECT_FALSE(session.playRecording("/nowhere/at/all.wav"));
    EXPECT_EQ(session.sourceKind(), SourceKind::scenario);
    EXPECT_TRUE(waitUntil([&] { return session.latest()->serial > before; }));
}

}  // namespace
}  // namespace trueunit
