// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <string>
#include <vector>

#include "core/units.h"

namespace trueunit {

// Instants a finding rests on: to pick them out on the grid and in the plot.
struct EvidencePlace {
    int k = 0;  // 0: at every place
    Condition to = Condition::mark;
    friend bool operator==(const EvidencePlace&, const EvidencePlace&) = default;
};

// Where a finding is seen.
struct EvidencePlaces {
    std::vector<EvidencePlace> instants;
    int level = 0;            // its element and its row on the tape; 0: none
    bool characters = false;  // the characters that came wrong
    bool slips = false;       // those about which the feed slipped
    bool speed = false;       // how it ran over the last minutes
    bool bounces = false;     // the closures at which the contact bounced
    bool empty() const { return instants.empty() && level == 0 && !characters && !slips && !speed && !bounces; }
    friend bool operator==(const EvidencePlaces&, const EvidencePlaces&) = default;
};

// Whether the finding these places belong to rests on that instant.
inline bool restsOn(const EvidencePlaces& places, int k, Condition to) {
    return std::any_of(places.instants.begin(), places.instants.end(),
                       [&](const EvidencePlace& p) { return p.to == to && (p.k == 0 || p.k == k); });
}

// What the signal says about the machine (or the wiring, or the card). Texts are whole sentences for the bench.
struct Finding {
    std::string id;           // stable, one of the ids listed in DEVELOPERS.md
    double confidence = 0.0;  // 0..1: how often such a finding is right
    std::string title;
    std::string evidence;  // with the numbers it rests on
    std::string lookAt;    // which part of the mechanism
    std::string confirm;   // how to make sure, with the caution that belongs to it
    EvidencePlaces seenAt{};
    bool minor = false;  // told, yet not beyond its limit
};

inline constexpr double kLikely = 0.5;  // a finding surer than this is more likely than not

inline bool isFault(const Finding& f) { return f.id != "in-order" && f.id != "no-signal"; }

// A fault so sure that "in limits" must not stand alone beside it.
inline bool isSureFault(const Finding& f) {
    constexpr double kNextToCertain = 0.9;
    return isFault(f) && f.confidence >= kNextToCertain;
}

}  // namespace trueunit
