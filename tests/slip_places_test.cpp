// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/slip_places.h"

#include <gtest/gtest.h>

#include <random>

using namespace trueunit;

namespace {

const CodeTable& fiveLevels() { return *findCode("ita2"); }

std::vector<LoopCode> foxLoop() {
    std::vector<LoopCode> loop;
    for (const unsigned char c : encode(fiveLevels(), "THE QUICK BROWN FOX JUMPS OVER THE LAZY DOG "))
        loop.push_back({c, false});
    return loop;
}

// Ten rounds of the loop, sent by a feed that stands still or goes over before a character as `slips` says.
template <class Slips>
std::optional<SlipPlaces> placesOf(Slips slips) {
    const std::vector<LoopCode> loop = foxLoop();
    std::vector<SentCode> sent;
    for (std::size_t at = 0; at < 10 * loop.size(); ++at) {
        const int slip = slips(at / loop.size(), at % loop.size());
        if (slip > 0 && !sent.empty()) sent.push_back(sent.back());
        if (slip >= 0) sent.push_back({loop[at % loop.size()].code, true, false});
    }
    const Alignment first = alignToLoop(sent, loop);
    return slipPlaces(fiveLevels(), loop, alignToLoop(sent, loop, pricesLearned(sent, loop, first)), 0);
}

}  // namespace

TEST(SlipPlaces, AFeedHoleThatIsTornIsFoundByTheTextBeforeIt) {
    for (const int slip : {-1, 1}) {
        const auto found =
            placesOf([&](std::size_t round, std::size_t at) { return at == 18 && round % 4 != 1 ? slip : 0; });
        ASSERT_TRUE(found);
        EXPECT_FALSE(found->anywhere);
        EXPECT_EQ(found->atOnePlace, 7);
        EXPECT_EQ(found->behind, "BROWN FO");
    }
}

TEST(SlipPlaces, AFeedWheelSlipsAnywhere) {
    for (unsigned seed = 1; seed <= 20; ++seed) {
        std::mt19937 random(seed);
        const auto found = placesOf([&](std::size_t, std::size_t) {
            const auto drawn = random() % 100;
            return drawn < 3 ? 1 : drawn < 6 ? -1 : 0;
        });
        ASSERT_TRUE(found) << seed;
        EXPECT_TRUE(found->anywhere) << seed;
    }
}

TEST(SlipPlaces, OfAFewSlipsNothingIsSaid) {
    EXPECT_FALSE(placesOf([](std::size_t round, std::size_t at) { return at == 18 && round < 3 ? 1 : 0; }));
    EXPECT_FALSE(placesOf([](std::size_t, std::size_t) { return 0; }));
}
