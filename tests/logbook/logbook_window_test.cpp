// SPDX-License-Identifier: GPL-3.0-or-later
// The logbook's window and the key that keeps a frame; with TRUEUNIT_PICTURES=folder it leaves pictures to look at.
#include "app/logbook_window.h"

#include <gtest/gtest.h>

#include <qcustomplot.h>

#include <QAction>
#include <QCheckBox>
#include <QComboBox>
#include <QElapsedTimer>
#include <QFile>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QScrollArea>
#include <QTableWidget>
#include <QTest>
#include <QTreeWidget>

#include "app/bench_log.h"
#include "app/finding_names.h"
#include "app/frame_window.h"
#include "app/logbook/excerpt_flac.h"
#include "app/machine_history.h"
#include "app/main_window.h"
#include "app/message_line.h"
#include "app/session.h"
#include "tests/logbook/logbook_rig.h"
#include "tests/support/temporary_folder.h"

using namespace trueunit;
using test::keepingOf;
using test::kMorning;
using test::opened;

namespace {

constexpr qint64 kDay = 86400;

void picture(QWidget& widget, const QString& name) {
    const QByteArray folder = qgetenv("TRUEUNIT_PICTURES");
    if (!folder.isEmpty()) widget.grab().save(QString::fromLocal8Bit(folder) + "/" + name + ".png");
}

class LogbookWindowTest : public testing::Test {
protected:
    QString book() const { return QString::fromStdString(folder_.file("book.sqlite")); }

    // Three visits of one machine, each with a frame before and one after, and one of another.
    void fill() const {
        const auto store = opened(book());
        const double biases[] = {7.3, 0.4, 1.8, 0.9, -6.1, 0.2};
        for (int i = 0; i < 6; ++i) {
            Keeping k = keepingOf("Skerry 2", kMorning + (i / 2) * 40 * kDay + (i % 2) * 1800);
            auto s = std::make_shared<Snapshot>(*k.kept.frame.snapshot);
            s->reading.distortion.biasPercent->value = biases[i];
            s->reading.distortion.endPercent = Measured{0.5 * biases[5 - i], 0.2};
            s->reading.distortion.grossPercent = std::abs(biases[i]) + 1.6;
            s->reading.speed.errorPercent->value = 0.3 - 0.07 * i;
            s->reading.verdict.within = i % 2 == 1;
            k.kept.frame.snapshot = s;
            k.role = i % 2 == 0 ? FrameRole::before : FrameRole::after;
            const auto kept = keepFrame(*store, k);
            ASSERT_TRUE(kept);
            Visit v = **findVisit(*store, kept->visit);
            v.complaint = "Garbles at the far end.";
            v.workDone = "Contact gap set, eccentric turned.";
            v.repaired = i < 4;
            if (i % 2 == 1) v.result = "In limits.";
            ASSERT_TRUE(saveVisit(*store, v));
        }
        Keeping other = keepingOf("Holm 1", kMorning);
        other.kept.frame.notes = {{2.0, 0.5, "lever sticks"}};
        other.kept.frame.remarks = "Sent on to the workshop.";
        ASSERT_TRUE(keepFrame(*store, other));
    }

    const test::TemporaryFolder folder_;
};

}  // namespace

TEST_F(LogbookWindowTest, ShowsMachinesVisitsAndFramesAndSavesWhatIsTyped) {
    fill();
    LogbookWindow window(book());
    window.resize(1366, 768);
    window.show();
    window.chooseMachine("skerry 2");
    EXPECT_EQ(window.machines().count(), 2);
    ASSERT_EQ(window.visits().topLevelItemCount(), 3);
    EXPECT_EQ(window.visits().topLevelItem(0)->childCount(), 2);
    EXPECT_EQ(window.visits().headerItem()->text(2), "end %");
    EXPECT_EQ(window.visits().topLevelItem(0)->child(1)->text(2), "+3.7");
    EXPECT_TRUE(window.said().startsWith("6 of 7 frames in ")) << window.said().toStdString();
    QTest::qWait(50);
    picture(window, "logbook-1366x768");
    window.resize(1440, 900);
    QTest::qWait(50);
    picture(window, "logbook-1440x900");
    window.resize(window.minimumSizeHint());
    QTest::qWait(50);
    picture(window, "logbook-smallest");
    for (const QScrollArea* area : window.findChildren<QScrollArea*>()) {
        if (!area->isVisible() || !area->widget()) continue;
        EXPECT_LE(area->widget()->width(), area->viewport()->width());
    }

    auto* complaint = window.findChild<QPlainTextEdit*>();
    ASSERT_TRUE(complaint);
    complaint->setPlainText(QString::fromUtf8("Verst\u00fcmmelt \u96e8"));
    window.close();
    const auto store = opened(book());
    EXPECT_EQ(visitsOf(*store, 1)->front().complaint, QString::fromUtf8("Verst\u00fcmmelt \u96e8"));

    ASSERT_TRUE(window.writeReportTo(QString::fromStdString(folder_.file("v.png")), true));
    EXPECT_TRUE(QFile::exists(QString::fromStdString(folder_.file("v.png"))));
}

