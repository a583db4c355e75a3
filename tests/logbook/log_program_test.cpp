// SPDX-License-Identifier: GPL-3.0-or-later
// Runs "trueunit log" as a script would.
#include <gtest/gtest.h>

#include <QFile>
#include <QImage>
#include <QProcess>
#include <nlohmann/json.hpp>

#include "tests/support/temporary_folder.h"

using Json = nlohmann::json;

namespace {

class LogProgram : public testing::Test {
protected:
    struct Ended {
        int code = -1;
        std::string out, err;
    };

    QString file(const std::string& name) const { return QString::fromStdString(folder_.file(name)); }

    static Ended run(const QStringList& arguments) {
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"}) environment.remove(name);
        QProcess process;
        process.setProcessEnvironment(environment);
        process.start(TRUEUNIT_PROGRAM, arguments);
        if (!process.waitForFinished(60000)) return {};
        return {process.exitCode(), process.readAllStandardOutput().toStdString(),
                process.readAllStandardError().toStdString()};
    }

    Ended log(const QStringList& arguments, const std::string& book = "book.sqlite") const {
        return run(QStringList{"log"} + arguments + QStringList{"--logbook", file(book)});
    }

    QString recording(double bias) const {
        const Json scenario = {{"title", "A test"},
                               {"story", ""},
                               {"machine", {{"name", "Skerry"}, {"code", "ita2"}, {"baud", 50}, {"stop_units", 1.5}}},
                               {"text", {{"send", "RYRY THE LAMP IS LIT "}, {"repeat", true}}},
                               {"seconds", 8},
                               {"card", {{"rate_hz", 48000}, {"coupling_hz", {10}}, {"snr_db", 45}}},
                               {"faults", {{"bias_percent", bias}}},
                               {"seed", 3}};
        QFile json(file("a.json"));
        EXPECT_TRUE(json.open(QIODevice::WriteOnly));
        json.write(QByteArray::fromStdString(scenario.dump()));
        json.close();
        const QString wave = file("bias" + std::to_string(int(bias)) + ".wav");
        EXPECT_EQ(run({"render", file("a.json"), "--out", wave}).code, 0);
        return wave;
    }

    static void expectOneSentence(const Ended& ended) {
        EXPECT_EQ(ended.code, 2);
        ASSERT_FALSE(ended.err.empty());
        EXPECT_EQ(ended.err.find('\n'), ended.err.size() - 1) << ended.err;
        EXPECT_EQ(ended.err[ended.err.size() - 2], '.') << ended.err;
    }

    const trueunit::test::TemporaryFolder folder_;
};

}  // namespace

TEST_F(LogProgram, AVisitIsKeptShownReportedAndCarriedToAnotherLogbook) {
    ASSERT_EQ(log({"keep", recording(8.0), "--machine", "Skerry 2", "--baud", "50"}).code, 0);
    ASSERT_EQ(log({"keep", recording(0.0), "--machine", "SKERRY 2", "--baud", "50"}).code, 0);
    ASSERT_EQ(log({"write", "--visit", "1", "--complaint", "garbles", "--work", "trued", "--repaired"}).code, 0);

    const Json list = Json::parse(log({"list", "--text", "skerry GARBLES", "--json"}).out);
    ASSERT_EQ(list["all"], 2);
    EXPECT_NEAR(list["frames"][1]["bias_percent"].get<double>(), 8.0, 0.2);
    EXPECT_NEAR(list["frames"][1]["end_percent"].get<double>(), 0.0, 0.2);
    EXPECT_EQ(Json::parse(log({"list", "--finding", "contact-offset", "--json"}).out)["all"], 1);

    const Json then = Json::parse(log({"show", "--frame", "1", "--json"}).out);
    const Json now = Json::parse(log({"show", "--frame", "1", "--again", "--json"}).out);
    EXPECT_NEAR(now["distortion"]["bias_percent"].get<double>(), then["distortion"]["bias_percent"].get<double>(),
                0.05);
    EXPECT_NE(log({"show", "--frame", "1", "--again"}).out.find("measured again"), std::string::npos);

    ASSERT_EQ(log({"export", "--visit", "1", "--out", file("v.zip")}).code, 0);
    EXPECT_EQ(log({"import", file("v.zip")}, "other.sqlite").code, 0);
    EXPECT_NE(log({"import", file("v.zip")}, "other.sqlite").out.find("0 new frames, 2 that were here"),
              std::string::npos);
    ASSERT_EQ(log({"export", "--machine", "skerry 2", "--out", file("v.csv")}).code, 0);
    ASSERT_EQ(log({"check"}).code, 0);

    ASSERT_EQ(log({"report", "--visit", "1", "--out", file("v.png")}).code, 0);
    const QImage page(file("v.png"));
    EXPECT_NEAR(page.width() * 1000.0 / page.dotsPerMeterX(), 210.0, 0.5);  // ISO 216: A4 is 210 x 297 mm
    EXPECT_NEAR(page.height() * 1000.0 / page.dotsPerMeterY(), 297.0, 0.5);
    EXPECT_TRUE(page.text("Title").contains("Skerry 2"));
    EXPECT_FALSE(page.text("Creation Time").isEmpty());
    EXPECT_TRUE(page.text("Software").startsWith("Trueunit"));
    ASSERT_EQ(log({"report", "--visit", "1", "--paper", "letter", "--out", file("v.pdf")}).code, 0);
    QFile pdf(file("v.pdf"));
    ASSERT_TRUE(pdf.open(QIODevice::ReadOnly));
    EXPECT_TRUE(pdf.readAll().contains("/MediaBox [0 0 612"));  // ANSI Y14.1: Letter is 8.5 x 11 in of 72 points
}

TEST_F(LogProgram, WhatCannotBeDoneIsSaidInOneSentence) {
    expectOneSentence(log({"show", "--frame", "7"}));
    expectOneSentence(log({"sing"}));
    expectOneSentence(log({"list", "--since", "yesterday"}));
    expectOneSentence(log({"keep", file("none.wav"), "--machine", "Skerry"}));
    expectOneSentence(log({"export", "--visit", "1", "--out", file("v.doc")}));
    expectOneSentence(log({"import", file("none.zip")}));
    expectOneSentence(log({"report", "--visit", "1", "--out", file("v.png")}));
    expectOneSentence(log({"list", "--work", "x"}));
}
