// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/tape_text.h"

#include <gtest/gtest.h>

#include <random>
#include <string>

#include "core/measure/level_counts.h"
#include "core/measure/loop_learning.h"

using namespace trueunit;

namespace {

const CodeTable& ita2() { return *findCode("ita2"); }

std::vector<SentCode> loopTape(const std::string& text, std::size_t from, std::size_t n) {
    const auto codes = encode(ita2(), text);
    std::vector<SentCode> sent;
    for (std::size_t i = 0; i < n; ++i) sent.push_back({codes[(from + i) % codes.size()], true, false});
    return sent;
}

// Marks of one level lost, or its spaces filled, by chance; returns how many.
long fail(std::vector<SentCode>& sent, int level, double fraction, bool marks, std::uint64_t seed) {
    std::mt19937_64 random(seed);
    std::uniform_real_distribution<double> uniform;
    const unsigned bit = 1U << (level - 1);
    long n = 0;
    for (SentCode& c : sent) {
        if (((c.code & bit) != 0) != marks || uniform(random) >= fraction) continue;
        c.code ^= bit;
        ++n;
    }
    return n;
}

const std::string kLog = "KEEPER HORN SWELL NORTH EAST GLASS 29 FALLING ";

}  // namespace

TEST(TapeText, CountsExactlyWhatAKnownTapeLost) {
    for (const std::string& text : {std::string("RY"), kLog, std::string("the quick brown fox\r\n")})
        for (int level = 1; level <= 5; ++level) {
            auto sent = loopTape(text, 5, 180);
            const long lost = fail(sent, level, 0.3, true, 17U + static_cast<unsigned>(level));
            const auto study = studyTape(ita2(), text, sent, sent.size());
            ASSERT_TRUE(study) << text;
            for (const LevelCount& l : study->levels) {
                EXPECT_EQ(l.marksMissed, l.level == level ? lost : 0) << text << " level " << level;
                EXPECT_EQ(l.spacesFilled, 0);
                EXPECT_EQ(l.marksExpected + l.spacesExpected, 180);
            }
            EXPECT_EQ(study->repeated + study->skipped, 0);
        }
}

TEST(TapeText, RecognisesReversalsThoughALevelNeverComes) {
    for (int level = 1; level <= 5; ++level) {
        auto sent = loopTape("RY", 1, 60);
        const long lost = fail(sent, level, 1.0, true, 1);
        const auto study = studyTape(ita2(), "", sent, sent.size());
        ASSERT_TRUE(study);
        EXPECT_EQ(study->source, TextSource::reversals);
        EXPECT_EQ(study->levels[static_cast<std::size_t>(level - 1)].marksMissed, lost);
    }
}

TEST(TapeText, RecognisesTheFoxSentenceWithoutARepetition) {
    auto sent = loopTape("SKERRY LIGHT 1907 THE QUICK BROWN FOX JUMPS OVER THE LAZY DOG END OF TAPE ", 0, 70);
    auto clean = sent;
    fail(sent, 3, 1.0, true, 1);
    long inSentence = 0;
    const auto fox = encode(ita2(), "THE QUICK BROWN FOX JUMPS OVER THE LAZY DOG");
    for (const unsigned char c : fox) inSentence += (c & 4U) != 0 ? 1 : 0;
    const auto study = studyTape(ita2(), "", sent, sent.size());
    ASSERT_TRUE(study);
    EXPECT_EQ(study->source, TextSource::fox);
    EXPECT_NEAR(static_cast<double>(study->levels[2].marksMissed), static_cast<double>(inSentence), 2.0);
}

