// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>
#include <optional>

#include "app/logbook/store.h"
#include "core/report/frozen_frame.h"

namespace trueunit {

// What a frame shows of its visit.
enum class FrameRole { none, before, after };
QString roleName(FrameRole role);  // as it is stored: "", "before", "after"
FrameRole roleNamed(const QString& name);

// A frame in a list: what is shown of it without unpacking it.
struct FrameRow {
    qint64 id = 0;
    QString uid;
    qint64 visit = 0;
    qint64 taken = 0;  // seconds since 1970
    FrameRole role = FrameRole::none;
    QString remarks;
    QString notes;  // texts of all of them, one a line
    QString input;
    std::optional<double> bias, biasUncertainty, end, endUncertainty;  // percent
    std::optional<double> gross, synchronous, speedError;
    std::optional<bool> within;
    QString limits;
    QStringList findings;       // ids, worst first
    QStringList findingLevels;  // of each the level it is about; "0": of none in particular
};

// A frame whole: the frozen moment and the sound it was measured from.
struct KeptFrame {
    FrozenFrame frame;
    QByteArray excerptFlac;  // empty: no sound was kept with it
};

// Inside a transaction of the caller. A uid that the logbook has already is refused by it.
Result<qint64> insertFrame(const Store& store, qint64 visit, const QString& uid, FrameRole role, const KeptFrame& kept);
Outcome rewriteFrame(const Store& store, qint64 id, const FrozenFrame& frame);  // notes and cursors; the sound stays
Outcome setRole(const Store& store, qint64 id, FrameRole role);
// What the row had no column for when its frame was kept.
Outcome fillEnd(const Store& store, qint64 id);
Outcome fillFindingLevels(const Store& store, qint64 id);

Result<std::optional<qint64>> findFrameByUid(const Store& store, const QString& uid);
Result<KeptFrame> readFrame(const Store& store, qint64 id);

}  // namespace trueunit
