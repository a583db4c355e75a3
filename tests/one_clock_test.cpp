// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/frame/one_clock.h"

#include <gtest/gtest.h>

#include <vector>

#include "tests/support/character_builder.h"

namespace trueunit {
namespace {

constexpr double kUnit = 0.01;

// Characters with the given stops after them, in units; every fifth without a stop when there are errors.
bool oneClock(const std::vector<double>& stops, bool errors) {
    std::vector<Character> characters;
    double start = 1.0;
    for (std::size_t i = 0; i < 4 * stops.size(); ++i) {
        Character c;
        c.start = start;
        c.stopPresent = !errors || i % 5 != 4;
        characters.push_back(c);
        start += kUnit * (6.0 + stops[i % stops.size()]);
    }
    return runsOnOneClock(test::pointersTo(characters), kUnit);
}

TEST(OneClock, StopsOfOneOrTwoWholeUnitsWithErrorsAmongThemAreNoMachine) {
    EXPECT_TRUE(oneClock({1, 2, 1, 1, 2}, true));
}

TEST(OneClock, AMachineHasOneStopOrPausesOfAnyLength) {
    EXPECT_FALSE(oneClock({1}, true));
    EXPECT_FALSE(oneClock({2}, true));
    EXPECT_FALSE(oneClock({1.42}, true));
    EXPECT_FALSE(oneClock({1.42, 1.42, 17.3, 2.6}, true));
}

TEST(OneClock, WithoutASingleErrorTheStopsMayBeWhole) { EXPECT_FALSE(oneClock({1, 2, 1, 1, 2}, false)); }

}  // namespace
}  // namespace trueunit