TEST_F(LogbookWindowTest, TheWordsOfAVisitStandInWholeLinesAndShareTheRoomThereIs) {
    fill();
    LogbookWindow window(book());
    window.show();
    window.chooseMachine("skerry 2");
    int lowest = 0;
    for (const QSize size : {QSize(1366, 728), QSize(1440, 900)}) {
        window.resize(size);
        QTest::qWait(50);
        for (const QPlainTextEdit* field : window.findChildren<QPlainTextEdit*>()) {
            const QFontMetricsF metrics(field->font());
            const double lines =
                (field->viewport()->height() - 2 * field->document()->documentMargin()) / metrics.lineSpacing();
            EXPECT_NEAR(lines, std::round(lines), 0.2) << field->accessibleName().toStdString();
            EXPECT_GE(lines, 1.9);
        }
        const QPlainTextEdit* work = window.findChildren<QPlainTextEdit*>()[1];
        EXPECT_EQ(work->accessibleName(), "Work done");
        EXPECT_GT(work->height(), lowest);
        lowest = work->height();
    }
}

// Keys of the rings in the curve of the bias; the graphs of a curve: line, others, before, after.
QList<double> ringsAt(const QCustomPlot& plot, int graph) {
    QList<double> keys;
    for (const QCPGraphData& point : *plot.graph(graph)->data()) keys += point.key;
    return keys;
}

void press(LogbookWindow& window, const QKeySequence& key) {
    for (QAction* action : window.actions())
        if (action->shortcut() == key) action->trigger();
}

void markBefore(LogbookWindow& window) { press(window, Qt::CTRL | Qt::Key_1); }

TEST_F(LogbookWindowTest, TheRingsAreOnTheFramesThatAreMarked) {
    fill();
    LogbookWindow window(book());
    window.show();
    window.chooseMachine("skerry 2");
    const auto* plot = window.findChild<QCustomPlot*>();
    ASSERT_TRUE(plot);
    constexpr int kBefore = 2, kAfter = 3;
    EXPECT_EQ(ringsAt(*plot, kBefore).size(), 3);
    const QList<double> after = ringsAt(*plot, kAfter);
    ASSERT_EQ(after.size(), 3);

    QTreeWidgetItem* newest = window.visits().topLevelItem(0);
    window.visits().setCurrentItem(newest->child(1));
    markBefore(window);  // the last one becomes the one before
    EXPECT_TRUE(window.said().contains("before")) << window.said().toStdString();
    EXPECT_EQ(ringsAt(*plot, kBefore).last(), after.last());
    EXPECT_EQ(ringsAt(*plot, kAfter).size(), 2);
    markBefore(window);
    EXPECT_EQ(ringsAt(*plot, kBefore).size(), 2) << "the same mark again takes it away";
}

// Where the repairs are ruled in the curve of the bias.
QList<double> repairsAt(const QCustomPlot& plot) {
    QList<double> keys;
    for (int i = 0; i < plot.itemCount(); ++i)
        if (const auto* word = qobject_cast<QCPItemText*>(plot.item(i))) keys += word->position->coords().x();
    return keys;
}

TEST_F(LogbookWindowTest, ARepairIsRuledBesideItsVisitAsSoonAsItIsTicked) {
    fill();
    LogbookWindow window(book());
    window.show();
    window.chooseMachine("skerry 2");
    const auto* plot = window.findChild<QCustomPlot*>();
    auto* ticked = window.findChild<QCheckBox*>();
    ASSERT_TRUE(plot && ticked);
    EXPECT_EQ(repairsAt(*plot), (QList<double>{0.0, 1.0})) << "between the frames before and after";
    QTest::mouseClick(ticked, Qt::LeftButton, {}, {8, ticked->height() / 2});
    ASSERT_TRUE(ticked->isChecked());
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.said() == "Saved."; }));
    EXPECT_EQ(repairsAt(*plot), (QList<double>{0.0, 1.0, 2.0}));

    window.visits().setCurrentItem(window.visits().topLevelItem(0)->child(0));
    press(window, Qt::CTRL | Qt::Key_2);
    EXPECT_LT(repairsAt(*plot).last(), 1.75) << "left of the frame that is now the one after";
}

