// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/limit_sets.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QStandardPaths>
#include <filesystem>
#include <fstream>

#include "core/report/limits_json.h"
#include "tests/support/temporary_folder.h"

using namespace trueunit;
using trueunit::test::TemporaryFolder;

namespace {

class LimitSets : public testing::Test {
protected:
    LimitSets() {
        qputenv("XDG_CONFIG_HOME", QByteArray::fromStdString(folder_.file("config")));
        QCoreApplication::setOrganizationName("Trueunit test");
        QCoreApplication::setApplicationName("Trueunit test");
    }
    const TemporaryFolder folder_;
};

Limits own() {
    Limits l;
    l.name = "skerry";
    l.title = "the message room";
    l.origin = "Agreed for the readers of the message room.";
    l.biasPercent = 3.0;
    l.statesEnd = false;
    return l;
}

}  // namespace

TEST_F(LimitSets, TheUsualSetIsBuiltInAndFirst) {
    const std::vector<Limits> all = limitSets();
    ASSERT_GE(all.size(), 6U);
    const Limits usual;
    EXPECT_EQ(all[0].name, usual.name);
    EXPECT_EQ(all[0].title, usual.title);
    EXPECT_EQ(all[0].origin, usual.origin);
    EXPECT_EQ(all[0].biasPercent, usual.biasPercent);
    EXPECT_EQ(all[0].grossPercent, usual.grossPercent);
    EXPECT_EQ(all[0].speedPercent, usual.speedPercent);
    for (const Limits& l : all) {
        EXPECT_FALSE(problemOf(l)) << l.name;
        EXPECT_NE(l.kind, LimitsOrigin::own) << l.name;
        EXPECT_GT(l.origin.size(), 20U) << l.name;  // where it comes from is always said
    }
}

// ITU-T S.3 (from memory): 10 % gross for a mechanical transmitter, 5 % for newer ones, mean rate within 0.75 %.
// TM 11-5895-1012-10, paragraph 4-42: distributor 4 %, regenerator 3 % of which at most a third is bias.
TEST_F(LimitSets, ThePublishedOnesAreAsPublishedAndStateNothingElse) {
    const Result<Limits> s3 = limitSetNamed("s3");
    ASSERT_TRUE(s3);
    EXPECT_EQ(s3->kind, LimitsOrigin::published);
    EXPECT_EQ(s3->grossPercent, 10.0);
    EXPECT_EQ(s3->speedPercent, 0.75);
    EXPECT_FALSE(s3->statesBias || s3->statesEnd || s3->statesSynchronous);
    EXPECT_EQ(limitSetNamed("s3-newer")->grossPercent, 5.0);
    EXPECT_EQ(limitSetNamed("distributor")->synchronousPercent, 4.0);
    EXPECT_EQ(limitSetNamed("regenerator")->synchronousPercent, 3.0);
    EXPECT_EQ(limitSetNamed("regenerator")->biasPercent, 1.0);
}

TEST_F(LimitSets, AnOwnSetIsKeptReadAgainAndRemoved) {
    ASSERT_TRUE(keepOwnLimits(own()));
    const Result<Limits> back = limitSetNamed("skerry");
    ASSERT_TRUE(back);
    EXPECT_EQ(back->kind, LimitsOrigin::own);
    EXPECT_EQ(back->title, "the message room");
    EXPECT_EQ(back->biasPercent, 3.0);
    EXPECT_FALSE(back->statesEnd);
    EXPECT_EQ(back->endPercent, 10.0);  // not stated: as large as the largest displacement may be
    ASSERT_TRUE(removeOwnLimits("skerry"));
    EXPECT_FALSE(limitSetNamed("skerry"));
    EXPECT_FALSE(removeOwnLimits("skerry"));
}

TEST_F(LimitSets, ABuiltInNameOrAnImpossibleValueIsRefusedInOneSentence) {
    Limits l = own();
    l.name = "s3";
    ASSERT_FALSE(keepOwnLimits(l));
    EXPECT_EQ(keepOwnLimits(l).error().text, "\"s3\" is built in; give your own limits another name.");
    l = own();
    l.biasPercent = 0.0;
    EXPECT_EQ(keepOwnLimits(l).error().text, "A limit must lie between 0.05 and 50 %.");
    l = own();
    l.name = "../x";
    EXPECT_FALSE(keepOwnLimits(l));
    EXPECT_EQ(limitSetNamed("no such").error().text.find("There are no limits named \"no such\"; there are bench,"),
              0U);
}

TEST_F(LimitSets, AFileThatIsNoSetIsPassedOver) {
    std::filesystem::create_directories(ownLimitsFolder().toStdString());
    const std::size_t before = limitSets().size();
    for (const char* text :
         {"{", "[]", "{\"name\":\"a\"}", R"({"name":"a","title":"t","origin":"hearsay","source":"s"})",
          R"({"name":"a","title":"t","origin":"own","source":"s"})",
          R"({"name":"a","title":"t","origin":"own","source":"s","bias_percent":"5"})"}) {
        std::ofstream((ownLimitsFolder() + "/a.json").toStdString()) << text;
        EXPECT_EQ(limitSets().size(), before) << text;
    }
}
