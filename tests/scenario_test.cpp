// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/simulate/scenario.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <string>

#include "core/frame/code_table.h"

namespace trueunit {
namespace {

std::string refusal(const std::string& json) {
    const Result<Scenario> result = parseScenario(json);
    return result ? "accepted" : result.error().text;
}

// A scenario that is right, with more in it.
std::string with(const std::string& more) { return R"({"title": "t", "text": {"send": "RY"}, )" + more + "}"; }

TEST(ScenarioTest, TheShortestScenarioHasATitleAndAText) {
    const Result<Scenario> s = parseScenario(R"({"title": "short", "text": {"send": "RY"}})");
    ASSERT_TRUE(s) << s.error().text;
    EXPECT_EQ(s->title, "short");
    EXPECT_EQ(s->plainText(), "RY");
    EXPECT_EQ(s->card.rateHz, 48000.0);
    EXPECT_FALSE(s->card.snrDb.has_value());
}

TEST(ScenarioTest, EveryKeyReachesItsField) {
    const Result<Scenario> read = parseScenario(R"({
      "title": "all", "story": "long", "machine": {"name": "m", "code": "ita2-us", "baud": 50, "stop_units": 2},
      "text": {"random": {"characters": 9, "seed": 3}}, "lead_in_seconds": 0.25, "seconds": 12,
      "line": {"edge": "exponential", "rise_us": 100, "fall_us": 200, "swing": 0.5},
      "card": {"rate_hz": 44100, "level_dbfs": -20, "coupling_hz": [1, 2], "snr_db": 30, "clip": 0.4, "inverted": true,
               "hum": {"hz": 60, "percent": 5, "harmonics": [0.5]}, "dc_offset": 0.1, "clock_ppm": -50,
               "gaps": [{"at_seconds": 1, "samples": 100}], "channel": "left"},
      "faults": {"speed_percent": 1, "bias_percent": 2, "end_percent": 3, "scatter_percent": 4,
                 "start_scatter_percent": 5, "stop_late_percent": 6,
                 "stop_irregular": {"percent": 7, "shape": "uniform"}, "speed_wander": {"percent": 1, "hz": 0.2},
                 "instants": [{"k": 6, "to": "mark", "percent": -8}], "characteristic": [{"units": 2, "percent": 9}],
                 "cyclic": [{"percent": 1, "turns_per_character": 0.5, "phase_turns": 0.25, "start": true}],
                 "missing_marks": [{"level": 5, "fraction": 0.1}], "filled_spaces": [{"level": 1, "fraction": 0.2}],
                 "bounce": {"ms": 2, "openings": 3, "fraction": 0.5}, "pauses": [{"every_characters": 4, "seconds": 1}],
                 "feed_slips": {"repeat_fraction": 0.1, "skip_fraction": 0.2}},
      "moves": [{"at_seconds": 3, "relative": true, "bias_percent": -2}], "seed": 77,
      "expect": {"findings": ["hum"], "readings": {"bias_percent": {"value": 2, "within": 0.1}},
                 "instants": [{"k": 1, "to": "space", "mean_percent": 1, "within": 2}], "text": "RY"}})");
    ASSERT_TRUE(read) << read.error().text;
    const Scenario& s = *read;
    EXPECT_EQ(s.machine.code, "ita2-us");
    EXPECT_EQ(s.plainText().size(), 9U);
    EXPECT_EQ(s.line.edge, Scenario::Edge::exponential);
    EXPECT_EQ(s.card.couplingHz, (std::vector<double>{1, 2}));
    EXPECT_EQ(s.card.hum->harmonics, (std::vector<double>{0.5}));
    EXPECT_EQ(s.card.gaps[0].samples, 100U);
    EXPECT_EQ(s.card.channel, Scenario::Channel::left);
    EXPECT_TRUE(s.faults.stopIrregularUniform);
    EXPECT_EQ(s.faults.instants[0].to, Condition::mark);
    EXPECT_EQ(s.faults.cyclic[0].turnsPerCharacter, 0.5);
    EXPECT_EQ(s.faults.bounce->openings, 3);
    EXPECT_EQ(s.faults.pauses[0].everyCharacters, 4);
    EXPECT_EQ(s.faults.feedSlips.skipFraction, 0.2);
    EXPECT_EQ(s.moves[0].biasPercent, -2);
    EXPECT_EQ(s.seed, 77U);
    EXPECT_EQ(s.expect.readings.at("bias_percent").within, 0.1);
    EXPECT_EQ(s.expect.instants[0].to, Condition::space);
    EXPECT_EQ(s.expect.text, "RY");
}

TEST(ScenarioTest, AMistakeIsOneSentenceThatNamesTheKey) {
    EXPECT_EQ(refusal(with(R"("colour": 1)")), "\"colour\" is not a known key here.");
    EXPECT_EQ(refusal(with(R"("faults": {"bais_percent": 1})")), "\"faults.bais_percent\" is not a known key here.");
    EXPECT_EQ(refusal(with(R"("faults": {"bias_percent": "ten"})")), "\"faults.bias_percent\" must be a number.");
    EXPECT_EQ(refusal(with(R"("faults": {"bias_percent": 400})")),
              "\"faults.bias_percent\" must lie between -60 and 60, not at 400.");
    EXPECT_EQ(refusal(with(R"("card": 5)")), "\"card\" must be an object in braces.");
    EXPECT_EQ(refusal(with(R"("card": {"inverted": 1})")), "\"card.inverted\" must be true or false.");
    EXPECT_EQ(refusal(with(R"("card": {"coupling_hz": [1, 2, 3]})")),
              "\"card.coupling_hz\" must be a list of at most 2 entries.");
    EXPECT_EQ(refusal(with(R"("card": {"gaps": [{"at_seconds": 1, "samples": 1.5}]})")),
              "\"card.gaps[0].samples\" must be a whole number, not 1.5.");
    EXPECT_EQ(refusal(with(R"("line": {"edge": "square"})")),
              "\"line.edge\" must be one of linear, raised-cosine, gaussian, exponential.");
    EXPECT_EQ(refusal(with(R"("machine": {"name": 3})")), "\"machine.name\" must be a text in quotes.");
    EXPECT_EQ(refusal(with(R"("faults": {"instants": [{"k": 1}]})")), "\"faults.instants[0].percent\" is missing.");
    EXPECT_EQ(refusal(with(R"("expect": {"findings": ["tired"]})")),
              "\"expect.findings\" names \"tired\", which is no finding.");
    EXPECT_EQ(refusal(with(R"("expect": {"readings": {"bias_percent": 3}})")),
              "\"expect.readings.bias_percent\" must be an object in braces.");
    EXPECT_EQ(refusal(R"({"text": {"send": "RY"}})"), "\"title\" is missing.");
    EXPECT_EQ(refusal(R"({"title": "t", "text": {}})"),
              "\"text.send\" or \"text.random\" must be given, one of the two.");
    EXPECT_EQ(refusal("[]"), "The scenario must be an object in braces.");
}

TEST(ScenarioTest, ValuesThatDoNotFitEachOtherAreRefused) {
    EXPECT_EQ(refusal(with(R"("machine": {"code": "semaphore"})")),
              "\"machine.code\" must be one of " + codeNames() + ".");
    EXPECT_EQ(refusal(with(R"("faults": {"instants": [{"k": 7, "percent": 1}]})")),
              "\"faults.instants\" names k = 7; this code ends at 6.");
    EXPECT_EQ(refusal(with(R"("faults": {"missing_marks": [{"level": 6, "fraction": 1}]})")),
              "\"faults\" names level 6; this code has 5.");
    EXPECT_EQ(refusal(with(R"("machine": {"baud": 110}, "faults": {"bounce": {"ms": 9}})")),
              "\"faults.bounce.ms\" must be at most half a unit.");
    EXPECT_EQ(refusal(R"({"title": "t", "text": {"send": "\u00e4"}})"),
              "\"text.send\" holds nothing that the code ita2 can send.");
    EXPECT_EQ(refusal(with(R"("moves": [{"at_seconds": 5}, {"at_seconds": 4}])")),
              "\"moves[1].at_seconds\" must not be earlier than that of the move before.");
}

TEST(ScenarioTest, WhatIsNotJsonIsRefusedWithItsLine) {
    EXPECT_EQ(refusal("{\n\"title\": \"t\",\n oops }"), "The scenario is not readable as JSON in line 3.");
    EXPECT_EQ(refusal(""), "The scenario is not readable as JSON in line 1.");
    EXPECT_EQ(refusal(with(R"("seed": 1e999)")), "The scenario holds a number that is too large.");
    EXPECT_EQ(refusal(std::string((1 << 20) + 1, ' ')), "The scenario is larger than a megabyte.");
    EXPECT_NE(refusal("{\"title\": \"\xff\"}"), "accepted");
    EXPECT_NE(refusal(std::string(100000, '[')), "accepted");
}

TEST(ScenarioTest, AFileThatCannotBeReadSaysWhichOne) {
    EXPECT_EQ(readScenario("/nowhere/at-all.json").error().text, "Cannot open the scenario \"/nowhere/at-all.json\".");
    const Result<Scenario> folder = readScenario(TRUEUNIT_SCENARIOS);
    EXPECT_FALSE(folder);
}

TEST(ScenarioTest, EveryScenarioOfTheTreeIsReadAndSaysWhatItExpects) {
    int count = 0;
    for (const auto& entry : std::filesystem::directory_iterator(TRUEUNIT_SCENARIOS)) {
        const Result<Scenario> s = readScenario(entry.path().string());
        ASSERT_TRUE(s) << s.error().text;
        EXPECT_FALSE(s->story.empty()) << entry.path();
        EXPECT_FALSE(s->expect.findings.empty() && s->expect.readings.empty()) << entry.path();
        ++count;
    }
    EXPECT_GE(count, 10);
}

}  // namespace
}  // namespace trueunit
