// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "app/logbook/store.h"

namespace trueunit {

// A machine as its owner knows it.
struct Machine {
    qint64 id = 0;
    QString uid;   // the same in every logbook the machine's visits are carried to
    QString name;  // "Skerry 2"
    QString mark;  // the owner's mark or inventory number
    QString card;  // what it should do: code, speed, stop, motor, gears, as the person wrote it
    QString remarks;
    qint64 changed = 0;  // seconds since 1970; the later wins on import
};

// A machine in the list, with what the list shows of its visits.
struct MachineSummary {
    Machine machine;
    int visits = 0;
    int frames = 0;
    qint64 lastTaken = 0;  // of its newest frame; 0: none
};

// By name; only those with every word of text in the machine's or one of its visits' or frames' texts.
Result<std::vector<MachineSummary>> listMachines(const Store& store, const QString& text = {});
Result<std::optional<Machine>> findMachine(const Store& store, qint64 id);
Result<std::optional<Machine>> findMachineByName(const Store& store, const QString& name);  // whatever its case
Result<std::optional<Machine>> findMachineByUid(const Store& store, const QString& uid);

// Inserts it when id is 0 (a missing uid is made), else changes it. Its id. Inside a transaction of the caller.
Result<qint64> saveMachine(const Store& store, const Machine& machine);

}  // namespace trueunit
