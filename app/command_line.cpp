// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command_line.h"

#include <QCommandLineParser>
#include <QFileInfo>
#include <map>

#include "app/sending_options.h"

namespace trueunit {

QStringList measuringOptions() {
    return {"baud", "stop", "code", "expect", "input", "tones", "window", "slice", "clock-ppm", "limits"};
}

namespace {

using Kind = Command::Kind;

struct CommandRule {
    Kind kind;
    bool needsFile;
    bool needsOut;
    QStringList options;
};

const QStringList kMeasuring = measuringOptions() + QStringList{"card"};

const std::map<QString, CommandRule>& commandRules() {
    static const std::map<QString, CommandRule> rules = {
        {"open", {Kind::window, false, false, kMeasuring}},
        {"measure", {Kind::measure, true, false, kMeasuring + QStringList{"json"}}},
        {"report", {Kind::report, true, true, kMeasuring + QStringList{"out", "machine"}}},
        {"render", {Kind::render, true, true, {"out", "seconds", "rate", "bits"}}},
        {"clock", {Kind::clock, true, false, {"tone"}}},
        {"send", {Kind::send, false, false, sendingOptions()}},
        {"check", {Kind::check, false, false, {"loopback", "tone", "json"}}},
        {"limits", {Kind::limits, false, false, {}}},
        {"inputs", {Kind::inputs, false, false, {}}},
        {"picture", {Kind::picture, false, true, kMeasuring + QStringList{"out", "seconds", "size"}}},
    };
    return rules;
}

void addOptions(QCommandLineParser& parser) {
    for (const char* name :
         {"baud", "stop", "code",     "expect", "input",   "tones",   "window", "slice", "clock-ppm", "limits",
          "card", "tone", "loopback", "out",    "machine", "seconds", "rate",   "bits",  "size",      "logbook"})
        parser.addOption(QCommandLineOption(name, "", "value"));
    addSendingOptions(parser);
    parser.addOption(QCommandLineOption("json"));
    parser.addOption(QCommandLineOption(QStringList{"h", "help"}));
    parser.addOption(QCommandLineOption(QStringList{"v", "version"}));
}

std::optional<Error> readNumber(const QCommandLineParser& parser, const QString& name, std::optional<double>& into) {
    if (!parser.isSet(name)) return std::nullopt;
    bool isNumber = false;
    const double value = parser.value(name).toDouble(&isNumber);
    if (!isNumber)
        return Error{"--" + name.toStdString() + " wants a number, not \"" + parser.value(name).toStdString() + "\"."};
    into = value;
    return std::nullopt;
}

std::optional<Error> readWindow(const QCommandLineParser& parser, int& into) {
    if (!parser.isSet("window") || parser.value("window") == "all") return std::nullopt;
    bool isNumber = false;
    into = parser.value("window").toInt(&isNumber);
    if (isNumber && into >= 1) return std::nullopt;
    return Error{"--window wants a number of characters or all, not \"" + parser.value("window").toStdString() + "\"."};
}

std::optional<Error> readInput(const QCommandLineParser& parser, InputKind& into) {
    static const std::map<QString, InputKind> kinds = {{"auto", InputKind::automatic},
                                                       {"loop", InputKind::loop},
                                                       {"tone", InputKind::tone},
                                                       {"two-tone", InputKind::twoTone}};
    if (!parser.isSet("input")) return std::nullopt;
    const auto found = kinds.find(parser.value("input"));
    if (found == kinds.end())
        return Error{"--input must be auto, loop, tone or two-tone, not \"" + parser.value("input").toStdString() +
                     "\"."};
    into = found->second;
    return std::nullopt;
}

std::optional<Error> readTones(const QCommandLineParser& parser, std::vector<double>& into) {
    if (!parser.isSet("tones")) return std::nullopt;
    for (const QString& tone : parser.value("tones").split(',')) {
        bool isNumber = false;
        into.push_back(tone.toDouble(&isNumber));
        if (!isNumber) return Error{"--tones wants one or two frequencies in Hz, like 1000 or 1270,1070."};
    }
    return std::nullopt;
}

std::optional<Error> readMeasuring(const QCommandLineParser& parser, Options& options) {
    std::optional<double> slice;
    std::optional<double> clockPpm;
    if (auto e = readNumber(parser, "baud", options.baud)) return e;
    if (auto e = readNumber(parser, "stop", options.stopUnits)) return e;
    if (auto e = readNumber(parser, "slice", slice)) return e;
    if (auto e = readNumber(parser, "clock-ppm", clockPpm)) return e;
    if (auto e = readWindow(parser, options.windowCharacters)) return e;
    if (auto e = readInput(parser, options.input)) return e;
    if (auto e = readTones(parser, options.tonesHz)) return e;
    if (slice) options.slicePercent = *slice;
    if (clockPpm) options.clockPpm = *clockPpm;
    if (parser.isSet("code")) options.code = parser.value("code").toStdString();
    if (parser.isSet("expect")) options.expect = parser.value("expect").toStdString();
    return options.problem();
}

std::optional<Error> readSize(const QCommandLineParser& parser, std::optional<std::pair<int, int>>& into) {
    if (!parser.isSet("size")) return std::nullopt;
    const QStringList sides = parser.value("size").split('x');
    const int width = sides.value(0).toInt();
    const int height = sides.value(1).toInt();
    if (sides.size() != 2 || width < 200 || width > 8000 || height < 200 || height > 8000)
        return Error{"--size must be like 1440x900, 200 to 8000 pixels a side."};
    into = {width, height};
    return std::nullopt;
}

std::optional<Error> readRendering(const QCommandLineParser& parser, Command& command) {
    if (auto e = readNumber(parser, "seconds", command.seconds)) return e;
    if (auto e = readNumber(parser, "rate", command.rateHz)) return e;
    if (command.seconds && !(*command.seconds > 0.0 && *command.seconds <= 86400.0))
        return Error{"--seconds must lie above 0 and be at most 86400."};
    if (command.rateHz && !(*command.rateHz >= 8000.0 && *command.rateHz <= 768000.0))
        return Error{"--rate must lie between 8000 and 768000 Hz."};
    if (auto e = readSize(parser, command.size)) return e;
    if (!parser.isSet("bits")) return std::nullopt;
    static const std::map<QString, SampleFormat> formats = {
        {"16", SampleFormat::pcm16}, {"24", SampleFormat::pcm24}, {"32", SampleFormat::float32}};
    const auto found = formats.find(parser.value("bits"));
    if (found == formats.end()) return Error{"--bits must be 16, 24 or 32 (float)."};
    command.format = found->second;
    return std::nullopt;
}

std::optional<Error> readTone(const QCommandLineParser& parser, Command& command) {
    std::optional<double> tone;
    if (auto e = readNumber(parser, "tone", tone)) return e;
    if (!tone && command.kind == Kind::check) return std::nullopt;
    if (!tone) return Error{"trueunit clock wants --tone with the frequency of the reference tone in Hz."};
    if (!(*tone >= 100.0 && *tone <= 10000.0)) return Error{"--tone must lie between 100 and 10000 Hz."};
    command.toneHz = *tone;
    return std::nullopt;
}

std::optional<Error> strayOption(const QCommandLineParser& parser, const QString& command, const QStringList& allowed) {
    for (const QString& name : parser.optionNames())
        if (!allowed.contains(name))
            return Error{"--" + name.toStdString() + " does not belong to " +
                         (command.isEmpty() ? "the window" : command.toStdString()) + "; see trueunit --help."};
    return std::nullopt;
}

std::optional<Error> readOperands(const QStringList& operands, const QCommandLineParser& parser,
                                  const CommandRule& rule, Command& command) {
    const std::string name = operands.front().toStdString();
    const qsizetype wanted = rule.needsFile || rule.kind == Kind::picture || rule.kind == Kind::window ? 2 : 1;
    if (operands.size() < wanted && rule.needsFile)
        return Error{"trueunit " + name + " wants a " + (rule.kind == Kind::render ? "scenario" : "recording") + "."};
    if (operands.size() > wanted)
        return Error{"\"" + operands.at(wanted).toStdString() + "\" is one argument too many for " + name + "."};
    command.file = operands.value(1).toStdString();
    command.out = parser.value("out").toStdString();
    command.machine = parser.value("machine").toStdString();
    if (rule.needsOut && command.out.empty()) return Error{"trueunit " + name + " wants --out with a file to write."};
    return std::nullopt;
}

// A file by itself is opened.
QStringList withOpen(const QStringList& operands) {
    const bool file =
        !operands.isEmpty() && commandRules().count(operands.front()) == 0 && QFileInfo(operands.front()).isFile();
    return file ? QStringList{"open"} + operands : operands;
}

}  // namespace

Result<Command> parseCommandLine(const QStringList& arguments) {
    QCommandLineParser parser;
    addOptions(parser);
    Command command;
    if (!parser.parse(QStringList{"trueunit"} + arguments))
        return Error{parser.errorText().toStdString() + (parser.errorText().endsWith('.') ? "" : ".") +
                     " See trueunit --help."};
    if (parser.isSet("help"))
        command.kind = Kind::help;
    else if (parser.isSet("version"))
        command.kind = Kind::version;
    if (command.kind != Kind::window) return command;

    const QStringList operands = withOpen(parser.positionalArguments());
    const QString name = operands.value(0);
    CommandRule rule{Kind::window, false, false, kMeasuring + QStringList{"logbook"}};
    if (!operands.isEmpty()) {
        const auto found = commandRules().find(name);
        if (found == commandRules().end())
            return Error{"There is no command \"" + name.toStdString() + "\"; see trueunit --help."};

        rule = found->second;
        if (auto e = readOperands(operands, parser, rule, command)) return *e;
    }
    command.kind = rule.kind;
    command.given = parser.optionNames();
    command.json = parser.isSet("json");
    command.logbook = parser.value("logbook").toStdString();
    if (parser.isSet("limits") && parser.value("limits").isEmpty()) return Error{"--limits wants the name of a set."};
    command.limits = parser.value("limits").toStdString();
    command.card = parser.value("card").toStdString();
    if (auto e = strayOption(parser, name, rule.options)) return *e;
    if (command.kind == Kind::send) {
        if (auto e = readSending(parser, command)) return *e;
    } else if (auto e = readMeasuring(parser, command.options)) {
        return *e;
    }
    if (auto e = readRendering(parser, command)) return *e;
    command.loopback = parser.value("loopback").toStdString();
    if (command.kind == Kind::check && parser.isSet("tone") && command.loopback.empty())
        return Error{"--tone of a check is heard through the card: it wants --loopback as well."};
    if (command.kind == Kind::clock || command.kind == Kind::check)
        if (auto e = readTone(parser, command)) return *e;
    return command;
}

}  // namespace trueunit
