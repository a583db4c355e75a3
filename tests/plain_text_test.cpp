// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/plain_text.h"

#include <gtest/gtest.h>

#include <random>
#include <string>

#include "core/measure/letter_pairs.h"
#include "tests/support/texts.h"

using namespace trueunit;

namespace {

const std::string kEnglish =
    "THE KEEPER OF THE NORTH LIGHT REPORTS THAT THE WIND HAS GONE ROUND TO THE WEST SINCE MIDNIGHT AND THAT THE SEA IS "
    "STILL RISING. TWO BOATS WERE SEEN BEFORE DAYBREAK, BOTH OF THEM MAKING FOR THE HARBOUR. THE LAMP BURNED WELL ALL "
    "NIGHT, THOUGH THE GLASS OF THE LANTERN WANTS CLEANING ON THE SEAWARD SIDE. OIL FOR THREE WEEKS IS IN STORE. "
    "PLEASE SEND BREAD, FLOUR AND WRITING PAPER WITH THE NEXT BOAT.\n";
const std::string kGerman =
    "DER WAERTER MELDET, DASS DER WIND SEIT MITTERNACHT AUF WEST GEDREHT HAT UND DIE SEE NOCH IMMER STEIGT. VOR DEM "
    "MORGEN WAREN ZWEI BOOTE ZU SEHEN, DIE BEIDE AUF DEN HAFEN ZUHIELTEN. DIE LAMPE HAT DIE GANZE NACHT GUT GEBRANNT, "
    "DOCH DAS GLAS MUSS AUF DER SEESEITE GEPUTZT WERDEN. OEL IST FUER DREI WOCHEN VORHANDEN. BITTE SCHICKEN SIE BROT "
    "UND MEHL MIT DEM NAECHSTEN BOOT.\n";

std::vector<SentCode> sent(const std::vector<unsigned>& codes) {
    std::vector<SentCode> out;
    for (const unsigned c : codes) out.push_back({c, true, false});
    return out;
}

// With this share of one level's marks lost, or of its spaces filled, by chance.
std::vector<SentCode> harmed(const std::string& text, LevelFault fault, double rate, unsigned seed,
                             long* count = nullptr) {
    std::vector<SentCode> codes = sent(test::codesOf(text));
    std::mt19937 random(seed);
    const unsigned bit = 1U << (fault.level - 1);
    for (SentCode& c : codes) {
        if (((c.code & bit) != 0) != fault.marks || std::uniform_real_distribution<>()(random) >= rate) continue;
        c.code ^= bit;
        if (count) ++*count;
    }
    return codes;
}

std::optional<PlainTextStudy> studied(const std::vector<SentCode>& codes) {
    return studyPlainText(*findCode("ita2"), codes);
}

}  // namespace

TEST(PlainText, NeitherLanguageLooksHarmedWhenItIsNot) {
    for (const std::string& text : {kEnglish, kGerman}) {
        const auto study = studied(sent(test::codesOf(text)));
        ASSERT_TRUE(study);
        EXPECT_TRUE(study->plain);
        EXPECT_LT(study->probability, 0.1);
    }
}

TEST(PlainText, FindsTheLevelThatLosesMarksOrFillsSpacesAndHowMany) {
    for (const std::string& text : {kEnglish, kGerman})
        for (int level = 1; level <= 5; ++level)
            for (const bool marks : {true, false}) {
                long count = 0;
                const auto study = studied(harmed(text, {level, marks}, 0.25, 7, &count));
                ASSERT_TRUE(study);
                EXPECT_GT(study->probability, kPlainTextTold) << level << marks;
                EXPECT_EQ(study->fault.level, level) << marks;
                EXPECT_EQ(study->fault.marks, marks) << level;
                const double truth = static_cast<double>(count) / study->atRisk;
                EXPECT_GT(truth, study->rateLow) << level << marks;
                EXPECT_LT(truth, study->rateHigh) << level << marks;
                EXPECT_NEAR(study->harmed, static_cast<double>(count), 0.7 * static_cast<double>(count))
                    << level << " about";
            }
}

TEST(PlainText, WordsAreShownAsSentAndAsMeant) {
    const auto study = studied(harmed(kEnglish, {3, true}, 0.25, 3));
    ASSERT_TRUE(study);
    ASSERT_FALSE(study->words.empty());
    for (const HarmedWord& w : study->words) {
        EXPECT_NE(kEnglish.find(w.meant), std::string::npos) << w.sent << " for " << w.meant;
        EXPECT_NE(w.sent, w.meant);
    }
}

// Nothing hangs together in them, so nothing may be said.
TEST(PlainText, CodeGroupsFiguresAndRepetitionsAreNoFault) {
    std::mt19937 random(5);
    std::string groups;
    std::string figures;
    std::string repeated;
    for (int i = 0; i < 400; ++i) {
        groups += i % 6 == 5 ? ' ' : static_cast<char>('A' + random() % 26);
        figures += i % 6 == 5 ? ' ' : static_cast<char>('0' + random() % 10);
        repeated += "ABCXQZ "[i % 7];
    }
    for (const std::string& text : {groups, figures, repeated}) {
        const auto study = studied(sent(test::codesOf(text)));
        ASSERT_TRUE(study);
        EXPECT_LT(study->probability, 0.5) << text.substr(0, 20);
        EXPECT_FALSE(study->plain) << text.substr(0, 20);
    }
}

TEST(PlainText, TooFewCharactersAndEightLevelsAreNotRead) {
    std::vector<SentCode> codes = sent(test::codesOf(kEnglish));
    EXPECT_FALSE(studyPlainText(*findCode("ita5"), codes));
    codes.resize(40);
    EXPECT_FALSE(studied(codes));
    EXPECT_FALSE(studied({}));
}

// Common knowledge of the languages, without a source: U stands behind Q, and of all pairs of English letters TH and HE
// are the commonest.
TEST(LetterPairs, AreThoseOfTheLanguages) {
    constexpr int q = 'Q' - 'A' + 1;
    constexpr int u = 'U' - 'A' + 1;
    for (const LetterPairs& pairs : letterPairs()) {
        for (int from = 0; from <= 26; ++from) {
            double sum = 0.0;
            for (int to = 0; to <= 26; ++to) sum += pairs.probability(from, to);
            EXPECT_NEAR(sum, 1.0, 0.13) << pairs.language << from;
        }
        EXPECT_GE(pairs.probability(q, u), 0.5) << pairs.language;
    }
    const LetterPairs& english = letterPairs().front();
    constexpr int t = 'T' - 'A' + 1;
    constexpr int h = 'H' - 'A' + 1;
    for (int to = 1; to <= 26; ++to) EXPECT_LE(english.probability(t, to), english.probability(t, h)) << to;
}
