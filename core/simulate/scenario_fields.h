// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <initializer_list>
#include <nlohmann/json.hpp>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "core/result.h"

namespace trueunit {

// Reads the keys of one JSON object into values, each within its range. The first thing wrong is kept as one
// sentence that names the key with its path ("faults.bias_percent"); later reads then do nothing.
// Borrows the JSON and the place for the error. close() at the end refuses keys nobody asked for.
class ScenarioFields {
public:
    using Json = nlohmann::json;
    static constexpr std::size_t kMostEntries = 64;  // of any list in a scenario

    ScenarioFields(const Json& value, std::string path, std::optional<Error>& error);

    bool has(const char* key) const { return object_ != nullptr && object_->contains(key); }
    void require(const char* key);
    void number(const char* key, double& value, double low, double high);
    void number(const char* key, std::optional<double>& value, double low, double high);
    void numbers(const char* key, std::vector<double>& values, std::size_t most, double low, double high);
    void text(const char* key, std::string& value, std::size_t mostBytes);
    void texts(const char* key, std::vector<std::string>& values, std::size_t most);
    void flag(const char* key, bool& value);

    template <class Integer>
    void integer(const char* key, Integer& value, double low, double high) {
        double read = static_cast<double>(value);
        if (wholeNumber(key, read, low, high)) value = static_cast<Integer>(read);
    }

    template <class Value>
    void choice(const char* key, Value& value, std::initializer_list<std::pair<const char*, Value>> choices) {
        std::string names;
        const Json* entry = find(key);
        if (!entry) return;
        for (const auto& [name, chosen] : choices) {
            if (*entry == name) {
                value = chosen;
                return;
            }
            names += (names.empty() ? "" : ", ") + std::string(name);
        }
        refuse(key, "must be one of " + names);
    }

    template <class Read>
    void object(const char* key, Read read) {
        if (const Json* entry = find(key)) readOne(*entry, pathOf(key), read);
    }

    template <class Read>  // read(fields, name) for each key
    void named(const char* key, std::size_t most, Read read) {
        const Json* entry = find(key);
        if (!entry) return;
        if (!entry->is_object() || entry->size() > most)
            return refuse(key, "must be an object of at most " + std::to_string(most) + " keys");
        for (const auto& [name, value] : entry->items())
            readOne(value, pathOf(key) + "." + name, [&, &n = name](ScenarioFields& f) { read(f, n); });
    }

    template <class Read>
    void list(const char* key, std::size_t most, Read read) {
        const Json* entry = findList(key, most);
        if (!entry) return;
        for (std::size_t i = 0; i < entry->size(); ++i)
            readOne((*entry)[i], pathOf(key) + "[" + std::to_string(i) + "]", read);
    }

    void refuse(const char* key, const std::string& why);
    void close();

private:
    const Json* find(const char* key);
    const Json* findList(const char* key, std::size_t most);
    bool wholeNumber(const char* key, double& value, double low, double high);
    std::optional<double> ranged(const char* key, const Json& entry, double low, double high);
    std::string pathOf(const std::string& key) const { return path_.empty() ? key : path_ + "." + key; }

    template <class Read>
    void readOne(const Json& value, const std::string& path, Read read) {
        ScenarioFields fields(value, path, error_);
        read(fields);
        fields.close();
    }

    const Json* object_ = nullptr;
    std::string path_;
    std::optional<Error>& error_;
    std::set<std::string> asked_;
};

}  // namespace trueunit
