// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/logbook/frames.h"

#include <algorithm>

#include "app/logbook/schema.h"
#include "app/logbook/squeezed.h"
#include "app/logbook/statement.h"
#include "core/report/frame_json.h"

namespace trueunit {

namespace {

QString notesText(const FrozenFrame& frame) {
    QStringList all;
    for (const Note& note : frame.notes) all += QString::fromStdString(note.text);
    return all.join(QLatin1Char('\n'));
}

// Each id once, worst first.
std::vector<Finding> differentFindings(const Reading& reading) {
    std::vector<Finding> all;
    for (const Finding& f : reading.findings.value_or(std::vector<Finding>{}))
        if (std::none_of(all.begin(), all.end(), [&](const Finding& other) { return other.id == f.id; }))
            all.push_back(f);
    return all;
}

QString findingIds(const Reading& reading) {
    QString ids;
    for (const Finding& f : differentFindings(reading)) ids += QLatin1Char(' ') + QString::fromStdString(f.id);
    return ids.isEmpty() ? ids : ids + QLatin1Char(' ');
}

QString findingLevels(const Reading& reading) {
    QStringList levels;
    for (const Finding& f : differentFindings(reading)) levels += QString::number(f.seenAt.level);
    return levels.join(QLatin1Char(' '));
}

QString searchText(const FrozenFrame& frame) {
    return folded(QStringList{QString::fromStdString(frame.remarks), notesText(frame),
                              QString::fromStdString(frame.inputDescription)}
                      .join(QLatin1Char('\n')));
}

std::optional<double> value(const std::optional<Measured>& m) {
    if (!m) return std::nullopt;
    return m->value;
}

std::optional<double> uncertainty(const std::optional<Measured>& m) {
    if (!m) return std::nullopt;
    return m->uncertainty;
}

void bindEnd(Statement& statement, const Reading& r) {
    statement.bindReal(value(r.distortion.endPercent)).bindReal(uncertainty(r.distortion.endPercent));
}

void bindReading(Statement& statement, const Reading& r) {
    const auto& d = r.distortion;
    statement.bindReal(value(d.biasPercent)).bindReal(uncertainty(d.biasPercent));
    bindEnd(statement, r);
    statement.bindReal(d.grossPercent).bindReal(d.synchronousPercent).bindReal(value(r.speed.errorPercent));
    statement.bind(r.verdict.within ? QVariant(*r.verdict.within ? 1 : 0) : QVariant());
    statement.bind(QString::fromStdString(r.verdict.limits)).bind(findingIds(r)).bind(findingLevels(r));
}

}  // namespace

QString roleName(FrameRole role) {
    return role == FrameRole::before  ? QStringLiteral("before")
           : role == FrameRole::after ? QStringLiteral("after")
                                      : QStringLiteral("");
}

FrameRole roleNamed(const QString& name) {
    return name == QLatin1String("before")  ? FrameRole::before
           : name == QLatin1String("after") ? FrameRole::after
                                            : FrameRole::none;
}

Result<qint64> insertFrame(const Store& store, qint64 visit, const QString& uid, FrameRole role,
                           const KeptFrame& kept) {
    const FrozenFrame& f = kept.frame;
    if (!f.snapshot) return Error{"There is nothing to keep yet; choose an input first."};
    Statement insert(
        store, QStringLiteral("INSERT INTO frames (visit_id, uid, role, taken, remarks, notes, input, bias, "
                              "bias_uncertainty, end_distortion, end_uncertainty, gross, synchronous, speed_error, "
                              "within, limits, findings, finding_levels, folded) "
                              "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"));
    insert.bind(visit).bind(uid).bind(roleName(role)).bind(qint64{f.takenSecondsUtc});
    insert.bind(QString::fromStdString(f.remarks)).bind(notesText(f)).bind(QString::fromStdString(f.inputDescription));
    bindReading(insert, f.snapshot->reading);
    const Result<qint64> id = insert.bind(searchText(f)).insert();
    if (!id) return id;
    Statement content(store, QStringLiteral("INSERT INTO contents (frame_id, frame, excerpt) VALUES (?, ?, ?)"));
    content.bind(*id)
        .bind(squeezed(frameJson(f)))
        .bind(kept.excerptFlac.isEmpty() ? QVariant() : QVariant(kept.excerptFlac));
    if (Outcome ran = content.run(); !ran) return ran.error();
    return id;
}

Outcome rewriteFrame(const Store& store, qint64 id, const FrozenFrame& frame) {
    Statement row(store, QStringLiteral("UPDATE frames SET remarks = ?, notes = ?, folded = ? WHERE id = ?"));
    row.bind(QString::fromStdString(frame.remarks)).bind(notesText(frame)).bind(searchText(frame)).bind(id);
    if (Outcome ran = row.run(); !ran) return ran;
    Statement content(store, QStringLiteral("UPDATE contents SET frame = ? WHERE frame_id = ?"));
    return content.bind(squeezed(frameJson(frame))).bind(id).run();
}

Outcome setRole(const Store& store, qint64 id, FrameRole role) {
    Statement row(store, QStringLiteral("UPDATE frames SET role = ? WHERE id = ?"));
    return row.bind(roleName(role)).bind(id).run();
}

Outcome fillEnd(const Store& store, qint64 id) {
    const Result<KeptFrame> kept = readFrame(store, id);
    if (!kept || !kept->frame.snapshot) return done();  // what cannot be read any more has none to show
    Statement row(store, QStringLiteral("UPDATE frames SET end_distortion = ?, end_uncertainty = ? WHERE id = ?"));
    bindEnd(row, kept->frame.snapshot->reading);
    return row.bind(id).run();
}

Outcome fillFindingLevels(const Store& store, qint64 id) {
    const Result<KeptFrame> kept = readFrame(store, id);
    if (!kept || !kept->frame.snapshot) return done();
    Statement row(store, QStringLiteral("UPDATE frames SET finding_levels = ? WHERE id = ?"));
    return row.bind(findingLevels(kept->frame.snapshot->reading)).bind(id).run();
}

Result<std::optional<qint64>> findFrameByUid(const Store& store, const QString& uid) {
    Statement query(store, QStringLiteral("SELECT id FROM frames WHERE uid = ?"));
    const Result<qint64> id = query.bind(uid).number(0);
    if (!id) return id.error();
    return *id == 0 ? std::optional<qint64>() : std::optional<qint64>(*id);
}

Result<KeptFrame> readFrame(const Store& store, qint64 id) {
    Statement query(store, QStringLiteral("SELECT frame, excerpt FROM contents WHERE frame_id = ?"));
    query.bind(id);
    std::optional<std::pair<QByteArray, QByteArray>> found;
    if (Outcome ran = query.forEach([&] { found.emplace(query.bytes(0), query.bytes(1)); }); !ran) return ran.error();
    if (!found) return Error{"There is no frame " + std::to_string(id) + " in the logbook."};
    const auto text = unsqueezed(found->first);
    if (!text) return troubleSentence(Trouble::damaged, store.path());
    Result<FrozenFrame> frame = frameFromJson(*text);
    if (!frame) return frame.error();
    return KeptFrame{std::move(*frame), found->second};
}

}  // namespace trueunit
