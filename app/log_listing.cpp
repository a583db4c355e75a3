// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/log_listing.h"

#include <QDateTime>
#include <nlohmann/json.hpp>

#include "app/logbook/visit_record.h"
#include "app/report_text.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

using Json = nlohmann::ordered_json;

QString localTime(qint64 secondsUtc, const char* format = "yyyy-MM-dd HH:mm") {
    return QDateTime::fromSecsSinceEpoch(secondsUtc).toString(QLatin1String(format));
}

QString percent(const std::optional<double>& v, bool sign) {
    if (!v) return QStringLiteral("\u2014");
    return sign ? signedNumber(*v, 2) : number(*v, 1);
}

QString verdictWord(const std::optional<bool>& within) {
    return !within ? QStringLiteral("not judged") : *within ? QStringLiteral("in limits") : QStringLiteral("OUT");
}

std::string dumped(const Json& json) { return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n"; }
Json optional(const std::optional<double>& v) { return v ? Json(*v) : Json(nullptr); }

}  // namespace

std::string machinesText(const std::vector<MachineSummary>& machines) {
    if (machines.empty()) return "There is no machine to show.\n";
    QString text;
    for (const MachineSummary& m : machines)
        text += QStringLiteral("%1  %2  %3, %4, last %5\n")
                    .arg(m.machine.name.leftJustified(28), m.machine.mark.leftJustified(12),
                         counted(m.visits, QStringLiteral("visit"), QStringLiteral("visits")),
                         counted(m.frames, QStringLiteral("frame"), QStringLiteral("frames")),
                         m.lastTaken ? localTime(m.lastTaken) : QStringLiteral("never"));
    return text.toStdString();
}

std::string machinesJson(const std::vector<MachineSummary>& machines) {
    Json all = Json::array();
    for (const MachineSummary& m : machines) {
        Json one = Json::parse(machineJson(m.machine));
        one["visits"] = m.visits;
        one["frames"] = m.frames;
        all.push_back(std::move(one));
    }
    return dumped({{"schema", 1}, {"machines", all}});
}

std::string framesText(const FoundFrames& found) {
    if (found.all == 0) return "No frame fits.\n";
    QString text =
        QStringLiteral("frame  visit  taken             machine               bias %   end %  gross %  judged\n");
    for (const FoundFrame& f : found.frames)
        text += QStringLiteral("%1  %2  %3  %4  %5  %6  %7  %8%9\n")
                    .arg(f.row.id, 5)
                    .arg(f.row.visit, 5)
                    .arg(localTime(f.row.taken), f.machineName.left(20).leftJustified(20))
                    .arg(percent(f.row.bias, true), 6)
                    .arg(percent(f.row.end, true), 6)
                    .arg(percent(f.row.gross, false), 7)
                    .arg(verdictWord(f.row.within),
                         f.row.findings.isEmpty() ? QString() : QStringLiteral("  ") + f.row.findings.join(' '));
    if (found.all > static_cast<qint64>(found.frames.size()))
        text += QStringLiteral("%1 of %2 frames; narrow the search or raise --limit.\n")
                    .arg(found.frames.size())
                    .arg(found.all);
    return text.toStdString();
}

std::string framesJson(const FoundFrames& found) {
    Json all = Json::array();
    for (const FoundFrame& f : found.frames) {
        Json ids = Json::array();
        for (const QString& id : f.row.findings) ids.push_back(id.toStdString());
        all.push_back({{"frame", f.row.id},
                       {"visit", f.row.visit},
                       {"machine", f.machineName.toStdString()},
                       {"taken", timeText(f.row.taken).toStdString()},
                       {"role", roleName(f.row.role).toStdString()},
                       {"bias_percent", optional(f.row.bias)},
                       {"bias_uncertainty", optional(f.row.biasUncertainty)},
                       {"end_percent", optional(f.row.end)},
                       {"end_uncertainty", optional(f.row.endUncertainty)},
                       {"gross_percent", optional(f.row.gross)},
                       {"synchronous_percent", optional(f.row.synchronous)},
                       {"error_percent", optional(f.row.speedError)},
                       {"within", f.row.within ? Json(*f.row.within) : Json(nullptr)},
                       {"findings", ids},
                       {"remarks", f.row.remarks.toStdString()}});
    }
    return dumped({{"schema", 1}, {"all", found.all}, {"frames", all}});
}

std::string visitText(const VisitStory& story) {
    QString text = QStringLiteral("%1, visit %2 of %3%4\n")
                       .arg(story.machine.name)
                       .arg(story.visit.id)
                       .arg(localTime(story.visit.opened, "yyyy-MM-dd"),
                            story.visit.repaired ? QStringLiteral(", repaired") : QString());
    const Visit& v = story.visit;
    const std::pair<const char*, QString> parts[] = {{"mark", story.machine.mark}, {"card", story.machine.card},
                                                     {"complaint", v.complaint},   {"work done", v.workDone},
                                                     {"parts", v.parts},           {"oil", v.oil},
                                                     {"result", v.result},         {"self-check", v.selfCheck}};
    for (const auto& [label, words] : parts)
        if (!words.trimmed().isEmpty())
            text += QStringLiteral("  %1  %2\n").arg(QLatin1String(label), -10).arg(words.trimmed());
    for (const VisitFrame& f : story.frames) {
        const QString role = &f == story.before()  ? QStringLiteral("before")
                             : &f == story.after() ? QStringLiteral("after")
                                                   : QString();
        text += QStringLiteral("  frame %1  %2  %3  bias %4 %, end %5 %  %6\n")
                    .arg(f.row.id, -5)
                    .arg(localTime(f.row.taken, "HH:mm:ss"), role.leftJustified(6), percent(f.row.bias, true),
                         percent(f.row.end, true), verdictWord(f.row.within));
    }
    return text.toStdString();
}

std::vector<ReadingPair> readingPairs(const Snapshot& then, const Snapshot& now) {
    const auto shown = [](const ReportRow& r) {
        return r.uncertainty.isEmpty() ? r.value : r.value + QLatin1Char(' ') + r.uncertainty;
    };
    const auto after = reportRows(now, &then);
    std::vector<ReadingPair> pairs;
    for (const ReportRow& r : reportRows(then, &now)) {
        ReadingPair pair{r.name, shown(r), QStringLiteral("\u2014"), r.unit};
        for (const ReportRow& n : after)
            if (n.name == r.name) pair.now = shown(n);
        pairs.push_back(pair);
    }
    return pairs;
}

std::string readingPairsText(const Snapshot& then, const Snapshot& now) {
    QString text = QStringLiteral("%1  %2  %3\n")
                       .arg(QString(), -24)
                       .arg(QStringLiteral("as it was"), -18)
                       .arg(QStringLiteral("measured again"));
    for (const ReadingPair& p : readingPairs(then, now))
        text +=
            QStringLiteral("%1  %2  %3 %4\n").arg(p.name, -24).arg(p.then, -18).arg(p.now, -18).arg(p.unit).trimmed() +
            '\n';
    return text.toStdString();
}

}  // namespace trueunit
