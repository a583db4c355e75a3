// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <optional>
#include <vector>

#include "app/logbook/frames.h"

namespace trueunit {

// Which frames are wanted; what is left empty does not narrow.
struct FrameFilter {
    std::optional<qint64> machine, visit;
    std::optional<qint64> fromUtc, beforeUtc;  // taken at or after; taken before
    QString finding;                           // an id
    QString text;                              // every word of it in the frame's, visit's or machine's texts
    int limit = 500;
};

struct FoundFrame {
    FrameRow row;
    qint64 machine = 0;
    QString machineName;
};

struct FoundFrames {
    std::vector<FoundFrame> frames;  // newest first, limit of them at most
    qint64 all = 0;                  // how many there are
};

Result<FoundFrames> findFrames(const Store& store, const FrameFilter& filter);
Result<std::vector<FrameRow>> framesOf(const Store& store, qint64 visit);  // in the order they were taken
Result<std::optional<FoundFrame>> findFrame(const Store& store, qint64 id);

QStringList searchWords(const QString& text);  // folded, as the store's texts are

}  // namespace trueunit
