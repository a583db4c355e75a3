// SPDX-License-Identifier: GPL-3.0-or-later
// Runs the program itself as a script would, without a display.
#include <gtest/gtest.h>

#include <QImage>
#include <QProcess>
#include <cmath>
#include <fstream>
#include <nlohmann/json.hpp>
#include <numbers>

#include "tests/support/temporary_folder.h"
#include "tests/support/wave_bytes.h"

using namespace trueunit;
using trueunit::test::TemporaryFolder;
using trueunit::test::waveBytes;
using trueunit::test::WaveFormat;
using trueunit::test::writeBytes;
using Json = nlohmann::json;

namespace {

struct Ending {
    int exitCode = -1;
    std::string out;
    std::string err;
};

Ending run(const QStringList& arguments) {
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"}) environment.remove(name);
    QProcess process;
    process.setProcessEnvironment(environment);
    process.start(TRUEUNIT_PROGRAM, arguments);
    if (!process.waitForFinished(60000) || process.exitStatus() != QProcess::NormalExit) return {};
    return {process.exitCode(), process.readAllStandardOutput().toStdString(),
            process.readAllStandardError().toStdString()};
}

void expectOneSentence(const std::string& err) {
    ASSERT_FALSE(err.empty());
    EXPECT_EQ(err.find('\n'), err.size() - 1) << err;
    EXPECT_EQ(err[err.size() - 2], '.') << err;
}

class Program : public testing::Test {
protected:
    QString file(const std::string& name) const { return QString::fromStdString(folder_.file(name)); }

    // A sender at 50 baud with the given bias, rendered by the program.
    QString recording(double bias, const std::string& name = "a.wav") {
        const Json scenario = {{"title", "A test"},
                               {"story", ""},
                               {"machine", {{"name", "Skerry"}, {"code", "ita2"}, {"baud", 50}, {"stop_units", 1.5}}},
                               {"text", {{"send", "RYRY THE LAMP IS LIT "}, {"repeat", true}}},
                               {"seconds", 10},
                               {"card", {{"rate_hz", 48000}, {"coupling_hz", {10}}, {"snr_db", 45}}},
                               {"faults", {{"bias_percent", bias}}},
                               {"seed", 3}};
        std::ofstream(folder_.file("a.json")) << scenario.dump();
        const Ending rendered = run({"render", file("a.json"), "--out", file(name)});
        EXPECT_EQ(rendered.exitCode, 0) << rendered.err;
        EXPECT_EQ(rendered.out + rendered.err, "");
        return file(name);
    }

    const TemporaryFolder folder_;
};

}  // namespace

TEST_F(Program, MeasureEndsWithZeroWhenInLimitsAndOneWhenOut) {
    const Ending in = run({"measure", recording(2.0)});
    EXPECT_EQ(in.exitCode, 0) << in.out << in.err;
    EXPECT_NE(in.out.find("IN LIMITS"), std::string::npos);
    const Ending out = run({"measure", recording(8.0, "b.flac"), "--json"});
    EXPECT_EQ(out.exitCode, 1) << out.err;
    const Json reading = Json::parse(out.out);
    EXPECT_NEAR(reading["distortion"]["bias_percent"].get<double>(), 8.0, 0.1);
    EXPECT_EQ(reading["verdict"]["within"], false);
    EXPECT_NE(reading["text"]["decoded"].get<std::string>().find("THE LAMP IS LIT"), std::string::npos);
}

TEST_F(Program, AnotherSetOfLimitsGivesAnotherVerdict) {
    const QString path = recording(2.0);
    const Ending strict = run({"measure", path, "--json", "--limits", "regenerator"});
    EXPECT_EQ(strict.exitCode, 1) << strict.err;
    EXPECT_EQ(Json::parse(strict.out)["verdict"]["limits"], "regenerator");
    EXPECT_EQ(Json::parse(strict.out)["verdict"]["exceeded"], Json::array({"bias_percent"}));
    const Ending wide = run({"measure", path, "--limits", "s3"});
    EXPECT_EQ(wide.exitCode, 0) << wide.out;
    EXPECT_NE(wide.out.find("Origin: published."), std::string::npos);
    const Ending unknown = run({"measure", path, "--limits", "hearsay"});
    EXPECT_EQ(unknown.exitCode, 2);
    expectOneSentence(unknown.err);
    EXPECT_NE(run({"limits"}).out.find("TM 11-5895-1012-10"), std::string::npos);
}

