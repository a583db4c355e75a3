// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/text_alignment.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include "core/frame/code_table.h"

using namespace trueunit;
using Step = Alignment::Step;

namespace {

std::vector<LoopCode> loopOf(const std::vector<unsigned>& codes) {
    std::vector<LoopCode> loop;
    for (const unsigned c : codes) loop.push_back({c, false});
    return loop;
}

std::vector<unsigned> randomCodes(std::size_t n, std::uint64_t seed) {
    std::mt19937_64 random(seed);
    std::vector<unsigned> codes(n);
    for (unsigned& c : codes) c = static_cast<unsigned>(random() % 32);
    return codes;
}

// So many characters of a loop, from a point on.
std::vector<SentCode> walk(const std::vector<unsigned>& loop, std::size_t from, std::size_t n) {
    std::vector<SentCode> sent;
    for (std::size_t i = 0; i < n; ++i) sent.push_back({loop[(from + i) % loop.size()], true, false});
    return sent;
}

}  // namespace

TEST(TextAlignment, FindsThePlaceFromAnyPoint) {
    const auto codes = randomCodes(41, 5);
    for (const std::size_t from : {0U, 7U, 40U}) {
        const Alignment a = alignToLoop(walk(codes, from, 100), loopOf(codes));
        ASSERT_EQ(a.place.size(), 100U);
        for (std::size_t i = 0; i < 100; ++i) EXPECT_EQ(a.place[i], (from + i) % 41);
        EXPECT_EQ(a.cost, 0.0);
    }
}

TEST(TextAlignment, TellsACharacterSentTwiceFromAMisreadOne) {
    const auto codes = randomCodes(41, 6);
    auto sent = walk(codes, 3, 100);
    sent.insert(sent.begin() + 50, sent[49]);
    const Alignment a = alignToLoop(sent, loopOf(codes));
    EXPECT_EQ(std::count(a.step.begin(), a.step.end(), Step::again), 1);
    EXPECT_EQ(std::count(a.step.begin(), a.step.end(), Step::over), 0);
    EXPECT_EQ(a.place.back(), (3U + 99U) % 41U);

    auto misread = walk(codes, 3, 100);
    misread[50].code ^= 4U;
    const Alignment b = alignToLoop(misread, loopOf(codes));
    EXPECT_EQ(std::count(b.step.begin(), b.step.end(), Step::on), 99);
}

TEST(TextAlignment, TellsHowManyHolesWerePassedOver) {
    const auto codes = randomCodes(41, 7);
    auto sent = walk(codes, 0, 100);
    sent.erase(sent.begin() + 60, sent.begin() + 62);
    const Alignment a = alignToLoop(sent, loopOf(codes));
    const auto over = std::find(a.step.begin(), a.step.end(), Step::over);
    ASSERT_NE(over, a.step.end());
    EXPECT_EQ(a.skipped[static_cast<std::size_t>(over - a.step.begin())], 2);
    EXPECT_EQ(std::count(a.step.begin(), a.step.end(), Step::over), 1);
}

TEST(TextAlignment, TakesUpTheTextAnewAfterAGap) {
    const auto codes = randomCodes(41, 8);
    auto sent = walk(codes, 0, 60);
    auto later = walk(codes, 33, 60);
    later.front().afterGap = true;
    sent.insert(sent.end(), later.begin(), later.end());
    const Alignment a = alignToLoop(sent, loopOf(codes));
    EXPECT_EQ(a.step[60], Step::jump);
    EXPECT_EQ(a.place[60], 33U);
}

TEST(TextAlignment, StandsALevelThatFailsOften) {
    const auto codes = randomCodes(41, 9);
    auto sent = walk(codes, 0, 200);
    for (std::size_t i = 0; i < sent.size(); i += 3) sent[i].code &= ~2U;
    const Alignment a = alignToLoop(sent, loopOf(codes));
    for (std::size_t i = 0; i < sent.size(); ++i) EXPECT_EQ(a.place[i], i % 41);
}

TEST(TextAlignment, LetsAnUnknownStretchBeOfAnyLength) {
    const auto codes = randomCodes(30, 10);
    auto loop = loopOf(codes);
    loop.push_back({0, true});
    auto sent = walk(codes, 0, 30);
    for (const unsigned c : randomCodes(17, 11)) sent.push_back({c, true, false});
    const auto again = walk(codes, 0, 30);
    sent.insert(sent.end(), again.begin(), again.end());
    const Alignment a = alignToLoop(sent, loop);
    EXPECT_EQ(a.place[29], 29U);
    EXPECT_EQ(a.place[38], 30U);
    EXPECT_EQ(a.place.back(), 29U);
}

TEST(TextAlignment, LeavesTheOldestOutWhenThereAreTooMany) {
    const auto codes = randomCodes(6000, 12);
    const auto sent = walk(codes, 0, 4000);
    const Alignment a = alignToLoop(sent, loopOf(codes));
    EXPECT_LT(a.place.size(), sent.size());
    EXPECT_EQ(a.place.back(), 3999U);
}

