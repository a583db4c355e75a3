// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/machine_card_json.h"

#include <gtest/gtest.h>

#include <cmath>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "core/frame/code_table.h"
#include "core/report/drive.h"

using namespace trueunit;

namespace {

std::string refusal(const std::string& json) {
    const auto card = parseMachineCard(json);
    return card ? "" : card.error().text;
}

}  // namespace

TEST(MachineCardJson, ACardComesBackAsItWasKept) {
    MachineCard card;
    card.name = "skerry-2";
    card.title = "Skerry 2";
    card.motor = MachineCard::Motor::governed;
    card.motorTurns = 2100.0;
    card.drivingTeeth = 7;
    card.drivenTeeth = 40;
    card.baud = 45.45;
    card.stopUnits = 1.42;
    const auto back = parseMachineCard(machineCardJson(card));
    ASSERT_TRUE(back) << back.error().text;
    EXPECT_EQ(machineCardJson(*back), machineCardJson(card));
}

TEST(MachineCardJson, ABadFileGivesOneSentence) {
    EXPECT_EQ(refusal("[1]"), "This is no machine card: not a JSON object.");
    EXPECT_EQ(refusal("{}"), "A machine card wants \"name\" with some words.");
    MachineCard card;
    card.name = "a";
    card.title = "A";
    std::string json = machineCardJson(card);
    json.replace(json.find("synchronous"), 11, "steam");
    EXPECT_NE(refusal(json).find("not \"steam\""), std::string::npos);
    card.drivenTeeth = 0;
    EXPECT_NE(refusal(machineCardJson(card)).find("teeth"), std::string::npos);
    card.drivenTeeth = 1;
    card.name = "../elsewhere";
    EXPECT_NE(refusal(machineCardJson(card)).find("small letters"), std::string::npos);
}

// Each shipped card's motor and gears make its speed within the 0.75 % of ITU-T S.3 (from memory).
TEST(MachineCardJson, TheShippedCardsMakeTheirSpeeds) {
    int cards = 0;
    for (const auto& entry :
         std::filesystem::directory_iterator(std::filesystem::path(TRUEUNIT_SOURCE_FOLDER) / "resources/machines")) {
        std::ostringstream text;
        text << std::ifstream(entry.path()).rdbuf();
        const auto card = parseMachineCard(text.str());
        ASSERT_TRUE(card) << entry.path() << ": " << card.error().text;
        EXPECT_EQ(card->name, entry.path().stem().string());
        const CodeTable* code = findCode(card->code);
        ASSERT_TRUE(code);
        EXPECT_NEAR(expectedBaud(*card, code->levels), card->baud, 0.0075 * card->baud) << card->name;
        ++cards;
    }
    EXPECT_GE(cards, 5);
}
