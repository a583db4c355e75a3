// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/machine_cards.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QDir>
#include <fstream>

#include "tests/support/temporary_folder.h"

using namespace trueunit;
using trueunit::test::TemporaryFolder;

namespace {

class MachineCards : public testing::Test {
protected:
    MachineCards() {
        qputenv("XDG_CONFIG_HOME", QByteArray::fromStdString(folder_.file("config")));
        QCoreApplication::setOrganizationName("Trueunit test");
        QCoreApplication::setApplicationName("Trueunit test");
    }
    const TemporaryFolder folder_;
};

}  // namespace

TEST_F(MachineCards, TheShippedOnesAreThereAndAnOwnOneIsKept) {
    const std::size_t shipped = machineCards().size();
    EXPECT_GE(shipped, 5U);
    MachineCard card = machineCards().front();
    card.title = "Skerry 2, after the rebuild";
    card.name = cardNameFor(QString::fromStdString(card.title));
    EXPECT_EQ(card.name, "skerry-2-after-the-rebuild");
    card.drivingTeeth = 11;
    ASSERT_TRUE(keepMachineCard(card));
    EXPECT_EQ(machineCards().size(), shipped + 1);
    const Result<MachineCard> back = machineCardNamed(card.name);
    ASSERT_TRUE(back) << back.error().text;
    EXPECT_EQ(back->drivingTeeth, 11);
    EXPECT_EQ(back->title, card.title);
}

TEST_F(MachineCards, ABadFileGivesOneSentenceAndTheOthersStay) {
    const std::size_t shipped = machineCards().size();
    QDir().mkpath(ownMachinesFolder());
    std::ofstream(ownMachinesFolder().toStdString() + "/bad.json") << "{\"name\": \"bad\"";
    std::vector<Error> refused;
    EXPECT_EQ(machineCards(&refused).size(), shipped);
    ASSERT_EQ(refused.size(), 1U);
    EXPECT_NE(refused[0].text.find("bad.json"), std::string::npos);
    EXPECT_NE(refused[0].text.find("no machine card"), std::string::npos);
    EXPECT_FALSE(machineCardNamed("nowhere"));
    EXPECT_FALSE(machineCardNamed(folder_.file("none.json")));
}
