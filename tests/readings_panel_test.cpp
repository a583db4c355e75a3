// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/readings_panel.h"

#include <gtest/gtest.h>

#include <memory>

#include "tests/support/snapshot_builder.h"
#include "tests/support/widget_rig.h"
#include "widgets/reading_row.h"

namespace trueunit::test {
namespace {

TEST(ReadingsPanel, ShowsValuesWithUncertaintyAndJudgement) {
    ReadingsPanel panel;
    panel.show(SnapshotBuilder().bias(7.3).build());
    const RowText& bias = panel.row(ReadingsPanel::bias).text();
    EXPECT_EQ(bias.value, u("+7.3"));
    EXPECT_EQ(bias.uncertainty, u("±0.2"));
    EXPECT_EQ(bias.judgement, u("out, limit 5"));
    EXPECT_EQ(bias.within, false);
    EXPECT_EQ(panel.row(ReadingsPanel::end).text().within, true);
    EXPECT_EQ(panel.row(ReadingsPanel::stop).text().value, u("1.42"));
    EXPECT_FALSE(panel.row(ReadingsPanel::shaft).text().within.has_value());  // no limit, no judgement
    EXPECT_TRUE(panel.reasonShown().isEmpty());
}

TEST(ReadingsPanel, ALimitWithinTheUncertaintyIsAQuestionMarkAndHowManyCharactersMore) {
    ReadingsPanel panel;
    panel.show(SnapshotBuilder().bias(4.85).build());  // +-0.2
    const ReadingRow& bias = panel.row(ReadingsPanel::bias);
    EXPECT_FALSE(bias.text().within.has_value());
    EXPECT_TRUE(bias.text().judgement.startsWith(u("? "))) << bias.text().judgement.toStdString();
    EXPECT_TRUE(bias.text().judgement.endsWith(u(" more")));
    EXPECT_TRUE(bias.said().contains(u("cannot tell yet: "))) << bias.said().toStdString();
}

TEST(ReadingsPanel, GivesTheReasonOfAMissingReading) {
    ReadingsPanel panel;
    panel.show(SnapshotBuilder().withoutStop().build());
    const ReadingRow& stop = panel.row(ReadingsPanel::stop);
    EXPECT_TRUE(stop.text().value.isEmpty());
    EXPECT_EQ(panel.reasonShown(), u("The tape did not run without pause: the stop cannot be told."));
    EXPECT_EQ(stop.toolTip().section(u'\n', 0, 0), panel.reasonShown());
    panel.show(SnapshotBuilder().build());
    EXPECT_EQ(stop.toolTip().section(u'\n', 0, 0), u("Stop 1.42 units ±0.01"));
    EXPECT_TRUE(stop.toolTip().section(u'\n', 1).contains(u("clutch")));  // which part makes it
}

// A reading that is out is not what the findings may take the place of; one that came back stays until all do.
TEST(ReadingsPanel, BriefKeepsSpeedBiasAndWhatIsOut) {
    ReadingsPanel panel;
    const auto seen = [&panel](ReadingsPanel::Row row) { return !panel.row(row).isHidden(); };
    panel.show(SnapshotBuilder().bias(7.3).framingErrorAt(3).build());
    panel.setBrief(true);
    EXPECT_TRUE(seen(ReadingsPanel::speed) && seen(ReadingsPanel::bias) && seen(ReadingsPanel::framing));
    EXPECT_FALSE(seen(ReadingsPanel::end) || seen(ReadingsPanel::shaft));
    const int height = panel.sizeHint().height();
    panel.show(SnapshotBuilder().bias(1.0).build());
    EXPECT_TRUE(seen(ReadingsPanel::framing));
    EXPECT_EQ(panel.sizeHint().height(), height);
    panel.setBrief(false);
    EXPECT_TRUE(seen(ReadingsPanel::end));
    panel.setBrief(true);
    EXPECT_FALSE(seen(ReadingsPanel::framing));
}

TEST(ReadingsPanel, CountsFramingErrorsAsOutOfLimits) {
    ReadingsPanel panel;
    panel.show(SnapshotBuilder().framingErrorAt(3).build());
    EXPECT_EQ(panel.row(ReadingsPanel::framing).text().value, u("1"));
    EXPECT_EQ(panel.row(ReadingsPanel::framing).text().within, false);
}

TEST(ReadingsPanel, CountsLostMarksAndFilledSpacesByLevel) {
    Snapshot s = SnapshotBuilder().value();
    s.options.expect = "RY";
    s.reading.levels.emplace();
    for (int level = 1; level <= 5; ++level) s.reading.levels->push_back({level, 96, level == 3 ? 13 : 0, 160, 0});
    s.reading.verdict.exceeded = {"marks_missed"};
    ReadingsPanel panel;
    panel.show(std::make_shared<const Snapshot>(s));
    const ReadingRow& row = panel.row(ReadingsPanel::levels);
    EXPECT_EQ(row.text().value, u("13, 0"));
    EXPECT_EQ(row.text().judgement, u("level 3"));
    EXPECT_EQ(row.text().within, false);
    EXPECT_TRUE(row.said().contains(u("marks lost: level 3: 13 of 96; spaces filled: of 800")))
        << row.said().toStdString();
    (*s.reading.levels)[2].marksMissed = 0;
    s.reading.verdict.exceeded.clear();
    panel.show(std::make_shared<const Snapshot>(s));
    EXPECT_EQ(row.text().value, u("0, 0"));
    EXPECT_EQ(row.text().judgement, u("of 480, 800"));
    EXPECT_EQ(row.text().within, true);
    for (int level : {1, 3}) (*s.reading.levels)[static_cast<std::size_t>(level)].spacesFilled = 7;
    panel.show(std::make_shared<const Snapshot>(s));
    EXPECT_EQ(row.text().judgement, u("2 levels"));
    s.reading.levels.reset();
    panel.show(std::make_shared<const Snapshot>(s));
    EXPECT_TRUE(row.text().value.isEmpty());
    EXPECT_EQ(row.text().judgement, u("another text"));
    EXPECT_TRUE(panel.reasonShown().isEmpty());  // the row says it itself
}

TEST(ReadingsPanel, ThePeriodicDistortionIsTheLargestOrSaysWhyThereIsNone) {
    Snapshot s = SnapshotBuilder().value();
    ReadingsPanel panel;
    const RowText& row = panel.row(ReadingsPanel::cyclic).text();
    s.reading.distortion.cyclic = std::vector<CyclicLine>{{0.8, 6.1, 1.0}, {2.04, 2.3, 0.38}};
    panel.show(std::make_shared<const Snapshot>(s));
    EXPECT_EQ(row.value, u("2.0"));
    EXPECT_EQ(row.judgement, u("at 2.30 Hz"));
    s.reading.distortion.cyclic->clear();
    panel.show(std::make_shared<const Snapshot>(s));
    EXPECT_EQ(row.value, u(""));
    EXPECT_EQ(row.judgement, u("none found"));
    s.reading.distortion.cyclic.reset();
    panel.show(std::make_shared<const Snapshot>(s));
    EXPECT_EQ(row.value, u(""));
    EXPECT_EQ(row.judgement, u("cannot be told yet"));
    EXPECT_TRUE(panel.reasonShown().isEmpty());  // the row says it itself
}

TEST(ReadingsPanel, NamesTheReadingThatWantsMoreCharacters) {
    Snapshot s = SnapshotBuilder().value();
    s.reading.distortion.fortuitousRmsPercent.reset();
    ReadingsPanel panel;
    panel.show(std::make_shared<const Snapshot>(s));
    EXPECT_EQ(panel.reasonShown(), u("Scatter (fortuitous): too few characters so far."));
}

}  // namespace
}  // namespace trueunit::test
