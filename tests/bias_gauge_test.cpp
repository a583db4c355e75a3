// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/bias_gauge.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTest>
#include <functional>

#include "tests/support/snapshot_builder.h"
#include "tests/support/widget_rig.h"

namespace trueunit::test {
namespace {

TEST(BiasGauge, SaysLongMarksOutOfLimits) {
    BiasGauge gauge;
    gauge.show(SnapshotBuilder().bias(7.3).window(32).build());
    EXPECT_EQ(gauge.digits(), u("+7.3"));
    EXPECT_EQ(gauge.words(), u("marks too long"));
    EXPECT_EQ(gauge.smallWords(), u("± 0.2 % over 32 characters"));
    EXPECT_EQ(gauge.remark(), u("limit ±5 %, bench practice"));
    EXPECT_TRUE(gauge.accessibleDescription().contains(u("+7.3 percent, marks too long")));
}

TEST(BiasGauge, SaysShortMarksAndInLimits) {
    BiasGauge gauge;
    gauge.show(SnapshotBuilder().bias(-6.2).build());
    EXPECT_EQ(gauge.digits(), u("−6.2"));
    EXPECT_EQ(gauge.words(), u("marks too short"));
    gauge.show(SnapshotBuilder().bias(4.5).build());
    EXPECT_EQ(gauge.words(), u("in limits"));
}

TEST(BiasGauge, SaysNeitherInNorOutWhereTheUncertaintyReachesOverTheLimit) {
    BiasGauge gauge;
    gauge.setAlone(true);
    for (const double bias : {4.9, -5.1}) {  // +-0.2
        gauge.show(SnapshotBuilder().bias(bias).build());
        EXPECT_TRUE(gauge.words().startsWith(u("cannot tell"))) << gauge.words().toStdString();
        EXPECT_TRUE(gauge.otherWords().isEmpty());
    }
}

TEST(BiasGauge, ABiasInLimitsDoesNotSpeakForAMachineThatIsOut) {
    BiasGauge gauge;
    Snapshot s = SnapshotBuilder().bias(0.1).end(-9.0).value();
    s.reading.verdict.exceeded = {"end_percent"};
    gauge.show(std::make_shared<const Snapshot>(s));
    EXPECT_EQ(gauge.words(), u("bias in limits"));
    EXPECT_EQ(gauge.otherWords(), u("end out"));
    EXPECT_TRUE(gauge.accessibleDescription().contains(u("bias in limits, end out, ± 0.2 %")));
    s.reading.verdict.exceeded = {"end_percent", "gross_percent", "marks_missed", "spaces_filled"};
    gauge.show(std::make_shared<const Snapshot>(s));
    EXPECT_EQ(gauge.otherWords(), u("end and levels out"));  // both kinds of level are one, gross follows from them
    s.reading.verdict.exceeded = {"wrong_characters", "marks_missed"};
    gauge.show(std::make_shared<const Snapshot>(s));
    EXPECT_EQ(gauge.otherWords(), u("levels out"));  // the characters are wrong because of them
    s.reading.verdict.exceeded = {"gross_percent", "synchronous_percent"};
    gauge.show(std::make_shared<const Snapshot>(s));
    EXPECT_EQ(gauge.otherWords(), u("synchronous out"));
    gauge.show(SnapshotBuilder().bias(0.1).end(-4.95).build());  // +-0.2 about a limit of 5
    EXPECT_EQ(gauge.words(), u("bias in limits"));
    EXPECT_EQ(gauge.otherWords(), u("end ?"));
    s = SnapshotBuilder().bias(0.1).value();
    s.reading.findings = std::vector<Finding>{{"contact-bounce", 0.92, "Bounce", "b", "c", "d"}};
    gauge.show(std::make_shared<const Snapshot>(s));
    EXPECT_EQ(gauge.words(), u("bias in limits"));
    EXPECT_EQ(gauge.otherWords(), u("yet a fault, see findings"));
    s.reading.findings->front().minor = true;
    gauge.show(std::make_shared<const Snapshot>(s));
    EXPECT_EQ(gauge.otherWords(), u("see findings"));
    s.reading.findings->front().id = "contact-offset";  // of the bias itself
    gauge.show(std::make_shared<const Snapshot>(s));
    EXPECT_EQ(gauge.words(), u("in limits"));
    s.reading.findings->front().id = "contact-bounce";
    s.reading.findings->front().confidence = 0.7;
    gauge.show(std::make_shared<const Snapshot>(s));
    EXPECT_EQ(gauge.words(), u("in limits"));
    gauge.show(SnapshotBuilder().bias(9.0).end(-9.0).build());  // the bias itself comes first
    EXPECT_EQ(gauge.words(), u("marks too long"));
    EXPECT_TRUE(gauge.otherWords().isEmpty());
}

TEST(BiasGauge, SaysHowMuchOfTheWindowCameAfterTheNudge) {
    BiasGauge gauge;
    gauge.show(SnapshotBuilder().bias(0.4).biasBefore(9.0, 1.0).build());
    EXPECT_EQ(gauge.smallWords(), u("± 0.2 % over 32 characters, 8 since the nudge"));
    gauge.show(SnapshotBuilder().bias(0.4).biasBefore(9.0, 30.0).build());
    EXPECT_EQ(gauge.smallWords(), u("± 0.2 % over 32 characters"));
}

TEST(BiasGauge, ShowsADashAndTheReasonInsteadOfAStaleNumber) {
    BiasGauge gauge;
    gauge.show(SnapshotBuilder().bias(7.3).build());
    gauge.show(SnapshotBuilder::silent());
    EXPECT_EQ(gauge.digits(), u("—"));
    EXPECT_EQ(gauge.words(), u("No signal: the input is silent."));
    EXPECT_TRUE(gauge.smallWords().isEmpty());
    gauge.show(nullptr);
    EXPECT_EQ(gauge.words(), u("No input yet."));
}

TEST(BiasGauge, SaysThatTheLineRests) {
    Snapshot s = SnapshotBuilder().bias(7.3).value();
    s.state = SignalState::idle;
    BiasGauge gauge;
    gauge.show(std::make_shared<const Snapshot>(s));
    EXPECT_EQ(gauge.smallWords(), u("line rests, last 32 characters"));
}

// A window of one character: the trail is the biases themselves.
std::shared_ptr<const Snapshot> trailOf(std::size_t shown) {
    static constexpr double kBiases[] = {3.0, 9.5, -2.0, 1.0};
    Snapshot s = SnapshotBuilder().window(1).bias(kBiases[shown - 1]).characters(static_cast<int>(shown)).value();
    s.trail.clear();
    for (std::size_t i = 0; i < shown; ++i) s.trail.push_back({i, static_cast<double>(i), kBiases[i], 0.3});
    return std::make_shared<const Snapshot>(s);
}

TEST(BiasGauge, HoldsPeaksUntilTheyAreReset) {
    BiasGauge gauge;
    for (const std::size_t shown : {1U, 2U, 3U, 4U}) gauge.show(trailOf(shown));
    EXPECT_DOUBLE_EQ(gauge.lowestHeld().value(), -2.0);
    EXPECT_DOUBLE_EQ(gauge.highestHeld().value(), 9.5);
    QSignalSpy resets(&gauge, &BiasGauge::peaksReset);
    QTest::keyClick(&gauge, Qt::Key_P);
    EXPECT_EQ(resets.count(), 1);
    EXPECT_DOUBLE_EQ(gauge.lowestHeld().value(), 1.0);
    EXPECT_DOUBLE_EQ(gauge.highestHeld().value(), 1.0);
}

TEST(BiasGauge, HoldsThePeaksOfCharactersThatWereNeverDrawn) {
    BiasGauge gauge;
    gauge.show(trailOf(4));  // as when a busy machine draws one picture only
    EXPECT_DOUBLE_EQ(gauge.lowestHeld().value(), -2.0);
    EXPECT_DOUBLE_EQ(gauge.highestHeld().value(), 9.5);
}

TEST(BiasGauge, HoldsNoPeaksOfAWindowThatIsStillFilling) {
    BiasGauge gauge;
    gauge.show(SnapshotBuilder().bias(9.5).window(32).characters(20).build());
    EXPECT_FALSE(gauge.highestHeld());
    gauge.show(SnapshotBuilder().bias(9.5).window(32).characters(60).build());
    EXPECT_NEAR(gauge.highestHeld().value(), 9.5, 0.6);
}

TEST(BiasGauge, ForgetsPeaksOfAnotherInput) {
    BiasGauge gauge;
    gauge.show(SnapshotBuilder().bias(9.5).characters(200).build());
    gauge.show(SnapshotBuilder().bias(1.0).characters(40).build());  // time went back
    EXPECT_NEAR(gauge.highestHeld().value(), 1.0, 0.6);
}

TEST(BiasGauge, BeginsToHoldAnewWhenWindowSliceSpeedOrInputIsChanged) {
    const std::function<void(Options&)> changes[] = {
        [](Options& o) { o.windowCharacters = 8; }, [](Options& o) { o.slicePercent = 40.0; },
        [](Options& o) { o.baud = 50.0; }, [](Options& o) { o.input = InputKind::tone; }};
    for (const auto& change : changes) {
        BiasGauge gauge;
        gauge.show(trailOf(3));
        EXPECT_DOUBLE_EQ(gauge.highestHeld().value(), 9.5);
        Snapshot s = *trailOf(3);
        change(s.options);
        gauge.show(std::make_shared<const Snapshot>(s));
        EXPECT_FALSE(gauge.highestHeld());
        s.trail.push_back({3, 3.0, 1.0, 0.3});
        gauge.show(std::make_shared<const Snapshot>(s));
        EXPECT_FALSE(gauge.highestHeld() && *gauge.highestHeld() > 1.0);
    }
}

TEST(BiasGauge, WhatAnotherFaultAloneMakesOfItIsNothingForTheEccentric) {
    Snapshot s = SnapshotBuilder().bias(8.6).value();
    Finding unsettled;
    unsettled.id = "slow-rise";
    unsettled.confidence = 0.95;
    s.reading.findings = {unsettled};
    const auto told = [&](double without) {
        s.reading.setAside = SetAsideReading{without, 0.0, 0.0};
        BiasGauge gauge;
        gauge.show(std::make_shared<const Snapshot>(s));
        return gauge.accessibleDescription();
    };
    EXPECT_TRUE(told(0.3).contains("not the eccentric, see findings")) << told(0.3).toStdString();
    EXPECT_FALSE(told(0.3).contains("too long"));
    EXPECT_TRUE(told(6.0).contains("too long")) << told(6.0).toStdString();
    EXPECT_TRUE(told(6.0).contains("not by the contact alone"));
}

TEST(BiasGauge, WidensItsScaleForALargeBiasAndComesBack) {
    BiasGauge gauge;
    EXPECT_DOUBLE_EQ(gauge.scaleEnd(), 20.0);
    gauge.show(SnapshotBuilder().bias(26.0).build());
    EXPECT_DOUBLE_EQ(gauge.scaleEnd(), 50.0);
    gauge.show(SnapshotBuilder().bias(3.0).characters(220).build());
    EXPECT_DOUBLE_EQ(gauge.scaleEnd(), 50.0);  // the held peak is still to be seen
    gauge.resetPeaks();
    EXPECT_DOUBLE_EQ(gauge.scaleEnd(), 20.0);
}

}  // namespace
}  // namespace trueunit::test