// Words of a row side by side, pixels: left, right.
void expectApart(QList<std::pair<double, double>> words, const QCustomPlot& plot) {
    std::sort(words.begin(), words.end());
    double taken = 0.0;
    for (const auto& [left, right] : words) {
        EXPECT_GT(left, taken);
        taken = right;
    }
    EXPECT_LE(taken, plot.width());
}

TEST_F(LogbookWindowTest, TheCurvesAreWholeWithinTheirFiguresAndNoWordTouchesAnother) {
    std::vector<VisitHistory> visits(23);
    for (std::size_t i = 0; i < visits.size(); ++i) {
        visits[i].visit.opened = kMorning + qint64(i) * 9 * kDay;
        visits[i].visit.repaired = true;
        for (const FrameRole role : {FrameRole::before, FrameRole::after}) {
            FrameRow row;
            row.role = role;
            row.bias = role == FrameRole::before ? 7.3 + double(i) : -0.4;
            row.gross = std::abs(*row.bias) + 1.0;
            visits[i].frames.push_back(row);
        }
    }
    MachineHistory history;
    history.show();
    for (const QSize size : {QSize(330, 250), QSize(560, 300), QSize(900, 500)}) {
        history.resize(size);
        history.show(visits);
        QTest::qWait(50);
        picture(history, "history-" + QString::number(size.width()));
        auto& plot = *history.findChild<QCustomPlot*>();
        for (int i = 0; i < plot.graphCount(); ++i) {
            const auto ticks = plot.graph(i)->valueAxis()->ticker().dynamicCast<QCPAxisTickerText>()->ticks();
            for (const QCPGraphData& point : *plot.graph(i)->data()) {
                if (std::isnan(point.value)) continue;
                EXPECT_LE(point.value, ticks.lastKey());
                const QRect whole = plot.graph(i)->keyAxis()->axisRect()->rect().adjusted(4, 4, -4, -4);
                EXPECT_TRUE(whole.contains(plot.graph(i)->coordsToPixels(point.key, point.value).toPoint()));
            }
        }
        const QCPAxis& days = *plot.axisRects().last()->axis(QCPAxis::atBottom);
        QList<std::pair<double, double>> words;
        const auto named = days.ticker().dynamicCast<QCPAxisTickerText>()->ticks();
        for (auto day = named.begin(); day != named.end(); ++day) {
            const double half = 0.5 * QFontMetricsF(days.tickLabelFont()).horizontalAdvance(day.value());
            words += {days.coordToPixel(day.key()) - half, days.coordToPixel(day.key()) + half};
        }
        EXPECT_GE(words.size(), 2);
        expectApart(words, plot);
        words.clear();
        for (int i = 0; i < plot.itemCount(); ++i)
            if (const auto* word = qobject_cast<QCPItemText*>(plot.item(i)); word && word->visible())
                words += {word->left->pixelPosition().x(), word->right->pixelPosition().x()};
        EXPECT_GE(words.size(), 2);
        expectApart(words, plot);
    }
}

TEST_F(LogbookWindowTest, FindingsStandThereInWordsAndOneVisitIsOne) {
    fill();
    LogbookWindow window(book());
    window.chooseMachine("holm 1");
    EXPECT_TRUE(window.machines().currentItem()->text().contains("\n1 visit, 1 frame\n"))
        << window.machines().currentItem()->text().toStdString();
    const auto* finding = window.findChild<QComboBox*>();
    ASSERT_TRUE(finding);
    for (int i = 0; i < finding->count(); ++i) EXPECT_FALSE(finding->itemText(i).contains('-'));
    const QString shown = window.visits().topLevelItem(0)->child(0)->text(6);
    EXPECT_FALSE(shown.contains('-')) << shown.toStdString();
    EXPECT_TRUE(shown.contains(u"\u201clever sticks\u201d")) << shown.toStdString();
    EXPECT_TRUE(shown.contains(u"\u201cSent on to the workshop.\u201d")) << shown.toStdString();
}

