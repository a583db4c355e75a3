// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/report/finding.h"
#include "core/report/symptoms.h"

namespace trueunit {

constexpr std::size_t kFewestForFindings = 12;  // characters; none are drawn from fewer

// What the signal says, worst first: how far beyond what is in order, then how sure. Ends with remarks that concern
// the wiring only. "in-order" stands first when nothing else is told of machine, loop or input and enough characters
// were heard; with too few there is nothing at all. Pure.
std::vector<Finding> findFaults(const Symptoms& symptoms);

// Why there is no reading at all.
enum class NoReading {
    silent,        // nothing reaches the input
    steady,        // samples, but nothing that switches between two levels
    notStartStop,  // it switches, but does not fall into characters
    alternates,    // one mark and one space repeat, in which nothing tells a unit
    tooFew,        // what switches may be characters, but is too little to tell: no cause is known
};
std::string sentenceOf(NoReading why);
std::vector<Finding> findingsOfNothing(NoReading why, const InputReading& input);

}  // namespace trueunit
