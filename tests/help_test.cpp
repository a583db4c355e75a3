// SPDX-License-Identifier: GPL-3.0-or-later
// The help, the first steps, and what the window remembers. TRUEUNIT_PICTURES=folder keeps pictures to be looked at.
#include <gtest/gtest.h>

#include <QApplication>
#include <QDir>
#include <QDragEnterEvent>
#include <QDropEvent>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMimeData>
#include <QPushButton>
#include <QRegularExpression>
#include <QScreen>
#include <QScrollBar>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <QTextBlock>
#include <QUrl>

#include "app/find_on_page.h"
#include "app/first_steps.h"
#include "app/help_pages.h"
#include "app/help_window.h"
#include "app/main_window.h"
#include "app/message_line.h"
#include "app/session.h"
#include "app/source_picker.h"
#include "app/window_memory.h"
#include "widgets/level_meter.h"

namespace trueunit {
namespace {

void keepPicture(QWidget& widget, const QString& name) {
    const QString folder = qEnvironmentVariable("TRUEUNIT_PICTURES");
    if (!folder.isEmpty()) widget.grab().save(QDir(folder).filePath(name + ".png"));
}

QString textOf(const QString& page) {
    QFile file(":/help/" + page);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << page.toStdString();
    return QString::fromUtf8(file.readAll());
}

TEST(Help, EveryPageOpensWithItsDrawings) {
    HelpWindow help;
    help.resize(960, 740);  // as on a screen that has room for it
    help.show();
    for (const QString& page : HelpWindow::pageNames()) {
        help.pages().open(page);
        EXPECT_GT(help.pages().toPlainText().size(), 200) << page.toStdString();
        EXPECT_EQ(help.pages().source().fileName(), page);
        static const QRegularExpression drawing("!\\[[^]]*\\]\\(([^)]+)\\)");
        for (const auto& match : drawing.globalMatch(textOf(page))) {
            const QVariant image =
                help.pages().document()->resource(QTextDocument::ImageResource, QUrl(match.captured(1)));
            EXPECT_FALSE(image.value<QImage>().isNull()) << match.captured(1).toStdString();
        }
        QTest::qWait(20);
        EXPECT_EQ(help.pages().horizontalScrollBar()->maximum(), 0) << page.toStdString();
        keepPicture(help, "help-" + page.chopped(3));
    }
}

// Ink on paper: with its drawings, as long as what is on the screen wants, and a sentence where nothing can be written.
TEST(Help, APageIsWrittenAsPdf) {
    const QTemporaryDir folder;
    HelpWindow help;
    help.pages().open("battery.md");
    const QString path = folder.filePath("battery.pdf");
    help.writePage(path, false);
    QFile pdf(path);
    ASSERT_TRUE(pdf.open(QIODevice::ReadOnly));
    const QByteArray bytes = pdf.readAll();
    EXPECT_TRUE(bytes.startsWith("%PDF-"));
    EXPECT_GE(bytes.count("/Type /Page\n"), 2);
    EXPECT_GE(bytes.count("/Subtype /Image"), 1);
    help.writePage(folder.filePath("none/battery.pdf"), false);
    EXPECT_TRUE(help.findChild<MessageLine*>()->warns());
}

TEST(Help, EveryLinkLeadsToAPageOfTheProgram) {
    HelpWindow help;
    static const QRegularExpression link("[^!]\\[[^]]*\\]\\(([^)#]*)(#[^)]*)?\\)");
    for (const QString& page : HelpWindow::pageNames())
        for (const auto& match : link.globalMatch(textOf(page)))
            EXPECT_TRUE(match.captured(1).isEmpty() || HelpWindow::pageNames().contains(match.captured(1)))
                << page.toStdString() << " -> " << match.captured(1).toStdString();
}

QStringList found(const char* form, const QString& text) {
    QStringList all;
    const QRegularExpression pattern(QString::fromUtf8(form), QRegularExpression::MultilineOption);
    for (const auto& match : pattern.globalMatch(text)) all += match.captured(1);
    return all;
}

QStringList numbersOf(QString text) {
    static const QRegularExpression comma("(?<=\\d),(?=\\d)");
    QStringList numbers = found("(\\d+(?:\\.\\d+)?)", text.replace(comma, "."));
    numbers.sort();
    return numbers;
}

// Where hands go near a loop no number may differ between the languages.
TEST(Help, EveryPageIsThereInGermanWithTheSameHeadingsLinksDrawingsAndNumbers) {
    for (const QString& page : HelpWindow::pageNames()) {
        const QString english = textOf(page), german = textOf("de/" + page);
        EXPECT_NE(english, german) << page.toStdString();
        EXPECT_EQ(found("^(#+) ", english), found("^(#+) ", german)) << page.toStdString();
        EXPECT_EQ(found("\\]\\(([^)#]*)", english), found("\\]\\(([^)#]*)", german)) << page.toStdString();
        EXPECT_EQ(numbersOf(english), numbersOf(german)) << page.toStdString();
        for (const QString& drawing : found("!\\[[^]]*\\]\\(([^)]+)", german)) {
            EXPECT_TRUE(QFile::exists(":/help/de/" + drawing)) << drawing.toStdString();
            EXPECT_NE(textOf(drawing), textOf("de/" + drawing)) << drawing.toStdString();
        }
    }
}

TEST(Help, ThePageKeysLeaveTwoLinesOfThePageBefore) {
    HelpWindow help;
    help.show();
    help.pages().open("connect.md");
    QTest::qWait(20);
    const int seen = help.pages().viewport()->height(), line = help.pages().fontMetrics().lineSpacing();
    const auto* bar = help.pages().verticalScrollBar();
    QTest::keyClick(&help.pages(), Qt::Key_PageDown);
    const int first = bar->value();
    EXPECT_LE(first, seen - 2 * line);
    EXPECT_GE(first, seen - 3 * line);
    QTest::keyClick(&help.pages(), Qt::Key_PageDown);
    EXPECT_EQ(bar->value(), 2 * first);
    QTest::keyClick(&help.pages(), Qt::Key_PageUp);
    EXPECT_EQ(bar->value(), first);
}

TEST(Help, AHeadingIsFoundByItsLink) {
    HelpWindow help;
    help.show();
    help.pages().open("connect.md#when-to-fetch-a-licensed-person");
    EXPECT_EQ(help.pages().textCursor().block().text(), "When to fetch a licensed person");
}

TEST(Help, AHeadingComesToTheTopHoweverTheHelpIsOpened) {
    const auto fromTop = [](HelpPages& pages) { return pages.cursorRect(pages.textCursor()).top(); };
    QWidget window;
    openHelpBeside(&window, "findings.md#when-the-feed-slips");  // for the first time
    auto* help = window.findChild<HelpWindow*>();
    QTest::qWait(50);
    EXPECT_EQ(help->pages().textCursor().block().text(), "When the feed slips");
    EXPECT_GT(help->pages().verticalScrollBar()->value(), 100);
    EXPECT_LT(fromTop(help->pages()), 40);
    help->pages().verticalScrollBar()->setValue(0);
    openHelpBeside(&window, "findings.md#when-the-feed-slips");  // once more
    EXPECT_GT(help->pages().verticalScrollBar()->value(), 100);
    EXPECT_LT(fromTop(help->pages()), 40);
}

TEST(Help, TheWayBackBringsThePageAsItWasAndItsPlaceInTheContents) {
    HelpWindow help;
    help.show();
    help.pages().open("connect.md");
    const auto laidOut = [&] { return help.pages().document()->size().height(); };
    const auto* contents = help.findChild<QListWidget*>();
    const double height = laidOut();
    const QString entry = contents->currentItem()->text();
    help.pages().open("optocoupler.md");
    EXPECT_NE(contents->currentItem()->text(), entry);
    help.pages().backward();
    EXPECT_EQ(help.pages().source().fileName(), "connect.md");
    EXPECT_EQ(laidOut(), height);
    EXPECT_EQ(contents->currentItem()->text(), entry);
}

TEST(Help, WordsAreFoundOnThePageOneAfterTheOtherAndRoundAgain) {
    HelpWindow help;
    help.show();
    help.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&help));
    help.pages().open("connect.md");
    help.pages().setFocus();
    QLineEdit& field = help.find().field();
    QTest::keyClick(&help.pages(), Qt::Key_F, Qt::ControlModifier);
    EXPECT_TRUE(field.hasFocus());
    const auto at = [&] { return help.pages().textCursor().selectionStart(); };
    QTest::keyClicks(&field, "SUPPLY");
    const int first = at();
    EXPECT_EQ(help.pages().textCursor().selectedText().toLower(), "supply");
    const auto wanted = help.pages().toPlainText().count("supply", Qt::CaseInsensitive);
    ASSERT_GT(wanted, 2);
    for (qsizetype i = 1; i < wanted; ++i) {
        const int before = at();
        QTest::keyClick(&field, Qt::Key_Return);
        EXPECT_GT(at(), before);
    }
    QTest::keyClick(&field, Qt::Key_Return);
    EXPECT_EQ(at(), first);
    EXPECT_TRUE(help.isVisible()) << "Enter pressed no button";
    EXPECT_TRUE(help.find().said().isEmpty());
    QTest::keyClicks(&field, "qqq");
    EXPECT_EQ(help.find().said(), "not on this page");
    EXPECT_EQ(at(), first);
    EXPECT_FALSE(help.pages().textCursor().hasSelection());
    keepPicture(help, "help-find");
    help.pages().open("end.md");
    EXPECT_TRUE(help.find().said().isEmpty());
}

