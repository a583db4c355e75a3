// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "app/logbook/frame_search.h"
#include "app/logbook/machines.h"
#include "app/visit_report.h"

namespace trueunit {

// What "trueunit log" prints. Pure functions; UTF-8.
std::string machinesText(const std::vector<MachineSummary>& machines);
std::string machinesJson(const std::vector<MachineSummary>& machines);
std::string framesText(const FoundFrames& found);
std::string framesJson(const FoundFrames& found);
std::string visitText(const VisitStory& story);

// The reading of then beside that of now, quantity by quantity.
struct ReadingPair {
    QString name, then, now, unit;
};
std::vector<ReadingPair> readingPairs(const Snapshot& then, const Snapshot& now);
std::string readingPairsText(const Snapshot& then, const Snapshot& now);

}  // namespace trueunit
