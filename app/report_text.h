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

// "+7.30" or a true minus sign; as many places as the uncertainty carries, one to three.
QString signedFigure(double value, int places);
QString plainFigure(double value, int places);
int placesFor(const Measured& measured);

struct ReadingRow {
    QString name;
    QString value;  // "—" when the data carry none
    QString unit;
    QString uncertainty;  // "± 0.05" or empty
    QString limit;        // "± 5" or empty
    QString judged;       // "in", "OUT" or empty
    bool out = false;
};

std::vector<ReadingRow> readingRows(const Snapshot& snapshot);

struct VerdictText {
    QString headline;  // "Out of limits", "In limits", "Not judged"
    QString detail;    // one or two sentences
    std::optional<bool> within;
};
VerdictText verdictText(const Snapshot& snapshot);

QString biasInWords(const Snapshot& snapshot);  // "marks too long", "marks too short", "in limits"
QString instantName(int k, int levels);         // "1", ..., "stop"

// A cursor on the grid, as ms, units and degrees of cam rotation after the start instant.
// One turn of the cam is one character: 360 degrees are 1 start + the levels + the stop that was set or measured.
QString cursorText(const Snapshot& snapshot, double units);

// What the instrument was set to and what it found on its input, as "name: value" pairs in reading order.
std::vector<std::pair<QString, QString>> settingsRows(const FrozenFrame& frame);

QString takenText(const FrozenFrame& frame);  // local date and time with its distance from UTC

// The trace that the grid shows: the chosen one, else the newest; empty when there is none.
std::shared_ptr<const CharacterTrace> frozenTrace(const FrozenFrame& frame);

}  // namespace trueunit
