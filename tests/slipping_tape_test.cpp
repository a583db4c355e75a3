// SPDX-License-Identifier: GPL-3.0-or-later
// What is told of a tape whose feed slips, while its characters come in: the truth is imposed, character by character.
#include <gtest/gtest.h>

#include <random>
#include <string>

#include "core/measure/level_counts.h"

using namespace trueunit;

namespace {

struct SlippingTape {
    std::vector<SentCode> sent;
    std::vector<long> slips;  // up to each character
};

// The feed slips that often either way; no level ever fails.
SlippingTape slippingTape(const std::string& text, double fraction, unsigned seed, std::size_t characters) {
    const auto codes = encodeRound(*findCode("ita2"), text);
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> uniform;
    SlippingTape tape;
    std::size_t at = random() % codes.size();
    long slips = 0;
    while (tape.sent.size() < characters) {
        tape.sent.push_back({codes[at], true, false});
        tape.slips.push_back(slips);
        const double chance = uniform(random);
        at = (at + (chance < fraction ? 0U : chance < 2.0 * fraction ? 2U : 1U)) % codes.size();
        slips += chance < 2.0 * fraction ? 1 : 0;
    }
    return tape;
}

}  // namespace

TEST(SlippingTape, TellsNoCharacterWrongAndNoSlipThatItTakesBack) {
    const std::string text = "THE QUICK BROWN FOX JUMPS OVER THE LAZY DOG 1234567890\r\n";
    int takenBack = 0;
    for (const unsigned seed : {3U, 7U, 14U}) {
        const SlippingTape tape = slippingTape(text, 0.03, seed, 400);
        long before = 0;
        for (std::size_t n = 60; n <= tape.sent.size(); n += 20) {
            const auto study = studyTape(*findCode("ita2"), "", std::span(tape.sent).first(n), n);
            ASSERT_TRUE(study);
            EXPECT_EQ(study->wrong, 0) << seed << " at " << n;
            const long told = study->repeated + study->skipped;
            EXPECT_LE(told, tape.slips[n - 1]) << seed << " at " << n;
            for (std::size_t i = 0; i < n; ++i)
                EXPECT_TRUE(!study->places[i].tells || study->places[i].hole == tape.sent[i].code) << i << " of " << n;
            takenBack += told < before ? 1 : 0;
            before = told;
        }
        EXPECT_GE(before, tape.slips.back() * 8 / 10) << seed;
    }
    EXPECT_LE(takenBack, 1);
}

TEST(SlippingTape, IsReadWithoutItsTextAsWithIt) {
    const std::string text = "RYRYRYRYRYRYRYRY THE QUICK BROWN FOX JUMPS OVER THE LAZY DOG 1234567890\r\n";
    const SlippingTape tape = slippingTape(text, 0.02, 5, 420);
    const auto alone = studyTape(*findCode("ita2"), "", tape.sent, tape.sent.size());
    const auto given = studyTape(*findCode("ita2"), text, tape.sent, tape.sent.size());
    ASSERT_TRUE(alone && given);
    EXPECT_EQ(alone->repeated, given->repeated);
    EXPECT_EQ(alone->skipped, given->skipped);
    EXPECT_EQ(alone->compared, given->compared);
}

// A sentence that is known must have been sent for most of it: parts of other texts are like it here and there.
TEST(SlippingTape, IsNotHeldToASentenceThatItDoesNotCarry) {
    const std::string text = "NOW IS THE TIME TO OIL THE CAMS AND COUNT THE PINS 42\r\n";
    for (const unsigned seed : {1U, 2U, 3U, 24U}) {
        const SlippingTape tape = slippingTape(text, 0.03, seed, 240);
        for (const std::size_t n : {200U, 240U}) {
            const auto found = recogniseText(*findCode("ita2"), std::span(tape.sent).first(n));
            EXPECT_TRUE(!found || found->source == TextSource::learned) << seed << " at " << n;
        }
    }
}

TEST(SlippingTape, IsNamedByWhatItPrintsOnceRound) {
    const std::string text = "THE QUICK BROWN FOX JUMPS OVER THE LAZY DOG 1234567890\r\n";
    const SlippingTape tape = slippingTape(text, 0.02, 3, 300);
    const auto study = studyTape(*findCode("ita2"), "", tape.sent, tape.sent.size());
    ASSERT_TRUE(study);
    EXPECT_EQ(study->round, "THE QUICK BROWN FOX JUMPS OVER THE LAZY DOG 1234567890\n");
}
