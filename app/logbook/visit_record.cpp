// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/logbook/visit_record.h"

#include <QDateTime>
#include <nlohmann/json.hpp>

namespace trueunit {

namespace {

using Json = nlohmann::ordered_json;

std::string dumped(const Json& json) { return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n"; }

QString text(const Json& object, const char* key) {
    const auto at = object.find(key);
    return at != object.end() && at->is_string() ? QString::fromStdString(at->get<std::string>()) : QString();
}

qint64 time(const Json& object, const char* key) { return timeFrom(text(object, key).toStdString()); }

Result<Json> parsed(const QByteArray& bytes, const char* what) {
    Json json = Json::parse(bytes.begin(), bytes.end(), nullptr, false);
    if (!json.is_object() || text(json, "uid").isEmpty())
        return Error{std::string("The archive is incomplete: it does not say which ") + what + " it is about."};
    return json;
}

}  // namespace

QString timeText(qint64 secondsUtc) { return QDateTime::fromSecsSinceEpoch(secondsUtc, Qt::UTC).toString(Qt::ISODate); }

qint64 timeFrom(const std::string& text) {
    const QDateTime time = QDateTime::fromString(QString::fromStdString(text), Qt::ISODate);
    return time.isValid() ? time.toSecsSinceEpoch() : 0;
}

std::string machineJson(const Machine& m) {
    return dumped({{"uid", m.uid.toStdString()},
                   {"name", m.name.toStdString()},
                   {"mark", m.mark.toStdString()},
                   {"card", m.card.toStdString()},
                   {"remarks", m.remarks.toStdString()},
                   {"changed", timeText(m.changed).toStdString()}});
}

std::string visitJson(const Visit& v) {
    return dumped({{"uid", v.uid.toStdString()},
                   {"opened", timeText(v.opened).toStdString()},
                   {"complaint", v.complaint.toStdString()},
                   {"work_done", v.workDone.toStdString()},
                   {"parts", v.parts.toStdString()},
                   {"oil", v.oil.toStdString()},
                   {"result", v.result.toStdString()},
                   {"self_check", v.selfCheck.toStdString()},
                   {"repaired", v.repaired},
                   {"changed", timeText(v.changed).toStdString()}});
}

Result<Machine> machineFromJson(const QByteArray& bytes) {
    const Result<Json> json = parsed(bytes, "machine");
    if (!json) return json.error();
    Machine m;
    m.uid = text(*json, "uid");
    m.name = text(*json, "name");
    m.mark = text(*json, "mark");
    m.card = text(*json, "card");
    m.remarks = text(*json, "remarks");
    m.changed = time(*json, "changed");
    return m;
}

Result<Visit> visitFromJson(const QByteArray& bytes) {
    const Result<Json> json = parsed(bytes, "visit");
    if (!json) return json.error();
    Visit v;
    v.uid = text(*json, "uid");
    v.opened = time(*json, "opened");
    v.complaint = text(*json, "complaint");
    v.workDone = text(*json, "work_done");
    v.parts = text(*json, "parts");
    v.oil = text(*json, "oil");
    v.result = text(*json, "result");
    v.selfCheck = text(*json, "self_check");
    v.repaired = json->contains("repaired") && (*json)["repaired"].is_boolean() && (*json)["repaired"].get<bool>();
    v.changed = time(*json, "changed");
    return v;
}

}  // namespace trueunit
