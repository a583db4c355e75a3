// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/simulate/scenario.h"

#include <algorithm>
#include <fstream>
#include <iterator>

#include "core/frame/code_table.h"
#include "core/simulate/scenario_json.h"
#include "core/simulate/seeded_random.h"

namespace trueunit {

namespace {

constexpr std::size_t kLargestFile = 1 << 20;
constexpr std::uint64_t kTextStream = 1;

// What no single key can be blamed for: values that do not fit each other. Empty: all well.
std::optional<Error> misfit(const Scenario& s) {
    const CodeTable* code = findCode(s.machine.code);
    if (!code) return Error{"\"machine.code\" must be one of " + codeNames() + "."};
    if (encode(*code, s.plainText()).empty())
        return Error{"\"text.send\" holds nothing that the code " + s.machine.code + " can send."};
    for (const auto& shift : s.faults.instants)
        if (shift.k > code->levels + 1)
            return Error{"\"faults.instants\" names k = " + std::to_string(shift.k) + "; this code ends at " +
                         std::to_string(code->levels + 1) + "."};
    for (const auto* faults : {&s.faults.missingMarks, &s.faults.filledSpaces})
        for (const auto& fault : *faults)
            if (fault.level > code->levels)
                return Error{"\"faults\" names level " + std::to_string(fault.level) + "; this code has " +
                             std::to_string(code->levels) + "."};
    if (s.faults.bounce && s.faults.bounce->ms / 1000.0 > 0.5 * s.nominalUnitSeconds())
        return Error{"\"faults.bounce.ms\" must be at most half a unit."};
    return std::nullopt;
}

std::size_t lineOf(std::string_view json, std::size_t byte) {
    const auto end = json.begin() + static_cast<std::ptrdiff_t>(std::min(byte, json.size()));
    return static_cast<std::size_t>(std::count(json.begin(), end, '\n')) + 1;
}

}  // namespace

std::string Scenario::plainText() const {
    if (text.randomCharacters == 0) return text.send;
    constexpr std::string_view kDrawn = "ABCDEFGHIJKLMNOPQRSTUVWXYZ ";
    SeededRandom random(text.randomSeed, kTextStream);
    std::string drawn;
    for (int i = 0; i < text.randomCharacters; ++i)
        drawn += kDrawn[static_cast<std::size_t>(random.uniform() * static_cast<double>(kDrawn.size()))];
    return drawn;
}

Result<Scenario> parseScenario(std::string_view json) {
    if (json.size() > kLargestFile) return Error{"The scenario is larger than a megabyte."};
    ScenarioFields::Json root;
    try {
        root = ScenarioFields::Json::parse(json);
    } catch (const ScenarioFields::Json::parse_error& e) {
        return Error{"The scenario is not readable as JSON in line " + std::to_string(lineOf(json, e.byte)) + "."};
    } catch (const ScenarioFields::Json::exception&) {
        return Error{"The scenario holds a number that is too large."};
    }
    Scenario scenario;
    std::optional<Error> error;
    ScenarioFields fields(root, "", error);
    readScenarioFields(fields, scenario);
    fields.close();
    if (!error) error = misfit(scenario);
    if (error) return *error;
    return scenario;
}

Result<Scenario> readScenario(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    if (!file) return Error{"Cannot open the scenario \"" + path + "\"."};
    std::string json(kLargestFile + 1, '\0');
    file.read(json.data(), static_cast<std::streamsize>(json.size()));
    if (file.bad() || (file.fail() && !file.eof())) return Error{"Cannot read the scenario \"" + path + "\"."};
    json.resize(static_cast<std::size_t>(file.gcount()));
    Result<Scenario> result = parseScenario(json);
    if (!result) return Error{"\"" + path + "\": " + result.error().text};
    return result;
}

}  // namespace trueunit
