// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/finding_ids.h"
#include "core/simulate/scenario_json.h"

namespace trueunit {

namespace {

void readInstantShift(ScenarioFields& f, std::vector<Scenario::InstantShift>& shifts) {
    using Direction = std::optional<Condition>;
    Scenario::InstantShift shift;
    f.require("k");
    f.require("percent");
    f.integer("k", shift.k, 1, 9);
    f.choice<Direction>("to", shift.to,
                        {{"mark", Condition::mark}, {"space", Condition::space}, {"both", std::nullopt}});
    f.number("percent", shift.percent, -60.0, 60.0);
    shifts.push_back(shift);
}

void readCyclic(ScenarioFields& f, std::vector<Scenario::Cyclic>& all) {
    Scenario::Cyclic c;
    f.require("percent");
    f.number("percent", c.percent, 0.0, 40.0);
    f.number("hz", c.hz, 0.01, 200.0);
    f.number("turns_per_character", c.turnsPerCharacter, 0.01, 50.0);
    f.number("phase_turns", c.phaseTurns, -1.0, 1.0);
    f.flag("start", c.start);
    if (f.has("hz") == f.has("turns_per_character"))
        f.refuse("hz", "or \"turns_per_character\" must be given, one of the two");
    all.push_back(c);
}

void readLevelFault(ScenarioFields& f, std::vector<Scenario::LevelFault>& all) {
    Scenario::LevelFault fault;
    f.require("level");
    f.require("fraction");
    f.integer("level", fault.level, 1, 8);
    f.number("fraction", fault.fraction, 0.0, 1.0);
    all.push_back(fault);
}

void readPause(ScenarioFields& f, std::vector<Scenario::Pause>& all) {
    Scenario::Pause pause;
    f.require("seconds");
    f.number("seconds", pause.seconds, 0.0, 600.0);
    f.integer("every_characters", pause.everyCharacters, 1, 100000);
    f.number("at_seconds", pause.atSeconds, 0.0, 7200.0);
    if (f.has("every_characters") == f.has("at_seconds"))
        f.refuse("at_seconds", "or \"every_characters\" must be given, one of the two");
    all.push_back(pause);
}

void readSteady(ScenarioFields& f, Scenario::Faults& a) {
    f.number("speed_percent", a.speedPercent, -20.0, 20.0);
    f.number("bias_percent", a.biasPercent, -60.0, 60.0);
    f.number("end_percent", a.endPercent, -60.0, 60.0);
    f.number("scatter_percent", a.scatterPercent, 0.0, 20.0);
    f.number("start_scatter_percent", a.startScatterPercent, 0.0, 20.0);
    f.number("stop_late_percent", a.stopLatePercent, 0.0, 1000.0);
    f.object("stop_irregular", [&](ScenarioFields& s) {
        s.require("percent");
        s.number("percent", a.stopIrregularPercent, 0.0, 200.0);
        s.choice<bool>("shape", a.stopIrregularUniform, {{"gaussian", false}, {"uniform", true}});
    });
    f.object("speed_wander", [&](ScenarioFields& w) {
        Scenario::SpeedWander wander;
        w.require("percent");
        w.number("percent", wander.percent, 0.0, 10.0);
        w.number("hz", wander.hz, 0.001, 5.0);
        a.speedWander = wander;
    });
}

}  // namespace

void readFaultFields(ScenarioFields& f, Scenario::Faults& a) {
    readSteady(f, a);
    f.list("instants", ScenarioFields::kMostEntries, [&](ScenarioFields& i) { readInstantShift(i, a.instants); });
    f.list("characteristic", ScenarioFields::kMostEntries, [&](ScenarioFields& c) {
        Scenario::Characteristic each;
        c.require("units");
        c.require("percent");
        c.integer("units", each.units, 1, 9);
        c.number("percent", each.percent, -60.0, 60.0);
        a.characteristic.push_back(each);
    });
    f.list("cyclic", 8, [&](ScenarioFields& c) { readCyclic(c, a.cyclic); });
    f.list("missing_marks", 8, [&](ScenarioFields& l) { readLevelFault(l, a.missingMarks); });
    f.list("filled_spaces", 8, [&](ScenarioFields& l) { readLevelFault(l, a.filledSpaces); });
    f.object("bounce", [&](ScenarioFields& b) {
        Scenario::Bounce bounce;
        b.number("ms", bounce.ms, 0.05, 10.0);
        b.integer("openings", bounce.openings, 1, 10);
        b.number("fraction", bounce.fraction, 0.0, 1.0);
        a.bounce = bounce;
    });
    f.list("pauses", ScenarioFields::kMostEntries, [&](ScenarioFields& p) { readPause(p, a.pauses); });
    f.object("feed_slips", [&](ScenarioFields& s) {
        s.number("repeat_fraction", a.feedSlips.repeatFraction, 0.0, 0.5);
        s.number("skip_fraction", a.feedSlips.skipFraction, 0.0, 0.5);
    });
}

void readExpectFields(ScenarioFields& f, Scenario::Expect& expect) {
    f.texts("findings", expect.findings, ScenarioFields::kMostEntries);
    for (const std::string& id : expect.findings)
        if (std::find(kFindingIds.begin(), kFindingIds.end(), id) == kFindingIds.end())
            f.refuse("findings", "names \"" + id + "\", which is no finding");
    f.named("readings", ScenarioFields::kMostEntries, [&](ScenarioFields& r, const std::string& key) {
        Scenario::ExpectedReading reading;
        r.require("value");
        r.require("within");
        r.number("value", reading.value, -1e9, 1e9);
        r.number("within", reading.within, 0.0, 1e9);
        expect.readings[key] = reading;
    });
    f.list("instants", ScenarioFields::kMostEntries, [&](ScenarioFields& i) {
        Scenario::ExpectedInstant instant;
        for (const char* key : {"k", "to", "mean_percent", "within"}) i.require(key);
        i.integer("k", instant.k, 1, 9);
        i.choice<Condition>("to", instant.to, {{"mark", Condition::mark}, {"space", Condition::space}});
        i.number("mean_percent", instant.meanPercent, -100.0, 100.0);
        i.number("within", instant.within, 0.0, 100.0);
        expect.instants.push_back(instant);
    });
    if (f.has("text")) f.text("text", expect.text.emplace(), 20000);
}

}  // namespace trueunit
