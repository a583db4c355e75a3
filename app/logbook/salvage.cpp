// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/logbook/salvage.h"

#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QLockFile>
#include <map>

#include "app/logbook/program_lock.h"
#include "app/logbook/statement.h"
#include "app/logbook/visit_record.h"
#include "core/report/frame_json.h"

namespace trueunit {

namespace {

constexpr qint64 kGuessedIds = 5000;
constexpr qint64 kMostIds = 2000000;  // rows that are asked for one by one, so that one bad page hides only its own

QString freshName(const QString& path) {
    const QFileInfo info(path);
    const QString stem = info.dir().filePath(info.completeBaseName()) + QStringLiteral(", damaged ") +
                         QDateTime::currentDateTime().toString(QStringLiteral("yyyy-MM-dd HHmmss"));
    const QString suffix = QStringLiteral(".") + (info.suffix().isEmpty() ? QStringLiteral("sqlite") : info.suffix());
    QString name = stem + suffix;
    for (int n = 2; QFile::exists(name); ++n) name = stem + QStringLiteral(" (%1)").arg(n) + suffix;
    return name;
}

// With the files of its write-ahead log, which hold what was written last.
Outcome setAside(const QString& path, const QString& to) {
    for (const char* tail : {"-wal", "-shm"})
        if (QFile::exists(path + QLatin1String(tail)))
            QFile::rename(path + QLatin1String(tail), to + QLatin1String(tail));
    if (QFile::rename(path, to)) return done();
    for (const char* tail : {"-wal", "-shm"}) QFile::rename(to + QLatin1String(tail), path + QLatin1String(tail));
    return Error{QStringLiteral("The damaged logbook \"%1\" could not be set aside; get leave to write to its folder.")
                     .arg(QDir::toNativeSeparators(path))
                     .toStdString()};
}

// The highest id; where even that cannot be read, far enough for a busy workshop.
qint64 lastId(const Store& store, const QString& table) {
    const auto last = Statement(store, QStringLiteral("SELECT max(rowid) FROM %1").arg(table)).number(0);
    return last ? std::min(*last, kMostIds) : kGuessedIds;
}

// Calls row for every id that can be read; the others are skipped.
void eachRow(const Store& from, const QString& table, const QString& columns,
             const std::function<void(Statement&)>& row) {
    for (qint64 id = 1, last = lastId(from, table); id <= last; ++id) {
        Statement query(from, QStringLiteral("SELECT %1 FROM %2 WHERE rowid = ?").arg(columns, table));
        query.bind(id);
        (void)static_cast<bool>(query.forEach([&] { row(query); }));
    }
}

struct Salvage {
    const Store& from;
    const Store& to;
    Mended& mended;
    std::map<qint64, qint64> machines, visits;  // old id to new

    // A visit whose machine, or a frame whose visit, cannot be read goes to one that says so.
    qint64 machineFor(qint64 old) {
        if (const auto at = machines.find(old); at != machines.end()) return at->second;
        Machine lost;
        lost.name = QStringLiteral("Salvaged, machine %1").arg(old);
        const Result<qint64> id = saveMachine(to, lost);
        return machines[old] = id ? *id : 0;
    }
    qint64 visitFor(qint64 old, qint64 taken) {
        if (const auto at = visits.find(old); at != visits.end()) return at->second;
        Visit lost;
        lost.machine = machineFor(0);
        lost.opened = taken;
        const Result<qint64> id = saveVisit(to, lost);
        return visits[old] = id ? *id : 0;
    }

