// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string>

#include "core/measure/displacement_pattern.h"
#include "core/measure/level_counts.h"

namespace trueunit {

// Cautions that belong to the work, whole sentences. Local codes and licensed practice come first in all of them.
inline const std::string kUnplug =
    " Unplug the machine and let it come to rest before hands or tools go in, and turn it by hand only.";
inline const std::string kLoopOff =
    " Switch the loop supply off and make sure it is dead before touching a contact or a terminal: the loop is "
    "hazardous "
    "live, and its current limit does not make it safe. Local codes and licensed practice come first.";
inline const std::string kNoOil = " Contacts are cleaned dry with a burnisher and never oiled.";

// They are said once for several findings.
inline constexpr std::array kWorkCautions = {&kUnplug, &kLoopOff, &kNoOil};
using CautionsSaid = std::array<bool, kWorkCautions.size()>;
// The words without their cautions, or without those alone that were said before; notes which there were.
std::string withoutCautions(std::string words, CautionsSaid& said);
std::string withoutRepeated(std::string words, CautionsSaid& said);

// What is counted against a text that nobody gave, where the tape itself is the witness.
inline constexpr const char* kLearnedText =
    "The text was learned from the rounds of the tape themselves: what goes wrong in most of them may not be counted.";

// Numbers as the person reads them.
std::string decimals(double value, int places);
std::string signedDecimals(double value, int places);  // with + or a true minus, zero without a sign
std::string shortest(double value);                    // to a hundredth, without idle zeros: "50", "45.45"
std::string percent(double value, int places = 1);     // "6.2 %", without its sign
std::string learnedWords(TextSource source);           // kLearnedText as a further sentence, where that is so
std::string instantName(int k, int levels);            // "instant 3", "the beginning of stop"
std::string rateWords(long hits, long tries);          // "6.5 % (95 % interval 4.8 to 8.8 %)"
// "Set aside, bias is +0.1 %, end distortion 0.0 % and the speed error +0.02 %."
std::string setAsideWords(const DisplacementPattern& pattern, std::optional<double> speedError);
// What the characters are held against, and over how many, where those are more than the window's.
std::string heldAgainst(const TapeStudy& tape, long windowCharacters);

// The chance that a value of this uncertainty (95 %) truly lies beyond a threshold.
double chanceBeyond(double value, double uncertainty, double threshold);

}  // namespace trueunit
