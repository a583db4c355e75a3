// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/reading_json.h"

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include <optional>
#include "core/report/judge.h"

namespace trueunit {

namespace {

using Json = nlohmann::ordered_json;

Json number(double value) {
    if (!std::isfinite(value)) return nullptr;
    if (value == 0.0) return 0.0;  // no negative zero
    const double exponent = std::floor(std::log10(std::abs(value)));
    const double scale = std::pow(10.0, std::clamp(2.0 - exponent, 4.0, 15.0));
    const double rounded = std::round(value * scale) / scale;
    return std::isfinite(rounded) ? Json(rounded) : Json(value);
}

Json number(const std::optional<double>& value) { return value ? number(*value) : Json(nullptr); }
Json value(const std::optional<Measured>& m) { return m ? number(m->value) : Json(nullptr); }
Json uncertainty(const std::optional<Measured>& m) { return m ? number(m->uncertainty) : Json(nullptr); }

// Whole numbers that people write whole: rates, percentages that were set.
Json plain(double v) {
    if (v == std::round(v) && std::abs(v) < 1e9) return static_cast<long>(v);
    return number(v);
}

Json kindName(InputKind kind) {
    switch (kind) {
        case InputKind::loop:
            return "loop";
        case InputKind::tone:
            return "tone";
        case InputKind::twoTone:
            return "two-tone";
        case InputKind::automatic:
            break;
    }
    return nullptr;
}

const char* conditionName(Condition c) { return c == Condition::mark ? "mark" : "space"; }

Json inputJson(const InputReading& in) {
    const bool opened = in.rateHz > 0.0;  // otherwise nothing of the input was seen
    Json coupling = Json::array();
    for (const double hz : in.couplingHz) coupling.push_back(number(hz));
    return Json{{"kind", kindName(in.kind)},
                {"inverted", in.inverted ? Json(*in.inverted) : Json(nullptr)},
                {"rate_hz", opened ? plain(in.rateHz) : Json(nullptr)},
                {"seconds", opened ? number(in.seconds) : Json(nullptr)},
                {"snr_db", number(in.snrDb)},
                {"coupling_hz", coupling},
                {"clipped_percent", opened ? number(in.clippedPercent) : Json(nullptr)},
                {"gaps", opened ? Json(in.gaps) : Json(nullptr)},
                {"slice_percent", plain(in.slicePercent)}};
}

Json count(const std::optional<long>& n) { return n ? Json(*n) : Json(nullptr); }

Json textJson(const TextReading& text) {
    return Json{{"code", text.code},
                {"decoded", text.decoded},
                {"characters", text.characters},
                {"framing_errors", text.framingErrors},
                {"wrong_characters", count(text.wrongCharacters)},
                {"feed_slips", count(text.feedSlips)}};
}

Json speedJson(const SpeedReading& s) {
    return Json{{"nominal_baud", number(s.nominalBaud)},
                {"unit_ms", number(s.unitMs)},
                {"baud", value(s.baud)},
                {"error_percent", value(s.errorPercent)},
                {"error_uncertainty", uncertainty(s.errorPercent)},
                {"character_ms", value(s.characterMs)},
                {"operations_per_minute", value(s.operationsPerMinute)},
                {"stop_units", value(s.stopUnits)}};
}

Json cyclicJson(const std::optional<std::vector<CyclicLine>>& lines) {
    if (!lines) return nullptr;
    Json all = Json::array();
    for (const CyclicLine& line : *lines)
        all.push_back(Json{{"amplitude_percent", number(line.amplitudePercent)},
                           {"hz", number(line.hz)},
                           {"per_character", number(line.perCharacter)}});
    return all;
}

Json distortionJson(const DistortionReading& d) {
    return Json{{"gross_percent", number(d.grossPercent)},
                {"synchronous_percent", number(d.synchronousPercent)},
                {"bias_percent", value(d.biasPercent)},
                {"bias_uncertainty", uncertainty(d.biasPercent)},
                {"end_percent", value(d.endPercent)},
                {"end_uncertainty", uncertainty(d.endPercent)},
                {"characteristic_percent", number(d.characteristicPercent)},
                {"fortuitous_rms_percent", number(d.fortuitousRmsPercent)},
                {"fortuitous_peak_percent", number(d.fortuitousPeakPercent)},
                {"cyclic", cyclicJson(d.cyclic)}};
}

Json instantsJson(const std::vector<InstantReading>& instants) {
    Json all = Json::array();
    for (const InstantReading& i : instants)
        all.push_back(Json{{"k", i.k},
                           {"to", conditionName(i.to)},
                           {"count", i.count},
                           {"mean_percent", number(i.meanPercent)},
                           {"rms_percent", number(i.rmsPercent)},
                           {"min_percent", number(i.minPercent)},
                           {"max_percent", number(i.maxPercent)}});
    return all;
}

Json levelsJson(const std::optional<std::vector<LevelReading>>& levels) {
    if (!levels) return nullptr;
    Json all = Json::array();
    for (const LevelReading& l : *levels)
        all.push_back(Json{{"level", l.level},
                           {"marks_expected", l.marksExpected},
                           {"marks_missed", l.marksMissed},
                           {"spaces_expected", l.spacesExpected},
                           {"spaces_filled", l.spacesFilled}});
    return all;
}

Json findingsJson(const std::optional<std::vector<Finding>>& findings) {
    if (!findings) return nullptr;
    Json all = Json::array();
    for (const Finding& f : *findings)
        all.push_back(Json{{"id", f.id},
                           {"confidence", number(f.confidence)},
                           {"title", f.title},
                           {"evidence", f.evidence},
                           {"look_at", f.lookAt},
                           {"confirm", f.confirm}});
    return all;
}

Json marginJson(const std::optional<MarginReading>& margin) {
    if (!margin) return nullptr;
    Json levels = Json::array();
    for (const LevelMargin& l : margin->levels) {
        Json level{{"level", l.level}};
        for (const auto& [side, bound] : {std::pair{"low", &l.low}, {"high", &l.high}}) {
            level[std::string(side) + "_percent"] = *bound ? number((*bound)->percent) : Json(nullptr);
            level[std::string(side) + "_character"] = *bound ? Json((*bound)->print) : Json(nullptr);
        }
        levels.push_back(std::move(level));
    }
    return Json{{"low_percent", number(margin->lowPercent)},
                {"high_percent", number(margin->highPercent)},
                {"levels", std::move(levels)}};
}

Json contactJson(const std::optional<ContactReading>& contact) {
    if (!contact) return nullptr;
    return Json{{"bounces", contact->bounces}, {"longest_ms", number(contact->longestMs)}};
}

Json driveJson(const std::optional<DriveReading>& drive) {
    if (!drive) return nullptr;
    Json gears = Json::array();
    for (const GearWanted& g : drive->gears)
        gears.push_back(Json{{"baud", number(g.baud)},
                             {"ratio", plain(g.ratio)},
                             {"driving_teeth", g.drivingTeeth},
                             {"driven_teeth", g.drivenTeeth},
                             {"error_percent", number(g.errorPercent)}});
    return Json{{"card", drive->card},
                {"expected_baud", number(drive->explanation.expectedBaud)},
                {"error_percent", number(drive->explanation.errorPercent)},
                {"speed", drive->explanation.speedWords},
                {"causes", drive->explanation.causes},
                {"gears", gears}};
}

Json verdictJson(const Reading& r) {
    const PlainVerdict v = plainVerdict(r);
    return Json{
        {"limits", r.verdict.limits}, {"within", v.within ? Json(*v.within) : Json(nullptr)}, {"exceeded", v.exceeded}};
}

}  // namespace

std::string readingJson(const Reading& r) {
    const Json whole{{"schema", 1},
                     {"input", inputJson(r.input)},
                     {"text", textJson(r.text)},
                     {"speed", speedJson(r.speed)},
                     {"distortion", distortionJson(r.distortion)},
                     {"instants", instantsJson(r.instants)},
                     {"levels", levelsJson(r.levels)},
                     {"margin", marginJson(r.margin)},
                     {"contact", contactJson(r.contact)},
                     {"drive", driveJson(r.drive)},
                     {"findings", findingsJson(r.findings)},
                     {"verdict", verdictJson(r)},
                     {"notes", r.notes}};
    return whole.dump(2, ' ', false, Json::error_handler_t::replace);
}

}  // namespace trueunit
