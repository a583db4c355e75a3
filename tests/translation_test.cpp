// SPDX-License-Identifier: GPL-3.0-or-later
// The languages of the window. TRUEUNIT_PICTURES=folder keeps pictures of the German one.
#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QDir>
#include <QFile>
#include <QImage>
#include <QLabel>
#include <QLocale>
#include <QProcess>
#include <QRegularExpression>
#include <QScrollArea>
#include <QScrollBar>
#include <QTemporaryDir>
#include <QTest>
#include <QTextBlock>
#include <QTranslator>
#include <QUrl>
#include <QXmlStreamReader>

#include "app/bench_panels.h"
#include "app/help_pages.h"
#include "app/help_window.h"
#include "app/main_window.h"
#include "app/session.h"
#include "widgets/bias_gauge.h"
#include "widgets/told.h"
#include "widgets/words.h"

namespace trueunit {
namespace {

QStringList places(const QString& text) {
    static const QRegularExpression place("%[0-9n]");
    QStringList all;
    for (const auto& match : place.globalMatch(text)) all += match.captured();
    all.sort();
    return all;
}

// What is wrong with the messages of a file, one line each.
QStringList faultsOf(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) return {path};
    QStringList faults;
    QXmlStreamReader xml(&file);
    QString source;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement) continue;
        if (xml.name() == QLatin1String("source")) source = xml.readElementText();
        if (xml.name() != QLatin1String("translation")) continue;
        if (xml.attributes().hasAttribute("type")) faults += "unfinished: " + source;
        const QString words = xml.readElementText(QXmlStreamReader::IncludeChildElements);
        if (words.trimmed().isEmpty() && !source.trimmed().isEmpty()) faults += "empty: " + source;
        if (!source.contains("%n") && places(words) != places(source)) faults += "places: " + source;
    }
    return faults;
}

const QString kFile = QStringLiteral(TRUEUNIT_SOURCE_FOLDER "/resources/translations/trueunit_de.ts");

TEST(Translation, IsCompleteAndKeepsThePlacesOfTheNumbers) { EXPECT_EQ(faultsOf(kFile).join('\n').toStdString(), ""); }

TEST(Translation, HoldsEveryStringOfTheSources) {
    const QTemporaryDir folder;
    const QString copy = folder.filePath("trueunit_de.ts");
    ASSERT_TRUE(QFile::copy(kFile, copy));
    const QString top = QStringLiteral(TRUEUNIT_SOURCE_FOLDER);
    QProcess lupdate;
    lupdate.start(TRUEUNIT_LUPDATE, {"-silent", "-I", top, top + "/app", top + "/widgets", "-ts", copy});
    ASSERT_TRUE(lupdate.waitForFinished(60000));
    ASSERT_EQ(lupdate.exitCode(), 0);
    EXPECT_EQ(faultsOf(copy).join('\n').toStdString(), "") << "ninja translations takes new strings up";
}

class German : public ::testing::Test {
protected:
    German() {
        EXPECT_TRUE(translator.load(":/translations/trueunit_de.qm"));
        QCoreApplication::installTranslator(&translator);
        QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
    }
    ~German() override {
        QCoreApplication::removeTranslator(&translator);
        QLocale::setDefault(QLocale::c());
    }
    QTranslator translator;
};

TEST_F(German, TheSentencesOfTheCoreAreTranslatedAsWholesWithTheirNumbers) {
    EXPECT_EQ(told("Marks too long by 10.1 %"), "Zeichenstrom zu lang um 10,1 %");
    EXPECT_EQ(told("Marks too long by 3.1 %, within limits"), "Zeichenstrom zu lang um 3,1 %, in den Grenzen");
    EXPECT_EQ(told("All instants to mark come 10.1 % of a unit (2.23 ms) early, whatever the level; those to space do "
                   "not. A lever is out of place as well; its part is left out of this figure."),
              "Alle Übergänge zum Zeichenstrom kommen um 10,1 % der Schrittlänge (2,23 ms) zu früh, bei jedem Schritt; "
              "die zum Trennstrom nicht. Auch ein Hebel steht falsch; sein Anteil ist in diesem Wert nicht enthalten.");
    EXPECT_EQ(told("A sentence that nobody knows."), "A sentence that nobody knows.");
    EXPECT_EQ(signedNumber(10.14, 1), "+10,1");
}

// Everything that is written in the window or told to assistive tools.
QString allWords(QWidget& top) {
    QStringList words;
    for (const QWidget* widget : top.findChildren<QWidget*>()) {
        if (!widget->isVisible()) continue;
        words << widget->accessibleName() << widget->accessibleDescription() << widget->toolTip();
        if (const auto* label = qobject_cast<const QLabel*>(widget)) words << label->text();
        if (const auto* button = qobject_cast<const QAbstractButton*>(widget)) words << button->text();
        if (const auto* panel = qobject_cast<const Panel*>(widget)) words << panel->title() << panel->remark();
    }
    for (const QAction* action : top.actions()) words << action->text() << action->statusTip();
    return words.join('\n');
}

TEST_F(German, TheHelpOpensInGermanWithItsDrawingsAndHeadings) {
    HelpWindow help;
    help.resize(960, 740);  // as on a screen that has room for it
    help.show();
    for (const QString& page : HelpWindow::pageNames()) {
        help.pages().open(page);
        EXPECT_EQ(help.pages().source().path(), "/help/de/" + page);
        EXPECT_FALSE(help.pages().toPlainText().contains(" the ")) << page.toStdString();
        EXPECT_EQ(help.pages().horizontalScrollBar()->maximum(), 0) << page.toStdString();
    }
    const QVariant drawing = help.pages().document()->resource(QTextDocument::ImageResource, QUrl("bias.svg"));
    EXPECT_FALSE(drawing.value<QImage>().isNull());
    help.pages().open("tone.md#was-zu-bestellen-ist");
    EXPECT_EQ(help.pages().textCursor().block().text(), "Was zu bestellen ist");
}

TEST_F(German, TheWindowIsGermanAndHasNoPanelCutOffOnASmallScreen) {
    Session session;
    MainWindow window{session};
    window.resize(1366, 768);
    window.show();
    ASSERT_TRUE(QTest::qWaitFor(
        [&] {
            const auto& shown = window.panels().shown();
            return shown && shown->state == SignalState::reading && shown->windowUsed >= 14;
        },
        30000));
    QTest::qWait(200);
    static const QRegularExpression english("\\b(the|and|of|with|is|are|not|too|marks|late|every|yet|choose)\\b");
    for (const auto& match : english.globalMatch(allWords(window)))
        ADD_FAILURE() << allWords(window).mid(std::max(0LL, match.capturedStart() - 60LL), 120).toStdString();
    for (const QSize size : {QSize(1366, 768), QSize(1440, 900), QSize(720, 450)}) {
        window.resize(size);
        QTest::qWait(200);
        for (const QScrollArea* area : window.findChildren<QScrollArea*>()) {
            if (!area->isVisible()) continue;
            EXPECT_LE(area->widget()->width(), area->viewport()->width()) << size.width();
        }
        for (const QAbstractButton* button : window.findChildren<QAbstractButton*>()) {
            if (!button->isVisible()) continue;
            EXPECT_GE(button->width() + 1, button->minimumSizeHint().width()) << button->text().toStdString();
        }
    }
    const QString folder = qEnvironmentVariable("TRUEUNIT_PICTURES");
    window.resize(1366, 768);
    QTest::qWait(100);
    if (!folder.isEmpty()) window.grab().save(QDir(folder).filePath("german.png"));
}

}  // namespace
}  // namespace trueunit