TEST(TapeText, LearnsALoopAndOutvotesALevelThatFailsNowAndThen) {
    for (int level = 1; level <= 5; ++level)
        for (const bool marks : {true, false}) {
            auto sent = loopTape(kLog, 11, 235);
            const long failed = fail(sent, level, 0.15, marks, 40U + static_cast<unsigned>(level));
            const auto study = studyTape(ita2(), "", sent, sent.size());
            ASSERT_TRUE(study);
            EXPECT_EQ(study->source, TextSource::learned);
            const LevelCount& l = study->levels[static_cast<std::size_t>(level - 1)];
            // A place hit in most of its five rounds is taken for the text: one count in five may go astray.
            EXPECT_NEAR(static_cast<double>(marks ? l.marksMissed : l.spacesFilled), static_cast<double>(failed),
                        1.0 + 0.2 * static_cast<double>(failed));
            EXPECT_LE(marks ? l.spacesFilled : l.marksMissed, 1 + failed / 5);
        }
}

TEST(TapeText, DoesNotTakeATextThatNeverRepeatsForALoop) {
    std::mt19937_64 random(3);
    for (int trial = 0; trial < 200; ++trial) {
        std::vector<SentCode> sent;
        for (int i = 0; i < 120; ++i) sent.push_back({static_cast<unsigned>(random() % 32), true, false});
        EXPECT_FALSE(studyTape(ita2(), "", sent, sent.size())) << "trial " << trial;
    }
}

// A line of reversals in perfect order, as it is read, up to its end and on.
TEST(TapeText, TheReturnAfterReversalsIsNoFault) {
    std::string text;
    for (int i = 0; i < 32; ++i) text += "RY";
    for (std::size_t from = 0; from < 30; ++from) {
        const auto tape = loopTape(text + "\r\n", from, 80);
        for (std::size_t n = 1; n <= tape.size(); ++n) {
            const auto study = studyTape(ita2(), "", std::span(tape).first(n), n);
            EXPECT_TRUE(!study || study->wrong == 0) << "from " << from << ", " << n << ": " << study->wrong;
        }
    }
}

// A tape in perfect order, as it is read, character by character: what stands between two sentences must at no moment
// pass for a sentence with faults.
TEST(TapeText, WhatFollowsTheFoxSentenceIsNoFault) {
    for (const std::string& between :
         {std::string(" 1234567890\r\nRYRYRYRYRYRYRYRY "), std::string(" TESTING TESTING ")}) {
        for (const std::size_t from : {0U, 60U}) {  // a round from its beginning, and from between
            const auto tape = loopTape("THE QUICK BROWN FOX JUMPS OVER THE LAZY DOG" + between, from, 160);
            for (std::size_t n = 1; n <= tape.size(); ++n) {
                const auto study = studyTape(ita2(), "", std::span(tape).first(n), n);
                EXPECT_TRUE(!study || study->wrong == 0) << between << ", " << n << " characters: " << study->wrong;
                for (std::size_t i = 0; study && i < n; ++i)
                    EXPECT_TRUE(!study->places[i].tells || study->places[i].hole == tape[i].code) << i << " of " << n;
            }
        }
    }
}

TEST(TapeText, FindsTheShortestPeriod) {
    EXPECT_EQ(repetitionPeriod(loopTape("RY", 0, 60)), 2U);
    EXPECT_EQ(repetitionPeriod(loopTape("E", 0, 60)), 1U);
    const auto once = encode(ita2(), kLog).size();
    EXPECT_EQ(repetitionPeriod(loopTape(kLog, 3, 3 * once)), once);
    EXPECT_EQ(repetitionPeriod(loopTape(kLog, 3, 2 * once + 5)), std::nullopt);
}

TEST(TapeText, TakesHolesTheTextDoesNotNameForPartOfTheTape) {
    const auto sent =
        loopTape("WATCH BELOW\r\r\nWATCH ABOVE\r\r\n", 4, 150);  // the text says one return, the tape has two
    const auto study = studyTape(ita2(), "WATCH BELOW\nWATCH ABOVE\n", sent, sent.size());
    ASSERT_TRUE(study);
    EXPECT_EQ(study->repeated, 0);
    EXPECT_EQ(study->skipped, 0);
    EXPECT_EQ(study->strange, 0);
}

