// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command_line.h"

#include <gtest/gtest.h>

using namespace trueunit;

namespace {

Command parsed(const QStringList& arguments) {
    const Result<Command> command = parseCommandLine(arguments);
    EXPECT_TRUE(command) << arguments.join(' ').toStdString() << ": " << command.error().text;
    return command ? *command : Command{};
}

std::string refusal(const QStringList& arguments) {
    const Result<Command> command = parseCommandLine(arguments);
    return command ? "" : command.error().text;
}

}  // namespace

TEST(CommandLine, NothingOpensTheWindow) { EXPECT_EQ(parsed({}).kind, Command::Kind::window); }

TEST(CommandLine, OpenOpensTheWindowOnAFile) {
    const Command c = parsed({"open", "a.scenario.json", "--window", "8"});
    EXPECT_EQ(c.kind, Command::Kind::window);
    EXPECT_EQ(c.file, "a.scenario.json");
    EXPECT_EQ(c.options.windowCharacters, 8);
    EXPECT_EQ(parsed({"open"}).file, "");
    EXPECT_NE(refusal({"open", "a.wav", "b.wav"}), "");
}

TEST(CommandLine, MeasureTakesARecordingAndEverySharedOption) {
    const Command c = parsed({"measure", "a.wav", "--json", "--baud", "45.45", "--stop", "1.42", "--code", "ita2-us",
                              "--expect", "RY", "--input", "two-tone", "--window", "128", "--slice", "40"});
    EXPECT_EQ(c.kind, Command::Kind::measure);
    EXPECT_EQ(c.file, "a.wav");
    EXPECT_TRUE(c.json);
    EXPECT_EQ(c.options.baud, 45.45);
    EXPECT_EQ(c.options.stopUnits, 1.42);
    EXPECT_EQ(c.options.code, "ita2-us");
    EXPECT_EQ(c.options.expect, "RY");
    EXPECT_EQ(c.options.input, InputKind::twoTone);
    EXPECT_EQ(c.options.windowCharacters, 128);
    EXPECT_EQ(c.options.slicePercent, 40.0);
}

TEST(CommandLine, TheClockIsMeasuredByAToneAndTrimmedByANumber) {
    const Command c = parsed({"clock", "a.wav", "--tone", "1000"});
    EXPECT_EQ(c.kind, Command::Kind::clock);
    EXPECT_EQ(c.file, "a.wav");
    EXPECT_EQ(c.toneHz, 1000.0);
    EXPECT_EQ(parsed({"measure", "a.wav", "--clock-ppm", "-12.3"}).options.clockPpm, -12.3);
    EXPECT_EQ(parsed({"report", "a.wav", "--out", "a.png", "--clock-ppm=80"}).options.clockPpm, 80.0);
    EXPECT_NE(refusal({"clock", "a.wav"}), "");
    EXPECT_NE(refusal({"clock", "a.wav", "--tone", "20"}), "");
    EXPECT_NE(refusal({"measure", "a.wav", "--clock-ppm", "2000"}), "");
    EXPECT_NE(refusal({"measure", "a.wav", "--tone", "1000"}), "");
}

TEST(CommandLine, TheReferenceSenderTakesWhatItIsToSend) {
    const Command c = parsed({"send",   "--text", "RY\\r\\n", "--once",    "--baud", "45.45",         "--bias",
                              "-20",    "--end",  "1.5",      "--scatter", "2",      "--speed-error", "0.4",
                              "--tone", "1270",   "--level",  "-20",       "--out",  "a.wav"});
    EXPECT_EQ(c.kind, Command::Kind::send);
    EXPECT_EQ(c.sender.text, "RY\r\n");
    EXPECT_FALSE(c.sender.repeat);
    EXPECT_EQ(c.sender.biasPercent, -20.0);
    EXPECT_EQ(c.sender.endPercent, 1.5);
    EXPECT_EQ(c.sender.scatterPercent, 2.0);
    EXPECT_EQ(c.sender.speedPercent, 0.4);
    EXPECT_EQ(c.sender.keying, SenderSettings::Keying::tone);
    EXPECT_EQ(c.sender.toneHz, 1270.0);
    EXPECT_EQ(c.sender.levelDbfs, -20.0);
    EXPECT_EQ(parsed({"send"}).sender.keying, SenderSettings::Keying::baseband);
    EXPECT_EQ(parsed({"send", "--output", "Line out"}).output, "Line out");
    EXPECT_NE(refusal({"send", "--bias", "90"}), "");
    EXPECT_NE(refusal({"send", "--bias", "much"}), "");
    EXPECT_NE(refusal({"send", "--tone", "1000", "--baseband"}), "");
    EXPECT_NE(refusal({"send", "--output", "a", "--out", "a.wav"}), "");
    EXPECT_NE(refusal({"measure", "a.wav", "--bias", "3"}), "");
}

TEST(CommandLine, TheSelfCheckGoesThroughMemoryOrThroughTheCard) {
    EXPECT_EQ(parsed({"check"}).loopback, "");
    const Command c = parsed({"check", "--loopback", "Line in,Line out", "--tone", "1000", "--json"});
    EXPECT_EQ(c.loopback, "Line in,Line out");
    EXPECT_EQ(c.toneHz, 1000.0);
    EXPECT_TRUE(c.json);
    EXPECT_NE(refusal({"check", "--tone", "1000"}), "");
    EXPECT_NE(refusal({"check", "a.wav"}), "");
}

