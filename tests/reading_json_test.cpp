// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/reading_json.h"

#include <gtest/gtest.h>

#include <limits>
#include <nlohmann/json.hpp>

using namespace trueunit;
using Json = nlohmann::ordered_json;

namespace {

Reading fullReading() {
    Reading r;
    r.input.kind = InputKind::twoTone;
    r.input.inverted = true;
    r.input.rateHz = 48000.0;
    r.input.seconds = 60.0;
    r.input.snrDb = 41.0;
    r.input.couplingHz = {8.1};
    r.input.gaps = 2;
    r.text = {"ita2", "RYRY", 200, 1};
    r.speed = {45.45,
               22.0,
               22.01,
               Measured{45.43, 0.01},
               Measured{-0.04, 0.01},
               Measured{163.2, 0.1},
               Measured{367.6, 0.2},
               Measured{1.42, 0.003}};
    r.distortion = {
        5.2, 5.3, Measured{5.0, 0.05}, Measured{-0.1, 0.06}, 0.1, 0.2, 0.6, std::vector<CyclicLine>{{1.0, 2.3, 0.38}}};
    r.instants = {{1, Condition::mark, 120, -5.0, 0.2, -5.6, -4.4}, {2, Condition::space, 80, 0.1, 0.2, -0.5, 0.6}};
    r.levels = std::vector<LevelReading>{{1, 100, 3, 99, 0}};
    r.margin = MarginReading{5.0, 95.0, {{1, MarginBound{4.0, 7, "R"}, std::nullopt}}};
    r.contact = ContactReading{4, 1.25};
    r.drive = DriveReading{"a card", {50.0, -9.1, {"a cause"}, "words"}, {{45.45, 0.2, 10, 49, -0.1}}};
    r.findings = std::vector<Finding>{{"contact-offset", 0.97, "title", "evidence", "look", "confirm"}};
    r.verdict = {"bench", false, {"bias_percent"}};
    r.notes = {"A note."};
    return r;
}

// Every key in order, objects opened by their key and a dot.
void listKeys(const Json& value, const std::string& prefix, std::vector<std::string>& keys) {
    if (value.is_array() && !value.empty()) listKeys(value.front(), prefix, keys);
    if (!value.is_object()) return;
    for (const auto& [key, inner] : value.items()) {
        keys.push_back(prefix + key);
        listKeys(inner, prefix + key + ".", keys);
    }
}

// The published shape of schema 1, as README.md and DEVELOPERS.md promise it to scripts.
const std::vector<std::string> kKeys = {
    "schema",
    "input",
    "input.kind",
    "input.inverted",
    "input.rate_hz",
    "input.seconds",
    "input.snr_db",
    "input.coupling_hz",
    "input.clipped_percent",
    "input.gaps",
    "input.slice_percent",
    "text",
    "text.code",
    "text.decoded",
    "text.characters",
    "text.framing_errors",
    "text.wrong_characters",
    "text.feed_slips",
    "speed",
    "speed.nominal_baud",
    "speed.unit_ms",
    "speed.baud",
    "speed.error_percent",
    "speed.error_uncertainty",
    "speed.character_ms",
    "speed.operations_per_minute",
    "speed.stop_units",
    "distortion",
    "distortion.gross_percent",
    "distortion.synchronous_percent",
    "distortion.bias_percent",
    "distortion.bias_uncertainty",
    "distortion.end_percent",
    "distortion.end_uncertainty",
    "distortion.characteristic_percent",
    "distortion.fortuitous_rms_percent",
    "distortion.fortuitous_peak_percent",
    "distortion.cyclic",
    "distortion.cyclic.amplitude_percent",
    "distortion.cyclic.hz",
    "distortion.cyclic.per_character",
    "instants",
    "instants.k",
    "instants.to",
    "instants.count",
    "instants.mean_percent",
    "instants.rms_percent",
    "instants.min_percent",
    "instants.max_percent",
    "levels",
    "levels.level",
    "levels.marks_expected",
    "levels.marks_missed",
    "levels.spaces_expected",
    "levels.spaces_filled",
    "margin",
    "margin.low_percent",
    "margin.high_percent",
    "margin.levels",
    "margin.levels.level",
    "margin.levels.low_percent",
    "margin.levels.low_character",
    "margin.levels.high_percent",
    "margin.levels.high_character",
    "contact",
    "contact.bounces",
    "contact.longest_ms",
    "drive",
    "drive.card",
    "drive.expected_baud",
    "drive.error_percent",
    "drive.speed",
    "drive.causes",
    "drive.gears",
    "drive.gears.baud",
    "drive.gears.ratio",
    "drive.gears.driving_teeth",
    "drive.gears.driven_teeth",
    "drive.gears.error_percent",
    "findings",
    "findings.id",
    "findings.confidence",
    "findings.title",
    "findings.evidence",
    "findings.look_at",
    "findings.confirm",
    "verdict",
    "verdict.limits",
    "verdict.within",
    "verdict.exceeded",
    "notes",
};

}  // namespace

