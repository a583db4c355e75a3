// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/check_record.h"

#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSaveFile>
#include <QStandardPaths>

namespace trueunit {

namespace {

QJsonValue numberOrNull(const std::optional<double>& value) { return value ? QJsonValue(*value) : QJsonValue(); }

std::optional<double> optionalNumber(const QJsonValue& value) {
    return value.isDouble() ? std::optional<double>(value.toDouble()) : std::nullopt;
}

QJsonArray rowsJson(const std::vector<CheckRow>& rows) {
    QJsonArray all;
    for (const CheckRow& row : rows)
        all.append(QJsonObject{{"condition", QString::fromStdString(row.condition)},
                               {"set_percent", row.set},
                               {"read_percent", row.read.value},
                               {"uncertainty", row.read.uncertainty}});
    return all;
}

std::vector<CheckRow> rowsOf(const QJsonArray& array) {
    std::vector<CheckRow> rows;
    for (const QJsonValue& value : array) {
        const QJsonObject o = value.toObject();
        rows.push_back({o["condition"].toString().toStdString(),
                        o["set_percent"].toDouble(),
                        {o["read_percent"].toDouble(), o["uncertainty"].toDouble(-1.0)}});
    }
    return rows;
}

QJsonObject loopbackJson(const LoopbackResult& r) {
    QJsonArray corners;
    for (const double hz : r.couplingHz) corners.append(hz);
    QJsonValue clock;
    if (r.clock)
        clock = QJsonObject{
            {"ppm", r.clock->ppm.value}, {"uncertainty", r.clock->ppm.uncertainty}, {"seconds", r.clock->seconds}};
    return {{"input", QString::fromStdString(r.input)},
            {"output", QString::fromStdString(r.output)},
            {"rate_hz", r.rateHz},
            {"coupling_hz", corners},
            {"snr_db", numberOrNull(r.snrDb)},
            {"rise_ms", numberOrNull(r.riseMs)},
            {"delay_ms", numberOrNull(r.delayMs)},
            {"clock", clock},
            {"clock_words", QString::fromStdString(r.clockWords)},
            {"gaps", static_cast<double>(r.gaps)},
            {"rows", rowsJson(r.rows)}};
}

LoopbackResult loopbackOf(const QJsonObject& o) {
    LoopbackResult r;
    r.input = o["input"].toString().toStdString();
    r.output = o["output"].toString().toStdString();
    r.rateHz = o["rate_hz"].toDouble();
    for (const QJsonValue& hz : o["coupling_hz"].toArray()) r.couplingHz.push_back(hz.toDouble());
    r.snrDb = optionalNumber(o["snr_db"]);
    r.riseMs = optionalNumber(o["rise_ms"]);
    r.delayMs = optionalNumber(o["delay_ms"]);
    if (const QJsonObject c = o["clock"].toObject(); !c.isEmpty())
        r.clock = ClockTrim{{c["ppm"].toDouble(), c["uncertainty"].toDouble()}, c["seconds"].toDouble()};
    r.clockWords = o["clock_words"].toString().toStdString();
    r.gaps = static_cast<long>(o["gaps"].toDouble());
    r.rows = rowsOf(o["rows"].toArray());
    return r;
}

QString dated(std::int64_t secondsUtc, const QString& format) {
    return QDateTime::fromSecsSinceEpoch(secondsUtc, Qt::UTC).toString(format);
}

}  // namespace

QString checkFolder() {
    return QDir(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation)).filePath(QStringLiteral("checks"));
}

QByteArray checkJson(const CheckRecord& record) {
    const QJsonObject whole{{"schema", 1},
                            {"taken", dated(record.takenSecondsUtc, QStringLiteral("yyyy-MM-ddTHH:mm:ssZ"))},
                            {"version", QString::fromStdString(record.version)},
                            {"passed", record.passed()},
                            {"memory", rowsJson(record.memory)},
                            {"loopback", record.loopback ? QJsonValue(loopbackJson(*record.loopback)) : QJsonValue()}};
    return QJsonDocument(whole).toJson();
}

Outcome keepCheck(const CheckRecord& record) {
    QDir().mkpath(checkFolder());
    QSaveFile file(
        QDir(checkFolder())
            .filePath(dated(record.takenSecondsUtc, QStringLiteral("yyyy-MM-dd HHmmss")) + QStringLiteral(".json")));
    const QByteArray json = checkJson(record);
    if (file.open(QIODevice::WriteOnly) && file.write(json) == json.size() && file.commit()) return done();
    return Error{QStringLiteral("The self-check was made, but could not be kept in \"%1\" (%2).")
                     .arg(QDir::toNativeSeparators(file.fileName()), file.errorString())
                     .toStdString()};
}

std::optional<CheckRecord> lastCheck() {
    const QDir folder(checkFolder());
    for (const QString& name : folder.entryList({QStringLiteral("*.json")}, QDir::Files, QDir::Name | QDir::Reversed)) {
        QFile file(folder.filePath(name));
        if (!file.open(QIODevice::ReadOnly)) continue;
        const QJsonObject o = QJsonDocument::fromJson(file.readAll()).object();
        const QDateTime taken = QDateTime::fromString(o["taken"].toString(), Qt::ISODate);
        if (!taken.isValid() || o["schema"].toInt() != 1) continue;
        CheckRecord record;
        record.takenSecondsUtc = taken.toSecsSinceEpoch();
        record.version = o["version"].toString().toStdString();
        record.memory = rowsOf(o["memory"].toArray());
        if (o["loopback"].isObject()) record.loopback = loopbackOf(o["loopback"].toObject());
        return record;
    }
    return std::nullopt;
}

}  // namespace trueunit
