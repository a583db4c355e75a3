// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/simulate/scenario_json.h"

namespace trueunit {

namespace {

constexpr double kLongestSeconds = 7200.0;
constexpr double kLargestSeed = 9007199254740992.0;  // whole numbers a JSON reader must carry exactly, 2^53

void readMachine(ScenarioFields& f, Scenario::Machine& m) {
    f.text("name", m.name, 80);
    f.text("code", m.code, 20);
    f.number("baud", m.baud, 20.0, 200.0);
    f.number("stop_units", m.stopUnits, 1.0, 2.5);
}

void readText(ScenarioFields& f, Scenario::Text& t) {
    f.text("send", t.send, 20000);
    f.flag("repeat", t.repeat);
    f.object("random", [&](ScenarioFields& r) {
        r.require("characters");
        r.integer("characters", t.randomCharacters, 1, 20000);
        r.integer("seed", t.randomSeed, 0, kLargestSeed);
    });
    if (f.has("send") == f.has("random")) f.refuse("send", "or \"text.random\" must be given, one of the two");
}

void readLine(ScenarioFields& f, Scenario::Line& line) {
    using Edge = Scenario::Edge;
    f.choice<Edge>("edge", line.edge,
                   {{"linear", Edge::linear},
                    {"raised-cosine", Edge::raisedCosine},
                    {"gaussian", Edge::gaussian},
                    {"exponential", Edge::exponential}});
    f.number("rise_us", line.riseUs, 0.0, 5000.0);
    f.number("fall_us", line.fallUs, 0.0, 5000.0);
    f.number("swing", line.swing, 0.01, 1.0);
}

void readCard(ScenarioFields& f, Scenario::Card& card) {
    using Channel = Scenario::Channel;
    f.number("rate_hz", card.rateHz, 44100.0, 192000.0);
    f.number("level_dbfs", card.levelDbfs, -80.0, 20.0);
    f.numbers("coupling_hz", card.couplingHz, 2, 0.5, 40.0);
    f.number("snr_db", card.snrDb, 0.0, 120.0);
    f.object("hum", [&](ScenarioFields& h) {
        Scenario::Hum hum;
        h.number("hz", hum.hz, 10.0, 1000.0);
        h.number("percent", hum.percent, 0.0, 200.0);
        h.numbers("harmonics", hum.harmonics, 20, -10.0, 10.0);
        card.hum = hum;
    });
    f.number("clip", card.clip, 0.01, 2.0);
    f.flag("inverted", card.inverted);
    f.number("dc_offset", card.dcOffset, -0.9, 0.9);
    f.number("clock_ppm", card.clockPpm, -1000.0, 1000.0);
    f.list("gaps", ScenarioFields::kMostEntries, [&](ScenarioFields& g) {
        Scenario::Gap gap;
        g.require("at_seconds");
        g.require("samples");
        g.number("at_seconds", gap.atSeconds, 0.0, kLongestSeconds);
        g.integer("samples", gap.samples, 1, 1e7);
        if (!card.gaps.empty() && gap.atSeconds <= card.gaps.back().atSeconds)
            g.refuse("at_seconds", "must be later than that of the gap before");
        card.gaps.push_back(gap);
    });
    f.choice<Channel>("channel", card.channel,
                      {{"mono", Channel::mono}, {"left", Channel::left}, {"right", Channel::right}});
}

void readMove(ScenarioFields& f, std::vector<Scenario::Move>& moves) {
    Scenario::Move move;
    f.require("at_seconds");
    f.number("at_seconds", move.atSeconds, 0.0, kLongestSeconds);
    f.flag("relative", move.relative);
    f.number("speed_percent", move.speedPercent, -20.0, 20.0);
    f.number("bias_percent", move.biasPercent, -60.0, 60.0);
    f.number("end_percent", move.endPercent, -60.0, 60.0);
    f.number("scatter_percent", move.scatterPercent, -20.0, 20.0);
    f.number("stop_late_percent", move.stopLatePercent, -100.0, 1000.0);
    if (!moves.empty() && move.atSeconds < moves.back().atSeconds)
        f.refuse("at_seconds", "must not be earlier than that of the move before");
    moves.push_back(move);
}

}  // namespace

void readScenarioFields(ScenarioFields& f, Scenario& s) {
    f.require("title");
    f.require("text");
    f.text("title", s.title, 200);
    f.text("story", s.story, 4000);
    f.object("machine", [&](ScenarioFields& m) { readMachine(m, s.machine); });
    f.object("text", [&](ScenarioFields& t) { readText(t, s.text); });
    f.number("lead_in_seconds", s.leadInSeconds, 0.0, 60.0);
    f.number("seconds", s.seconds, 0.0, kLongestSeconds);
    f.object("line", [&](ScenarioFields& l) { readLine(l, s.line); });
    f.object("card", [&](ScenarioFields& c) { readCard(c, s.card); });
    f.object("faults", [&](ScenarioFields& a) { readFaultFields(a, s.faults); });
    f.list("moves", ScenarioFields::kMostEntries, [&](ScenarioFields& m) { readMove(m, s.moves); });
    f.integer("seed", s.seed, 0, kLargestSeed);
    f.object("expect", [&](ScenarioFields& e) { readExpectFields(e, s.expect); });
}

}  // namespace trueunit
