// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/logbook/machines.h"

#include "app/logbook/frame_search.h"
#include "app/logbook/schema.h"
#include "app/logbook/statement.h"
#include "app/logbook/uid.h"

namespace trueunit {

namespace {

const QString kMachineColumns = QStringLiteral("m.id, m.uid, m.name, m.mark, m.card, m.remarks, m.changed");

Machine machineFrom(const Statement& row) {
    return {row.integer(0), row.text(1), row.text(2), row.text(3), row.text(4), row.text(5), row.integer(6)};
}

Result<std::optional<Machine>> one(const Store& store, const QString& where, const QVariant& value) {
    std::optional<Machine> found;
    Statement query(
        store, QStringLiteral("SELECT %1 FROM machines m WHERE %2 ORDER BY m.id LIMIT 1").arg(kMachineColumns, where));
    query.bind(value);
    if (Outcome ran = query.forEach([&] { found = machineFrom(query); }); !ran) return ran.error();
    return found;
}

QString foldedName(const QString& name) { return folded(name.simplified()); }

}  // namespace

Result<std::vector<MachineSummary>> listMachines(const Store& store, const QString& text) {
    // Each looks at a machine's words first, then at its visits', then at its frames', and stops at the first find.
    QStringList parts;
    const QStringList words = searchWords(text);
    for (qsizetype i = 0; i < words.size(); ++i)
        parts += QStringLiteral(
            "(instr(m.folded, ?) OR EXISTS (SELECT 1 FROM visits w WHERE w.machine_id = m.id AND instr(w.folded, ?)) "
            "OR EXISTS (SELECT 1 FROM visits w JOIN frames g ON g.visit_id = w.id WHERE w.machine_id = m.id "
            "AND instr(g.folded, ?)))");
    const QString where = parts.isEmpty() ? QString() : QStringLiteral(" WHERE ") + parts.join(QStringLiteral(" AND "));
    Statement query(store, QStringLiteral("SELECT %1, count(DISTINCT v.id), count(f.id), coalesce(max(f.taken), 0) "
                                          "FROM machines m LEFT JOIN visits v ON v.machine_id = m.id "
                                          "LEFT JOIN frames f ON f.visit_id = v.id%2 GROUP BY m.id ORDER BY m.folded")
                               .arg(kMachineColumns, where));
    for (const QString& word : words) query.bind(word).bind(word).bind(word);
    std::vector<MachineSummary> all;
    Outcome ran = query.forEach([&] {
        all.push_back({machineFrom(query), static_cast<int>(query.integer(7)), static_cast<int>(query.integer(8)),
                       query.integer(9)});
    });
    if (!ran) return ran.error();
    return all;
}

Result<std::optional<Machine>> findMachine(const Store& store, qint64 id) {
    return one(store, QStringLiteral("m.id = ?"), id);
}

Result<std::optional<Machine>> findMachineByUid(const Store& store, const QString& uid) {
    return one(store, QStringLiteral("m.uid = ?"), uid);
}

Result<std::optional<Machine>> findMachineByName(const Store& store, const QString& name) {
    const QString wanted = foldedName(name);
    std::optional<Machine> found;
    Statement query(store, QStringLiteral("SELECT %1 FROM machines m ORDER BY m.id").arg(kMachineColumns));
    Outcome ran = query.forEach([&] {
        if (!found && foldedName(query.text(2)) == wanted) found = machineFrom(query);
    });
    if (!ran) return ran.error();
    return found;
}

Result<qint64> saveMachine(const Store& store, const Machine& m) {
    const QString text = folded(QStringList{m.name, m.mark, m.remarks}.join(QLatin1Char('\n')));
    if (m.id == 0) {
        Statement insert(store, QStringLiteral("INSERT INTO machines (uid, name, mark, card, remarks, changed, folded) "
                                               "VALUES (?, ?, ?, ?, ?, ?, ?)"));
        return insert.bind(m.uid.isEmpty() ? freshUid() : m.uid)
            .bind(m.name)
            .bind(m.mark)
            .bind(m.card)
            .bind(m.remarks)
            .bind(m.changed)
            .bind(text)
            .insert();
    }
    Statement update(store, QStringLiteral("UPDATE machines SET name = ?, mark = ?, card = ?, remarks = ?, "
                                           "changed = ?, folded = ? WHERE id = ?"));
    Outcome ran =
        update.bind(m.name).bind(m.mark).bind(m.card).bind(m.remarks).bind(m.changed).bind(text).bind(m.id).run();
    if (!ran) return ran.error();
    return m.id;
}

}  // namespace trueunit
