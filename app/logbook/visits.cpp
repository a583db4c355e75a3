// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/logbook/visits.h"

#include <QStringList>

#include "app/logbook/schema.h"
#include "app/logbook/statement.h"
#include "app/logbook/uid.h"

namespace trueunit {

namespace {

constexpr qint64 kGoesOnSeconds = 12 * 3600;  // a working day; what is kept later is another visit
const QString kSelect = QStringLiteral(
    "SELECT v.id, v.uid, v.machine_id, v.opened, v.complaint, v.work_done, v.parts, v.oil, v.result, v.self_check, "
    "v.repaired, v.changed FROM visits v ");

Visit visitFrom(const Statement& row) {
    return {row.integer(0), row.text(1), row.integer(2), row.integer(3), row.text(4),          row.text(5),
            row.text(6),    row.text(7), row.text(8),    row.text(9),    row.integer(10) != 0, row.integer(11)};
}

Result<std::optional<Visit>> one(Statement& query) {
    std::optional<Visit> found;
    if (Outcome ran = query.forEach([&] { found = visitFrom(query); }); !ran) return ran.error();
    return found;
}

}  // namespace

Result<std::vector<Visit>> visitsOf(const Store& store, qint64 machine) {
    std::vector<Visit> all;
    Statement query(store, kSelect + QStringLiteral("WHERE v.machine_id = ? ORDER BY v.opened DESC, v.id DESC"));
    query.bind(machine);
    if (Outcome ran = query.forEach([&] { all.push_back(visitFrom(query)); }); !ran) return ran.error();
    return all;
}

Result<std::optional<Visit>> findVisit(const Store& store, qint64 id) {
    Statement query(store, kSelect + QStringLiteral("WHERE v.id = ?"));
    return one(query.bind(id));
}

Result<std::optional<Visit>> findVisitByUid(const Store& store, const QString& uid) {
    Statement query(store, kSelect + QStringLiteral("WHERE v.uid = ?"));
    return one(query.bind(uid));
}

Result<std::optional<Visit>> visitGoingOn(const Store& store, qint64 machine, qint64 secondsUtc) {
    Statement query(store, kSelect + QStringLiteral("WHERE v.machine_id = ? AND trim(v.result) = '' AND "
                                                    "max(v.opened, coalesce((SELECT max(f.taken) FROM frames f WHERE "
                                                    "f.visit_id = v.id), 0)) BETWEEN ? AND ? ORDER BY v.opened DESC, "
                                                    "v.id DESC LIMIT 1"));
    return one(query.bind(machine).bind(secondsUtc - kGoesOnSeconds).bind(secondsUtc + kGoesOnSeconds));
}

Result<qint64> saveVisit(const Store& store, const Visit& v) {
    const QString text = folded(QStringList{v.complaint, v.workDone, v.parts, v.oil, v.result}.join(QLatin1Char('\n')));
    const bool fresh = v.id == 0;
    Statement save(
        store, fresh ? QStringLiteral(
                           "INSERT INTO visits (machine_id, opened, complaint, work_done, parts, oil, result, "
                           "self_check, repaired, changed, folded, uid) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")
                     : QStringLiteral(
                           "UPDATE visits SET machine_id = ?, opened = ?, complaint = ?, work_done = ?, parts = ?, "
                           "oil = ?, result = ?, self_check = ?, repaired = ?, changed = ?, folded = ? WHERE id = ?"));
    save.bind(v.machine).bind(v.opened).bind(v.complaint).bind(v.workDone).bind(v.parts).bind(v.oil).bind(v.result);
    save.bind(v.selfCheck).bind(v.repaired ? 1 : 0).bind(v.changed).bind(text);
    if (fresh) return save.bind(v.uid.isEmpty() ? freshUid() : v.uid).insert();
    if (Outcome ran = save.bind(v.id).run(); !ran) return ran.error();
    return v.id;
}

}  // namespace trueunit