TEST(CommandLine, ALimitsOptionNamesASet) {
    EXPECT_EQ(parsed({"measure", "a.wav", "--limits", "s3"}).limits, "s3");
    EXPECT_EQ(parsed({"report", "a.wav", "--out", "a.png", "--limits", "s3"}).limits, "s3");
    EXPECT_EQ(parsed({"measure", "a.wav"}).limits, "");
    EXPECT_EQ(parsed({"limits"}).kind, Command::Kind::limits);
}

TEST(CommandLine, WithoutOptionsAllIsFoundFromTheSignal) {
    const Command c = parsed({"measure", "a.wav", "--window", "all", "--input", "auto"});
    EXPECT_FALSE(c.json);
    EXPECT_FALSE(c.options.baud.has_value());
    EXPECT_EQ(c.options.windowCharacters, 0);
    EXPECT_EQ(c.options.input, InputKind::automatic);
    EXPECT_EQ(c.options.slicePercent, 50.0);
}

TEST(CommandLine, RenderAndReportNameTheirFiles) {
    const Command render =
        parsed({"render", "a.json", "--out", "a.flac", "--seconds", "3.5", "--rate", "96000", "--bits", "24"});
    EXPECT_EQ(render.kind, Command::Kind::render);
    EXPECT_EQ(render.out, "a.flac");
    EXPECT_EQ(render.seconds, 3.5);
    EXPECT_EQ(render.rateHz, 96000.0);
    EXPECT_EQ(render.format, SampleFormat::pcm24);
    const Command report = parsed({"report", "--out=a.png", "a.wav", "--machine", "Skerry 2"});
    EXPECT_EQ(report.kind, Command::Kind::report);
    EXPECT_EQ(report.file, "a.wav");
    EXPECT_EQ(report.machine, "Skerry 2");
}

TEST(CommandLine, HelpAndVersionNeedNothingElse) {
    EXPECT_EQ(parsed({"--help"}).kind, Command::Kind::help);
    EXPECT_EQ(parsed({"measure", "-h"}).kind, Command::Kind::help);
    EXPECT_EQ(parsed({"--version"}).kind, Command::Kind::version);
}

TEST(CommandLine, UnusableArgumentsGiveOneSentence) {
    const std::vector<QStringList> unusable = {
        {"nonsense"},
        {"measure"},
        {"measure", "a.wav", "b.wav"},
        {"measure", "a.wav", "--baud", "fast"},
        {"measure", "a.wav", "--baud", "19"},
        {"measure", "a.wav", "--baud"},
        {"measure", "a.wav", "--baud", "nan"},
        {"measure", "a.wav", "--stop", "3"},
        {"measure", "a.wav", "--code", "morse"},
        {"measure", "a.wav", "--input", "radio"},
        {"measure", "a.wav", "--window", "0"},
        {"measure", "a.wav", "--tones", "high"},
        {"measure", "a.wav", "--tones", "1000,1500,2000"},
        {"measure", "a.wav", "--window", "some"},
        {"measure", "a.wav", "--slice", "95"},
        {"measure", "a.wav", "--loud"},
        {"measure", "a.wav", "--out", "a.png"},
        {"report", "a.wav"},
        {"report", "a.wav", "--json", "--out", "a.png"},
        {"render", "a.json"},
        {"render", "a.json", "--out", "a.wav", "--seconds", "0"},
        {"render", "a.json", "--out", "a.wav", "--rate", "10"},
        {"render", "a.json", "--out", "a.wav", "--bits", "8"},
        {"inputs", "more"},
        {"picture"},
        {"picture", "--out", "a.png", "--size", "1440"},
        {"--json"},
    };
    for (const QStringList& arguments : unusable) {
        const std::string text = refusal(arguments);
        const std::string shown = arguments.join(' ').toStdString() + " -> " + text;
        ASSERT_FALSE(text.empty()) << shown;
        EXPECT_EQ(text.back(), '.') << shown;
        EXPECT_EQ(text.find('\n'), std::string::npos) << shown;
    }
}

TEST(CommandLine, TheHelpNamesEveryCommandAndOption) {
    const std::string help = helpText();
    for (const char* word :
         {"open", "measure", "report", "render", "inputs", "--json", "--baud", "--stop", "--code", "--expect",
          "--input", "--window", "--slice", "--out", "--machine", "--seconds", "--rate", "--bits"})
        EXPECT_NE(help.find(word), std::string::npos) << word;
}

TEST(CommandLine, AFileInPlaceOfACommandIsOpened) {
    const Result<Command> command = parseCommandLine({"/etc/hostname", "--slice", "40"});
    ASSERT_TRUE(command);
    EXPECT_EQ(command->kind, Command::Kind::window);
    EXPECT_EQ(command->file, "/etc/hostname");
    EXPECT_EQ(refusal({"/etc/hostname", "b"}), "\"b\" is one argument too many for open.");
    EXPECT_EQ(refusal({"opne"}), "There is no command \"opne\"; see trueunit --help.");
}

TEST(CommandLine, TellsWhatWasGivenFromWhatIsUsual) {
    const Result<Command> command = parseCommandLine({"open", "--slice", "50", "--window", "all"});
    ASSERT_TRUE(command);
    EXPECT_TRUE(command->given.contains("slice") && command->given.contains("window"));
    EXPECT_FALSE(command->given.contains("code"));
}