TEST(TextAlignment, HasNothingToSayOfNothing) {
    EXPECT_TRUE(alignToLoop({}, loopOf({1, 2})).place.empty());
    EXPECT_TRUE(alignToLoop(walk({1, 2}, 0, 4), {}).place.empty());
}

// A tape whose feed does one thing or the other now and then; the levels never fail.
struct SlippedTape {
    std::vector<SentCode> sent;
    int repeated = 0, skipped = 0;

    SlippedTape(const std::vector<unsigned>& loop, std::uint64_t seed) {
        std::mt19937_64 random(seed);
        std::uniform_real_distribution<double> chance;
        std::size_t at = 0;
        while (sent.size() < 600) {
            const double slip = chance(random);
            if (sent.empty() || slip > 0.06)
                ++at;
            else if (slip < 0.03)
                ++repeated;
            else
                at += 2, ++skipped;
            sent.push_back({loop[at % loop.size()], true, false});
        }
    }
};

TEST(TextAlignment, ASlipAndItsContraryNearbyAreNotLevelsInErrorWhereTheLevelsNeverFail) {
    const auto codes = encode(*findCode("ita2"), "THE QUICK BROWN FOX JUMPS OVER THE LAZY DOG 1234567890\r\n");
    const auto loop = loopOf({codes.begin(), codes.end()});
    int wrongAtWorst = 0, wrong = 0, again = 0, over = 0, repeated = 0, skipped = 0;
    const auto wrongOf = [&](const SlippedTape& tape, const Alignment& a) {
        int n = 0;
        for (std::size_t i = 0; i < tape.sent.size(); ++i) n += tape.sent[i].code != loop[a.place[i]].code ? 1 : 0;
        return n;
    };
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        const SlippedTape tape({codes.begin(), codes.end()}, seed);
        const Alignment first = alignToLoop(tape.sent, loop);
        const Alignment learned = alignToLoop(tape.sent, loop, pricesLearned(tape.sent, loop, first));
        wrongAtWorst += wrongOf(tape, first);
        wrong += wrongOf(tape, learned);
        for (const Step s : learned.step) again += s == Step::again ? 1 : 0;
        for (const int s : learned.skipped) over += s;
        repeated += tape.repeated;
        skipped += tape.skipped;
    }
    EXPECT_GT(wrongAtWorst, 20);  // what the learning is for
    EXPECT_LT(wrong, 12);         // of 12 000
    EXPECT_NEAR(again, repeated, 0.05 * repeated);
    EXPECT_NEAR(over, skipped, 0.05 * skipped);
}

TEST(TextAlignment, LevelsThatFailOftenStayCheapBesideASlippingFeed) {
    const auto codes = encode(*findCode("ita2"), "THE QUICK BROWN FOX JUMPS OVER THE LAZY DOG 1234567890\r\n");
    const auto loop = loopOf({codes.begin(), codes.end()});
    SlippedTape tape({codes.begin(), codes.end()}, 3);
    std::mt19937_64 random(4);
    int lost = 0;
    for (SentCode& c : tape.sent)
        if ((c.code & 8U) != 0 && random() % 5 == 0) c.code &= ~8U, ++lost;
    const Alignment a = alignToLoop(tape.sent, loop, pricesLearned(tape.sent, loop, alignToLoop(tape.sent, loop)));
    int found = 0;
    for (std::size_t i = 0; i < tape.sent.size(); ++i)
        found += (loop[a.place[i]].code & 8U) != 0 && (tape.sent[i].code & 8U) == 0 ? 1 : 0;
    EXPECT_NEAR(found, lost, 0.1 * lost);
}

TEST(TextAlignment, LevelsThatFailAreNotPutOnTheStretchThatIsNotKnown) {
    const auto codes = encode(*findCode("ita2"), "RYRYRYRYRYRYRYRYRYRYRYRYRYRYRYRYRYRYRYRYRYRYRYRYRYRYRYRY\r\n");
    std::vector<LoopCode> loop = loopOf({codes[0], codes[1]});
    loop.push_back({0, true});
    std::mt19937_64 random(3);
    std::vector<SentCode> sent = walk({codes.begin(), codes.end()}, 0, 360);
    int lost = 0;
    for (SentCode& c : sent)
        if ((c.code & 1U) != 0 && random() % 8 == 0) c.code &= ~1U, ++lost;
    const Alignment a = alignToLoop(sent, loop, pricesLearned(sent, loop, alignToLoop(sent, loop)));
    int found = 0;
    for (std::size_t i = 0; i < sent.size(); ++i)
        found += !loop[a.place[i]].unknown && loop[a.place[i]].code != sent[i].code ? 1 : 0;
    EXPECT_GT(lost, 10);
    EXPECT_EQ(found, lost);
}
