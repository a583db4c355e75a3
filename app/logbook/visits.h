// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "app/logbook/store.h"

namespace trueunit {

// One time a machine was on the bench.
struct Visit {
    qint64 id = 0;
    QString uid;
    qint64 machine = 0;  // its id
    qint64 opened = 0;   // seconds since 1970
    QString complaint;   // what it came for
    QString workDone;
    QString parts;
    QString oil;        // what was oiled and greased
    QString result;     // how it left; empty while the visit goes on
    QString selfCheck;  // when and how the instrument was last checked, in words; empty: not known
    bool repaired = false;
    qint64 changed = 0;
};

Result<std::vector<Visit>> visitsOf(const Store& store, qint64 machine);  // newest first
Result<std::optional<Visit>> findVisit(const Store& store, qint64 id);
Result<std::optional<Visit>> findVisitByUid(const Store& store, const QString& uid);

// The visit that goes on: the machine's newest one that has no result and was opened, or last got a frame, within
// twelve hours before the given time.
Result<std::optional<Visit>> visitGoingOn(const Store& store, qint64 machine, qint64 secondsUtc);

// Inserts it when id is 0 (a missing uid is made), else changes it. Its id. Inside a transaction of the caller.
Result<qint64> saveVisit(const Store& store, const Visit& visit);

}  // namespace trueunit
