// SPDX-License-Identifier: GPL-3.0-or-later
// Limits, self-check, reference sender, recording and clock in the window.
#include <gtest/gtest.h>

#include <QComboBox>
#include <QDir>
#include <QDoubleSpinBox>
#include <QElapsedTimer>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>
#include <cmath>
#include <numbers>

#include "app/check_dialog.h"
#include "app/clock_dialog.h"
#include "app/limit_sets.h"
#include "app/limits_dialog.h"
#include "app/main_window.h"
#include "app/message_line.h"
#include "app/sender_dialog.h"
#include "app/session.h"
#include "app/tape_text_dialog.h"
#include "core/acquire/recording.h"

namespace trueunit {
namespace {

class Proving : public ::testing::Test {
protected:
    Proving() {
        QStandardPaths::setTestModeEnabled(false);  // folders of the test's own are better still
        for (const char* name : {"XDG_CONFIG_HOME", "XDG_DATA_HOME"})
            qputenv(name, folder_.filePath(QString::fromLatin1(name)).toUtf8());
    }

    ~Proving() override { QStandardPaths::setTestModeEnabled(true); }

    static void picture(QWidget& widget, const char* name) {
        const QString folder = qEnvironmentVariable("TRUEUNIT_PICTURES");
        if (folder.isEmpty()) return;
        widget.show();
        QTest::qWait(50);
        widget.grab().save(QDir(folder).filePath(QString::fromLatin1(name)));
    }
    template <class Widget>
    static Widget* named(QWidget& parent, const char* name) {
        for (Widget* w : parent.findChildren<Widget*>())
            if (w->accessibleName() == QLatin1String(name)) return w;
        ADD_FAILURE() << "there is no " << name;
        return nullptr;
    }
    static QPushButton* button(QWidget& parent, const QString& text) {
        for (QPushButton* b : parent.findChildren<QPushButton*>())
            if (QString(b->text()).remove('&') == text) return b;
        ADD_FAILURE() << "there is no button " << text.toStdString();
        return nullptr;
    }

