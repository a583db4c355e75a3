// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/drive.h"

#include <gtest/gtest.h>

using namespace trueunit;

namespace {

// 1500 turns a minute by 12 to 45 teeth are 400 characters of 7.5 units: 50 baud, by hand.
MachineCard fiftyBaud() {
    MachineCard card;
    card.name = card.title = "fifty";
    card.drivingTeeth = 12;
    card.drivenTeeth = 45;
    return card;
}

bool says(const DriveExplanation& e, const std::string& part) {
    for (const std::string& cause : e.causes)
        if (cause.find(part) != std::string::npos) return true;
    return false;
}

}  // namespace

TEST(Drive, MotorAndGearsGiveTheSpeed) {
    EXPECT_NEAR(expectedBaud(fiftyBaud(), 5), 50.0, 1e-9);
    MachineCard halfTurn = fiftyBaud();
    halfTurn.shaftTurns = 0.5;  // two characters to a turn
    EXPECT_NEAR(expectedBaud(halfTurn, 5), 100.0, 1e-9);
}

TEST(Drive, ASpeedAsExpectedNeedsNoCause) {
    const DriveExplanation e = explainDrive(fiftyBaud(), 5, 50.05);
    EXPECT_TRUE(e.causes.empty());
    EXPECT_NE(e.speedWords.find("standard speed of 50.00 baud"), std::string::npos);
}

TEST(Drive, AMotorForFiftyHertzOnSixtyRunsAFifthFast) {
    const DriveExplanation e = explainDrive(fiftyBaud(), 5, 60.0);
    EXPECT_NEAR(e.errorPercent, 20.0, 1e-9);
    EXPECT_TRUE(says(e, "60 Hz mains"));
    EXPECT_TRUE(says(explainDrive(fiftyBaud(), 5, 50.4), "50.40 Hz"));
}

TEST(Drive, AGearWithAToothMoreIsNamed) {
    EXPECT_TRUE(says(explainDrive(fiftyBaud(), 5, 50.0 * 13.0 / 12.0), "13 to 45 teeth"));
    EXPECT_TRUE(says(explainDrive(fiftyBaud(), 5, 45.45), "gears for 45.45 baud"));
    EXPECT_TRUE(says(explainDrive(fiftyBaud(), 5, 71.0), "Neither mains nor a gear"));
}

// 400 turns a minute, each of 7.42 units instead of 7.5, are 49.47 baud, by hand.
TEST(Drive, AnotherStopOnTheSameShaftIsNoFaultOfTheMotor) {
    const DriveExplanation e = explainDrive(fiftyBaud(), 5, 400.0 / 60.0 * 7.42, 1.42);
    ASSERT_FALSE(e.causes.empty());
    EXPECT_NE(e.causes.front().find("stop is 1.42 units instead of 1.50"), std::string::npos);
    EXPECT_FALSE(says(explainDrive(fiftyBaud(), 5, 50.6, 1.42), "stop"));  // that stop does not make that speed
    EXPECT_FALSE(says(explainDrive(fiftyBaud(), 5, 49.47, 1.5), "stop"));
    EXPECT_TRUE(explainDrive(fiftyBaud(), 5, 50.0, 1.42).causes.empty());  // it rests longer: the speed is right
}

TEST(Drive, AGovernedMotorIsSetWrongRatherThanOnTheWrongMains) {
    MachineCard card = fiftyBaud();
    card.motor = MachineCard::Motor::governed;
    const DriveExplanation e = explainDrive(card, 5, 51.0);
    ASSERT_FALSE(e.causes.empty());
    EXPECT_NE(e.causes.front().find("1530 turns"), std::string::npos);
    EXPECT_FALSE(says(e, "mains"));
}

TEST(Drive, TheGearsForAnotherSpeedKeepToItWithinTheStandard) {
    for (const GearWanted& g : gearsWanted(fiftyBaud(), 5, 50.0)) {
        ASSERT_GT(g.drivingTeeth, 0) << g.baud;
        const double shaft = 1500.0 * g.drivingTeeth / g.drivenTeeth;  // turns a minute, by hand
        EXPECT_NEAR(shaft / 60.0 * 7.5, g.baud, 0.002 * g.baud);
        EXPECT_FALSE(gearWords(g).empty());
    }
    EXPECT_NEAR(gearsWanted(fiftyBaud(), 5, 50.0).front().baud, 45.45, 1e-9);
}

TEST(Drive, ALineIsGivenToTheShaftThatTurnsSo) {
    EXPECT_EQ(shaftOf(fiftyBaud(), 5, 50.0, 400.0 / 60.0), std::optional<std::string>("the transmitting shaft"));
    EXPECT_EQ(shaftOf(fiftyBaud(), 5, 50.0, 25.0), std::optional<std::string>("the motor shaft"));
    EXPECT_EQ(shaftOf(fiftyBaud(), 5, 50.0, 400.0 / 60.0 / 5.0),
              std::optional<std::string>("a wheel that turns once in 5 turns of the transmitting shaft"));
    EXPECT_EQ(shaftOf(fiftyBaud(), 5, 50.0, 4.5), std::nullopt);
}
