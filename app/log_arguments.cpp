// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/log_arguments.h"

#include <QCommandLineParser>
#include <QDate>
#include <QDateTime>
#include <map>

#include "app/command_line.h"

namespace trueunit {

namespace {

const QStringList kTexts = {"complaint", "work", "parts", "oil", "result", "mark", "card", "remarks"};

// The options of each verb, besides --logbook.
const std::map<QString, QStringList>& verbs() {
    static const std::map<QString, QStringList> all = {
        {"machines", {"text", "json"}},
        {"list", {"machine", "visit", "since", "until", "finding", "text", "limit", "json"}},
        {"show", {"frame", "visit", "again", "json"}},
        {"keep", measuringOptions() + QStringList{"machine", "visit", "remarks", "role"}},
        {"write", kTexts + QStringList{"visit", "frame", "role", "repaired"}},
        {"export", {"visit", "machine", "out"}},
        {"import", {}},
        {"report", {"visit", "out", "paper"}},
        {"check", {}},
        {"mend", {}},
    };
    return all;
}

void addLogOptions(QCommandLineParser& parser) {
    for (const QString& name : measuringOptions() + kTexts +
                                   QStringList{"machine", "visit", "frame", "since", "until", "finding", "text",
                                               "limit", "role", "out", "paper", "logbook"})
        parser.addOption(QCommandLineOption(name, "", "value"));
    for (const char* name : {"json", "again", "repaired"}) parser.addOption(QCommandLineOption(name));
    parser.addOption(QCommandLineOption(QStringList{"h", "help"}));
}

Error wrong(const QString& option, const char* wants, const QString& got) {
    return Error{QStringLiteral("--%1 wants %2, not \"%3\".").arg(option, QLatin1String(wants), got).toStdString()};
}

std::optional<Error> readId(const QCommandLineParser& parser, const QString& name, std::optional<qint64>& into) {
    if (!parser.isSet(name)) return std::nullopt;
    bool isNumber = false;
    const qint64 value = parser.value(name).toLongLong(&isNumber);
    if (!isNumber || value < 1) return wrong(name, "a number as the list shows it", parser.value(name));
    into = value;
    return std::nullopt;
}

// A day of the local calendar; days: how many later the moment lies.
std::optional<Error> readDay(const QCommandLineParser& parser, const QString& name, int days,
                             std::optional<qint64>& into) {
    if (!parser.isSet(name)) return std::nullopt;
    const QDate day = QDate::fromString(parser.value(name), Qt::ISODate);
    if (!day.isValid()) return wrong(name, "a day like 2026-11-25", parser.value(name));
    into = day.addDays(days).startOfDay().toSecsSinceEpoch();
    return std::nullopt;
}

std::optional<Error> readChoices(const QCommandLineParser& parser, LogArguments& a) {
    if (parser.isSet("role")) {
        a.role = roleNamed(parser.value("role"));
        if (a.role == FrameRole::none && parser.value("role") != "none")
            return wrong("role", "before, after or none", parser.value("role"));
    }
    if (parser.isSet("paper")) {
        if (parser.value("paper") != "a4" && parser.value("paper") != "letter")
            return wrong("paper", "a4 or letter", parser.value("paper"));
        a.paper = parser.value("paper") == "a4" ? Paper::a4 : Paper::letter;
    }
    if (parser.isSet("limit")) {
        a.filter.limit = parser.value("limit").toInt();
        if (a.filter.limit < 1) return wrong("limit", "a number above 0", parser.value("limit"));
    }
    return std::nullopt;
}

std::optional<Error> readMeasuring(const QCommandLineParser& parser, LogArguments& a) {
    QStringList words = {"measure", a.files.value(0)};
    for (const QString& name : measuringOptions())
        if (parser.isSet(name)) words << "--" + name << parser.value(name);
    const Result<Command> command = parseCommandLine(words);
    if (!command) return command.error();
    a.measuring = *command;
    return std::nullopt;
}

void readTexts(const QCommandLineParser& parser, LogArguments& a) {
    const auto text = [&](const char* name, std::optional<QString>& into) {
        if (parser.isSet(name)) into = parser.value(name);
    };
    text("complaint", a.complaint), text("work", a.work), text("parts", a.parts), text("oil", a.oil);
    text("result", a.result), text("mark", a.mark), text("card", a.card), text("remarks", a.remarks);
    a.machine = parser.value("machine"), a.logbook = parser.value("logbook"), a.out = parser.value("out");
    a.json = parser.isSet("json"), a.again = parser.isSet("again"), a.repaired = parser.isSet("repaired");
    a.filter.finding = parser.value("finding"), a.filter.text = parser.value("text");
}

// What a verb cannot do without.
std::optional<Error> missing(const LogArguments& a) {
    const auto wants = [&](const char* what) {
        return Error{"trueunit log " + a.verb.toStdString() + " wants " + what + "; see trueunit log --help."};
    };
    const bool takesFiles = a.verb == "keep" || a.verb == "import";
    if (!takesFiles && !a.files.isEmpty())
        return Error{"\"" + a.files.front().toStdString() + "\" is one argument too many for log " +
                     a.verb.toStdString() + "."};
    if (takesFiles && a.files.isEmpty()) return wants(a.verb == "keep" ? "a recording" : "an archive");
    if (a.verb == "keep" && (a.machine.trimmed().isEmpty() && !a.visit)) return wants("--machine with its name");
    if (a.verb == "show" && !a.visit && !a.frame) return wants("--visit or --frame with a number");
    if (a.verb == "write" && !a.visit && !a.frame) return wants("--visit or --frame with a number");
    if (a.verb == "report" && !a.visit) return wants("--visit with a number");
    if (a.verb == "export" && !a.visit && a.machine.isEmpty()) return wants("--visit or --machine");
    if ((a.verb == "export" || a.verb == "report") && a.out.isEmpty()) return wants("--out with a file to write");
    return std::nullopt;
}

}  // namespace

Result<LogArguments> parseLogArguments(const QStringList& arguments) {
    QCommandLineParser parser;
    addLogOptions(parser);
    LogArguments a;
    if (!parser.parse(QStringList{"trueunit"} + arguments))
        return Error{parser.errorText().toStdString() + (parser.errorText().endsWith('.') ? "" : ".") +
                     " See trueunit log --help."};
    const QStringList operands = parser.positionalArguments();
    a.verb = parser.isSet("help") || operands.isEmpty() ? QStringLiteral("help") : operands.front();
    if (a.verb == "help") return a;
    const auto verb = verbs().find(a.verb);
    if (verb == verbs().end())
        return Error{"There is no command \"log " + a.verb.toStdString() + "\"; see trueunit log --help."};
    for (const QString& name : parser.optionNames())
        if (name != "logbook" && !verb->second.contains(name))
            return Error{"--" + name.toStdString() + " does not belong to log " + a.verb.toStdString() +
                         "; see trueunit log --help."};
    a.files = operands.mid(1);
    readTexts(parser, a);
    if (auto e = readId(parser, "visit", a.visit)) return *e;
    if (auto e = readId(parser, "frame", a.frame)) return *e;
    if (auto e = readDay(parser, "since", 0, a.filter.fromUtc)) return *e;
    if (auto e = readDay(parser, "until", 1, a.filter.beforeUtc)) return *e;
    if (auto e = readChoices(parser, a)) return *e;
    if (auto e = missing(a)) return *e;
    if (a.verb == "keep")
        if (auto e = readMeasuring(parser, a)) return *e;
    return a;
}

const char* logHelp() {
    return R"(trueunit log: the repair logbook of machines, visits and frames.

  trueunit log machines [--text WORDS]     the machines
  trueunit log list [FILTERS]              the frames, newest first
  trueunit log show --visit N | --frame N  a visit, or the readings of a frame; --again measures the frame's sound
                                           with this program and shows both readings
  trueunit log keep RECORDING --machine NAME   measure a recording and keep it; measuring options as in trueunit --help
  trueunit log write --visit N TEXTS       write into a visit and its machine; --frame N --role marks a frame
  trueunit log export --visit N --out X    .zip: the whole visit for another logbook; .csv or .json: its readings
  trueunit log export --machine NAME --out X   readings of all its visits, .csv or .json
  trueunit log import ARCHIVE...           take in visits of another logbook; what is there already is recognised
  trueunit log report --visit N --out X    the report of a visit, .png or .pdf; --paper a4 or letter
  trueunit log check                       is every page of the file in order?
  trueunit log mend                        set a damaged logbook aside and save what can be read of it

filters   --machine NAME --visit N --since DAY --until DAY --finding ID --text WORDS --limit N (otherwise 500)
texts     --complaint --work --parts --oil --result TEXT, --repaired; --mark --card --remarks TEXT of the machine
roles     --role before|after|none
anywhere  --logbook FILE, another logbook than the usual one; machines, list and show take --json
)";
}

}  // namespace trueunit
