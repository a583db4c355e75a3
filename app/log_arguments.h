// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <optional>

#include "app/command_line.h"
#include "app/logbook/frame_search.h"
#include "app/page_flow.h"

namespace trueunit {

// What was asked of "trueunit log"; a plain value.
struct LogArguments {
    QString verb;       // machines, list, show, keep, write, export, import, report, check, mend
    QStringList files;  // operands that are files
    std::optional<qint64> visit, frame;
    QString machine;  // a name
    QString logbook;  // its file; empty: the usual place
    QString out;
    Paper paper = Paper::a4;
    bool json = false;
    bool again = false;  // measure the frame again
    FrameFilter filter;  // list
    FrameRole role = FrameRole::none;
    std::optional<QString> complaint, work, parts, oil, result, mark, card, remarks;  // keep, write
    bool repaired = false;
    Command measuring;  // keep: how to measure
};

Result<LogArguments> parseLogArguments(const QStringList& arguments);
const char* logHelp();

}  // namespace trueunit
