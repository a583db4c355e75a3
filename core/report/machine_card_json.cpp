// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/machine_card_json.h"

#include <cmath>
#include <nlohmann/json.hpp>

#include "core/frame/code_table.h"

namespace trueunit {

namespace {

using Json = nlohmann::ordered_json;

// Reads one value after the other and keeps the first complaint.
class Reader {
public:
    void text(const Json& json, const char* key, std::string& into) {
        if (refused(json.contains(key) && json[key].is_string(), key, "some words")) return;
        into = json[key].get<std::string>();
    }
    void number(const Json& json, const char* key, double& into) {
        if (refused(json.contains(key) && json[key].is_number(), key, "a number")) return;
        into = json[key].get<double>();
    }
    void whole(const Json& json, const char* key, int& into) {
        double value = 0.0;
        number(json, key, value);
        if (problem || refused(value == std::floor(value) && std::abs(value) < 1e6, key, "a whole number")) return;
        into = static_cast<int>(value);
    }
    const Json& group(const Json& json, const char* key) {
        static const Json kNone = Json::object();
        return refused(json.contains(key) && json[key].is_object(), key, "its values") ? kNone : json[key];
    }
    std::optional<Error> problem;

private:
    bool refused(bool good, const char* key, const char* what) {
        if (!good && !problem) problem = Error{std::string("A machine card wants \"") + key + "\" with " + what + "."};
        return !good;
    }
};

}  // namespace

std::optional<Error> problemOf(const MachineCard& card) {
    if (card.name.empty() || card.name.size() > 40 ||
        card.name.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789-") != std::string::npos)
        return Error{"The name of a machine card is up to 40 small letters, digits and hyphens."};
    if (card.title.empty() || card.title.size() > 200)
        return Error{"The title of a machine card wants up to 200 letters."};
    if (!findCode(card.code)) return Error{"The code of a machine card must be one of " + codeNames() + "."};
    const auto within = [](double v, double low, double high) { return v >= low && v <= high; };
    if (!within(card.baud, 20.0, 200.0)) return Error{"The speed of a machine card lies between 20 and 200 baud."};
    if (!within(card.stopUnits, 1.0, 2.5)) return Error{"The stop of a machine card lies between 1 and 2.5 units."};
    if (!within(card.mainsHz, 10.0, 500.0)) return Error{"The mains of a machine card lies between 10 and 500 Hz."};
    if (!within(card.motorTurns, 100.0, 20000.0))
        return Error{"The motor of a machine card makes between 100 and 20000 turns a minute."};
    if (!within(card.drivingTeeth, 1, 999) || !within(card.drivenTeeth, 1, 999))
        return Error{"The gears of a machine card have between 1 and 999 teeth."};
    if (!within(card.shaftTurns, 0.05, 20.0))
        return Error{"The transmitting shaft of a machine card turns between 0.05 and 20 times in each character."};
    return std::nullopt;
}

Result<MachineCard> parseMachineCard(std::string_view text) {
    const Json json = Json::parse(text.begin(), text.end(), nullptr, false);
    if (!json.is_object()) return Error{"This is no machine card: not a JSON object."};
    MachineCard card;
    Reader read;
    std::string kind;
    read.text(json, "name", card.name);
    read.text(json, "title", card.title);
    read.text(json, "code", card.code);
    read.number(json, "baud", card.baud);
    read.number(json, "stop_units", card.stopUnits);
    const Json& motor = read.group(json, "motor");
    read.text(motor, "kind", kind);
    if (kind == "synchronous") read.number(motor, "mains_hz", card.mainsHz);
    read.number(motor, "turns_a_minute", card.motorTurns);
    const Json& gears = read.group(json, "gears");
    read.whole(gears, "driving_teeth", card.drivingTeeth);
    read.whole(gears, "driven_teeth", card.drivenTeeth);
    read.number(json, "shaft_turns_a_character", card.shaftTurns);
    if (read.problem) return *read.problem;
    if (kind != "synchronous" && kind != "governed")
        return Error{"The motor of a machine card is synchronous or governed, not \"" + kind + "\"."};
    card.motor = kind == "governed" ? MachineCard::Motor::governed : MachineCard::Motor::synchronous;
    if (auto e = problemOf(card)) return *e;
    return card;
}

std::string machineCardJson(const MachineCard& card) {
    const bool governed = card.motor == MachineCard::Motor::governed;
    Json motor{{"kind", governed ? "governed" : "synchronous"}};
    if (!governed) motor["mains_hz"] = card.mainsHz;
    motor["turns_a_minute"] = card.motorTurns;
    const Json json{{"name", card.name},
                    {"title", card.title},
                    {"code", card.code},
                    {"baud", card.baud},
                    {"stop_units", card.stopUnits},
                    {"motor", motor},
                    {"gears", {{"driving_teeth", card.drivingTeeth}, {"driven_teeth", card.drivenTeeth}}},
                    {"shaft_turns_a_character", card.shaftTurns}};
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace trueunit