    const QTemporaryDir folder_;
};

TEST_F(Proving, ASetOfLimitsIsChosenWithItsOriginInSight) {
    LimitsDialog dialog{Limits{}};
    auto* sets = named<QComboBox>(dialog, "Set of limits");
    sets->setCurrentIndex(2);
    emit sets->activated(2);
    EXPECT_EQ(dialog.chosen().name, "s3");
    EXPECT_EQ(named<QDoubleSpinBox>(dialog, "Bias")->text(), "not judged");
    EXPECT_EQ(named<QDoubleSpinBox>(dialog, "Start-stop, gross")->value(), 10.0);
    bool originSeen = false;
    for (const QLabel* label : dialog.findChildren<QLabel*>())
        originSeen |= label->text().startsWith("Published. ITU-T S.3");
    EXPECT_TRUE(originSeen);
    picture(dialog, "limits.png");
}

TEST_F(Proving, WhatIsChangedInASetIsKeptAsAnOwnOneAndUsed) {
    LimitsDialog dialog{Limits{}};
    named<QDoubleSpinBox>(dialog, "Bias")->setValue(3.0);
    auto* title = named<QLineEdit>(dialog, "Title");
    title->selectAll();
    QTest::keyClicks(title, "Message room, 1952");
    QTest::mouseClick(button(dialog, "Use"), Qt::LeftButton);
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
    EXPECT_EQ(dialog.chosen().name, "message-room-1952");
    EXPECT_EQ(dialog.chosen().kind, LimitsOrigin::own);
    const Result<Limits> kept = limitSetNamed("message-room-1952");
    ASSERT_TRUE(kept);
    EXPECT_EQ(kept->biasPercent, 3.0);
    EXPECT_EQ(kept->endPercent, 5.0);
}

TEST_F(Proving, ABuiltInTitleIsNotOverwritten) {
    Limits s3 = *limitSetNamed("s3");
    LimitsDialog dialog{s3};
    named<QDoubleSpinBox>(dialog, "Bias")->setValue(3.0);
    auto* title = named<QLineEdit>(dialog, "Title");
    title->selectAll();
    QTest::keyClicks(title, "s3");
    QTest::mouseClick(button(dialog, "Use"), Qt::LeftButton);
    EXPECT_NE(dialog.result(), QDialog::Accepted);
    EXPECT_FALSE(limitSetNamed("s3")->statesBias);
}

TEST_F(Proving, TheSenderSaysItsCautionAndSendsNothingByItself) {
    SenderDialog dialog;
    picture(dialog, "sender.png");
    EXPECT_FALSE(dialog.sending());
    bool cautioned = false;
    for (const QLabel* label : dialog.findChildren<QLabel*>())
        cautioned |= label->text().contains("never drives a loop directly");
    EXPECT_TRUE(cautioned);
    named<QDoubleSpinBox>(dialog, "Bias")->setValue(-12.0);
    named<QDoubleSpinBox>(dialog, "Speed")->setValue(45.45);
    EXPECT_EQ(dialog.settings().biasPercent, -12.0);
    EXPECT_EQ(dialog.settings().baud, 45.45);
    EXPECT_FALSE(dialog.settings().problem());
}

TEST_F(Proving, TheCheckRunsWithoutStoppingTheWindowAndIsKept) {
    CheckDialog dialog;
    dialog.show();
    EXPECT_TRUE(dialog.words().startsWith("No self-check"));
    for (const QComboBox* box : dialog.findChildren<QComboBox*>())
        EXPECT_TRUE(box->count() > 0 || box->placeholderText().startsWith("There is no sound"));
    QTest::mouseClick(button(dialog, "Check in memory"), Qt::LeftButton);
    ASSERT_TRUE(dialog.running());
    int beats = 0;
    QElapsedTimer since;
    since.start();
    qint64 longest = 0;
    while (dialog.running() && since.elapsed() < 110000) {
        QElapsedTimer beat;
        beat.start();
        QTest::qWait(10);
        longest = std::max(longest, beat.elapsed());
        ++beats;
    }
    EXPECT_GT(beats, 50);
    EXPECT_LT(longest, 1000);  // of a shared computer; a frozen window would be ten times that
    EXPECT_TRUE(dialog.words().contains(": PASSED")) << dialog.words().toStdString();
    ASSERT_TRUE(lastCheck());
    EXPECT_TRUE(lastCheck()->passed());
    picture(dialog, "check.png");
}

TEST_F(Proving, ClosingTheCheckEndsIt) {
    CheckDialog dialog;
    dialog.show();
    dialog.checkMemory();
    dialog.reject();
    EXPECT_FALSE(dialog.running());
    EXPECT_FALSE(lastCheck());
}

TEST_F(Proving, TheClockIsTrimmedByAToneAtHand) {
    auto recent = std::make_shared<RecentInput>(48000.0);
    SampleBlock block;
    for (int b = 0; b < 15 * 48000 / 256; ++b, block.firstSample += 256) {
        for (std::size_t i = 0; i < 256; ++i) {
            const double seconds = static_cast<double>(block.firstSample + i) / (48000.0 * (1.0 - 35e-6));
            block.samples[i] = static_cast<float>(0.3 * std::sin(2.0 * std::numbers::pi * 440.0 * seconds));
        }
        recent->push(block);
    }
    ClockDialog dialog(0.0, recent);
    dialog.measure();
    EXPECT_EQ(dialog.ppm(), 0.0) << dialog.message().toStdString();  // no tone of 1000 Hz in it
    dialog.setTone(440.0);
    dialog.measure();
    EXPECT_NEAR(dialog.ppm(), -35.0, 0.1);
    EXPECT_TRUE(dialog.message().contains("slow by 35.")) << dialog.message().toStdString();
    picture(dialog, "clock.png");
    ClockDialog without(0.0, nullptr);
    without.measure();
    EXPECT_TRUE(without.message().contains("no input"));
}

TEST_F(Proving, TheLastMinutesAreKeptFromTheWindow) {
    Session session;
    MainWindow window{session};
    window.show();
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return session.recentInput() && session.recentInput()->seconds() > 4.0; }, 20000));
    const QString path = folder_.filePath("kept.flac");
    window.keepRecordingTo(path);
    ASSERT_TRUE(QTest::qWaitFor([&] { return QFile::exists(folder_.filePath("kept.reading.json")); }, 20000));
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.messages().sentence().contains("kept.flac"); }, 5000))
        << window.messages().sentence().toStdString();
    EXPECT_GT(Recording::open(path.toStdString())->seconds(), 4.0);
    window.keepRecordingTo(folder_.filePath("no folder/kept.flac"));
    EXPECT_TRUE(QTest::qWaitFor([&] { return window.messages().sentence().contains("still at hand"); }, 5000))
        << window.messages().sentence().toStdString();
}

TEST(TapeText, IsTypedOrTakenFromAFileAndCountedInCharactersOfTape) {
    TapeTextDialog dialog("RY\r\n", "ita2", {"The fox sentence was recognised.", "RYRY\r\n"});
    EXPECT_EQ(dialog.text(), "RY\r\n");
    EXPECT_EQ(dialog.message(), "4 characters of tape, shifts included.");
    QTemporaryDir folder;
    QFile file(folder.filePath("loop.txt"));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly) && file.write("Skerry 2\n") == 9);
    file.close();
    dialog.take(file.fileName());
    EXPECT_EQ(dialog.text(), "Skerry 2\r\n");
    EXPECT_EQ(dialog.message(), "12 characters of tape, shifts included.");  // to figures and back
    dialog.take(folder.filePath("none.txt"));
    EXPECT_TRUE(dialog.message().contains("cannot be read")) << dialog.message().toStdString();
    EXPECT_EQ(dialog.text(), "Skerry 2\r\n");
    dialog.setText("RY");
    EXPECT_TRUE(dialog.message().startsWith("2 characters of tape, shifts included; a line end"));
    dialog.setText("");
    EXPECT_EQ(dialog.message(),
              "No text is given: it is looked for in the signal. The fox sentence was recognised: "
              "\u201cRYRY\u23ce\u201d");
    for (QPushButton* button : dialog.findChildren<QPushButton*>())
        if (button->text() == "As f&ound") button->click();
    EXPECT_EQ(dialog.text(), "RYRY\r\n");
}

}  // namespace
}  // namespace trueunit
