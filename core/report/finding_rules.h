// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/report/finding.h"
#include "core/report/symptoms.h"

namespace trueunit {

// A finding with how far beyond what is in order it lies: 1 = at the limit; below kMentioned it is not told.
struct RankedFinding {
    Finding finding;
    double severity = 0.0;
};
inline constexpr double kMentioned = 0.4;
inline constexpr double kFirst = 100.0;          // puts all others in doubt
inline constexpr double kRemark = 0.1;           // of a remark that leaves the machine in order
inline constexpr double kWrongNowAndThen = 1.6;  // of a wrong character now and then
inline constexpr double kMorePerRate = 8.0;      // and more with how often

// One pure function per rule; empty when the symptom is not there or the data are too few to tell.
using Rule = std::optional<RankedFinding> (*)(const Symptoms&);

// Contacts
std::optional<RankedFinding> contactOffset(const Symptoms&);
std::optional<RankedFinding> endOffset(const Symptoms&);
std::optional<RankedFinding> contactBounce(const Symptoms&);
std::optional<RankedFinding> contactScatter(const Symptoms&);
// Levels
std::optional<RankedFinding> levelDropout(const Symptoms&);
std::optional<RankedFinding> levelStuck(const Symptoms&);
std::optional<RankedFinding> levelWithoutText(const Symptoms&, bool marks);  // of both, where the text is not known
std::optional<RankedFinding> levelLate(const Symptoms&);
std::optional<RankedFinding> secondLevelLate(const Symptoms&);
// Feed
std::optional<RankedFinding> feedSlip(const Symptoms&);
// Drive and clutch
std::optional<RankedFinding> wrongSpeed(const Symptoms&);
std::optional<RankedFinding> unsteadySpeed(const Symptoms&);
std::optional<RankedFinding> cyclicDrive(const Symptoms&);
std::optional<RankedFinding> tripLate(const Symptoms&);
// Loop and sound card
std::optional<RankedFinding> slowRise(const Symptoms&);
std::optional<RankedFinding> weakSignal(const Symptoms&);
std::optional<RankedFinding> hum(const Symptoms&);
std::optional<RankedFinding> clipped(const Symptoms&);
std::optional<RankedFinding> reversed(const Symptoms&);

}  // namespace trueunit
