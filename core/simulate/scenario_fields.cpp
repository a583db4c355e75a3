// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/simulate/scenario_fields.h"

#include <cmath>
#include <sstream>

namespace trueunit {

namespace {

std::string plain(double value) {
    std::ostringstream out;
    out.precision(12);
    out << value;
    return out.str();
}

std::string shown(const std::string& path) { return path.empty() ? "The scenario" : "\"" + path + "\""; }

}  // namespace

ScenarioFields::ScenarioFields(const Json& value, std::string path, std::optional<Error>& error)
    : path_(std::move(path)), error_(error) {
    if (value.is_object()) {
        object_ = &value;
    } else if (!error_) {
        error_ = Error{shown(path_) + " must be an object in braces."};
    }
}

void ScenarioFields::refuse(const char* key, const std::string& why) {
    if (!error_) error_ = Error{shown(pathOf(key)) + " " + why + "."};
}

void ScenarioFields::require(const char* key) {
    if (object_ && !has(key)) refuse(key, "is missing");
}

const ScenarioFields::Json* ScenarioFields::find(const char* key) {
    asked_.insert(key);
    if (error_ || !has(key)) return nullptr;
    return &(*object_)[key];
}

const ScenarioFields::Json* ScenarioFields::findList(const char* key, std::size_t most) {
    const Json* entry = find(key);
    if (!entry) return nullptr;
    if (entry->is_array() && entry->size() <= most) return entry;
    refuse(key, "must be a list of at most " + std::to_string(most) + " entries");
    return nullptr;
}

std::optional<double> ScenarioFields::ranged(const char* key, const Json& entry, double low, double high) {
    if (!entry.is_number()) {
        refuse(key, "must be a number");
        return std::nullopt;
    }
    const auto value = entry.get<double>();
    if (value >= low && value <= high) return value;
    refuse(key, "must lie between " + plain(low) + " and " + plain(high) + ", not at " + plain(value));
    return std::nullopt;
}

void ScenarioFields::number(const char* key, double& value, double low, double high) {
    const Json* entry = find(key);
    if (!entry) return;
    if (const auto read = ranged(key, *entry, low, high)) value = *read;
}

void ScenarioFields::number(const char* key, std::optional<double>& value, double low, double high) {
    const Json* entry = find(key);
    if (!entry) return;
    if (const auto read = ranged(key, *entry, low, high)) value = read;
}

void ScenarioFields::numbers(const char* key, std::vector<double>& values, std::size_t most, double low, double high) {
    const Json* entry = findList(key, most);
    if (!entry) return;
    for (const Json& each : *entry)
        if (const auto read = ranged(key, each, low, high)) values.push_back(*read);
}

bool ScenarioFields::wholeNumber(const char* key, double& value, double low, double high) {
    const Json* entry = find(key);
    if (!entry) return false;
    const auto read = ranged(key, *entry, low, high);
    if (!read) return false;
    if (*read != std::floor(*read)) {
        refuse(key, "must be a whole number, not " + plain(*read));
        return false;
    }
    value = *read;
    return true;
}

void ScenarioFields::text(const char* key, std::string& value, std::size_t mostBytes) {
    const Json* entry = find(key);
    if (!entry) return;
    if (!entry->is_string()) return refuse(key, "must be a text in quotes");
    const auto& read = entry->get_ref<const std::string&>();
    if (read.size() > mostBytes)
        return refuse(key, "must be a text of at most " + std::to_string(mostBytes) + " bytes");
    value = read;
}

void ScenarioFields::texts(const char* key, std::vector<std::string>& values, std::size_t most) {
    const Json* entry = findList(key, most);
    if (!entry) return;
    for (const Json& each : *entry) {
        if (!each.is_string()) return refuse(key, "must be a list of texts in quotes");
        values.push_back(each.get<std::string>());
    }
}

void ScenarioFields::flag(const char* key, bool& value) {
    const Json* entry = find(key);
    if (!entry) return;
    if (!entry->is_boolean()) return refuse(key, "must be true or false");
    value = entry->get<bool>();
}

void ScenarioFields::close() {
    if (!object_ || error_) return;
    for (const auto& [key, value] : object_->items())
        if (!asked_.contains(key)) return refuse(key.c_str(), "is not a known key here");
}

}  // namespace trueunit
