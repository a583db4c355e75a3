// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <vector>

#include "app/logbook/frames.h"
#include "app/logbook/machines.h"
#include "app/logbook/visits.h"
#include "app/report_output.h"

namespace trueunit {

struct VisitFrame {
    FrameRow row;
    FrozenFrame frame;
};

// Everything that the report of one visit tells, as it was read from the logbook.
struct VisitStory {
    Machine machine;
    Visit visit;
    std::vector<VisitFrame> frames;  // in the order they were taken

    // As marked, else the first and the last one; nullptr: none. A lone frame is "before" unless marked.
    const VisitFrame* before() const;
    const VisitFrame* after() const;
};

Result<VisitStory> readVisitStory(const Store& store, qint64 visit);

// Before and after side by side, what was wrong and what was done, the frames with their notes, what the instrument was
// set to, cautions and a line to sign. Long texts go on to further pages. Needs a QGuiApplication.
std::vector<QImage> visitPages(const VisitStory& story, Paper paper);
// PNG or PDF, as the path ends; gives the files.
Result<QStringList> writeVisitReport(const VisitStory& story, Paper paper, const QString& path);

}  // namespace trueunit
