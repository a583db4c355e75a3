// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "app/logbook/store.h"

namespace trueunit {

struct Mended {
    QString setAside;  // the damaged file's new name
    int machines = 0, visits = 0, frames = 0;
    int framesLost = 0;  // known of, but not readable
    QString sentence() const;
};

// A damaged logbook is moved to a name of its own beside the old one ("logbook, damaged 2026-11-25 1403.sqlite"),
// never overwritten, and what SQLite can still read of it goes into a new logbook under the old name. Refused when
// another program holds the file, or when it is not damaged.
Result<Mended> mendLogbook(const QString& path);

// Opens it; a damaged one is mended first. mended: set when that was so.
Result<std::unique_ptr<Store>> openOrMend(const QString& path, std::optional<Mended>& mended);

}  // namespace trueunit
