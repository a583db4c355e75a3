// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/logbook/keeping.h"

#include <QDateTime>
#include <algorithm>

#include "app/logbook/frame_search.h"
#include "app/logbook/machines.h"
#include "app/logbook/statement.h"
#include "app/logbook/uid.h"

namespace trueunit {

namespace {

const QString kNameless = QStringLiteral("Machine without a name");

Result<qint64> machineFor(const Store& store, const FrozenFrame& frame) {
    QString name = QString::fromStdString(frame.machine).simplified();
    if (name.isEmpty()) name = kNameless;
    const auto found = findMachineByName(store, name);
    if (!found) return found.error();
    if (*found) return (*found)->id;
    Machine machine;
    machine.name = name;
    machine.changed = frame.takenSecondsUtc;
    return saveMachine(store, machine);
}

Result<Kept> place(const Store& store, const Keeping& keeping) {
    Kept kept;
    if (keeping.visit) {
        const auto visit = findVisit(store, *keeping.visit);
        if (!visit) return visit.error();
        if (!*visit) return Error{"There is no visit " + std::to_string(*keeping.visit) + " in the logbook."};
        kept.visit = (*visit)->id;
        kept.machine = (*visit)->machine;
        return kept;
    }
    const FrozenFrame& frame = keeping.kept.frame;
    const Result<qint64> machine = machineFor(store, frame);
    if (!machine) return machine.error();
    kept.machine = *machine;
    const auto goingOn = visitGoingOn(store, *machine, frame.takenSecondsUtc);
    if (!goingOn) return goingOn.error();
    if (*goingOn) {
        kept.visit = (*goingOn)->id;
        return kept;
    }
    Visit visit;
    visit.machine = *machine;
    visit.opened = visit.changed = frame.takenSecondsUtc;
    const Result<qint64> id = saveVisit(store, visit);
    if (!id) return id.error();
    kept.visit = *id;
    kept.newVisit = true;
    return kept;
}

Result<Kept> again(const Store& store, qint64 id, const FrozenFrame& frame) {
    if (Outcome changed = rewriteFrame(store, id, frame); !changed) return changed.error();
    const auto found = findFrame(store, id);
    if (!found) return found.error();
    if (!*found) return Error{"The frame is no longer in the logbook."};
    return Kept{id, (*found)->row.visit, (*found)->machine, false, true, 0, false};
}

// The id of the frame if it is new, else 0.
Result<qint64> putBefore(const Store& store, const Keeping& before, qint64 visit) {
    const auto rows = framesOf(store, visit);
    if (!rows) return rows.error();
    const auto isBefore = [](const FrameRow& row) { return row.role == FrameRole::before; };
    const bool free = std::none_of(rows->begin(), rows->end(), isBefore);
    for (const FrameRow& row : *rows) {
        if (row.uid != before.uid) continue;
        if (free && row.role == FrameRole::none)
            if (Outcome marked = setRole(store, row.id, FrameRole::before); !marked) return marked.error();
        return 0;
    }
    const auto elsewhere = findFrameByUid(store, before.uid);
    if (!elsewhere) return elsewhere.error();
    if (*elsewhere) return 0;
    return insertFrame(store, visit, before.uid, free ? FrameRole::before : FrameRole::none, before.kept);
}

// Whether it has the mark now: the frame before keeps its own.
Result<bool> markAfter(const Store& store, const Kept& kept) {
    const auto rows = framesOf(store, kept.visit);
    if (!rows) return rows.error();
    const auto own =
        std::find_if(rows->begin(), rows->end(), [&](const FrameRow& row) { return row.id == kept.frame; });
    if (own == rows->end() || own->role == FrameRole::before) return false;
    for (const FrameRow& row : *rows) {
        const bool marked = row.role == FrameRole::after, wanted = row.id == kept.frame;
        if (marked == wanted) continue;
        if (Outcome set = setRole(store, row.id, wanted ? FrameRole::after : FrameRole::none); !set) return set.error();
    }
    return true;
}

// The moment before is written first: of frames taken in the same second the one written first came first.
Result<Kept> write(const Store& store, const Keeping& keeping, const Keeping* before) {
    const auto there = findFrameByUid(store, keeping.uid);
    if (!there) return there.error();
    Result<Kept> kept = *there ? again(store, **there, keeping.kept.frame) : place(store, keeping);
    if (!kept) return kept;
    if (before && (*there || before->uid != keeping.uid)) {
        const Result<qint64> id = putBefore(store, *before, kept->visit);
        if (!id) return id.error();
        kept->before = *id;
    }
    if (*there) return kept;
    const QString uid = keeping.uid.isEmpty() ? freshUid() : keeping.uid;
    const Result<qint64> id = insertFrame(store, kept->visit, uid, keeping.role, keeping.kept);
    if (!id) return id.error();
    kept->frame = *id;
    if (before && before->uid == keeping.uid)
        if (const Result<qint64> marked = putBefore(store, *before, kept->visit); !marked) return marked.error();
    return kept;
}

}  // namespace

Result<Kept> keepFrame(const Store& store, const Keeping& keeping, const Keeping* before) {
    if (!keeping.kept.frame.snapshot) return Error{"There is nothing to keep yet; choose an input first."};
    WriteTransaction transaction(store);
    if (!transaction.begun()) return transaction.begun().error();
    Result<Kept> kept = write(store, keeping, before);
    if (!kept) return kept;
    if (keeping.role == FrameRole::after) {
        const Result<bool> after = markAfter(store, *kept);
        if (!after) return after.error();
        kept->after = *after;
    }
    if (Outcome committed = transaction.commit(); !committed) return committed.error();
    return kept;
}

}  // namespace trueunit
