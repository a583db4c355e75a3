// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units.h"

#include <gtest/gtest.h>

namespace trueunit {
namespace {

TEST(Units, AnInstantOfTheStreamKeepsItsFractionInSeconds) {
    EXPECT_DOUBLE_EQ((SampleTime{480.5}.seconds(48000.0)), 0.0100104166666666667);
}

TEST(Units, TheOppositeOfMarkIsSpaceAndBack) {
    EXPECT_EQ(opposite(Condition::mark), Condition::space);
    EXPECT_EQ(opposite(Condition::space), Condition::mark);
}

TEST(Units, TheTradesNameForTwentyTwoMillisecondsMeansTheUnitAndNotTheRoundedNumber) {
    // 1/45.45 is 22.0022 ms; the machine's unit is 22 ms (US Army signal course SS0330).
    EXPECT_DOUBLE_EQ(namedSpeed(45.45).unitSeconds, 0.022);
    EXPECT_DOUBLE_EQ(namedSpeed(45.454).unitSeconds, 0.022);
}

TEST(Units, ASpeedThatIsNoStandardOneMeansItsReciprocal) {
    EXPECT_DOUBLE_EQ(namedSpeed(48.0).unitSeconds, 1.0 / 48.0);
    EXPECT_DOUBLE_EQ(namedSpeed(48.0).baud, 48.0);
}

TEST(Units, TheNearestStandardSpeedWinsAlsoBetweenTwoCloseOnes) {
    // 74.2 and 75 baud lie 1.07 % apart.
    EXPECT_DOUBLE_EQ(nearestStandardSpeed(1.0 / 74.4)->baud, 74.2);
    EXPECT_DOUBLE_EQ(nearestStandardSpeed(1.0 / 74.8)->baud, 75.0);
}

TEST(Units, AStandardSpeedIsTakenUpToThreePercentAwayAndNoFurther) {
    EXPECT_DOUBLE_EQ(nearestStandardSpeed(0.020 * 1.0299)->baud, 50.0);
    EXPECT_DOUBLE_EQ(nearestStandardSpeed(0.020 / 1.0299)->baud, 50.0);
    EXPECT_FALSE(nearestStandardSpeed(0.020 * 1.032));
    EXPECT_FALSE(nearestStandardSpeed(0.020 / 1.032));
    EXPECT_FALSE(nearestStandardSpeed(0.001));
}

TEST(Units, AMachineForOtherMainsIsNotMistakenForAStandardSpeed) {
    // 50 of 60 Hz turn 45.45 baud into 37.9: 16.7 % slow (reference: synchronous motor speed is 120 f / poles).
    EXPECT_FALSE(nearestStandardSpeed(0.022 * 60.0 / 50.0));
}

}  // namespace
}  // namespace trueunit
