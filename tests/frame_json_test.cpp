// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/frame_json.h"

#include <gtest/gtest.h>

#include <limits>
#include <nlohmann/json.hpp>

#include "core/report/float_text.h"
#include "core/report/smoothing.h"
#include "tests/support/frame_builder.h"

using namespace trueunit;
using Json = nlohmann::json;

namespace {

FrozenFrame frameWithAllFields() {
    FrozenFrame frame = trueunit::test::frameOfLongMarks();
    auto s = std::make_shared<Snapshot>(*frame.snapshot);
    s->reading.distortion.cyclic = std::vector<CyclicLine>{{1.25, 2.3, 0.375, true}};
    s->reading.levels = std::vector<LevelReading>{{3, 100, 7, 90, 0}};
    s->reading.margin = MarginReading{9.5, 88.25, {{2, MarginBound{9.5, 4, "R"}, std::nullopt}}};
    s->nudges = {{3, 1.5, 5, {7.8, 0.2}, {5.1, 0.2}, {-2.7, 0.3}}};
    s->biasSinceNudge = Measured{5.0, 0.1};
    frame.before = frame.snapshot;
    frame.beforeTakenSecondsUtc = 1764000000;
    s->reading.contact = ContactReading{4, 0.75};
    s->reading.findings = std::vector<Finding>{{"contact-offset", 0.97, "Marks too long", "7.3 %", "gap", "turn"}};
    s->reading.verdict.judged = {{"bias_percent", Judgement::out, 5.0, std::nullopt},
                                 {"end_percent", Judgement::open, 5.0, 12L}};
    s->limits.kind = LimitsOrigin::own;
    s->limits.statesSpeed = false;
    s->options.baud = 45.45;
    s->options.tonesHz = {1270.0, 1070.0};
    s->options.input = InputKind::twoTone;
    s->options.card = MachineCard{"skerry", "Skerry", "ita2", 45.45, 1.42, MachineCard::Motor::governed};
    s->reading.drive = DriveReading{"Skerry", {45.4, -0.1, {"a cause"}, "words"}, {{50.0, 0.2, 12, 60, 0.1}}};
    s->reading.findings->front().seenAt = {{{3, Condition::space}}, 3, true};
    s->reading.text.feedSlips = 2;
    s->tape[0].due = 21U;
    s->tape[0].duePrint = "Y";
    s->lostSamples = 1ULL << 53U;
    frame.snapshot = s;
    frame.cursors = {1.0 / 3.0, std::nullopt};
    frame.notes = {{2.5, 0.75, "R\u00fcckfall \u2014 \u96e8 \u05d0\u05d1"}, {5.0, 0.1, "second"}};
    frame.characterNumber = 17;
    return frame;
}

}  // namespace

TEST(FrameJson, AFrameComesBackAsItWas) {
    const FrozenFrame frame = frameWithAllFields();
    const std::string text = frameJson(frame);
    const Result<FrozenFrame> back = frameFromJson(text);
    ASSERT_TRUE(back) << back.error().text;
    EXPECT_EQ(frameJson(*back), text);
    EXPECT_EQ(back->cursors[0], 1.0 / 3.0);  // to the last bit
    EXPECT_FALSE(back->cursors[1]);
    EXPECT_EQ(back->notes[0].text, frame.notes[0].text);
    const Snapshot &was = *frame.snapshot, &is = *back->snapshot;
    EXPECT_EQ(is.state, was.state);
    EXPECT_EQ(is.reading.distortion.biasPercent->value, was.reading.distortion.biasPercent->value);
    EXPECT_EQ(is.reading.findings->front().confirm, "turn");
    EXPECT_EQ(is.reading.verdict.judged[1].more, 12L);
    EXPECT_EQ(is.options.card->motor, MachineCard::Motor::governed);
    EXPECT_EQ(is.reading.drive->explanation.causes.front(), "a cause");
    EXPECT_EQ(is.reading.findings->front().seenAt, was.reading.findings->front().seenAt);
    EXPECT_EQ(is.reading.text.feedSlips, 2);
    EXPECT_EQ(is.limits.kind, LimitsOrigin::own);
    EXPECT_FALSE(is.limits.statesSpeed);
    EXPECT_EQ(is.options.input, InputKind::twoTone);
    EXPECT_EQ(is.lostSamples, was.lostSamples);
    EXPECT_EQ(is.nudges.back().step.value, -2.7);
    EXPECT_EQ(is.reading.margin->levels[0].low->print, "R");
    EXPECT_EQ(back->before->traces.size(), frame.before->traces.size());
    EXPECT_EQ(back->beforeTakenSecondsUtc, 1764000000);
    ASSERT_EQ(is.traces.size(), was.traces.size());
    EXPECT_EQ(is.traces[5]->level, was.traces[5]->level);
    EXPECT_EQ(is.traces[5]->instants.size(), was.traces[5]->instants.size());
    EXPECT_EQ(is.dots.back().percent, was.dots.back().percent);
}

