// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/character_log.h"

#include <gtest/gtest.h>

namespace trueunit {
namespace {

LoggedCharacter numbered(std::uint64_t number) {
    LoggedCharacter c;
    c.character.number = number;
    return c;
}

TEST(CharacterLog, GivesTheLastOnesOldestFirstAndAllForZero) {
    CharacterLog log;
    EXPECT_TRUE(log.empty());
    EXPECT_TRUE(log.last(5).empty());
    for (std::uint64_t i = 0; i < 10; ++i) log.add(numbered(i));
    const auto three = log.last(3);
    ASSERT_EQ(three.size(), 3U);
    EXPECT_EQ(three.front()->character.number, 7U);
    EXPECT_EQ(three.back()->character.number, 9U);
    EXPECT_EQ(log.last(0).size(), 10U);
    EXPECT_EQ(log.last(99).size(), 10U);
    EXPECT_EQ(log.back().character.number, 9U);
    log.clear();
    EXPECT_TRUE(log.empty());
}

TEST(CharacterLog, HoldsAnHourOfTheFastestTradeMachineAtMost) {
    CharacterLog log;
    for (std::uint64_t i = 0; i < CharacterLog::kMost + 100; ++i) log.add(numbered(i));
    EXPECT_EQ(log.size(), CharacterLog::kMost);
    EXPECT_EQ(log.last(0).front()->character.number, 100U);
    EXPECT_GE(CharacterLog::kMost, 60U * 460U);  // 460 operations a minute: the speeds table's 56.88 baud
}

}  // namespace
}  // namespace trueunit
