// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/reading_text.h"

#include <gtest/gtest.h>

#include <sstream>

#include "core/report/judge.h"

using namespace trueunit;

namespace {

// The line that begins with the name; empty when there is none.
std::string lineOf(const Reading& reading, const std::string& name) {
    std::istringstream text(readingText(reading, Limits{}));
    for (std::string line; std::getline(text, line);)
        if (line.rfind(name + "  ", 0) == 0) return line;
    return "";
}

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

}  // namespace

TEST(ReadingText, SaysValueUncertaintyLimitAndWhetherItHolds) {
    Reading r;
    r.distortion.biasPercent = Measured{9.864, 0.073};
    r.distortion.endPercent = Measured{-0.041, 0.077};
    r.verdict = judgeReading(r, Limits{}, {0.01, 0.01, 0.06}, {100, 100});
    EXPECT_TRUE(has(lineOf(r, "bias"), "+9.864 ± 0.073 %, marks too long")) << lineOf(r, "bias");
    EXPECT_TRUE(has(lineOf(r, "bias"), "limit ±5 %"));
    EXPECT_TRUE(has(lineOf(r, "bias"), "OUT OF LIMITS"));
    EXPECT_TRUE(has(lineOf(r, "end"), "in limits"));
    EXPECT_TRUE(has(lineOf(r, "verdict"), "OUT OF LIMITS"));
}

TEST(ReadingText, ABiasWithinItsUncertaintyIsNotPutInWords) {
    Reading r;
    r.distortion.biasPercent = Measured{-0.05, 0.07};
    EXPECT_FALSE(has(lineOf(r, "bias"), "marks")) << lineOf(r, "bias");
    r.distortion.biasPercent = Measured{-2.0, 0.07};
    EXPECT_TRUE(has(lineOf(r, "bias"), "marks too short"));
}

TEST(ReadingText, WithoutAReadingSaysSoAndGivesTheReason) {
    Reading r;
    r.notes = {"There is no signal."};
    EXPECT_TRUE(has(lineOf(r, "bias"), "no reading"));
    EXPECT_TRUE(has(lineOf(r, "speed"), "no reading"));
    EXPECT_TRUE(has(lineOf(r, "verdict"), "nothing could be judged"));
    EXPECT_TRUE(has(lineOf(r, "note"), "There is no signal."));
}

TEST(ReadingText, ControlsInTheTextCannotReachTheTerminal) {
    Reading r;
    r.text.decoded = "RY\x1b[2J\nRY";
    EXPECT_TRUE(has(lineOf(r, "text"), "RY [2J RY")) << lineOf(r, "text");
}

TEST(ReadingText, OnlyTheEndOfALongTextIsShown) {
    Reading r;
    r.text.decoded = std::string(500, 'A') + "END";
    EXPECT_TRUE(has(lineOf(r, "text"), "…A"));
    EXPECT_TRUE(lineOf(r, "text").ends_with("AEND"));
    EXPECT_LT(lineOf(r, "text").size(), 110U);
}

TEST(ReadingText, ListsTheInstantsWithTheirDirection) {
    Reading r;
    r.instants = {{3, Condition::mark, 120, -5.0, 0.2, -5.6, -4.4}};
    EXPECT_TRUE(has(readingText(r, Limits{}), "3 to mark           120    -5.00      0.20     -5.60     -4.40"));
    r.instants = {{3, Condition::space, 120, 0.001, 0.2, -0.004, 0.1}};  // zero has no sign
    EXPECT_TRUE(has(readingText(r, Limits{}), "3 to space          120     0.00      0.20      0.00     +0.10"));
}

TEST(ReadingText, SaysHowSureAFindingIsWhereToLookAndHowToConfirmInLinesThatFit) {
    Reading r;
    std::string evidence;
    for (int i = 0; i < 40; ++i) evidence += "many words ";
    r.findings = {
        {"end-offset", 0.974, "Marks end early by 7.5 %", evidence, "The spring of the lever.", "Feel it.", {}}};
    EXPECT_TRUE(has(lineOf(r, "finding 1"), "Marks end early by 7.5 %, 97 % sure"));
    EXPECT_TRUE(has(lineOf(r, "  look at"), "The spring of the lever."));
    EXPECT_TRUE(has(lineOf(r, "  confirm"), "Feel it."));
    std::istringstream text(readingText(r, Limits{}));
    long words = 0;
    for (std::string line; std::getline(text, line);) {
        if (!has(line, "many words")) continue;
        EXPECT_LE(line.size(), 112U);
        for (std::size_t at = line.find("words"); at != std::string::npos; at = line.find("words", at + 1)) ++words;
    }
    EXPECT_EQ(words, 40);
}

TEST(ReadingText, ASureFaultBesideReadingsInLimitsIsSaidInTheVerdict) {
    Reading r;
    r.verdict.within = true;
    r.findings = std::vector<Finding>{{"cyclic-drive", 0.97, "swings", "b", "c", "d"}};
    EXPECT_TRUE(has(readingText(r, Limits{}), "; yet with a fault, see the findings"));
    r.findings->front().minor = true;
    EXPECT_FALSE(has(readingText(r, Limits{}), "yet with a fault"));
    r.findings->front() = {"cyclic-drive", 0.7, "swings", "b", "c", "d"};
    EXPECT_FALSE(has(readingText(r, Limits{}), "yet with a fault"));
}
