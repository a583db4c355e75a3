// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QImage>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>
#include <algorithm>
#include <cmath>
#include <vector>

#include "core/report/finding_words.h"
#include "tests/support/snapshot_builder.h"
#include "tests/support/widget_rig.h"
#include "widgets/eccentric_panel.h"
#include "widgets/finding_list.h"
#include "widgets/findings_panel.h"
#include "widgets/level_meter.h"
#include "widgets/theme.h"
#include "widgets/words.h"

namespace trueunit::test {
namespace {

// ---- words ----

TEST(Words, NumbersCarryATrueMinusAndNoSignAtZero) {
    EXPECT_EQ(signedNumber(7.26, 1), u("+7.3"));
    EXPECT_EQ(signedNumber(-0.31, 1), u("−0.3"));
    EXPECT_EQ(signedNumber(-0.04, 1), u("0.0"));
    EXPECT_EQ(number(-12.0, 0), u("−12"));
}

// Relative luminance and contrast ratio of two colours, as the Web Content Accessibility Guidelines 2.1 define them
// (from memory); they want 4.5 for words.
double luminance(const QColor& color) {
    const auto linear = [](double v) { return v <= 0.03928 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4); };
    return 0.2126 * linear(color.redF()) + 0.7152 * linear(color.greenF()) + 0.0722 * linear(color.blueF());
}

double contrast(const QColor& a, const QColor& b) {
    const double more = std::max(luminance(a), luminance(b)), less = std::min(luminance(a), luminance(b));
    return (more + 0.05) / (less + 0.05);
}

TEST(Theme, WordsStandOutOfTheirGround) {
    EXPECT_NEAR(contrast(Qt::white, Qt::black), 21.0, 1e-6);
    for (const QColor& ground : {theme::kPanel, theme::kPaper})
        for (const QColor& words : {theme::kInk, theme::kSecondary, theme::kBlue, theme::kOut, theme::kInOrder})
            EXPECT_GE(contrast(words, ground), 4.5)
                << words.name().toStdString() << " on " << ground.name().toStdString();
    EXPECT_GE(contrast(theme::kHole, theme::kTape), 4.5);
}

TEST(Words, DecimalsFollowTheUncertaintyButDoNotFlutter) {
    StableDecimals decimals;
    EXPECT_EQ(decimals.update(0.2), 1);
    EXPECT_EQ(decimals.update(0.045), 1);  // just over the border: stays
    EXPECT_EQ(decimals.update(0.01), 2);
    EXPECT_EQ(decimals.update(0.055), 2);
    EXPECT_EQ(decimals.update(0.2), 1);
    EXPECT_EQ(decimals.update(2.0), 0);
}

TEST(Words, NoInstantIsMarkedWhileEveryReadingIsInLimits) {
    Snapshot s = SnapshotBuilder().bias(4.0).value();
    EXPECT_FALSE(instantIsOut(Condition::mark, -6.0, s));  // scatter about a bias in limits
    EXPECT_TRUE(instantIsOut(Condition::mark, -10.2, s));  // beyond the start-stop limit of 10
    s = SnapshotBuilder().bias(6.0).value();
    EXPECT_TRUE(instantIsOut(Condition::mark, -6.0, s));
    EXPECT_TRUE(instantIsOut(Condition::space, -6.0, s));  // whatever is outside the tint, now that one is out
    EXPECT_FALSE(instantIsOut(Condition::space, -4.9, s));
}

// The mean of a few scattered instants lies anywhere.
TEST(Words, AMeanIsOutOnlyWhenTheWholeOfItsUncertaintyIs) {
    const Snapshot s = SnapshotBuilder().bias(6.0).value();
    const auto mean = [](long count, double percent, double rms) {
        InstantReading i;
        i.count = count;
        i.to = Condition::mark;
        i.meanPercent = percent;
        i.rmsPercent = rms;
        return i;
    };
    EXPECT_TRUE(meanIsOut(mean(1, -9.0, 0.0), s));  // the others tell how little they scatter
    EXPECT_FALSE(meanIsOut(mean(3, -7.0, 4.0), s));
    EXPECT_TRUE(meanIsOpen(mean(3, -7.0, 4.0), s));
    EXPECT_FALSE(meanIsOpen(mean(3, -7.0, 0.3), s) || meanIsOpen(mean(3, -4.0, 4.0), s));
    Snapshot rough = s;
    for (InstantReading& i : rough.reading.instants) i.rmsPercent = 4.0;
    EXPECT_TRUE(meanIsOpen(mean(1, -9.0, 0.0), rough));
    EXPECT_TRUE(meanIsOut(mean(3, -7.0, 0.3), s));
    EXPECT_TRUE(meanIsOut(mean(100, -7.0, 4.0), s));
}

// ---- the others ----

TEST(LevelMeter, SaysClippingLossesAndTheWiring) {
    Snapshot s = SnapshotBuilder().value();
    LevelMeter meter;
    meter.show(std::make_shared<const Snapshot>(s));
    EXPECT_EQ(meter.levelWords(), u("−11 dBFS"));
    EXPECT_EQ(meter.inputWords(), u("loop, upright, coupling 8 Hz evened out, signal to noise 43 dB"));
    Snapshot sliced = SnapshotBuilder().value();
    sliced.options.slicePercent = 42.0;
    meter.show(std::make_shared<const Snapshot>(sliced));
    EXPECT_TRUE(meter.inputWords().startsWith(u("slice 42 %, ")));
    EXPECT_TRUE(meter.lossWords().isEmpty());
    s.clippingNow = true;
    s.reading.input.gaps = 2;
    s.lostSamples = 512;
    meter.show(std::make_shared<const Snapshot>(s));
    EXPECT_EQ(meter.levelWords(), u("clipping"));
    EXPECT_EQ(meter.lossWords(), u("2 gaps, 512 samples lost"));
}

TEST(FindingsPanel, InventsNothingAndKeepsTheCaution) {
    FindingsPanel panel;
    panel.show(SnapshotBuilder::silent());
    EXPECT_TRUE(panel.shownText().contains(u("No cause is told without a reading")));
    EXPECT_TRUE(panel.accessibleDescription().contains(u("Hazardous loop voltage")));
    Snapshot s = SnapshotBuilder().bias(7.3).value();
    s.reading.findings = std::vector<Finding>{{"contact-offset", 0.97, "Contacts sit off centre",
                                               "Every front of a mark is 7.2 % early.", "the eccentric",
                                               "turn it; all levels must move together"}};
    panel.show(std::make_shared<const Snapshot>(s));
    for (const char* part :
         {"Contacts sit off centre", "97 % sure", "7.2 % early", "Look at: the eccentric", "Confirm:"})
        EXPECT_TRUE(panel.shownText().contains(u(part))) << part;
    EXPECT_FALSE(panel.shownText().contains(u("silent")));
}

// What does not fit can be given more room, gives it back when it fits, and has it again when it does not.
TEST(FindingsPanel, AsksForMoreHeightOnlyWhileSomethingIsOutOfSight) {
    Snapshot s = SnapshotBuilder().bias(7.3).value();
    s.reading.findings = std::vector<Finding>(4, {"contact-offset", 0.9, "a", "b", "c", "d"});
    FindingsPanel panel;
    bool wanted = false;
    QObject::connect(&panel, &FindingsPanel::tallWanted, [&](bool tall) {
        wanted = tall;
        panel.resize(378, tall ? 500 : 180);
    });
    panel.resize(378, 180);
    panel.QWidget::show();
    panel.show(std::make_shared<const Snapshot>(s));
    settle();
    panel.toggleTall();
    EXPECT_TRUE(wanted);
    const std::vector<Finding> all = *s.reading.findings;
    s.reading.findings->resize(1);
    panel.show(std::make_shared<const Snapshot>(s));
    settle();
    EXPECT_FALSE(wanted);
    s.reading.findings = all;
    panel.show(std::make_shared<const Snapshot>(s));
    settle();
    EXPECT_TRUE(wanted);
    panel.toggleTall();
    EXPECT_FALSE(wanted);
}

TEST(FindingsPanel, AFindingUnderThePointerHasThePageOfWhatItIs) {
    Snapshot s = SnapshotBuilder().bias(7.3).value();
    s.reading.findings =
        std::vector<Finding>{{"contact-bounce", 0.97, "a", "b", "c", "d"}, {"two-of-a-kind", 0.97, "a", "b", "c", "d"}};
    FindingsPanel panel;
    panel.setProperty(theme::kHelpPage, "findings.md");
    panel.resize(378, 400);
    panel.QWidget::show();
    panel.show(std::make_shared<const Snapshot>(s));
    settle();
    auto* list = panel.findChild<FindingList*>();
    QTest::mouseMove(list, {40, list->topOf(0) + 8});
    EXPECT_EQ(list->property(theme::kHelpPage).toString(), "bounce.md");
    QTest::mouseMove(list, {40, list->topOf(1) + 8});
    EXPECT_EQ(list->property(theme::kHelpPage).toString(), "");  // that of the panel
    s.reading.findings = std::vector<Finding>{{"feed-slip", 0.97, "a", "b", "c", "d"}};
    panel.show(std::make_shared<const Snapshot>(s));
    list->setChosen(0);  // with the keys, the pointer elsewhere
    EXPECT_EQ(list->property(theme::kHelpPage).toString(), "findings.md#when-the-feed-slips");
}

TEST(FindingsPanel, SaysOverHowManyCharacters) {
    Snapshot s = SnapshotBuilder().bias(7.3).window(8).value();
    s.reading.findings = std::vector<Finding>{{"contact-offset", 0.97, "a", "b", "c", "d"}};
    s.findingsUsed = 32;
    FindingsPanel panel;
    panel.show(std::make_shared<const Snapshot>(s));
    EXPECT_EQ(panel.remark(), u("over 32 characters"));
    s.windowUsed = 128;  // the last 32 came since a nudge
    panel.show(std::make_shared<const Snapshot>(s));
    EXPECT_EQ(panel.remark(), u("over 32 characters"));
    s.findingsUsed = 0;
    panel.show(std::make_shared<const Snapshot>(s));
    EXPECT_EQ(panel.remark(), u("over 128 characters"));
}

TEST(FindingsPanel, ACautionStandsOnceAndThatWithTheFirstFindingThatHasIt) {
    Snapshot s = SnapshotBuilder().value();
    s.reading.findings = std::vector<Finding>{{"contact-offset", 0.97, "A", "", "", "Feel it." + kUnplug, {}},
                                              {"hum", 0.9, "B", "", "", "Look." + kUnplug + kNoOil, {}}};
    FindingsPanel panel;
    panel.show(std::make_shared<const Snapshot>(s));
    const QString text = panel.findChild<FindingList*>()->text();
    EXPECT_EQ(text.count("Unplug the machine"), 1) << text.toStdString();
    EXPECT_LT(text.indexOf("Unplug the machine"), text.indexOf("Look."));
    EXPECT_EQ(text.count("never oiled"), 1);
}

TEST(FindingsPanel, TheHeadingOfTheChosenFindingIsSeen) {
    Snapshot s = SnapshotBuilder().value();
    const std::string words = "This is the evidence, in words enough to fill the panel and more than the panel. ";
    s.reading.findings.emplace();
    for (const char* id : {"end-offset", "level-late", "contact-bounce"})
        s.reading.findings->push_back({id, 0.9, id, words + words, "the cam " + words, words});
    FindingsPanel panel;
    panel.resize(378, 200);
    panel.show(std::make_shared<const Snapshot>(s));
    panel.QWidget::show();
    settle();
    const auto* list = panel.findChild<FindingList*>();
    const auto* scroll = panel.findChild<QScrollArea*>();
    EXPECT_EQ(list->height(), list->heightForWidth(list->width()));  // nothing blank to wheel to
    const QScrollBar* bar = scroll->verticalScrollBar();
    std::vector<int> seen;
    for (int i = 0; i < 3; ++i) {
        panel.chooseNext();
        seen.push_back(bar->value());
        EXPECT_EQ(bar->value(), std::min(list->topOf(i), bar->maximum())) << i;
    }
    EXPECT_GT(seen[1], seen[0]);
    EXPECT_GT(seen[2], seen[1]);
    s.seconds = 0.1;  // another input
    panel.show(std::make_shared<const Snapshot>(s));
    EXPECT_EQ(bar->value(), 0);
    EXPECT_EQ(list->chosen(), -1);
}

// Rows of pixels with ink between the bar at the left and the scroll bar, from the foot of the list upwards.
int inkedRowsAtTheFoot(const QImage& list) {
    const auto inked = [&list](int y) {
        for (int x = 20; x < list.width() - 20; ++x)
            if (std::abs(qGray(list.pixel(x, y)) - qGray(theme::kPanel.rgb())) > 60) return true;
        return false;
    };
    int rows = 0;
    while (rows < list.height() && inked(list.height() - 1 - rows)) ++rows;
    return rows;
}

TEST(FindingsPanel, NoLineIsCutThroughWhateverTheHeight) {
    Snapshot s = SnapshotBuilder().value();
    const std::string words = "Hgjpqy and many more words that go below the line and above, over several lines of it. ";
    s.reading.findings = std::vector<Finding>{{"end-offset", 0.9, "Hgjpqy", words + words, words, words}};
    FindingsPanel panel;
    panel.show(std::make_shared<const Snapshot>(s));
    panel.resize(378, 170);
    panel.QWidget::show();
    int whole = 0;
    for (int height = 170; height < 186; ++height) {
        panel.resize(378, height);
        settle();
        const QRect list = panel.findChild<QScrollArea*>()->geometry();  // without a frame
        const int rows = inkedRowsAtTheFoot(panel.grab(list).toImage());
        whole += rows == 0 ? 1 : 0;
        EXPECT_LE(rows, 3) << height;  // the feet of letters, where a line ends just there
    }
    EXPECT_GE(whole, 12);
}

TEST(EccentricPanel, KeysAndButtonsEmitTheTurn) {
    EccentricPanel panel;
    QSignalSpy turns(&panel, &EccentricPanel::turned);
    QTest::keyClick(&panel, Qt::Key_Right);
    QTest::keyClick(&panel, Qt::Key_Left, Qt::ShiftModifier);
    ASSERT_EQ(turns.count(), 2);
    EXPECT_DOUBLE_EQ(turns.at(0).at(0).toDouble(), 0.2);
    EXPECT_DOUBLE_EQ(turns.at(1).at(0).toDouble(), -2.0);
    EXPECT_NEAR(panel.turnedSoFar(), -1.8, 1e-12);
}

// ---- all of them ----

TEST(EveryWidget, DrawsAnotherPictureForAnotherSnapshot) {
    Snapshot other = SnapshotBuilder().bias(-9.0).text("E").value();
    other.levelDbfs = -40.0;
    other.reading.findings = std::vector<Finding>{{"in-order", 0.9, "In order", "", "", ""}};
    for (const WidgetMaker& maker : allWidgets()) {
        if (maker.name == QStringLiteral("eccentric")) continue;  // shows the hand's turns, not the signal
        const auto widget = maker.make();
        widget->resize(widget->sizeHint());
        const auto picture = [&](const SnapshotPtr& snapshot) {
            maker.show(*widget, snapshot);
            widget->QWidget::show();
            settle();
            return widget->grab().toImage();
        };
        const QImage first = picture(SnapshotBuilder().bias(7.3).build());
        EXPECT_NE(first, picture(std::make_shared<const Snapshot>(other))) << maker.name.toStdString();
    }
}

TEST(EveryWidget, StandsAnEmptySnapshotAndHasAnAccessibleName) {
    for (const WidgetMaker& maker : allWidgets()) {
        const auto widget = maker.make();
        EXPECT_FALSE(widget->accessibleName().isEmpty()) << maker.name.toStdString();
        EXPECT_FALSE(widget->accessibleDescription().isEmpty()) << maker.name.toStdString();
        for (const SnapshotPtr& snapshot : {SnapshotPtr(), std::make_shared<const Snapshot>(),
                                            SnapshotBuilder().build(), std::make_shared<const Snapshot>()}) {
            maker.show(*widget, snapshot);
            widget->resize(40, 30);  // smaller than it asks for
            widget->grab();
            widget->resize(widget->sizeHint());
            widget->grab();
        }
    }
}

}  // namespace
}  // namespace trueunit::test
