// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <vector>

#include "core/detect/edge_timer.h"
#include "core/frame/character_framer.h"
#include "core/measure/character_log.h"
#include "core/measure/nudge_finder.h"
#include "core/report/snapshot.h"

namespace trueunit {

// Of characters with a trustworthy unit, oldest first.
std::vector<DisplacementDot> dotsOf(const std::vector<const LoggedCharacter*>& characters, double unitSeconds);

// What the window draws besides the numbers: the traces of the last characters, the trail of the bias and the nudges
// found on it. Filled character by character, copied into each snapshot. Analysis thread; bounded.
class Picture {
public:
    Picture(const Options& options, int levels, double secondsPerSample)
        : options_(options), levels_(levels), secondsPerSample_(secondsPerSample) {}

    void add(const LoggedCharacter& c, const CharacterLog& log, const Framing& framing, const EdgeTimer& timer);
    void clear();
    // Number of the first character after the last nudge; 0: there was none. A hand that turns in several steps passes
    // some characters between them.
    std::uint64_t settledSince() const;
    void take(const std::optional<StandardSpeed>& nominal) { taken_ = nominal; }  // as the last reading has it
    void fill(Snapshot& snapshot, const CharacterLog& log) const;  // reading first, the grid follows its unit

private:
    void addTrace(const LoggedCharacter& c, const Framing& framing, const EdgeTimer& timer);
    void addTrailPoint(const CharacterLog& log);
    double referenceUnit(double measured) const;  // what percentages are of, seconds

    const Options& options_;  // the pipeline's
    std::optional<StandardSpeed> taken_;
    int levels_;
    double secondsPerSample_;
    std::vector<std::shared_ptr<const CharacterTrace>> traces_;
    std::vector<TrailPoint> trail_;
    NudgeFinder nudges_;
};

}  // namespace trueunit
