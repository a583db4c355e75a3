// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/frame/code_table.h"

#include <gtest/gtest.h>

namespace trueunit {
namespace {

const CodeTable& ita2() { return *findCode("ita2"); }

std::string echoed(const CodeTable& table, std::string_view text) {
    Decoder decoder(table);
    std::string out;
    for (const unsigned char code : encode(table, text)) out += decoder.text(code);
    return out;
}

TEST(CodeTable, KnowsItsCodesByNameAndNoOthers) {
    ASSERT_NE(findCode("ita2"), nullptr);
    ASSERT_NE(findCode("ita2-us"), nullptr);
    EXPECT_EQ(findCode("ita2")->levels, 5);
    EXPECT_EQ(findCode("ITA2"), nullptr);
    EXPECT_EQ(findCode(""), nullptr);
    EXPECT_EQ(findCode("ita5")->levels, 8);
    for (const char* name : {"ita2", "ita2-us", "ita2-unshift", "ita2-us-unshift", "ita5"}) {
        ASSERT_NE(findCode(name), nullptr) << name;
        EXPECT_NE(codeNames().find(name), std::string::npos) << name;
    }
}

TEST(CodeTable, WhatIsEncodedDecodesToItself) {
    const std::string text = "THE QUICK BROWN FOX JUMPS OVER THE LAZY DOG 1234567890\n(3.5+4)/2=X?";
    EXPECT_EQ(echoed(ita2(), text), text);
    EXPECT_EQ(echoed(*findCode("ita2-us"), "COST $5 & \"UP\"; #1!\n"), "COST $5 & \"UP\"; #1!\n");
}

TEST(CodeTable, SmallLettersAreSentAsCapitals) { EXPECT_EQ(echoed(ita2(), "ry 5"), "RY 5"); }

TEST(CodeTable, AShiftIsSentOnlyWhereTheCaseChanges) {
    EXPECT_EQ(encode(ita2(), "AB12C").size(), 7U);  // A B figures 1 2 letters C
    EXPECT_EQ(encode(ita2(), "1 2").size(), 4U);    // space stands in both cases
    EXPECT_EQ(encode(ita2(), "RYRY").size(), 4U);   // begins in letters
}

TEST(CodeTable, SignsTheCodeLacksAreSkippedWholeAlsoInUtf8) {
    EXPECT_EQ(echoed(ita2(),
                     "A\xC3\xA9"
                     "B$C\xE2\x82\xAC"
                     "D"),
              "ABCD");
}

TEST(CodeTable, CarriageReturnIsSentAndPrintsNothing) {
    EXPECT_EQ(encode(ita2(), "A\r\nB").size(), 4U);
    EXPECT_EQ(echoed(ita2(), "A\r\nB"), "A\nB");
}

TEST(CodeTable, EveryCombinationHasANameInEitherCase) {
    for (const char* name : {"ita2", "ita2-us"})
        for (unsigned code = 0; code < 32; ++code)
            for (const bool figures : {false, true}) {
                Decoder decoder(*findCode(name));
                if (figures) decoder.text(0x1B);
                EXPECT_FALSE(decoder.name(code).empty()) << name << " " << code;
            }
}

TEST(CodeTable, WhatPrintsNothingIsNamedInWords) {
    Decoder decoder(ita2());
    EXPECT_EQ(decoder.name(0x04), "space");
    EXPECT_EQ(decoder.name(0x08), "carriage return");
    EXPECT_EQ(decoder.name(0x02), "line feed");
    EXPECT_EQ(decoder.name(0x00), "blank");
    EXPECT_EQ(decoder.name(0x1F), "letters");
    EXPECT_EQ(decoder.name(0x1B), "figures");
    EXPECT_EQ(decoder.name(0x0B), "bell");  // J in figures
}

TEST(CodeTable, ResetGoesBackToLetters) {
    Decoder decoder(ita2());
    decoder.text(0x1B);
    EXPECT_EQ(decoder.text(0x01), "3");
    decoder.reset();
    EXPECT_EQ(decoder.text(0x01), "E");
}

TEST(CodeTable, WhereSpaceUnshiftsItDoesAndElsewhereNot) {
    for (const char* name : {"ita2", "ita2-unshift"}) {
        Decoder decoder(*findCode(name));
        decoder.text(0x1B);
        EXPECT_EQ(decoder.text(0x01), "3") << name;
        decoder.text(0x04);
        EXPECT_EQ(decoder.text(0x01), findCode(name)->unshiftsOnSpace ? "E" : "3") << name;
    }
    EXPECT_EQ(encode(*findCode("ita2-unshift"), "1 2").size(), 5U);  // figures 1 space figures 2
    EXPECT_EQ(echoed(*findCode("ita2-unshift"), "12 34 AB 5"), "12 34 AB 5");
}

TEST(CodeTable, EightLevelsAreAlphabetFiveWithEvenParity) {
    // ITU-T Recommendation T.50, International Alphabet No. 5, whose reference version is ASCII: the compiler's own
    // character values. Level 1 is the lowest bit, level 8 makes the number of marks even.
    const CodeTable& ita5 = *findCode("ita5");
    Decoder decoder(ita5);
    for (unsigned c = 0x20; c < 0x7F; ++c) {
        unsigned marks = 0;
        for (unsigned bit = 0; bit < 7; ++bit) marks += (c >> bit) & 1U;
        const unsigned sent = c | (marks % 2 == 1 ? 0x80U : 0U);
        EXPECT_EQ(decoder.text(sent), std::string(1, static_cast<char>(c))) << c;
        EXPECT_TRUE(parityRight(ita5, sent)) << c;
        EXPECT_FALSE(parityRight(ita5, sent ^ 0x80U)) << c;
    }
    const auto a = encode(ita5, "AC");
    ASSERT_EQ(a.size(), 2U);
    EXPECT_EQ(a[0], 0x41);
    EXPECT_EQ(a[1], 0xC3);
    EXPECT_TRUE(parityRight(ita2(), 0x01));  // five levels carry no parity
}

}  // namespace
}  // namespace trueunit