TEST(ReadingJson, KeysNestingAndOrderAreThoseOfSchemaOne) {
    std::vector<std::string> keys;
    listKeys(Json::parse(readingJson(fullReading())), "", keys);
    EXPECT_EQ(keys, kKeys);
}

TEST(ReadingJson, CarriesEveryValueToItsKey) {
    const Json j = Json::parse(readingJson(fullReading()));
    EXPECT_EQ(j["schema"], 1);
    EXPECT_EQ(j["input"]["kind"], "two-tone");
    EXPECT_EQ(j["input"]["inverted"], true);
    EXPECT_EQ(j["input"]["coupling_hz"], Json::array({8.1}));
    EXPECT_EQ(j["input"]["gaps"], 2);
    EXPECT_EQ(j["text"]["framing_errors"], 1);
    EXPECT_EQ(j["speed"]["nominal_baud"], 45.45);
    EXPECT_EQ(j["speed"]["unit_ms"], 22.01);
    EXPECT_EQ(j["speed"]["baud"], 45.43);
    EXPECT_EQ(j["speed"]["error_percent"], -0.04);
    EXPECT_EQ(j["speed"]["stop_units"], 1.42);
    EXPECT_EQ(j["distortion"]["gross_percent"], 5.2);
    EXPECT_EQ(j["distortion"]["synchronous_percent"], 5.3);
    EXPECT_EQ(j["distortion"]["end_percent"], -0.1);
    EXPECT_EQ(j["distortion"]["cyclic"][0]["hz"], 2.3);
    EXPECT_EQ(j["instants"][0]["to"], "mark");
    EXPECT_EQ(j["instants"][1]["to"], "space");
    EXPECT_EQ(j["levels"][0]["marks_missed"], 3);
    EXPECT_EQ(j["margin"]["high_percent"], 95.0);
    EXPECT_EQ(j["margin"]["levels"][0]["low_character"], "R");
    EXPECT_TRUE(j["margin"]["levels"][0]["high_percent"].is_null());
    EXPECT_EQ(j["contact"]["longest_ms"], 1.25);
    EXPECT_EQ(j["findings"][0]["look_at"], "look");
    EXPECT_EQ(j["verdict"]["within"], false);
    EXPECT_EQ(j["verdict"]["exceeded"], Json::array({"bias_percent"}));
    EXPECT_EQ(j["notes"], Json::array({"A note."}));
}

TEST(ReadingJson, WhatIsNotKnownIsNullAndKeepsItsKey) {
    const Json j = Json::parse(readingJson(Reading{}));
    for (const char* key : {"kind", "inverted", "rate_hz", "seconds", "snr_db", "clipped_percent", "gaps"})
        EXPECT_TRUE(j.at("input").at(key).is_null()) << key;
    for (const auto& [key, value] : j.at("speed").items()) EXPECT_TRUE(value.is_null()) << key;
    for (const auto& [key, value] : j.at("distortion").items()) EXPECT_TRUE(value.is_null()) << key;
    for (const char* key : {"levels", "margin", "contact", "findings"}) EXPECT_TRUE(j.at(key).is_null()) << key;
    EXPECT_TRUE(j.at("verdict").at("within").is_null());
    EXPECT_EQ(j.at("instants"), Json::array());
    EXPECT_EQ(j.at("notes"), Json::array());
}

TEST(ReadingJson, LookedForAndNotFoundIsAnEmptyListNotNull) {
    Reading r;
    r.distortion.cyclic.emplace();
    r.levels.emplace();
    r.findings.emplace();
    const Json j = Json::parse(readingJson(r));
    EXPECT_EQ(j["distortion"]["cyclic"], Json::array());
    EXPECT_EQ(j["levels"], Json::array());
    EXPECT_EQ(j["findings"], Json::array());
}

TEST(ReadingJson, RoundsToFourDecimalsButNeverToAFalseZero) {
    Reading r;
    r.distortion.biasPercent = Measured{5.123456, 0.000012345};
    r.distortion.endPercent = Measured{-0.0, 0.01};
    const Json j = Json::parse(readingJson(r))["distortion"];
    EXPECT_EQ(j["bias_percent"], 5.1235);
    EXPECT_EQ(j["bias_uncertainty"], 0.0000123);
    EXPECT_EQ(j["end_percent"].dump(), "0.0");
}

TEST(ReadingJson, ANumberThatIsNoneIsNull) {
    Reading r;
    r.distortion.grossPercent = std::numeric_limits<double>::quiet_NaN();
    r.distortion.synchronousPercent = std::numeric_limits<double>::infinity();
    const Json j = Json::parse(readingJson(r))["distortion"];
    EXPECT_TRUE(j["gross_percent"].is_null());
    EXPECT_TRUE(j["synchronous_percent"].is_null());
}

TEST(ReadingJson, TextThatIsNotUtf8IsMendedNotFatal) {
    Reading r;
    r.text.decoded = "A\xff\"\n\x01Z";
    r.notes = {"Cannot read \"\xc3\x28.wav\"."};
    const Json j = Json::parse(readingJson(r));
    EXPECT_EQ(j["text"]["decoded"], "A\xef\xbf\xbd\"\n\x01Z");
    EXPECT_EQ(j["notes"].size(), 1U);
}