TEST_F(Program, ALimitWithinTheUncertaintyIsJudgedByTheValueAndNotedAsOpen) {
    const Ending open = run({"measure", recording(5.0), "--json"});
    const Json reading = Json::parse(open.out);
    const bool within = reading["distortion"]["bias_percent"].get<double>() <= 5.0;
    EXPECT_EQ(open.exitCode, within ? 0 : 1);
    EXPECT_EQ(reading["verdict"]["within"], within);
    EXPECT_EQ(reading["verdict"]["exceeded"], within ? Json::array() : Json::array({"bias_percent"}));
    EXPECT_NE(reading["notes"].dump().find("Whether the bias is in limits cannot be told"), std::string::npos);
}

TEST_F(Program, ASenderOffEveryUsualSpeedIsNotSaidToBeInLimitsUntilItsSpeedIsSet) {
    const Ending sent = run({"send", "--baud", "48", "--seconds", "12", "--out", file("sent.flac")});
    ASSERT_EQ(sent.exitCode, 0) << sent.err;
    const Ending unknown = run({"measure", file("sent.flac"), "--json"});
    EXPECT_EQ(unknown.exitCode, 1);
    EXPECT_TRUE(Json::parse(unknown.out)["verdict"]["within"].is_null());
    EXPECT_EQ(run({"measure", file("sent.flac"), "--baud", "48", "--json"}).exitCode, 0);
}

TEST_F(Program, WhatTheReferenceSenderWritesToAFileIsReadBack) {
    const Ending sent = run({"send", "--bias", "-12", "--tone", "1500", "--seconds", "12", "--out", file("sent.flac")});
    EXPECT_EQ(sent.exitCode, 0) << sent.err;
    const Json reading = Json::parse(run({"measure", file("sent.flac"), "--json"}).out);
    EXPECT_EQ(reading["input"]["kind"], "tone");
    EXPECT_NEAR(reading["distortion"]["bias_percent"].get<double>(), -12.0, 0.05);
}

TEST_F(Program, TheClockIsToldFromAToneAndTheTrimIsNotedWithTheReading) {
    constexpr double kFast = 60e-6;
    std::vector<float> tone(48000 * 8);
    for (std::size_t i = 0; i < tone.size(); ++i) {
        const double seconds = static_cast<double>(i) / (48000.0 * (1.0 + kFast));
        tone[i] = static_cast<float>(0.3 * std::sin(2.0 * std::numbers::pi * 1000.0 * seconds));
    }
    writeBytes(folder_.file("tone.wav"), waveBytes(tone, 1, 48000, WaveFormat::pcm24));
    const Ending told = run({"clock", file("tone.wav"), "--tone", "1000"});
    EXPECT_EQ(told.exitCode, 0) << told.err;
    EXPECT_NE(told.out.find("fast by 60.00"), std::string::npos) << told.out;
    EXPECT_NE(told.out.find("--clock-ppm 60.00"), std::string::npos) << told.out;
    const Ending none = run({"clock", file("tone.wav"), "--tone", "3000"});
    EXPECT_EQ(none.exitCode, 2);
    expectOneSentence(none.err);

    const Ending trimmed = run({"measure", recording(2.0), "--json", "--clock-ppm", "60"});
    const Json notes = Json::parse(trimmed.out)["notes"];
    EXPECT_NE(notes.dump().find("Clock trimmed by +60.0 parts in a million."), std::string::npos) << notes;
}

TEST_F(Program, WithoutAReadingMeasureEndsWithTwoAndTheJsonSaysWhy) {
    std::ofstream(folder_.file("quiet.json"))
        << R"({"title":"t","story":"","machine":{"name":"Skerry","baud":50},"text":{"send":"A","repeat":false},
               "lead_in_seconds":5,"seconds":5,"card":{"snr_db":60}})";
    ASSERT_EQ(run({"render", file("quiet.json"), "--out", file("quiet.wav"), "--seconds", "4"}).exitCode, 0);
    const Ending quiet = run({"measure", file("quiet.wav"), "--json"});
    EXPECT_EQ(quiet.exitCode, 2);
    const Json reading = Json::parse(quiet.out);
    EXPECT_TRUE(reading["distortion"]["bias_percent"].is_null());
    EXPECT_FALSE(reading["notes"].empty());
}

