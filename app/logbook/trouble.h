// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/result.h"

class QSqlError;

namespace trueunit {

// Why the logbook refused. Each has one sentence for the person, and a way on.
enum class Trouble {
    none,
    locked,    // another program is writing
    full,      // no room on the disk
    readOnly,  // may be read, not written
    damaged,   // SQLite cannot make sense of it
    newer,     // written by a later version of the program
    foreign,   // a database, but no logbook
    noPlace,   // its folder cannot be made or opened
    other,
};

Trouble troubleOf(const QSqlError& error);
Error troubleSentence(Trouble trouble, const QString& path, const QString& detail = {});

}  // namespace trueunit
