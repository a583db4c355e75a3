// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/options.h"
#include "core/report/fields.h"
#include "core/report/limits.h"
#include "core/report/reading.h"

namespace trueunit {

// A reading whole, with the options and limits it was made by.
TRUEUNIT_FIELDS(Measured) {
    f("value", v.value);
    f("uncertainty", v.uncertainty);
}

TRUEUNIT_FIELDS(InputReading) {
    f("kind", v.kind);
    f("inverted", v.inverted);
    f("rate_hz", v.rateHz);
    f("seconds", v.seconds);
    f("snr_db", v.snrDb);
    f("hum_percent", v.humPercent);
    f("rise_to_mark_ms", v.riseToMarkMs);
    f("rise_to_space_ms", v.riseToSpaceMs);
    f("peak_dbfs", v.peakDbfs);
    f("coupling_hz", v.couplingHz);
    f("clipped_percent", v.clippedPercent);
    f("front_end_rise_ms", v.frontEndRiseMs);
    f("gaps", v.gaps);
    f("slice_percent", v.slicePercent);
    f("tone_hz", v.toneHz);
    f("shift_hz", v.shiftHz);
    f("level_steps", v.levelSteps);
}

TRUEUNIT_FIELDS(TextReading) {
    f("code", v.code);
    f("decoded", v.decoded);
    f("characters", v.characters);
    f("framing_errors", v.framingErrors);
    f("wrong_characters", v.wrongCharacters);
    f("feed_slips", v.feedSlips);
    f("compared", v.compared);
    f("round", v.round);
}

TRUEUNIT_FIELDS(SpeedReading) {
    f("nominal_baud", v.nominalBaud);
    f("nominal_unit_ms", v.nominalUnitMs);
    f("unit_ms", v.unitMs);
    f("baud", v.baud);
    f("error_percent", v.errorPercent);
    f("over", v.over);
    f("wander_percent", v.wanderPercent);
    f("stop_spread_units", v.stopSpreadUnits);
    f("character_ms", v.characterMs);
    f("operations_per_minute", v.operationsPerMinute);
    f("stop_units", v.stopUnits);
}

TRUEUNIT_FIELDS(CyclicLine) {
    f("amplitude_percent", v.amplitudePercent);
    f("hz", v.hz);
    f("per_character", v.perCharacter);
    f("shifts_start", v.shiftsStart);
}

TRUEUNIT_FIELDS(DistortionReading) {
    f("gross_percent", v.grossPercent);
    f("synchronous_percent", v.synchronousPercent);
    f("bias_percent", v.biasPercent);
    f("end_percent", v.endPercent);
    f("characteristic_percent", v.characteristicPercent);
    f("fortuitous_rms_percent", v.fortuitousRmsPercent);
    f("fortuitous_peak_percent", v.fortuitousPeakPercent);
    f("cyclic", v.cyclic);
    f("together_percent", v.togetherPercent);
    f("apart_percent", v.apartPercent);
    f("fortuitous_over", v.fortuitousOver);
}

TRUEUNIT_FIELDS(InstantReading) {
    f("k", v.k);
    f("to", v.to);
    f("count", v.count);
    f("mean_percent", v.meanPercent);
    f("rms_percent", v.rmsPercent);
    f("min_percent", v.minPercent);
    f("max_percent", v.maxPercent);
}

TRUEUNIT_FIELDS(LevelReading) {
    f("level", v.level);
    f("marks_expected", v.marksExpected);
    f("marks_missed", v.marksMissed);
    f("spaces_expected", v.spacesExpected);
    f("spaces_filled", v.spacesFilled);
}

TRUEUNIT_FIELDS(MarginBound) {
    f("percent", v.percent);
    f("character", v.character);
    f("print", v.print);
}

TRUEUNIT_FIELDS(LevelMargin) {
    f("level", v.level);
    f("low", v.low);
    f("high", v.high);
}

TRUEUNIT_FIELDS(MarginReading) {
    f("low_percent", v.lowPercent);
    f("high_percent", v.highPercent);
    f("levels", v.levels);
}

TRUEUNIT_FIELDS(ContactReading) {
    f("bounces", v.bounces);
    f("longest_ms", v.longestMs);
    f("bounced_closures", v.bouncedClosures);
    f("closures", v.closures);
}

TRUEUNIT_FIELDS(EvidencePlace) {
    f("k", v.k);
    f("to", v.to);
}

TRUEUNIT_FIELDS(EvidencePlaces) {
    f("instants", v.instants);
    f("level", v.level);
    f("characters", v.characters);
    f("slips", v.slips);
    f("speed", v.speed);
    f("bounces", v.bounces);
}

TRUEUNIT_FIELDS(DriveExplanation) {
    f("expected_baud", v.expectedBaud);
    f("error_percent", v.errorPercent);
    f("causes", v.causes);
    f("speed_words", v.speedWords);
}

TRUEUNIT_FIELDS(GearWanted) {
    f("baud", v.baud);
    f("ratio", v.ratio);
    f("driving_teeth", v.drivingTeeth);
    f("driven_teeth", v.drivenTeeth);
    f("error_percent", v.errorPercent);
}

TRUEUNIT_FIELDS(DriveReading) {
    f("card", v.card);
    f("explanation", v.explanation);
    f("gears", v.gears);
}

TRUEUNIT_FIELDS(MachineCard) {
    f("name", v.name);
    f("title", v.title);
    f("code", v.code);
    f("baud", v.baud);
    f("stop_units", v.stopUnits);
    f("motor", v.motor);
    f("mains_hz", v.mainsHz);
    f("motor_turns", v.motorTurns);
    f("driving_teeth", v.drivingTeeth);
    f("driven_teeth", v.drivenTeeth);
    f("shaft_turns", v.shaftTurns);
}

TRUEUNIT_FIELDS(Finding) {
    f("id", v.id);
    f("confidence", v.confidence);
    f("title", v.title);
    f("evidence", v.evidence);
    f("look_at", v.lookAt);
    f("confirm", v.confirm);
    f("seen_at", v.seenAt);
    f("minor", v.minor);
}

TRUEUNIT_FIELDS(JudgedReading) {
    f("key", v.key);
    f("judgement", v.judgement);
    f("limit", v.limit);
    f("more", v.more);
    f("missing", v.missing);
    f("pulled", v.pulled);
    f("window", v.window);
}

TRUEUNIT_FIELDS(Verdict) {
    f("limits", v.limits);
    f("within", v.within);
    f("exceeded", v.exceeded);
    f("judged", v.judged);
}

TRUEUNIT_FIELDS(SetAsideReading) {
    f("bias_percent", v.biasPercent);
    f("end_percent", v.endPercent);
    f("error_percent", v.errorPercent);
}

TRUEUNIT_FIELDS(Reading) {
    f("input", v.input);
    f("text", v.text);
    f("speed", v.speed);
    f("distortion", v.distortion);
    f("instants", v.instants);
    f("levels", v.levels);
    f("margin", v.margin);
    f("contact", v.contact);
    f("drive", v.drive);
    f("findings", v.findings);
    f("verdict", v.verdict);
    f("notes", v.notes);
    f("set_aside", v.setAside);
}

TRUEUNIT_FIELDS(Options) {
    f("baud", v.baud);
    f("stop_units", v.stopUnits);
    f("code", v.code);
    f("input", v.input);
    f("tones_hz", v.tonesHz);
    f("window_characters", v.windowCharacters);
    f("slice_percent", v.slicePercent);
    f("expect", v.expect);
    f("clock_ppm", v.clockPpm);
    f("card", v.card);
}

TRUEUNIT_FIELDS(Limits) {
    f("name", v.name);
    f("title", v.title);
    f("origin", v.origin);
    f("kind", v.kind);
    f("bias_percent", v.biasPercent);
    f("end_percent", v.endPercent);
    f("gross_percent", v.grossPercent);
    f("synchronous_percent", v.synchronousPercent);
    f("speed_percent", v.speedPercent);
    f("states_bias", v.statesBias);
    f("states_end", v.statesEnd);
    f("states_gross", v.statesGross);
    f("states_synchronous", v.statesSynchronous);
    f("states_speed", v.statesSpeed);
}

}  // namespace trueunit