TEST(Help, EveryLinkToAHeadingNamesOneOfItsPage) {
    static const QRegularExpression mark("[^\\w -]", QRegularExpression::UseUnicodePropertiesOption);
    static const QRegularExpression link("\\]\\(([^)#]*)#([^)]+)\\)");
    for (const QString folder : {"", "de/"})
        for (const QString& page : HelpWindow::pageNames())
            for (const auto& match : link.globalMatch(textOf(folder + page))) {
                const QString to = folder + (match.captured(1).isEmpty() ? page : match.captured(1));
                QStringList slugs;
                for (const QString& heading : found("^#+ (.+)$", textOf(to)))
                    slugs += heading.toLower().remove(mark).replace(' ', '-');
                EXPECT_TRUE(slugs.contains(match.captured(2))) << (folder + page + match.captured()).toStdString();
            }
}

TEST(Help, ThePagesThatTellToConnectCarryTheCautions) {
    QString guide = textOf("connect.md");
    EXPECT_LT(guide.indexOf("## When to fetch a licensed person"), guide.indexOf("## Which way?"));
    for (const QString way : {"battery.md", "tone.md", "quench.md", "optocoupler.md", "transformer.md"}) {
        EXPECT_TRUE(
            textOf(way).left(600).simplified().contains("**First read [Connecting a loop](connect.md) whole**"));
        guide += textOf(way).simplified();
    }
    for (const char* caution :
         {"hazardous live", "does not make it safe", "Local codes and licensed practice", "Unplug the machine",
          "Guard what turns", "A machine that has no fuse gets one", "not oiled", "never joined, never left bare",
          "hang on one plug", "**The other machines of the loop** see it open", "It stands in series with the loop",
          "Never across the supply", "with one that you do not know, do not connect", "Before its first use",
          "the data sheet of the part decides"})
        EXPECT_TRUE(guide.contains(caution)) << caution;
}

