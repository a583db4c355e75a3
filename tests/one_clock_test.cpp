// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/frame/one_clock.h"

#include <gtest/gtest.h>

#include <vector>

#include "tests/support/character_builder.h"

namespace trueunit {
namespace {

constexpr double kUnit = 0.01;

// Characters with the given stops after them, in units, some times over; every fifth without a stop when there are
// errors.
bool oneClock(const std::vector<double>& stops, bool errors, std::size_t times = 4) {
    std::vector<Character> characters;
    double start = 1.0;
    for (std::size_t i = 0; i < times * stops.size(); ++i) {
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
    const std::vector<double> pauses{1.42, 9.87, 1.42, 17.31, 2.64, 1.42, 4.21, 1.42, 33.08, 6.55, 1.42, 12.76};
    EXPECT_FALSE(oneClock(pauses, true, 1));
    EXPECT_FALSE(oneClock(pauses, false, 1));
    EXPECT_FALSE(oneClock({1.32, 1.57, 1.4, 1.51, 1.29, 1.44}, false, 2));  // an irregular clutch
}

TEST(OneClock, TheClockNeedNotBeTheOneThatTheCharactersWereFramedWith) {
    EXPECT_TRUE(oneClock({1.8, 3.1, 1.8, 1.8, 4.4}, true));  // periods of 6, 7 and 8 times 1.3 units
}

TEST(OneClock, WithoutAnErrorForLongTheStopsMayBeWhole) {
    EXPECT_TRUE(oneClock({1, 2, 1, 1, 2}, false));
    EXPECT_FALSE(oneClock({1, 2, 1, 1, 2}, false, 6));
}

}  // namespace
}  // namespace trueunit
