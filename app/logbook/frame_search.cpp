// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/logbook/frame_search.h"

#include "app/logbook/schema.h"
#include "app/logbook/statement.h"

namespace trueunit {

namespace {

const QString kJoined =
    QStringLiteral(" FROM frames f JOIN visits v ON v.id = f.visit_id JOIN machines m ON m.id = v.machine_id ");
const QString kFrameColumns = QStringLiteral(
    "SELECT f.id, f.uid, f.visit_id, f.taken, f.role, f.remarks, f.input, f.bias, f.bias_uncertainty, "
    "f.end_distortion, f.end_uncertainty, f.gross, f.synchronous, f.speed_error, f.within, f.limits, f.findings, "
    "f.notes, m.id, m.name, f.finding_levels");

FoundFrame foundFrom(const Statement& s) {
    FoundFrame found;
    FrameRow& r = found.row;
    r.id = s.integer(0);
    r.uid = s.text(1);
    r.visit = s.integer(2);
    r.taken = s.integer(3);
    r.role = roleNamed(s.text(4));
    r.remarks = s.text(5);
    r.input = s.text(6);
    r.bias = s.real(7);
    r.biasUncertainty = s.real(8);
    r.end = s.real(9);
    r.endUncertainty = s.real(10);
    r.gross = s.real(11);
    r.synchronous = s.real(12);
    r.speedError = s.real(13);
    r.within = s.flag(14);
    r.limits = s.text(15);
    r.findings = s.text(16).split(QLatin1Char(' '), Qt::SkipEmptyParts);
    r.notes = s.text(17);
    found.machine = s.integer(18);
    found.machineName = s.text(19);
    r.findingLevels = s.text(20).split(QLatin1Char(' '), Qt::SkipEmptyParts);
    return found;
}

const QString kCounted = QStringLiteral("SELECT count(*) FROM frames f JOIN visits v ON v.id = f.visit_id ");
// A word of a frame, or of its visit or machine; the visits that have it are looked up once, not for every frame.
const QString kHasWord = QStringLiteral(
    "(instr(f.folded, ?) OR f.visit_id IN (SELECT w.id FROM visits w JOIN machines n ON n.id = w.machine_id "
    "WHERE instr(w.folded || char(10) || n.folded, ?)))");

struct Narrowing {
    QString sql;
    QVariant value;
    int times = 1;  // it is bound
};

void bindAll(Statement& statement, const std::vector<Narrowing>& all) {
    for (const Narrowing& c : all)
        for (int i = 0; i < c.times; ++i) statement.bind(c.value);
}

std::vector<Narrowing> narrowings(const FrameFilter& filter) {
    std::vector<Narrowing> all;
    if (filter.machine) all.push_back({QStringLiteral("v.machine_id = ?"), *filter.machine});
    if (filter.visit) all.push_back({QStringLiteral("f.visit_id = ?"), *filter.visit});
    if (filter.fromUtc) all.push_back({QStringLiteral("f.taken >= ?"), *filter.fromUtc});
    if (filter.beforeUtc) all.push_back({QStringLiteral("f.taken < ?"), *filter.beforeUtc});
    if (!filter.finding.isEmpty())
        all.push_back({QStringLiteral("instr(f.findings, ?)"), QStringLiteral(" %1 ").arg(filter.finding)});
    for (const QString& word : searchWords(filter.text)) all.push_back({kHasWord, word, 2});
    return all;
}

QString whereOf(const std::vector<Narrowing>& all) {
    QStringList parts;
    for (const Narrowing& c : all) parts += c.sql;
    return parts.isEmpty() ? QString() : QStringLiteral("WHERE ") + parts.join(QStringLiteral(" AND "));
}

}  // namespace

QStringList searchWords(const QString& text) {
    return folded(text).simplified().split(QLatin1Char(' '), Qt::SkipEmptyParts);
}

Result<FoundFrames> findFrames(const Store& store, const FrameFilter& filter) {
    const std::vector<Narrowing> all = narrowings(filter);
    const QString where = whereOf(all);
    Statement count(store, kCounted + where);
    bindAll(count, all);
    const Result<qint64> counted = count.number(0);
    if (!counted) return counted.error();
    FoundFrames found;
    found.all = *counted;
    Statement query(store,
                    kFrameColumns + kJoined + where + QStringLiteral(" ORDER BY f.taken DESC, f.id DESC LIMIT ?"));
    bindAll(query, all);
    query.bind(filter.limit);
    if (Outcome ran = query.forEach([&] { found.frames.push_back(foundFrom(query)); }); !ran) return ran.error();
    return found;
}

Result<std::vector<FrameRow>> framesOf(const Store& store, qint64 visit) {
    std::vector<FrameRow> rows;
    Statement query(store, kFrameColumns + kJoined + QStringLiteral("WHERE f.visit_id = ? ORDER BY f.taken, f.id"));
    query.bind(visit);
    if (Outcome ran = query.forEach([&] { rows.push_back(foundFrom(query).row); }); !ran) return ran.error();
    return rows;
}

Result<std::optional<FoundFrame>> findFrame(const Store& store, qint64 id) {
    std::optional<FoundFrame> found;
    Statement query(store, kFrameColumns + kJoined + QStringLiteral("WHERE f.id = ?"));
    query.bind(id);
    if (Outcome ran = query.forEach([&] { found = foundFrom(query); }); !ran) return ran.error();
    return found;
}

}  // namespace trueunit
