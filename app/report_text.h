// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <optional>
#include <vector>

#include "core/report/frozen_frame.h"
#include "core/report/snapshot.h"

namespace trueunit {

// The words and figures of the report page, from the frozen frame alone. Nothing here measures.

int placesFor(const Measured& measured);  // decimals that the uncertainty carries, one to three

inline const QString kNoValue = QStringLiteral("\u2014");  // the data carry none

struct ReportRow {
    QString name;
    QString value;  // or kNoValue
    QString unit;
    QString uncertainty;  // "± 0.05" or empty
    QString limit;        // "± 5" or empty
    QString judged;       // "in", "OUT", "?" or empty
    bool out = false;
    QString open{};  // "cannot tell yet: 12 more characters", or empty
};

// Of two moments shown side by side each is handed the other, so that a quantity has the same decimals in both.
std::vector<ReportRow> reportRows(const Snapshot& snapshot, const Snapshot* beside = nullptr);

struct VerdictText {
    QString headline;  // "Out of limits", "In limits", "Not judged"
    QString detail;    // one or two sentences
    std::optional<bool> within;
    QString fault{};      // a sentence with the first finding; in limits, the first that is next to certain; or empty
    bool beyond = false;  // that finding is beyond its limit
    QString lookAt{};     // which part, where it is the only one named
};
VerdictText verdictText(const Snapshot& snapshot);
QString inOneLine(const VerdictText& verdict);  // headline, a fault that it does not tell of, detail

// A cursor on the grid, or the distance between two: "22.00 ms, 1.000 units, 48.5° of the cam".
QString cursorText(const Snapshot& snapshot, double units);

// What the instrument was set to and what it found on its input, as "name: value" pairs in reading order.
std::vector<std::pair<QString, QString>> settingsRows(const FrozenFrame& frame);

QString printName(const std::string& print);  // “E”, or in words what would be a speck between quotes
QString takenText(const FrozenFrame& frame);  // local date and time with its distance from UTC
QString whenText(const FrozenFrame& frame);   // the same in a sentence; of a recording also the date of its file
bool isSimulated(const FrozenFrame& frame);   // no machine stood there
QString fromText(const FrozenFrame& frame);   // the input, and how much of it was read

}  // namespace trueunit
