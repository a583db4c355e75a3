// SPDX-License-Identifier: GPL-3.0-or-later
// The help, the first steps, and what the window remembers. TRUEUNIT_PICTURES=folder keeps pictures to be looked at.
#include <gtest/gtest.h>

#include <QApplication>
#include <QDir>
#include <QDragEnterEvent>
#include <QDropEvent>
#include <QFile>
#include <QLabel>
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
#include <cmath>

#include "app/first_steps.h"
#include "app/help_window.h"
#include "app/main_window.h"
#include "app/message_line.h"
#include "app/session.h"
#include "app/window_memory.h"

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

TEST(Help, AHeadingIsFoundByItsLink) {
    HelpWindow help;
    help.show();
    help.pages().open("connect.md#when-to-fetch-a-licensed-person");
    EXPECT_EQ(help.pages().textCursor().block().text(), "When to fetch a licensed person");
}

TEST(Help, EveryLinkInsideTheGuideNamesOneOfItsHeadings) {
    static const QRegularExpression mark("[^\\w -]", QRegularExpression::UseUnicodePropertiesOption);
    for (const char* page : {"connect.md", "de/connect.md"}) {
        QStringList slugs;
        for (const QString& heading : found("^#+ (.+)$", textOf(page)))
            slugs += heading.toLower().remove(mark).replace(' ', '-');
        for (const QString& link : found("\\]\\(#([^)]+)\\)", textOf(page)))
            EXPECT_TRUE(slugs.contains(link)) << link.toStdString();
    }
}

TEST(Help, ThePagesThatTellToConnectCarryTheCautions) {
    const QString guide = textOf("connect.md");
    for (const char* caution :
         {"hazardous live", "does not make it safe", "Local codes and licensed practice", "Unplug the machine",
          "Guard what turns", "Fuse a machine", "not oiled", "It stands in series with the loop",
          "Never across the supply", "with one that you do not know, do not connect", "Before its first use",
          "the data sheet of the part decides"})
        EXPECT_TRUE(guide.contains(caution)) << caution;
    EXPECT_LT(guide.indexOf("## When to fetch a licensed person"), guide.indexOf("## Which way?"));
}

// The test on a battery, by Kirchhoff: 12 V less what the LED takes from R1 beside R2, over that and the resistor.
TEST(Help, TheDryRunGivesTheCurrentsThatItSays) {
    const QString guide = textOf("connect.md");
    constexpr double kLamp = 1.2, kSeries = 820.0, kVolts = 12.0;
    for (const auto& [shunt, resistor] : {std::pair{680.0, 220.0}, std::pair{150.0, 68.0}}) {
        const double beside = 1.0 / (1.0 / shunt + 1.0 / kSeries), left = kVolts - kLamp / kSeries * beside;
        EXPECT_TRUE(guide.contains(QString("%1 V / (%2 + %3) \u03a9 = %4 mA")
                                       .arg(left, 0, 'f', 2)
                                       .arg(resistor, 0, 'f', 0)
                                       .arg(beside, 0, 'f', 0)
                                       .arg(1e3 * left / (resistor + beside), 0, 'f', 0)))
            << shunt;
    }
}

// The values of the optocoupler stage, by Kirchhoff: V = (I + U/R2) / (1/R1 + 1/R2), U across the lamp.
TEST(Help, TheValuesOfTheStageAreWhatTheCircuitGives) {
    const QString guide = textOf("connect.md");
    constexpr double kLamp = 1.2, kSeries = 820.0;
    const auto volts = [&](double amps, double shunt) {
        return (amps + kLamp / kSeries) / (1.0 / shunt + 1.0 / kSeries);
    };
    const double v20 = volts(0.020, 680.0), v60 = volts(0.060, 150.0);
    EXPECT_TRUE(guide.contains(QString("| %1 V | %2 V |").arg(v20, 0, 'f', 2).arg(v60, 0, 'f', 2)));
    EXPECT_TRUE(guide.contains(QString("| %1 mA | %2 mA |")
                                   .arg(1e3 * (v20 - kLamp) / kSeries, 0, 'f', 1)
                                   .arg(1e3 * (v60 - kLamp) / kSeries, 0, 'f', 1)));
    EXPECT_TRUE(guide.contains(
        QString("| %1 mW | %2 mW |").arg(1e3 * v20 * v20 / 680.0, 0, 'f', 0).arg(1e3 * v60 * v60 / 150.0, 0, 'f', 0)));
}

