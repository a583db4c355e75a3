// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/logbook/schema.h"

#include <QStringList>
#include <vector>

#include "app/logbook/frames.h"
#include "app/logbook/statement.h"

namespace trueunit {

namespace {

Outcome runAll(const Store& store, const QStringList& statements) {
    for (const QString& sql : statements)
        if (Outcome ran = Statement(store, sql).run(); !ran) return ran;
    return done();
}

// 1: machines, their visits, frames with what lists show of them, and apart from these the bulk of a frame.
Outcome makeTables(const Store& store) {
    return runAll(
        store,
        {QStringLiteral("PRAGMA application_id = %1").arg(kLogbookId),
         QStringLiteral("CREATE TABLE machines (id INTEGER PRIMARY KEY, uid TEXT NOT NULL UNIQUE, name TEXT NOT NULL, "
                        "mark TEXT NOT NULL DEFAULT '', card TEXT NOT NULL DEFAULT '', "
                        "remarks TEXT NOT NULL DEFAULT '', changed INTEGER NOT NULL)"),
         QStringLiteral("CREATE TABLE visits (id INTEGER PRIMARY KEY, uid TEXT NOT NULL UNIQUE, "
                        "machine_id INTEGER NOT NULL REFERENCES machines(id), opened INTEGER NOT NULL, "
                        "complaint TEXT NOT NULL DEFAULT '', work_done TEXT NOT NULL DEFAULT '', "
                        "parts TEXT NOT NULL DEFAULT '', oil TEXT NOT NULL DEFAULT '', "
                        "result TEXT NOT NULL DEFAULT '', changed INTEGER NOT NULL)"),
         QStringLiteral("CREATE TABLE frames (id INTEGER PRIMARY KEY, uid TEXT NOT NULL UNIQUE, "
                        "visit_id INTEGER NOT NULL REFERENCES visits(id), taken INTEGER NOT NULL, "
                        "role TEXT NOT NULL DEFAULT '', remarks TEXT NOT NULL DEFAULT '', "
                        "input TEXT NOT NULL DEFAULT '', bias REAL, bias_uncertainty REAL, gross REAL, "
                        "synchronous REAL, speed_error REAL, within INTEGER, limits TEXT NOT NULL DEFAULT '', "
                        "findings TEXT NOT NULL DEFAULT '', notes TEXT NOT NULL DEFAULT '')"),
         QStringLiteral("CREATE TABLE contents (frame_id INTEGER PRIMARY KEY REFERENCES frames(id), "
                        "frame BLOB NOT NULL, excerpt BLOB)"),
         QStringLiteral("CREATE INDEX visits_of_machine ON visits(machine_id, opened)"),
         QStringLiteral("CREATE INDEX frames_of_visit ON frames(visit_id, taken)"),
         QStringLiteral("CREATE INDEX frames_by_time ON frames(taken)")});
}

// Fills the new column of a table from the texts of its rows.
Outcome foldRows(const Store& store, const QString& table, const QStringList& columns) {
    std::vector<std::pair<qint64, QString>> rows;
    Statement all(store, QStringLiteral("SELECT id, %1 FROM %2").arg(columns.join(QStringLiteral(", ")), table));
    Outcome read = all.forEach([&] {
        QStringList words;
        for (int i = 1; i <= columns.size(); ++i) words += all.text(i);
        rows.emplace_back(all.integer(0), folded(words.join(QLatin1Char('\n'))));
    });
    if (!read) return read;
    for (const auto& [id, text] : rows) {
        Statement set(store, QStringLiteral("UPDATE %1 SET folded = ? WHERE id = ?").arg(table));
        if (Outcome ran = set.bind(text).bind(id).run(); !ran) return ran;
    }
    return done();
}

// 2: searching without regard to case in any script; when the instrument was last checked before a visit; which
// visits repaired something.
Outcome addSearch(const Store& store) {
    Outcome made = runAll(store, {QStringLiteral("ALTER TABLE machines ADD COLUMN folded TEXT NOT NULL DEFAULT ''"),
                                  QStringLiteral("ALTER TABLE visits ADD COLUMN folded TEXT NOT NULL DEFAULT ''"),
                                  QStringLiteral("ALTER TABLE frames ADD COLUMN folded TEXT NOT NULL DEFAULT ''"),
                                  QStringLiteral("ALTER TABLE visits ADD COLUMN self_check TEXT NOT NULL DEFAULT ''"),
                                  QStringLiteral("ALTER TABLE visits ADD COLUMN repaired INTEGER NOT NULL DEFAULT 0")});
    if (!made) return made;
    if (Outcome o = foldRows(store, "machines", {"name", "mark", "remarks"}); !o) return o;
    if (Outcome o = foldRows(store, "visits", {"complaint", "work_done", "parts", "oil", "result"}); !o) return o;
    return foldRows(store, "frames", {"remarks", "notes", "input"});
}

// A new column, of every frame that was kept before.
Outcome fillFrames(const Store& store, Outcome (*fill)(const Store&, qint64)) {
    std::vector<qint64> ids;
    Statement all(store, QStringLiteral("SELECT id FROM frames"));
    if (Outcome read = all.forEach([&] { ids.push_back(all.integer(0)); }); !read) return read;
    for (const qint64 id : ids)
        if (Outcome filled = fill(store, id); !filled) return filled;
    return done();
}

// 3: the end distortion beside the bias; of what was kept before from the frame itself.
Outcome addEnd(const Store& store) {
    Outcome made = runAll(store, {QStringLiteral("ALTER TABLE frames ADD COLUMN end_distortion REAL"),
                                  QStringLiteral("ALTER TABLE frames ADD COLUMN end_uncertainty REAL")});
    if (!made) return made;
    return fillFrames(store, fillEnd);
}

// 4: which level a finding is about.
Outcome addFindingLevels(const Store& store) {
    Outcome made =
        runAll(store, {QStringLiteral("ALTER TABLE frames ADD COLUMN finding_levels TEXT NOT NULL DEFAULT ''")});
    if (!made) return made;
    return fillFrames(store, fillFindingLevels);
}

using Step = Outcome (*)(const Store&);
constexpr Step kSteps[] = {makeTables, addSearch, addEnd, addFindingLevels};
static_assert(std::size(kSteps) == kSchemaVersion);

Result<qint64> versionOf(const Store& store) {
    return Statement(store, QStringLiteral("PRAGMA user_version")).number(0);
}

Outcome step(const Store& store, int from) {
    WriteTransaction transaction(store);
    if (!transaction.begun()) return transaction.begun();
    const Result<qint64> now = versionOf(store);
    if (!now) return now.error();
    if (*now != from) return done();  // another program was faster
    if (Outcome made = kSteps[from](store); !made) return made;
    if (Outcome set = Statement(store, QStringLiteral("PRAGMA user_version = %1").arg(from + 1)).run(); !set)
        return set;
    return transaction.commit();
}

}  // namespace

Outcome migrate(const Store& store, Trouble* why, int upTo) {
    for (int i = 0; i < 2 * kSchemaVersion; ++i) {  // a step that another program took counts as a turn
        const Result<qint64> now = versionOf(store);
        if (!now) return now.error();
        if (*now >= upTo) return done();
        if (store.readOnly()) {
            if (why) *why = Trouble::readOnly;
            return troubleSentence(Trouble::readOnly, store.path());
        }
        if (Outcome stepped = step(store, static_cast<int>(*now)); !stepped) return stepped;
    }
    return done();
}

// By way of capitals, so that a sharp s is found as ss.
QString folded(const QString& text) { return text.normalized(QString::NormalizationForm_KC).toUpper().toCaseFolded(); }

}  // namespace trueunit
