// SPDX-License-Identifier: GPL-3.0-or-later
// Tapes whose feed slips by chance are made, and the text learned from them is held against the one they carry.
#include "core/measure/loop_learning.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include "core/frame/code_table.h"
#include "core/measure/level_counts.h"
#include "core/measure/tape_text.h"

namespace trueunit {

namespace {

const std::string kFoxLine = "THE QUICK BROWN FOX JUMPS OVER THE LAZY DOG 1234567890\r\n";
const std::string kAlphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZ\r\n";

const CodeTable& fiveUnit() { return *findCode("ita2"); }

// A feed that stands still or goes too far now and then; the levels never fail.
struct SlippedTape {
    std::vector<SentCode> sent;
    long repeated = 0, skipped = 0;

    SlippedTape(const std::string& text, double stands, double goesTooFar, std::size_t count, std::uint64_t seed) {
        const auto round = encodeRound(fiveUnit(), text);
        std::mt19937_64 random(seed);
        std::uniform_real_distribution<double> chance;
        for (std::size_t at = seed; sent.size() < count; ++at) {
            if (chance(random) < goesTooFar) ++at, ++skipped;
            sent.push_back({round[at % round.size()], true, false});
            if (sent.size() == count || chance(random) >= stands) continue;
            sent.push_back(sent.back());
            ++repeated;
        }
    }
};

// The same loop, begun anywhere.
bool carries(const std::vector<LoopCode>& loop, const std::string& text) {
    const auto round = encodeRound(fiveUnit(), text);
    if (loop.size() != round.size()) return false;
    for (std::size_t from = 0; from < round.size(); ++from) {
        std::size_t same = 0;
        while (same < round.size() && loop[same].code == round[(from + same) % round.size()]) ++same;
        if (same == round.size()) return true;
    }
    return false;
}

int learnedRightly(const std::string& text, double stands, double goesTooFar, std::size_t count) {
    int right = 0;
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        const SlippedTape tape(text, stands, goesTooFar, count, seed);
        const auto learned = recogniseText(fiveUnit(), tape.sent);
        right += learned && carries(learned->loop, text) ? 1 : 0;
    }
    return right;
}

}  // namespace

// Some four rounds, in which one level fails one way: where it failed in two of four, nothing but the likelier account
// of the whole level tells that from a failing the other way.
TEST(LoopLearning, ALevelThatFailsOneWayIsNotSaidToFailBothWays) {
    const std::string text = "PLEASE SEND THE SHIP AT ONCE TO THE HARBOUR WHERE WEATHER IS GOOD AND ALL MEN WAIT ";
    const auto round = encodeRound(fiveUnit(), text);
    long otherWay = 0, failed = 0;
    for (unsigned seed = 1; seed <= 12; ++seed)
        for (const unsigned level : {0U, 2U, 4U})
            for (const double fraction : {0.05, 0.2, 0.5})
                for (const bool marks : {true, false}) {
                    std::mt19937_64 random(seed);
                    std::bernoulli_distribution fails(fraction);
                    std::vector<SentCode> sent;
                    for (std::size_t i = 0; i < 4 * round.size() + 40; ++i) {
                        unsigned code = round[i % round.size()];
                        if (((code >> level & 1U) != 0) == marks && fails(random)) code ^= 1U << level, ++failed;
                        sent.push_back({code, true, false});
                    }
                    const auto study = studyTape(fiveUnit(), "", sent, sent.size());
                    ASSERT_TRUE(study);
                    const LevelCount& l = study->levels[level];
                    otherWay += marks ? l.spacesFilled : l.marksMissed;
                }
    EXPECT_LT(otherWay, failed / 500);
}

TEST(LoopLearning, SlipsOfTheFirstRoundsDoNotStayInTheText) {
    for (const std::string& text : {kFoxLine, kAlphabet}) {
        EXPECT_GE(learnedRightly(text, 0.01, 0.01, 256), 19) << text;
        EXPECT_GE(learnedRightly(text, 0.02, 0.0, 256), 16) << text;
        EXPECT_GE(learnedRightly(text, 0.0, 0.02, 256), 16) << text;
    }
    EXPECT_GE(learnedRightly(kFoxLine, 0.03, 0.03, 600), 19);
    EXPECT_GE(learnedRightly(kFoxLine, 0.06, 0.0, 600), 17);  // every round of another length
}

TEST(LoopLearning, SlipsAreCountedWithALearnedTextAsWithAGivenOne) {
    long repeated = 0, skipped = 0, more = 0, fewer = 0, wrong = 0;
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        const SlippedTape tape(kFoxLine, 0.03, 0.03, 600, seed);
        const auto study = studyTape(fiveUnit(), "", tape.sent, tape.sent.size());
        ASSERT_TRUE(study) << seed;
        repeated += tape.repeated;
        skipped += tape.skipped;
        more += std::abs(study->repeated - tape.repeated);
        fewer += std::abs(study->skipped - tape.skipped);
        for (const LevelCount& l : study->levels) wrong += l.marksMissed + l.spacesFilled;
    }
    EXPECT_GT(repeated + skipped, 600);
    EXPECT_LT(more + fewer, (repeated + skipped) / 20);
    EXPECT_LT(wrong, 20);  // elements, of 60 000
}

// Without a penalty the longest loop is the cheapest: it holds every slip as its text.
TEST(LoopLearning, SeveralRoundsWithTheirSlipsAreDearerThanOneWithout) {
    const SlippedTape tape(kAlphabet, 0.02, 0.02, 400, 3);
    std::vector<LoopCode> one, four;
    for (const unsigned c : encodeRound(fiveUnit(), kAlphabet)) one.push_back({c, false});
    for (std::size_t i = 0; i < 4 * one.size(); ++i) four.push_back({tape.sent[i].code, false});
    EXPECT_LT(pricedLoop(tape.sent, one).cost, pricedLoop(tape.sent, four).cost);
}

}  // namespace trueunit
