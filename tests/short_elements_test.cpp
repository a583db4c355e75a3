// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/short_elements.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "core/measure/displacement_pattern.h"
#include "tests/support/character_builder.h"
#include "tests/support/steady_sender.h"
#include "tests/support/texts.h"

namespace trueunit::test {
namespace {

// Units since the last change before k; the start is space.
int unitsBefore(unsigned code, int k) {
    const auto level = [code](int i) { return i > 0 && (code >> (i - 1) & 1U) != 0; };
    int units = 1;
    while (k - units > 0 && level(k - units - 1) == level(k - 1)) ++units;
    return units;
}

struct Sender {
    std::vector<unsigned> codes;
    CharacterBuilder builder;
    double afterShort = 0.0, scatter = 0.4;  // percent
    std::mt19937_64 random{1};
    std::function<double(int k, Condition to)> lever{};

    std::vector<Character> send() {
        std::normal_distribution<double> normal(0.0, 1.0);
        builder.extraPercent = [&, normal](std::uint64_t number, int k, Condition to) mutable {
            const double effect = unitsBefore(codes[number], k) == 1 ? afterShort : 0.0;
            return effect + scatter * normal(random) + (lever ? lever(k, to) : 0.0);
        };
        return builder.characters(codes);
    }
};

TEST(ShortElements, TheirEffectIsFoundBesideSpeedBiasAndEndWhateverTheText) {
    const std::vector<std::vector<unsigned>> texts{mixedText(128, 3), codesOf(std::string(kFox) + std::string(kFox))};
    for (const auto& codes : texts)
        for (const double imposed : {-12.0, -6.0, -2.5, 2.5, 6.0}) {
            SCOPED_TRACE(imposed);
            Sender sender{codes, {}, imposed};
            sender.builder.unit = 1.01 * sender.builder.nominal;
            sender.builder.biasPercent = 5.0;
            sender.builder.endPercent = -3.0;
            const auto characters = sender.send();
            const auto found = afterShortElements(pointersTo(characters), sender.builder.nominal);
            ASSERT_TRUE(found);
            EXPECT_NEAR(found->value, imposed, 0.25);
            const auto pattern = displacementPattern(pointersTo(characters), sender.builder.nominal, 5);
            ASSERT_TRUE(pattern && pattern->afterShort);
            EXPECT_NEAR(pattern->bias.value, 5.0, 0.3);
            EXPECT_NEAR(pattern->end.value, -3.0, 0.3);
            EXPECT_NEAR(pattern->unitPercent, 1.0, 0.15);
            EXPECT_TRUE(pattern->out.empty());
        }
}

TEST(ShortElements, NothingElseIsTakenForIt) {
    for (unsigned seed = 1; seed <= 20; ++seed) {
        SCOPED_TRACE(seed);
        Sender sender{mixedText(96, seed), {}};
        sender.random.seed(seed);
        sender.builder.unit = 0.98 * sender.builder.nominal;
        sender.builder.biasPercent = 9.0;
        sender.builder.endPercent = 6.0;
        const auto none = [&] {
            const auto characters = sender.send();
            return !afterShortElements(pointersTo(characters), sender.builder.nominal);
        };
        EXPECT_TRUE(none());
        const int late = 1 + static_cast<int>(seed % 5);
        sender.lever = [late](int k, Condition) { return k == late ? 10.0 : 0.0; };
        EXPECT_TRUE(none()) << "level " << late;
        sender.lever = [late](int k, Condition to) { return k == late && to == Condition::mark ? -10.0 : 0.0; };
        EXPECT_TRUE(none()) << "to mark of " << late;
        sender.lever = {};
        sender.scatter = 5.0;
        EXPECT_TRUE(none()) << "scatter";
    }
}

TEST(ShortElements, AFewInstantsTellNothing) {
    Sender sender{mixedText(8, 1), {}, 8.0};
    const auto characters = sender.send();
    EXPECT_FALSE(afterShortElements(pointersTo(characters), sender.builder.nominal));
}

}  // namespace
}  // namespace trueunit::test