    void takeMachines() {
        eachRow(from, "machines", "id, uid, name, mark, card, remarks, changed", [&](Statement& s) {
            Machine m{0, s.text(1), s.text(2), s.text(3), s.text(4), s.text(5), s.integer(6)};
            if (const Result<qint64> id = saveMachine(to, m)) machines[s.integer(0)] = *id, ++mended.machines;
        });
    }
    void takeVisits() {
        eachRow(from, "visits", "id, uid, machine_id, opened, complaint, work_done, parts, oil, result, changed",
                [&](Statement& s) {
                    Visit v;
                    v.uid = s.text(1), v.machine = machineFor(s.integer(2)), v.opened = s.integer(3);
                    v.complaint = s.text(4), v.workDone = s.text(5), v.parts = s.text(6), v.oil = s.text(7);
                    v.result = s.text(8), v.changed = s.integer(9);
                    takeMarks(s.integer(0), v);
                    if (const Result<qint64> id = saveVisit(to, v)) visits[s.integer(0)] = *id, ++mended.visits;
                });
    }
    void takeMarks(qint64 id, Visit& v) {  // columns that an old file does not have
        Statement s(from, QStringLiteral("SELECT self_check, repaired FROM visits WHERE id = ?"));
        s.bind(id);
        (void)static_cast<bool>(s.forEach([&] { v.selfCheck = s.text(0), v.repaired = s.integer(1) != 0; }));
    }
    void takeFrames() {
        eachRow(from, "frames", "id, uid, visit_id, role, taken", [&](Statement& s) {
            Result<KeptFrame> kept = readFrame(from, s.integer(0));
            const bool saved =
                kept && insertFrame(to, visitFor(s.integer(2), s.integer(4)), s.text(1), roleNamed(s.text(3)), *kept);
            saved ? ++mended.frames : ++mended.framesLost;
        });
        // Frames whose row is gone, but whose bulk is not.
        eachRow(from, "contents", "frame_id", [&](Statement& s) { takeOrphan(s.integer(0)); });
    }
    void takeOrphan(qint64 id) {
        Statement row(from, QStringLiteral("SELECT uid FROM frames WHERE id = ?"));
        bool there = false;
        const Outcome ran = row.bind(id).forEach([&] { there = true; });
        if (ran && there) return;
        Result<KeptFrame> kept = readFrame(from, id);
        if (kept && insertFrame(to, visitFor(0, kept->frame.takenSecondsUtc), QStringLiteral("salvaged-%1").arg(id),
                                FrameRole::none, *kept))
            ++mended.frames;
    }
};

// What can be read of the damaged file goes into a new one beside it, closed again when this returns.
Outcome fill(const QString& damaged, const QString& made, Mended& mended) {
    const auto to = Store::open(made);
    if (!to) return to.error();
    const auto from = Store::openAsItIs(damaged);
    if (!from) return done();  // nothing of it can be read
    WriteTransaction transaction(**to);
    if (!transaction.begun()) return transaction.begun();
    Salvage salvage{**from, **to, mended, {}, {}};
    salvage.takeMachines();
    salvage.takeVisits();
    salvage.takeFrames();
    return transaction.commit();
}

}  // namespace

QString Mended::sentence() const {
    return QStringLiteral(
               "The logbook was damaged: it was set aside as \"%1\", and %2 machines, %3 visits and %4 frames "
               "of it were saved into a new one%5.")
        .arg(QDir::toNativeSeparators(setAside))
        .arg(machines)
        .arg(visits)
        .arg(frames)
        .arg(framesLost > 0 ? QStringLiteral("; %1 frames could not be read").arg(framesLost) : QString());
}

Result<Mended> mendLogbook(const QString& path) {
    QLockFile lock(path + QStringLiteral(".lock"));
    if (!takeLock(lock)) return troubleSentence(Trouble::locked, path);
    Trouble why = Trouble::none;
    {
        const auto sound = Store::open(path, &why);
        if (sound && (*sound)->check())
            return Error{"The logbook \"" + path.toStdString() + "\" is in order; there is nothing to mend."};
        if (!sound && why != Trouble::damaged) return sound.error();
    }
    const QString made = path + QStringLiteral(".mending");
    for (const char* tail : {"", "-wal", "-shm"}) QFile::remove(made + QLatin1String(tail));
    Mended mended;
    mended.setAside = freshName(path);
    if (Outcome filled = fill(path, made, mended); !filled) return filled.error();
    QFile::remove(Store::mendedName(path));  // of a mending that was killed before the damaged file was moved
    if (!QFile::rename(made, Store::mendedName(path))) return troubleSentence(Trouble::readOnly, path);
    if (Outcome moved = setAside(path, mended.setAside); !moved) return moved.error();
    Store::takeUpMended(path);
    return mended;
}

Result<std::unique_ptr<Store>> openOrMend(const QString& path, std::optional<Mended>& mended) {
    Trouble why = Trouble::none;
    auto store = Store::open(path, &why);
    if (store || why != Trouble::damaged) return store;
    Result<Mended> done = mendLogbook(path);
    if (!done) return done.error();
    mended = *done;
    return Store::open(path);
}

}  // namespace trueunit