TEST(FrameJson, WhatIsMissingKeepsItsDefaultAndWhatIsUnknownIsPassedOver) {
    Json object = Json::parse(frameJson(frameWithAllFields()));
    object["snapshot"].erase("trail");
    object["snapshot"]["reading"].erase("margin");
    object["of_a_later_program"] = {1, 2, 3};
    object["snapshot"]["state"] = 7;  // of a kind that does not fit
    const Result<FrozenFrame> back = frameFromJson(object.dump());
    ASSERT_TRUE(back);
    EXPECT_TRUE(back->snapshot->trail.empty());
    EXPECT_FALSE(back->snapshot->reading.margin);
    EXPECT_EQ(back->snapshot->state, SignalState::waiting);
}

TEST(FrameJson, ATrailKeptBeforeItsSmoothingWasToldOpensWithoutMarks) {
    FrozenFrame frame = frameWithAllFields();
    auto s = std::make_shared<Snapshot>(*frame.snapshot);
    for (std::size_t i = 0; i < s->trail.size(); ++i) s->trail[i].over = i < 2 ? 8 : 128;
    frame.snapshot = s;
    Json object = Json::parse(frameJson(frame));
    const Result<FrozenFrame> now = frameFromJson(object.dump());
    ASSERT_TRUE(now);
    const auto changes = smoothingChanges(now->snapshot->trail);
    ASSERT_EQ(changes.size(), 1U);
    EXPECT_EQ(changes[0].over, 128U);
    EXPECT_EQ(changes[0].seconds, s->trail[2].seconds);
    for (Json& point : object["snapshot"]["trail"]) point.erase("over");
    const Result<FrozenFrame> earlier = frameFromJson(object.dump());
    ASSERT_TRUE(earlier);
    EXPECT_EQ(earlier->snapshot->trail.size(), s->trail.size());
    EXPECT_TRUE(smoothingChanges(earlier->snapshot->trail).empty());
}

TEST(FrameJson, WhatIsNoFrameIsRefusedInOneSentence) {
    const std::string text = frameJson(frameWithAllFields());
    EXPECT_FALSE(frameFromJson(text.substr(0, text.size() / 2)));
    EXPECT_FALSE(frameFromJson("[1, 2]"));
    EXPECT_FALSE(frameFromJson(""));
    EXPECT_FALSE(frameFromJson("{\"frame\": 1}"));
    EXPECT_FALSE(frameFromJson("{\"frame\": 1, \"snapshot\": {\"traces\": [null]}}"));
}

// RFC 4648, section 10: BASE64("foobar") = "Zm9vYmFy"; the eight bytes are those of "foobarfo".
TEST(FloatText, IsBase64OfLittleEndianSingles) {
    const auto floats = floatsFromText("Zm9vYmFyZm8=");
    ASSERT_TRUE(floats);
    ASSERT_EQ(floats->size(), 2U);
    EXPECT_EQ(floatsToText(*floats), "Zm9vYmFyZm8=");
    EXPECT_EQ(floatsToText({1.0F}), "AACAPw==");  // IEEE 754: 1.0 is 3F800000
    EXPECT_FALSE(floatsFromText("Zm9"));
    EXPECT_FALSE(floatsFromText("Zm9%"));
    const std::vector<float> odd = {0.0F, -1.5F, std::numeric_limits<float>::denorm_min()};
    EXPECT_EQ(floatsFromText(floatsToText(odd)), odd);
}