// Whatever of the line end the person left out: no level is blamed for it.
TEST(TapeText, ALineEndThatTheTextLacksIsNoFault) {
    for (const std::string words :
         {"PACK MY BOX WITH FIVE DOZEN LIQUOR JUGS 1234", "THE QUICK BROWN FOX JUMPS OVER THE LAZY DOG 1234567890",
          "WATCH BELOW WATCH ABOVE"}) {
        const auto round = encodeRound(ita2(), words + "\r\n");
        std::vector<SentCode> sent;
        for (std::size_t i = 9; i < 409; ++i) sent.push_back({round[i % round.size()], true, false});
        for (const char* given : {"", "\n", "\r", "\r\n"}) {
            SCOPED_TRACE(words + given);
            const auto study = studyTape(ita2(), words + given, sent, sent.size());
            ASSERT_TRUE(study);
            EXPECT_EQ(study->wrong + study->repeated + study->skipped, 0);
            EXPECT_EQ(study->loopLength, round.size());
            EXPECT_GT(study->compared, 370);
        }
    }
}

TEST(TapeText, OtherCharactersThatDifferFromRoundToRoundAreNotJudged) {
    const std::string words = "WATCH BELOW WATCH ABOVE AND ABOUT THE ROCK ";
    std::string text;
    for (int i = 0; i < 10; ++i) text += words + static_cast<char>('A' + i) + static_cast<char>('Z' - i) + "\r\n";
    const auto sent = loopTape(text, 0, 450);
    const auto study = studyTape(ita2(), words, sent, sent.size());
    ASSERT_TRUE(study);
    EXPECT_TRUE(study->othersBetween);
    for (const LevelCount& l : study->levels) EXPECT_EQ(l.marksMissed + l.spacesFilled, 0) << l.level;
    EXPECT_LT(study->compared, 430);
}

// A level that always fails about the beginning of the text is no reason to call that unknown.
TEST(TapeText, ALevelThatFailsIsNotTakenForOtherCharacters) {
    auto sent = loopTape(kLog, 5, 300);
    for (SentCode& c : sent) c.code &= ~4U;
    const auto study = studyTape(ita2(), kLog, sent, sent.size());
    ASSERT_TRUE(study);
    EXPECT_FALSE(study->othersBetween);
    EXPECT_EQ(study->levels[2].marksMissed, study->levels[2].marksExpected);
}

TEST(TapeText, AWordThatThePersonMistypedIsNoFaultOfALevel) {
    for (const auto& [word, typed, places] :
         {std::tuple("SWELL", "SWILL", 1), std::tuple("EAST", "WEST", 2), std::tuple("GLASS", "GRASS", 1)}) {
        std::string text = kLog;
        text.replace(text.find(word), std::string(word).size(), typed);
        for (const std::size_t characters : {std::size_t{190}, std::size_t{400}}) {
            SCOPED_TRACE(text);
            auto sent = loopTape(kLog, 5, characters);
            const long lost = fail(sent, 3, 0.02, true, 4);
            const auto study = studyTape(ita2(), text, sent, sent.size());
            ASSERT_TRUE(study);
            EXPECT_EQ(study->otherCharacters, places);
            EXPECT_EQ(study->wrong, lost);
            EXPECT_EQ(study->repeated + study->skipped, 0);
        }
    }
}

TEST(TapeText, ALevelThatFailsIsNotTakenForAMistypedWord) {
    for (const double fraction : {0.05, 0.3, 0.6, 0.9, 1.0})
        for (unsigned seed = 1; seed <= 20; ++seed)
            for (const std::string& text : {kLog, std::string("RY"), std::string("THE QUICK BROWN FOX\r\n")}) {
                auto sent = loopTape(text, 5, 3 * encodeRound(ita2(), text).size() + 40);
                const int level = 1 + static_cast<int>(seed % 5);
                const long wrong = fail(sent, level, fraction, seed % 2 == 0, seed);
                const auto study = studyTape(ita2(), text, sent, sent.size());
                ASSERT_TRUE(study) << text << fraction;
                EXPECT_EQ(study->otherCharacters, 0) << text << " level " << level << ", " << fraction;
                EXPECT_LE(wrong - study->wrong, 2) << text << " level " << level << ", " << fraction;
            }
}