class Memory : public ::testing::Test {
protected:
    Memory() {
        QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, folder.path());
        window.resize(1366, 768);
        window.show();
        QTest::qWait(50);
    }
    QTemporaryDir folder;
    Session session;
    MainWindow window{session};
};

TEST_F(Memory, TheHelpForTheInputIsWhereItIsConnected) {
    EXPECT_EQ(HelpWindow::pageUnder(window.findChild<SourcePicker*>()), "connect.md#the-sound-input");
    EXPECT_EQ(HelpWindow::pageUnder(window.findChild<LevelMeter*>()), "connect.md#levels-and-grounds");
}

TEST_F(Memory, TheFirstStepsAreThreeAndNeverComeAgain) {
    EXPECT_FALSE(firstStepsSeen());
    window.startFirstSteps();
    auto* steps = window.findChild<FirstSteps*>();
    const auto* card = window.findChild<QWidget*>("card");
    ASSERT_NE(steps, nullptr);
    ASSERT_NE(card, nullptr);
    const QRect first = card->geometry();
    for (int i = 1; i <= 3; ++i) {
        EXPECT_EQ(steps->number(), i);
        QTest::qWait(300);
        EXPECT_EQ(card->geometry(), first) << i;  // a second click on Next finds it again
        int buttons = 0;
        for (const QPushButton* button : card->findChildren<QPushButton*>()) buttons += button->isVisible();
        EXPECT_EQ(buttons, i < 3 ? 2 : 1) << "on the last step both would do the same";
        keepPicture(window, QString("first-step-%1").arg(i));
        steps->next();
    }
    EXPECT_TRUE(firstStepsSeen());
    QTest::qWait(50);
    EXPECT_EQ(window.findChild<FirstSteps*>(), nullptr);
}

