// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/logbook/store.h"

namespace trueunit {

// A whole visit as one file that another logbook takes in: a ZIP of JSON and FLAC, described in DEVELOPERS.md.
Outcome writeVisitArchive(const Store& store, qint64 visit, const QString& path);

struct Imported {
    qint64 visit = 0;
    QString machine;  // its name here
    int framesNew = 0;
    int framesThere = 0;  // the logbook had them already
    bool visitNew = false;
    bool textsNewer = false;  // the archive's texts of the visit were newer than ours and were taken
};

// All of it or nothing. Machine, visit and frames are recognised by their uids; a machine of another uid but the same
// name and mark is taken for the same.
Result<Imported> importVisitArchive(const Store& store, const QString& path);

}  // namespace trueunit
