// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/reading_notes.h"

#include <string>

#include "core/report/finding_words.h"

namespace trueunit {

namespace {
constexpr double kStopShort = 0.08;  // units
}

void noteWhatIsMissing(Reading& r) {
    if (!r.speed.nominalBaud)
        r.notes.emplace_back(
            "No standard speed lies within 3 % of the measured one: speed error and gross distortion "
            "need a nominal speed.");
    if (!r.distortion.biasPercent)
        r.notes.emplace_back("No instant to mark inside these characters: they cannot tell the bias.");
    if (!r.distortion.endPercent)
        r.notes.emplace_back("No instant to space inside these characters: they cannot tell the end distortion.");
    if (!r.speed.stopUnits) r.notes.emplace_back("The tape did not run without pause: the stop cannot be told.");
}

void noteShortStop(Reading& r, const Options& options) {
    const auto& stop = r.speed.stopUnits;
    if (!stop || !options.stopUnits || stop->value + stop->uncertainty > *options.stopUnits - kStopShort) return;
    r.notes.push_back("The stop is " + decimals(stop->value, 2) + " units, shorter than the " +
                      decimals(*options.stopUnits, 2) + " set: another machine, or another cam than it should have.");
}

void noteGaps(Reading& r) {
    if (r.input.gaps > 0)
        r.notes.push_back("Samples are missing in the midst, so often: " + std::to_string(r.input.gaps) +
                          ". The characters about such a place are not read.");
}

void noteLevelSteps(Reading& r) {
    if (r.input.levelSteps > 0)
        r.notes.push_back("The level of the signal fell suddenly, so often: " + std::to_string(r.input.levelSteps) +
                          ". The characters just after are missing; look at plugs, gain and the stage.");
}

void noteBiasChange(Reading& r, const std::optional<Decomposition>& parts) {
    if (!parts || !parts->biasChange || !r.distortion.biasPercent || parts->over > r.text.characters) return;
    const double mean = r.distortion.biasPercent->value;
    const Changes::OfBias& change = *parts->biasChange;
    r.notes.push_back("The bias changed within these characters, from about " + signedDecimals(mean + change.first, 1) +
                      " to " + signedDecimals(mean + change.last, 1) + " %, the last time " +
                      std::to_string(parts->over - static_cast<long>(change.since)) +
                      " characters before their end: a window no longer than that reads what is now.");
}

void noteClock(Reading& r, const Options& options) {
    if (options.clockPpm != 0.0)
        r.notes.push_back("Clock trimmed by " + signedDecimals(options.clockPpm, 1) + " parts in a million.");
}

}  // namespace trueunit
