// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/report/finding_rules.h"
#include "core/report/finding_words.h"

namespace trueunit {

namespace {

constexpr double kSlowRiseMs = 1.5;
constexpr double kMostNoiseDb = 18.0;  // signal to noise
constexpr double kNoiseLimitDb = 14.5;
constexpr double kFaintDbfs = -43.5;
constexpr double kHumPercent = 2.0;  // peak to peak, of the swing
constexpr double kHumLimit = 11.0;
constexpr double kClippedPercent = 0.3;
constexpr double kSpoilingPercent = 3.0;
constexpr double kAtFullScaleDb = 0.05;
constexpr double kCharacteristic = 3.0;

std::string edgesWords(const InputReading& in) {
    return "From 10 to 90 % of the swing the line takes " + decimals(in.riseToMarkMs.value_or(0.0), 2) +
           " ms to mark and " + decimals(in.riseToSpaceMs.value_or(0.0), 2) + " ms to space";
}

// What depends on the length of the element before, and how it pulls at the readings.
std::string lengthWords(const Symptoms& s, double characteristic) {
    std::string words = ". What is left by length of the element before: " + percent(characteristic) + ".";
    if (!s.pattern || !s.pattern->afterShort) return words;
    const double effect = s.pattern->afterShort->value;
    return words + " Instants that end a single unit come " + percent(effect) + (effect > 0.0 ? " late" : " early") +
           " against the others, to mark and to space alike; that pulls at bias, end distortion and speed as they are "
           "read. " +
           setAsideWords(*s.pattern, s.speedErrorByPattern());
}

// Edges are steep, and yet what follows a short element is displaced.
Finding unsettled(const Symptoms& s, double characteristic) {
    Finding f;
    f.seenAt.instants = {{0, Condition::mark}, {0, Condition::space}};
    f.title = "The displacement depends on the element before, by " + percent(characteristic);
    f.evidence = edgesWords(s.reading.input) + lengthWords(s, characteristic);
    const bool late = s.pattern && s.pattern->afterShort && s.pattern->afterShort->value > 0.0;
    const bool early = s.pattern && s.pattern->afterShort && !late;
    f.lookAt = late    ? "What swings past its place and has not come back after one unit."
               : early ? "What has not arrived at its place after one unit."
                       : "What has not come to rest after one unit.";
    f.lookAt +=
        " Edges so steep speak for a contact lever (spring, pivot, stop) or a "
        "relay in the loop rather than for magnets or a capacitor. Which of them, a recording alone cannot tell.";
    f.confirm =
        "Measure the contacts alone on a battery: if the dependence stays, it is the contact lever's; if it goes, that "
        "of a relay or of what else lies in the loop." +
        kLoopOff;
    f.confidence = s.pattern && s.pattern->afterShort ? 0.9 : 0.5;
    return f;
}

Finding slowEdges(const Symptoms& s, double rise, double characteristic) {
    const InputReading& in = s.reading.input;
    const bool toMark = in.riseToMarkMs.value_or(0.0) >= in.riseToSpaceMs.value_or(0.0);
    const double bias = s.reading.distortion.biasPercent ? s.reading.distortion.biasPercent->value : 0.0;
    Finding f;
    f.seenAt.instants = {{0, toMark ? Condition::mark : Condition::space}};
    f.title = "The loop current " + std::string(toMark ? "rises" : "falls") + " slowly: " + decimals(rise, 1) + " ms";
    f.evidence = edgesWords(in) + ", a time constant of " + decimals(rise / std::log(9.0), 2) +
                 " ms. That alone shifts the instants to mark by " + signedDecimals(s.riseDelayPercent(), 1) +
                 " % against those to space; the bias read is " + signedDecimals(bias, 1) + " %" +
                 lengthWords(s, characteristic);
    f.lookAt =
        "The loop, not the machine: inductance of magnets in series, too low a supply voltage, a capacitor or filter "
        "across the contact; a slice level off the middle.";
    f.confirm =
        "Measure with a resistor in place of the magnets, at the same current: the slope must become steep." + kLoopOff;
    f.confidence = std::clamp(0.75 + 0.1 * (rise - kSlowRiseMs), 0.5, 0.97);
    return f;
}

}  // namespace

std::optional<RankedFinding> slowRise(const Symptoms& s) {
    const InputReading& in = s.reading.input;
    if (in.kind == InputKind::tone || in.kind == InputKind::twoTone) return std::nullopt;
    const double rise = s.slowestRiseMs();
    const double characteristic = s.reading.distortion.characteristicPercent.value_or(0.0);
    if (rise < kSlowRiseMs && characteristic < kCharacteristic) return std::nullopt;
    if (contactBounce(s)) return std::nullopt;  // openings after the closure round off the form of the edge
    Finding f = rise < kSlowRiseMs ? unsettled(s, characteristic) : slowEdges(s, rise, characteristic);
    f.id = "slow-rise";
    const double size = std::max(
        {100.0 * 0.315 * rise / s.unitMs() / s.limits.biasPercent, 0.0, characteristic / s.limits.biasPercent});
    return RankedFinding{f, 0.1 + size};
}

std::optional<RankedFinding> weakSignal(const Symptoms& s) {
    const InputReading& in = s.reading.input;
    const bool noisy = in.snrDb && *in.snrDb < kMostNoiseDb;
    const bool faint = in.peakDbfs && *in.peakDbfs < kFaintDbfs;
    if (!noisy && !faint) return std::nullopt;
    Finding f;
    f.id = "weak-signal";
    f.title = faint ? "The signal is faint: peaks at " + decimals(*in.peakDbfs, 0) + " dB of full scale"
                    : "The signal is noisy: " + decimals(*in.snrDb, 0) + " dB above the noise";
    f.evidence = "Half the swing is " + (in.snrDb ? decimals(*in.snrDb, 1) + " dB" : std::string("an unknown ratio")) +
                 " above the noise";
    if (in.peakDbfs) f.evidence += " and the largest sample " + decimals(*in.peakDbfs, 1) + " dB of full scale";
    f.evidence += "; the noise alone displaces single instants by " + percent(s.noisePercent(), 2) + " rms.";
    f.lookAt =
        "Input level and gain of the sound card, the series resistor or stage at the loop, cables and their "
        "screens, microphone boost.";
    f.confirm =
        "Raise the level step by step while watching the level meter; it must stay clear of clipping." + kLoopOff;
    f.confidence = noisy && faint ? 0.97 : 0.92;
    const double byNoise = noisy ? 0.5 + 0.5 * (kMostNoiseDb - *in.snrDb) / (kMostNoiseDb - kNoiseLimitDb) : 0.0;
    return RankedFinding{f, std::max(byNoise, faint ? 0.65 : 0.0)};
}

std::optional<RankedFinding> hum(const Symptoms& s) {
    const InputReading& in = s.reading.input;
    if (!in.humPercent || *in.humPercent < kHumPercent) return std::nullopt;
    Finding f;
    f.id = "hum";
    f.title = "Mains hum of " + percent(*in.humPercent) + " of the swing";
    f.evidence = "A slow disturbance of " + percent(*in.humPercent) +
                 " of the swing, peak to peak, rides on the line signal; it is not the contacts' doing.";
    f.lookAt =
        "A ground loop between computer and machine, an unscreened cable beside mains leads, the loop supply's own "
        "ripple.";
    f.confirm =
        "Run the computer from its battery, or through an isolating transformer at the audio input, and see the hum "
        "go. With the tape stopped it is seen alone on the grid." +
        kLoopOff;
    f.confidence = 0.93;
    return RankedFinding{f, *in.humPercent / kHumLimit};
}

std::optional<RankedFinding> clipped(const Symptoms& s) {
    const double clippedPercent = s.reading.input.clippedPercent;
    if (clippedPercent < kClippedPercent) return std::nullopt;
    Finding f;
    f.id = "clipped";
    f.title = "The input is overdriven: " + percent(clippedPercent) + " of the samples clip";
    const double peak = s.reading.input.peakDbfs.value_or(0.0);
    f.evidence = percent(clippedPercent);
    f.evidence += std::abs(peak) < kAtFullScaleDb
                      ? " of all samples lie at full scale"
                      : " of all samples are cut off at " + decimals(peak, 1) + " dB of full scale";
    f.evidence += "; levels and coupling cannot be told well from flattened samples.";
    f.lookAt = "Input gain of the sound card, microphone boost, the stage or divider at the loop.";
    f.confirm = "Turn the gain down until the level meter shows no clipping, then measure again." + kLoopOff;
    f.confidence = 0.97;
    // Behind a coupling flattened samples spoil the restoring of the line: what else stands out may come of that.
    const bool spoils = clippedPercent > kSpoilingPercent && !s.reading.input.couplingHz.empty();
    return RankedFinding{f, spoils ? kFirst : 1.0 + std::min(1.0, clippedPercent / 20.0)};
}

std::optional<RankedFinding> reversed(const Symptoms& s) {
    if (!s.reading.input.inverted.value_or(false)) return std::nullopt;
    Finding f;
    f.id = "reversed";
    f.title = "The signal arrives reversed; it is read the right way round";
    f.evidence =
        "Read one way round the line falls into characters with start and stop, the other way it does not: mark "
        "and space are exchanged on the way from the loop to the samples.";
    f.lookAt =
        "Leads exchanged between loop, stage and sound card, or a sound card that inverts. Nothing in the machine.";
    f.confirm = "Nothing needs doing: the readings are the same either way.";
    f.confidence = 0.97;
    return RankedFinding{f, kRemark};
}

}  // namespace trueunit
