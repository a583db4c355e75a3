// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/limits_json.h"

#include <algorithm>
#include <array>
#include <nlohmann/json.hpp>
#include <optional>

namespace trueunit {

namespace {

using Json = nlohmann::ordered_json;

struct Field {
    const char* key;
    double Limits::*value;
    bool Limits::*stated;
};
constexpr std::array kFields = {
    Field{"bias_percent", &Limits::biasPercent, &Limits::statesBias},
    Field{"end_percent", &Limits::endPercent, &Limits::statesEnd},
    Field{"gross_percent", &Limits::grossPercent, &Limits::statesGross},
    Field{"synchronous_percent", &Limits::synchronousPercent, &Limits::statesSynchronous},
    Field{"error_percent", &Limits::speedPercent, &Limits::statesSpeed},
};
constexpr double kLeast = 0.05;  // percent: closer the instrument itself does not tell
constexpr double kMost = 50.0;
constexpr std::size_t kLongest = 400;
constexpr double kUsualSpeed = 0.75;  // ITU-T S.3 (from memory)

const char* word(LimitsOrigin kind) {
    if (kind == LimitsOrigin::published) return "published";
    return kind == LimitsOrigin::practice ? "practice" : "own";
}

std::optional<Error> readText(const Json& json, const char* key, std::string& into) {
    if (!json.contains(key) || !json[key].is_string() || json[key].get_ref<const std::string&>().empty())
        return Error{std::string("A set of limits wants \"") + key + "\" with some words."};
    into = json[key].get<std::string>();
    return std::nullopt;
}

std::optional<Error> readOrigin(const Json& json, Limits& limits) {
    std::string origin;
    if (auto e = readText(json, "origin", origin)) return e;
    for (const LimitsOrigin kind : {LimitsOrigin::published, LimitsOrigin::practice, LimitsOrigin::own})
        if (origin == word(kind)) {
            limits.kind = kind;
            return std::nullopt;
        }
    return Error{"The origin of a set of limits is published, practice or own, not \"" + origin + "\"."};
}

std::optional<Error> readFields(const Json& json, Limits& limits) {
    for (const Field& f : kFields) {
        limits.*f.stated = json.contains(f.key) && !json[f.key].is_null();
        if (!(limits.*f.stated)) continue;
        if (!json[f.key].is_number()) return Error{std::string("\"") + f.key + "\" of a set of limits is no number."};
        limits.*f.value = json[f.key].get<double>();
    }
    return std::nullopt;
}

}  // namespace

std::optional<Error> problemOf(const Limits& limits) {
    if (limits.name.empty() || limits.name.size() > 40 ||
        limits.name.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789-") != std::string::npos)
        return Error{"The name of a set of limits is up to 40 small letters, digits and hyphens."};
    if (limits.title.empty() || limits.title.size() > kLongest || limits.origin.size() > kLongest)
        return Error{"Title and source of a set of limits want up to 400 letters each."};
    bool any = false;
    for (const Field& f : kFields) {
        if (!(limits.*f.stated)) continue;
        any = true;
        if (!(limits.*f.value >= kLeast && limits.*f.value <= kMost))
            return Error{"A limit must lie between 0.05 and 50 %."};
    }
    if (!any) return Error{"A set of limits must state at least one limit."};
    return std::nullopt;
}

// Bias and end displace instants by their own size, so none can be larger than the largest displacement allowed.
Limits withoutGaps(Limits l) {
    double room = kMost;
    if (l.statesGross) room = std::min(room, l.grossPercent);
    if (l.statesSynchronous) room = std::min(room, l.synchronousPercent);
    if (!l.statesGross) l.grossPercent = room;
    if (!l.statesSynchronous) l.synchronousPercent = room;
    if (!l.statesBias) l.biasPercent = room;
    if (!l.statesEnd) l.endPercent = room;
    if (!l.statesSpeed) l.speedPercent = kUsualSpeed;
    return l;
}

Result<Limits> parseLimits(std::string_view text) {
    const Json json = Json::parse(text.begin(), text.end(), nullptr, false);
    if (!json.is_object()) return Error{"This is no set of limits: not a JSON object."};
    Limits limits;
    if (auto e = readText(json, "name", limits.name)) return *e;
    if (auto e = readText(json, "title", limits.title)) return *e;
    if (auto e = readText(json, "source", limits.origin)) return *e;
    if (auto e = readOrigin(json, limits)) return *e;
    if (auto e = readFields(json, limits)) return *e;
    if (auto e = problemOf(limits)) return *e;
    return withoutGaps(limits);
}

std::string limitsJson(const Limits& limits) {
    Json json{{"name", limits.name}, {"title", limits.title}, {"origin", word(limits.kind)}, {"source", limits.origin}};
    for (const Field& f : kFields)
        if (limits.*f.stated) json[f.key] = limits.*f.value;
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace trueunit