TEST_F(Program, AFileThatCannotBeReadGivesOneSentenceAndJsonWithTheReason) {
    const Ending missing = run({"measure", file("none.wav"), "--json"});
    EXPECT_EQ(missing.exitCode, 2);
    expectOneSentence(missing.err);
    EXPECT_EQ(Json::parse(missing.out)["notes"].size(), 1U);
    const Ending plain = run({"measure", file("none.wav")});
    EXPECT_EQ(plain.exitCode, 2);
    EXPECT_EQ(plain.out, "");
    expectOneSentence(plain.err);
}

TEST_F(Program, UnusableArgumentsEndWithTwoAndOneSentence) {
    for (const QStringList& arguments : {QStringList{"measure", "a.wav", "--baud", "5"}, QStringList{"dance"},
                                         QStringList{"render", "none.json", "--out", file("a.wav")},
                                         QStringList{"report", "none.wav", "--out", file("a.png")}}) {
        const Ending refused = run(arguments);
        EXPECT_EQ(refused.exitCode, 2) << arguments.join(' ').toStdString();
        EXPECT_EQ(refused.out, "");
        expectOneSentence(refused.err);
    }
}

TEST_F(Program, ReportIsDrawnWithoutADisplay) {
    const Ending report = run({"report", recording(8.0), "--out", file("a.png"), "--machine", "Skerry 2"});
    EXPECT_EQ(report.exitCode, 0) << report.err;
    EXPECT_EQ(report.err, "");
    EXPECT_EQ(report.out.substr(0, report.out.find('\n')), "written: " + file("a.png").toStdString());
    const QImage page(file("a.png"));
    ASSERT_FALSE(page.isNull());
    EXPECT_GT(page.height(), page.width());
}

TEST_F(Program, InputsListsEvenWhenThereAreNoneAndKeepsStandardErrorClean) {
    const Ending inputs = run({"inputs"});
    EXPECT_EQ(inputs.exitCode, 0) << inputs.err;
    EXPECT_NE(inputs.out.find("sound inputs\n"), std::string::npos);
    EXPECT_NE(inputs.out.find("sound outputs\n"), std::string::npos);
    EXPECT_EQ(inputs.err, "");
}

TEST_F(Program, HelpAndVersionGoToStandardOutput) {
    EXPECT_EQ(run({"--help"}).exitCode, 0);
    EXPECT_NE(run({"--help"}).out.find("examples"), std::string::npos);
    EXPECT_EQ(run({"--version"}).out.rfind("trueunit ", 0), 0U);
}

TEST_F(Program, WithoutADisplayTheWindowIsRefusedInOneSentence) {
    const Ending window = run({});
    EXPECT_EQ(window.exitCode, 2);
    expectOneSentence(window.err);
}

TEST_F(Program, WithADisplayTheWindowOpensAndStaysOpen) {
    QProcess display;
    display.start("Xvfb", {"-displayfd", "1", "-screen", "0", "1440x900x24", "-nolisten", "tcp"});
    ASSERT_TRUE(display.waitForReadyRead(20000)) << "the private display did not start";
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.remove("WAYLAND_DISPLAY");
    environment.remove("QT_QPA_PLATFORM");
    environment.insert("DISPLAY", ":" + QString::fromUtf8(display.readAllStandardOutput()).trimmed());
    environment.insert("HOME", QString::fromStdString(folder_.file("")));
    environment.insert("XDG_CONFIG_HOME", QString::fromStdString(folder_.file("")));
    QProcess window;
    window.setProcessEnvironment(environment);
    window.start(TRUEUNIT_PROGRAM, QStringList{"--baud", "45.45"});
    EXPECT_FALSE(window.waitForFinished(4000)) << window.readAllStandardError().toStdString();
    EXPECT_EQ(window.state(), QProcess::Running);
    window.terminate();
    window.waitForFinished(5000);
    display.terminate();
    display.waitForFinished(5000);
}