// What the barrier must stand: supply and kick, I sqrt(L/C) (energy of the magnets into the quench), and half as much
// again.
TEST(Help, TheBarrierStandsTheSupplyAndTheKick) {
    const QString guide = textOf("connect.md");
    constexpr double kHenry = 4.0, kFarad = 0.47e-6;
    for (const double supply : {120.0, 260.0})
        for (const double amps : {0.020, 0.060}) {
            const double kick = std::round(amps * std::sqrt(kHenry / kFarad)),
                         stands = std::ceil(1.5 * (supply + kick));
            EXPECT_TRUE(guide.contains(
                QString("1.5 x (%1 + %2) = %3 V |").arg(supply, 0, 'f', 0).arg(kick, 0, 'f', 0).arg(stands, 0, 'f', 0)))
                << supply << " " << amps;
            EXPECT_LT(stands, 850.0);
        }
    EXPECT_LT(1.5 * (260.0 + 0.060 * std::sqrt(12.0 / kFarad)), 850.0) << "magnets up to 12 H";
    EXPECT_GT(1.5 * (260.0 + 0.060 * std::sqrt(kHenry / 0.1e-6)), 850.0)
        << "a small quench needs more, and the guide says so";
}

// The quench by energy, C = L (I / kick)^2, and by Ohm: what its resistor carries as C empties, or is shorted.
TEST(Help, TheQuenchIsWhatMagnetsAndBarrierAskFor) {
    const QString guide = textOf("connect.md");
    const double kick = std::round(850.0 / 1.5 - 260.0), leastFarad = 4.0 * std::pow(0.060 / kick, 2.0);
    const auto heat = [](double volts) { return (0.47e-6 * volts * volts + 7.2e-3) * 23.0; };
    for (const QString& said : {QString("= %1 V for the kick").arg(kick, 0, 'f', 0),
                                QString("(0.06/307)² = %1 µF").arg(1e6 * leastFarad, 0, 'f', 2),
                                QString("| %1 W | %2 W |").arg(heat(120.0), 0, 'f', 2).arg(heat(260.0), 0, 'f', 2),
                                QString("(2 kΩ + 470 Ω) = %1 mA").arg(1e3 * 120.0 / 2470.0, 0, 'f', 0),
                                QString("(4.3 kΩ + 1 kΩ) = %1 mA").arg(1e3 * 260.0 / 5300.0, 0, 'f', 0)})
        EXPECT_TRUE(guide.contains(said)) << said.toStdString();
    EXPECT_LT(guide.indexOf("## Bare contacts, battery"), guide.indexOf("## Optocoupler")) << "the safest first";
}

// With R1 open the suppressor holds 16 V; what it and R2 then turn into heat, and R1 under a fuse that bears half as
// much again.
TEST(Help, EveryPartOfTheStageStandsWhatAFailureOfAnotherMakes) {
    const QString guide = textOf("connect.md");
    constexpr double kHeld = 16.0, kSeries = 820.0;
    const double lamp = (kHeld - 1.2) / kSeries;
    for (const QString& said : {QString("%1 W (why it is of 0.5 W)").arg(lamp * lamp * kSeries, 0, 'f', 2),
                                QString("%1 W in the suppressor |").arg((0.060 - lamp) * kHeld, 0, 'f', 2),
                                QString("16²/680 = %1 W").arg(kHeld * kHeld / 680.0, 0, 'f', 2),
                                QString("16²/150 = %1 W").arg(kHeld * kHeld / 150.0, 0, 'f', 1),
                                QString("%1 or %2 W in the suppressor")
                                    .arg((1.5 * 0.050 - kHeld / 680.0 - lamp) * kHeld, 0, 'f', 2)
                                    .arg((1.5 * 0.100 - kHeld / 150.0 - lamp) * kHeld, 0, 'f', 2)})
        EXPECT_TRUE(guide.contains(said)) << said.toStdString();
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
