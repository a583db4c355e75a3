// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/trail_view.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QToolButton>
#include <algorithm>
#include <cmath>
#include <random>
#include <vector>

#include "tests/support/snapshot_builder.h"
#include "tests/support/widget_rig.h"
#include "widgets/trail_nudges.h"

namespace trueunit::test {
namespace {

// Neither words upon words nor a hairline through words, whatever lies together; the youngest always has its words.
TEST(TrailView, WordsOfNudgesNeverLieOnEachOther) {
    std::mt19937 random(7);
    // Two in the last seconds: both are told.
    const std::vector<NudgeWords> two = {{290.0, "+9.0 to +3.9", 70.0}, {240.0, "+13.9 to +9.0", 74.0}};
    EXPECT_EQ(placeNudgeWords(two, 0.0, 300.0, 2).size(), 2U);
    // Five, one after the other: with room for four rows, each.
    std::vector<NudgeWords> five;
    for (int i = 0; i < 5; ++i) five.push_back({200.0 - 7.0 * i, "+9.0 to +3.9", 70.0});
    EXPECT_EQ(placeNudgeWords(five, 0.0, 300.0, 4).size(), 5U);
    for (int round = 0; round < 300; ++round) {
        std::vector<double> at(1 + round % 9);
        for (double& x : at) x = std::uniform_real_distribution<>(0.0, 300.0)(random);
        std::sort(at.rbegin(), at.rend());
        std::vector<NudgeWords> words;
        for (const double x : at) words.push_back({x, "+7.3 to +0.4", 70.0});
        const auto places = placeNudgeWords(words, -80.0, 300.0, 2);
        ASSERT_FALSE(places.empty());
        EXPECT_EQ(places.front().words, &words.front());
        for (const NudgePlace& a : places) {
            EXPECT_LE(a.right, 300.0);
            for (const NudgePlace& b : places) {
                if (&a == &b) continue;
                EXPECT_TRUE(a.row != b.row || a.right <= b.left || b.right <= a.left);
                EXPECT_FALSE(a.row < b.row && b.words->x > a.left && b.words->x < a.right);
            }
        }
    }
}

TEST(TrailView, ShowsOnlyItsSpan) {
    const auto snapshot = SnapshotBuilder().characters(700).build();  // 114 s
    TrailView trail;
    trail.show(snapshot);
    EXPECT_EQ(trail.pointsShown(), 700);
    trail.setSpan(30.0);
    EXPECT_NEAR(trail.pointsShown(), 30.0 / (7.42 * 0.022), 1.5);
}

TEST(TrailView, MarksWhereTheWindowWasChanged) {
    Snapshot s = SnapshotBuilder().characters(300).value();
    const auto told = [](const Snapshot& snapshot) {
        TrailView trail;
        trail.resize(470, 200);
        trail.show(std::make_shared<const Snapshot>(snapshot));
        return std::pair(trail.accessibleDescription(), trail.grab().toImage());
    };
    const auto unmarked = told(s);  // as kept before points said what they are taken over
    EXPECT_FALSE(unmarked.first.contains("characters"));
    for (std::size_t i = 0; i < s.trail.size(); ++i) s.trail[i].over = 8;
    EXPECT_EQ(told(s), unmarked);
    for (std::size_t i = 150; i < s.trail.size(); ++i) s.trail[i].over = 128;
    const auto marked = told(s);
    EXPECT_TRUE(marked.first.contains("over 128 characters")) << marked.first.toStdString();
    EXPECT_NE(marked.second, unmarked.second);
}

Snapshot swinging(double percent) {
    Snapshot s = SnapshotBuilder().characters(300).value();
    for (TrailPoint& p : s.trail)
        p.baud = Measured{*s.reading.speed.nominalBaud * (1.0 + 0.01 * percent * std::sin(p.seconds)), 0.02};
    return s;
}

TEST(TrailView, ShowsTheSpeedInPlaceOfTheBias) {
    TrailView trail;
    trail.resize(470, 200);
    trail.show(std::make_shared<const Snapshot>(swinging(1.9)));
    const QImage ofBias = trail.grab().toImage();
    auto* button = trail.findChild<QToolButton*>();
    ASSERT_NE(button, nullptr);
    button->click();
    EXPECT_EQ(trail.of(), TrailOf::speed);
    EXPECT_EQ(trail.pointsShown(), 300);
    EXPECT_EQ(trail.title(), "Trail of the speed");
    EXPECT_TRUE(trail.accessibleDescription().contains(u("Between −1.9 and +1.9 percent")))
        << trail.accessibleDescription().toStdString();
    EXPECT_NE(trail.grab().toImage(), ofBias);
    button->click();
    EXPECT_EQ(trail.of(), TrailOf::bias);
    EXPECT_EQ(trail.grab().toImage(), ofBias);
}

TEST(TrailView, WithoutANominalSpeedTheErrorIsThatAboutTheMean) {
    Snapshot s = swinging(1.0);
    s.reading.speed.nominalBaud.reset();
    TrailView trail;
    trail.setOf(TrailOf::speed);
    trail.show(std::make_shared<const Snapshot>(s));
    EXPECT_EQ(trail.pointsShown(), 300);
    EXPECT_TRUE(trail.remark().contains("mean")) << trail.remark().toStdString();
}

TEST(TrailView, AFindingAboutTheSpeedShowsItWhileItIsChosen) {
    EvidencePlaces ofSpeed, ofLevel;
    ofSpeed.speed = true;
    ofLevel.level = 4;
    TrailView trail;
    trail.show(std::make_shared<const Snapshot>(swinging(1.0)));
    trail.setEvidence(ofSpeed);
    EXPECT_EQ(trail.of(), TrailOf::speed);
    trail.setEvidence(ofLevel);
    EXPECT_EQ(trail.of(), TrailOf::bias);
    trail.setOf(TrailOf::speed);  // by hand: it stays
    trail.setEvidence(ofSpeed);
    trail.setEvidence({});
    EXPECT_EQ(trail.of(), TrailOf::speed);
}

}  // namespace
}  // namespace trueunit::test