TEST_F(Memory, EscapeEndsTheFirstSteps) {
    window.startFirstSteps();
    QTest::keyClick(&window, Qt::Key_Escape);
    QTest::qWait(50);
    EXPECT_EQ(window.findChild<FirstSteps*>(), nullptr);
    EXPECT_TRUE(firstStepsSeen());
}

TEST_F(Memory, AFileThatIsDroppedIsPlayedAndComesBackInTheList) {
    const QString path = folder.filePath("a.scenario.json");
    ASSERT_TRUE(QFile::copy(":/scenarios/demonstration.json", path));
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(path)});
    QDragEnterEvent enter(QPoint(10, 10), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&window, &enter);
    EXPECT_TRUE(enter.isAccepted());
    QDropEvent drop(QPointF(10, 10), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&window, &drop);
    EXPECT_EQ(recentFiles(), QStringList{path});
    window.openFile(folder.filePath("nowhere.wav"));
    EXPECT_FALSE(window.messages().sentence().isEmpty());
    EXPECT_EQ(recentFiles().size(), 1);
    QFile::remove(path);
    EXPECT_TRUE(recentFiles().isEmpty());
}

TEST_F(Memory, AWindowWithoutAPlaceTakesTheRoomItNeedsOrAllThereIs) {
    forgetAll();
    restorePlace(window);
    const QSize room = window.screen()->availableSize();
    EXPECT_TRUE(window.size() == window.sizeHint() || window.isMaximized()) << window.width();
    EXPECT_EQ(window.size(), window.sizeHint().boundedTo(room));
}

TEST_F(Memory, ThePlaceOfTheWindowIsRememberedAndAllCanBeForgotten) {
    window.resize(1200, 700);
    rememberPlace(window);
    rememberFirstSteps();
    QWidget other;
    restorePlace(other);
    EXPECT_EQ(other.size(), QSize(1200, 700));
    Options options = session.options();
    options.baud = 75.0;
    ASSERT_TRUE(session.setOptions(options));
    window.forgetSettings();
    EXPECT_FALSE(firstStepsSeen());
    EXPECT_FALSE(session.options().baud.has_value());
}

}  // namespace
}  // namespace trueunit