TEST(TapeText, RefusesATextTheTapeDoesNotCarry) {
    const auto sent = loopTape(kLog, 0, 150);
    EXPECT_FALSE(studyTape(ita2(), "VQZX KJWP MMGB TTYY DDCC", sent, sent.size()));
}

TEST(TapeText, CountsFeedSlipsApartFromLevels) {
    auto sent = loopTape(kLog, 0, 200);
    for (const std::ptrdiff_t at : {30, 80, 120})
        sent.insert(sent.begin() + at, sent[static_cast<std::size_t>(at - 1)]);
    sent.erase(sent.begin() + 160);
    const auto study = studyTape(ita2(), kLog, sent, sent.size());
    ASSERT_TRUE(study);
    EXPECT_EQ(study->repeated, 3);
    EXPECT_EQ(study->skipped, 1);
    for (const LevelCount& l : study->levels) EXPECT_EQ(l.marksMissed + l.spacesFilled, 0);
}

TEST(TapeText, CountsOverTheWindowOnly) {
    auto sent = loopTape(kLog, 0, 300);
    for (std::size_t i = 0; i < 200; ++i) sent[i].code &= ~1U;
    const auto study = studyTape(ita2(), kLog, sent, 50);
    ASSERT_TRUE(study);
    EXPECT_EQ(study->levels[0].marksMissed, 0);
    EXPECT_EQ(study->places.size(), 300U);
    EXPECT_EQ(study->compared, 50);
}

// R. G. Newcombe, Statistics in Medicine 17 (1998), table I, score method without continuity correction; from memory.
TEST(TapeText, GivesThePublishedIntervalsOfARate) {
    struct Row {
        long hits, tries;
        double low, high;
    };
    for (const Row& r : {Row{81, 263, 0.2553, 0.3662}, Row{15, 148, 0.0624, 0.1605}, Row{0, 20, 0.0, 0.1611},
                         Row{1, 29, 0.0061, 0.1718}}) {
        const RateInterval i = rateInterval(r.hits, r.tries);
        EXPECT_NEAR(i.low, r.low, 5e-5);
        EXPECT_NEAR(i.high, r.high, 5e-5);
    }
}

TEST(TapeText, TakesReturnsBetweenReversalsForWhatTheyAre) {
    std::string line;
    for (int i = 0; i < 32; ++i) line += "RY";
    for (const std::size_t n : {90U, 150U, 360U}) {  // without and with a loop that can be learned
        const auto sent = loopTape(line + "\r\n", 5, n);
        const auto study = studyTape(ita2(), "", sent, sent.size());
        ASSERT_TRUE(study) << n;
        for (const LevelCount& l : study->levels) EXPECT_EQ(l.marksMissed + l.spacesFilled, 0) << n << " " << l.level;
        EXPECT_EQ(study->repeated + study->skipped, 0) << n;
    }
}

TEST(TapeText, CountsALevelThatNeverComesInALearnedLoopOfReversalsAndTheFox) {
    auto sent = loopTape("RYRYRYRYRYRYRYRY THE QUICK BROWN FOX JUMPS OVER THE LAZY DOG 1234567890\r\n", 5, 300);
    long lost = 0;
    for (SentCode& c : sent) {
        lost += (c.code & 8U) != 0 ? 1 : 0;
        c.code &= ~8U;
    }
    const auto study = studyTape(ita2(), "", sent, sent.size());
    ASSERT_TRUE(study);
    EXPECT_GT(study->levels[3].marksMissed, lost / 2);
    EXPECT_EQ(study->levels[0].marksMissed + study->levels[1].marksMissed + study->levels[2].marksMissed, 0);
}
