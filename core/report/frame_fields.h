// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/frozen_frame.h"
#include "core/report/reading_fields.h"

namespace trueunit {

// What a frozen frame holds beside the reading.
TRUEUNIT_FIELDS(TraceInstant) {
    f("k", v.k);
    f("to", v.to);
    f("seconds", v.seconds);
    f("displacement_percent", v.displacementPercent);
    f("steady_seconds", v.steadySeconds);
}

TRUEUNIT_FIELDS(CharacterTrace) {
    f("number", v.number);
    f("code", v.code);
    f("print", v.print);
    f("stop_present", v.stopPresent);
    f("start_seconds", v.startSeconds);
    f("first_sample_seconds", v.firstSampleSeconds);
    f("sample_seconds", v.sampleSeconds);
    f("level", v.level);
    f("instants", v.instants);
}

TRUEUNIT_FIELDS(DisplacementDot) {
    f("number", v.number);
    f("k", v.k);
    f("to", v.to);
    f("percent", v.percent);
}

TRUEUNIT_FIELDS(TrailPoint) {
    f("number", v.number);
    f("seconds", v.seconds);
    f("bias_percent", v.biasPercent);
    f("uncertainty", v.uncertainty);
    f("over", v.over);
    f("baud", v.baud);
}

TRUEUNIT_FIELDS(TapeCharacter) {
    f("number", v.number);
    f("code", v.code);
    f("print", v.print);
    f("stop_present", v.stopPresent);
    f("due", v.due);
    f("presumed", v.presumed);
    f("due_print", v.duePrint);
    f("again", v.again);
    f("passed", v.passed);
    f("passed_print", v.passedPrint);
    f("instead", v.instead);
}

TRUEUNIT_FIELDS(Nudge) {
    f("number", v.number);
    f("seconds", v.seconds);
    f("found_by", v.foundBy);
    f("before", v.before);
    f("after", v.after);
    f("step", v.step);
}

TRUEUNIT_FIELDS(Snapshot) {
    f("serial", v.serial);
    f("state", v.state);
    f("state_text", v.stateText);
    f("seconds", v.seconds);
    f("level_dbfs", v.levelDbfs);
    f("clipping_now", v.clippingNow);
    f("lost_samples", v.lostSamples);
    f("options", v.options);
    f("limits", v.limits);
    f("levels", v.levels);
    f("grid_unit_seconds", v.gridUnitSeconds);
    f("reading", v.reading);
    f("window_used", v.windowUsed);
    f("traces", v.traces);
    f("dots", v.dots);
    f("trail", v.trail);
    f("tape", v.tape);
    f("nudges", v.nudges);
    f("bias_since_nudge", v.biasSinceNudge);
}

TRUEUNIT_FIELDS(Note) {
    f("units", v.units);
    f("level", v.level);
    f("text", v.text);
}

TRUEUNIT_FIELDS(FrozenFrame) {
    f("character_number", v.characterNumber);
    f("taken_seconds_utc", v.takenSecondsUtc);
    f("file_seconds_utc", v.fileSecondsUtc);
    f("cursors", v.cursors);
    f("notes", v.notes);
    f("machine", v.machine);
    f("remarks", v.remarks);
    f("input_description", v.inputDescription);
    f("self_check", v.selfCheck);
    f("snapshot", v.snapshot);
    f("before", v.before);
    f("before_taken_seconds_utc", v.beforeTakenSecondsUtc);
}

}  // namespace trueunit
