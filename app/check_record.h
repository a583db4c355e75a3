// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "app/loopback_check.h"
#include "app/self_check.h"
#include "core/result.h"

namespace trueunit {

// A self-check with its date: what is kept, printed and put on reports.
struct CheckRecord {
    std::int64_t takenSecondsUtc = 0;
    std::string version;
    std::vector<CheckRow> memory;  // empty: not made
    std::optional<LoopbackResult> loopback;

    bool passed() const;
};

QString checkText(const CheckRecord& record, bool everyRow);  // for the terminal and the dialog
QString checkLine(const CheckRecord& record);                 // one line in English, kept with visits and frames

// Kept one JSON file each in the person's data folder, named by its date. Any thread; reads and writes the disk.
QString checkFolder();
Outcome keepCheck(const CheckRecord& record);
std::optional<CheckRecord> lastCheck();  // rows of memory and card as they were; empty: none has been kept
std::string lastCheckLine();             // of it; empty: none has been kept
QByteArray checkJson(const CheckRecord& record);

}  // namespace trueunit
