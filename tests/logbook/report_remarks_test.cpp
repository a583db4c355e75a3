// SPDX-License-Identifier: GPL-3.0-or-later
// What is typed for a report goes into the logbook with the frame that was kept last.
#include <gtest/gtest.h>

#include <QFile>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QRegularExpression>
#include <QTest>
#include <QTimer>
#include <algorithm>

#include "app/bench_log.h"
#include "app/logbook_window.h"
#include "app/main_window.h"
#include "app/message_line.h"
#include "app/note_editor.h"
#include "app/report_dialog.h"
#include "app/session.h"
#include "tests/logbook/logbook_rig.h"
#include "tests/support/temporary_folder.h"

namespace trueunit {
namespace {

// The window on the demonstration, with a logbook of its own.
class Remarks : public ::testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(session.playDemonstration());
        window.startLog(book);
        window.show();
        ASSERT_TRUE(QTest::qWaitFor([&] { return session.latest() && session.latest()->traces.size() >= 20; }, 20000));
    }

    const test::TemporaryFolder folder;
    const QString book = QString::fromStdString(folder.file("book.sqlite"));
    Session session;
    MainWindow window{session};
};

// Types into the report dialog as soon as it is open, and lets it write.
void answerReport(MainWindow& window, const QString& remarks, const QString& path) {
    QTimer::singleShot(300, &window, [&window, remarks, path] {
        auto* dialog = window.findChild<ReportDialog*>();
        ASSERT_TRUE(dialog);
        dialog->findChild<QPlainTextEdit*>()->setPlainText(remarks);
        for (QLineEdit* field : dialog->findChildren<QLineEdit*>())
            if (field->accessibleName() == "File") field->setText(path);
        dialog->accept();
    });
    QTest::keyClick(&window, Qt::Key_R, Qt::ControlModifier);
    window.activateWindow();  // no desktop does it here
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
}

TEST_F(Remarks, OfAReportAreOfferedAsTheWorkDone) {
    const QString page = QString::fromStdString(folder.file("r.png"));
    answerReport(window, "Found out of true.", page);
    QTest::keyClick(&window, Qt::Key_K);
    answerReport(window, "Eccentric turned.", page);
    ASSERT_TRUE(QFile::exists(page));
    answerReport(window, "Contacts cleaned.", page);
    const auto store = test::opened(book);
    ASSERT_EQ(framesOf(*store, 1)->size(), 1U);
    const QRegularExpression wanted(
        "^..:..:..: Found out of true\\.\n(..:..:..: )?Eccentric turned\\.\n..:..:..: Contacts cleaned\\.$");
    const QString remarks = QString::fromStdString(readFrame(*store, 1)->frame.remarks);
    EXPECT_TRUE(wanted.match(remarks).hasMatch()) << "each with the time of its moment: " << remarks.toStdString();
    EXPECT_EQ(framesOf(*store, 1)->front().remarks, remarks);

    QTest::keyClick(&window, Qt::Key_L, Qt::ControlModifier);
    auto* logbook = window.findChild<LogbookWindow*>();
    ASSERT_TRUE(logbook);
    const auto buttons = logbook->findChildren<QPushButton*>();
    const auto offer =
        std::find_if(buttons.begin(), buttons.end(), [&](const QPushButton* b) { return b->toolTip() == remarks; });
    ASSERT_NE(offer, buttons.end());
    EXPECT_TRUE((*offer)->isEnabled());
    const QPoint place = (*offer)->pos();
    (*offer)->click();
    EXPECT_FALSE((*offer)->isEnabled()) << "it was taken";
    EXPECT_EQ((*offer)->pos(), place) << "and no row has moved under the hand";

    Visit visit = **findVisit(*store, 1);
    visit.result = "In limits.";  // ends it
    ASSERT_TRUE(saveVisit(*store, visit));
    window.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    answerReport(window, "Oiled.", page);
    EXPECT_EQ(framesOf(*store, 1)->front().remarks, remarks);
    QTest::keyClick(&window, Qt::Key_K);
    EXPECT_TRUE(QString::fromStdString(readFrame(*store, 2)->frame.remarks).endsWith(": Oiled."))
        << "the next visit begins with it";
}

TEST_F(Remarks, OnAKeptFrameGoIntoTheLogbookAsTheyAreWritten) {
    QTest::keyClick(&window, Qt::Key_Space);
    QTest::keyClick(&window, Qt::Key_K);
    QTest::keyClick(&window, Qt::Key_N);
    auto* slip = window.findChild<NoteEditor*>();
    ASSERT_TRUE(slip && slip->isVisible());
    auto* words = slip->findChild<QPlainTextEdit*>();
    words->setPlainText("Lever sticks.");
    QTest::keyClick(words, Qt::Key_Return);
    const auto store = test::opened(book);
    ASSERT_EQ(framesOf(*store, 1)->size(), 1U);
    EXPECT_EQ(framesOf(*store, 1)->front().notes, "Lever sticks.");
    EXPECT_TRUE(window.messages().sentence().startsWith("The notes of frame 1"));
}

// What the dialog's button to the logbook says.
QString offered(MainWindow& window) {
    QString words;
    QTimer::singleShot(300, &window, [&] {
        auto* dialog = window.findChild<ReportDialog*>();
        ASSERT_TRUE(dialog);
        if (auto* visit = dialog->findChildren<QRadioButton*>().value(1)) visit->click();
        for (const QPushButton* button : dialog->findChildren<QPushButton*>())
            if (button->text().contains("logbook")) words = button->text();
        dialog->reject();
    });
    QTest::keyClick(&window, Qt::Key_R, Qt::ControlModifier);
    window.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
    return words;
}

TEST(ReportDialogOfAVisit, DoesNotOfferToKeepWhatIsKeptAlready) {
    const test::TemporaryFolder folder;
    Session session;
    ASSERT_TRUE(session.playDemonstration());
    MainWindow window(session);
    window.startLog(QString::fromStdString(folder.file("book.sqlite")));
    window.show();
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.latest() && session.latest()->traces.size() >= 20; }, 20000));
    EXPECT_EQ(offered(window), QString()) << "no moment before is marked";
    QTest::keyClick(&window, Qt::Key_B);
    EXPECT_EQ(offered(window), "Keep and open the &logbook");
    QTest::keyClick(&window, Qt::Key_K);
    EXPECT_EQ(offered(window), "Open the &logbook");
    QTest::keyClick(&window, Qt::Key_B);  // another moment, which is not in the logbook
    EXPECT_EQ(offered(window), "Keep and open the &logbook");
}

}  // namespace
}  // namespace trueunit
