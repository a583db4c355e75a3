// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/logbook/store.h"

namespace trueunit {

inline constexpr qint64 kLogbookId = 0x54726c62;  // SQLite's application_id of a logbook: "Trlb"
inline constexpr int kSchemaVersion = 4;          // SQLite's user_version

// Brings the file forward step by step, each step whole or not at all; makes the tables of a new one. Two programs
// that do it at once queue. A file that may only be read stays as it is and is refused when it is too old to be read.
// upTo is for tests, which need old files.
Outcome migrate(const Store& store, Trouble* why = nullptr, int upTo = kSchemaVersion);

// Text as it is searched: without case, accents kept, compatibility forms made plain.
QString folded(const QString& text);

}  // namespace trueunit