TEST(FindingNames, NameTheLevelWhereItIsKnown) {
    FrameRow row;
    row.findings = {"end-offset", "level-late", "level-stuck"};
    row.findingLevels = {"0", "4", "2"};
    EXPECT_EQ(findingName("level-late", row), "level 4 late or early");
    EXPECT_EQ(findingName("level-stuck", row), "spaces of level 2 filled");
    EXPECT_EQ(findingName("level-dropout", row), "marks of a level lost");
    row.findingLevels.clear();  // kept before the rows had them, and not to be read any more
    EXPECT_EQ(findingName("level-late", row), "level late or early");
}

TEST_F(LogbookWindowTest, OneKeyKeepsWhatTheBenchShowsAndItIsReopenedWithBothReadings) {
    Session session;
    ASSERT_TRUE(session.playDemonstration());
    MainWindow window(session);
    window.startLog(book());
    window.show();
    QElapsedTimer clock;
    for (clock.start(); clock.elapsed() < 20000 && (!session.latest() || session.latest()->traces.size() < 20);)
        QTest::qWait(50);
    QTest::keyClick(&window, Qt::Key_K);
    EXPECT_TRUE(window.messages().sentence().contains("Kept as frame 1")) << window.messages().sentence().toStdString();
    EXPECT_FALSE(window.keeper().frozen()) << "measuring goes on";

    QTest::keyClick(&window, Qt::Key_L, Qt::ControlModifier);
    auto* logbook = window.findChild<LogbookWindow*>();
    ASSERT_TRUE(logbook);
    EXPECT_EQ(logbook->visits().topLevelItemCount(), 1);
    EXPECT_EQ(logbook->palette().color(QPalette::Highlight), window.palette().color(QPalette::Highlight));
    EXPECT_EQ(logbook->font().family(), window.font().family());
    logbook->resize(1366, 768);
    QTest::qWait(50);
    picture(*logbook, "logbook-with-bench");

    const auto store = opened(book());
    auto kept = readFrame(*store, 1);
    ASSERT_TRUE(kept) << kept.error().text;
    EXPECT_FALSE(kept->excerptFlac.isEmpty());
    const double then = kept->frame.snapshot->reading.distortion.biasPercent->value;
    FrameWindow frame(std::move(*kept));
    frame.resize(1366, 768);
    frame.show();
    for (clock.start(); clock.elapsed() < 20000 && !frame.measured();) QTest::qWait(50);
    ASSERT_TRUE(frame.measured());
    QTest::qWait(50);
    picture(frame, "frame-1366x768");
    EXPECT_TRUE(frame.table().item(0, 1)->text().startsWith(then < 0 ? QString::fromUtf8("\u2212") : "+"));
    EXPECT_FALSE(frame.table().item(0, 2)->text().isEmpty());
}

TEST_F(LogbookWindowTest, WhatWasMarkedAsBeforeIsKeptWithTheMomentAfterAndItsSound) {
    Session session;
    ASSERT_TRUE(session.playDemonstration());
    MainWindow window(session);
    window.startLog(book());
    window.show();
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.latest() && session.latest()->traces.size() >= 20; }, 20000));
    QTest::qWait(100);
    QTest::keyClick(&window, Qt::Key_B);
    EXPECT_TRUE(window.messages().sentence().contains("K keeps it")) << window.messages().sentence().toStdString();
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.latest()->traces.size() >= 25; }, 20000));
    QTest::keyClick(&window, Qt::Key_K);
    EXPECT_TRUE(
        window.messages().sentence().contains("with the moment before: frames 1 (before) and 2 (after) of visit 1"))
        << window.messages().sentence().toStdString();

    const auto store = opened(book());
    const auto rows = framesOf(*store, 1);
    ASSERT_EQ(rows->size(), 2U);
    EXPECT_EQ(rows->front().role, FrameRole::before);
    EXPECT_EQ(rows->back().role, FrameRole::after);
    const auto before = readFrame(*store, 1), after = readFrame(*store, 2);
    ASSERT_TRUE(before && after);
    EXPECT_LT(before->frame.snapshot->seconds, after->frame.snapshot->seconds);
    EXPECT_EQ(before->frame.machine, after->frame.machine);
    EXPECT_FALSE(before->excerptFlac.isEmpty());
}

TEST_F(LogbookWindowTest, ALogbookThatCannotBeOpenedIsOneSentence) {
    QFile bad(book());
    ASSERT_TRUE(bad.open(QIODevice::WriteOnly));
    bad.write("no database at all, but long enough");
    bad.close();
    LogbookWindow window(book());
    EXPECT_TRUE(window.said().endsWith('.'));
    EXPECT_TRUE(window.said().contains("damaged")) << window.said().toStdString();
}
