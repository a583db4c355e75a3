// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/sending_options.h"

#include <QCommandLineParser>

#include "app/command_line.h"

namespace trueunit {

namespace {

struct NumberOption {
    const char* name;
    double SenderSettings::*value;
};
constexpr NumberOption kNumbers[] = {
    {"baud", &SenderSettings::baud},
    {"stop", &SenderSettings::stopUnits},
    {"bias", &SenderSettings::biasPercent},
    {"end", &SenderSettings::endPercent},
    {"scatter", &SenderSettings::scatterPercent},
    {"speed-error", &SenderSettings::speedPercent},
    {"tone", &SenderSettings::toneHz},
    {"level", &SenderSettings::levelDbfs},
    {"seconds", &SenderSettings::seconds},
};

// \r and \n as they are written, since a command line cannot hold them.
std::string textOf(QString words) {
    return words.replace(QStringLiteral("\\r"), QStringLiteral("\r"))
        .replace(QStringLiteral("\\n"), QStringLiteral("\n"))
        .toStdString();
}

}  // namespace

QStringList sendingOptions() {
    return {"text",     "once", "baud",  "stop",    "code",   "bias", "end",  "scatter", "speed-error",
            "baseband", "tone", "level", "seconds", "output", "out",  "rate", "bits"};
}

void addSendingOptions(QCommandLineParser& parser) {
    for (const char* name : {"text", "bias", "end", "scatter", "speed-error", "level", "output"})
        parser.addOption(QCommandLineOption(name, "", "value"));
    for (const char* name : {"once", "baseband"}) parser.addOption(QCommandLineOption(name));
}

std::optional<Error> readSending(const QCommandLineParser& parser, Command& command) {
    SenderSettings& s = command.sender;
    for (const NumberOption& option : kNumbers) {
        if (!parser.isSet(option.name)) continue;
        bool isNumber = false;
        s.*option.value = parser.value(option.name).toDouble(&isNumber);
        if (!isNumber)
            return Error{std::string("--") + option.name + " wants a number, not \"" +
                         parser.value(option.name).toStdString() + "\"."};
    }
    if (parser.isSet("baseband") && parser.isSet("tone"))
        return Error{"A signal is sent either as it is keyed (--baseband) or on a tone (--tone), not both."};
    if (parser.isSet("tone")) s.keying = SenderSettings::Keying::tone;
    if (parser.isSet("text")) s.text = textOf(parser.value("text"));
    if (parser.isSet("code")) s.code = parser.value("code").toStdString();
    s.repeat = !parser.isSet("once");
    command.output = parser.value("output").toStdString();
    if (parser.isSet("output") && parser.isSet("out"))
        return Error{"A signal goes either to a sound output (--output) or to a file (--out), not both."};
    return s.problem();
}

std::string sendingHelp() {
    return R"(sending: never drive a loop with a sound output; it is for the line input of a receiver or instrument
  --text TEXT       what to send, \r and \n for carriage return and line feed; otherwise the fox sentence and RY
  --once            not round and round
  --baud, --stop, --code   as above; otherwise 50 baud, 1.5 units, ita2
  --bias, --end, --scatter PERCENT   the distortion to send, of a unit, marking positive; scatter as rms
  --speed-error PERCENT    fast is positive
  --tone HZ         a tone that the marks let through; otherwise, or with --baseband, as it is keyed
  --level DBFS      of the peaks; otherwise -12
  --seconds S       length; otherwise until it is stopped, to a file a minute
  --output NAME     the sound output, as trueunit inputs lists it; otherwise the system's own
  --out FILE        into a .wav or .flac instead, with --rate and --bits as in rendering
)";
}

}  // namespace trueunit
