// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/frame_json.h"

#include <array>
#include <nlohmann/json.hpp>
#include <type_traits>

#include "core/report/float_text.h"
#include "core/report/frame_fields.h"

namespace trueunit {

namespace {

using Json = nlohmann::ordered_json;
constexpr int kVersion = 1;

template <class E>
struct Names;
template <>
struct Names<Condition> {
    static constexpr std::array kAll = {"space", "mark"};
};
template <>
struct Names<InputKind> {
    static constexpr std::array kAll = {"auto", "loop", "tone", "two-tone"};
};
template <>
struct Names<SignalState> {
    static constexpr std::array kAll = {"waiting", "silent", "searching", "reading", "idle"};
};

template <>
struct Names<MachineCard::Motor> {
    static constexpr std::array kAll = {"synchronous", "governed"};
};
template <>
struct Names<Judgement> {
    static constexpr std::array kAll = {"in", "out", "open"};
};
template <>
struct Names<LimitsOrigin> {
    static constexpr std::array kAll = {"published", "practice", "own"};
};

// ---- writing
struct Writer {
    Json& to;
    template <class T>
    void operator()(const char* key, const T& value) {
        to[key] = json(value);
    }

    template <class T>
    static Json json(const T& value) {
        if constexpr (std::is_enum_v<T>)
            return Names<T>::kAll[static_cast<std::size_t>(value)];
        else if constexpr (std::is_arithmetic_v<T> || std::is_same_v<T, std::string>)
            return value;
        else if constexpr (std::is_same_v<T, std::vector<float>>)
            return floatsToText(value);
        else
            return record(value);
    }
    template <class T>
    static Json json(const std::optional<T>& value) {
        return value ? json(*value) : Json(nullptr);
    }
    template <class T>
    static Json json(const std::shared_ptr<const T>& value) {
        return value ? json(*value) : Json(nullptr);
    }
    static Json json(const std::vector<float>& value) { return floatsToText(value); }
    template <class T>
    static Json json(const std::vector<T>& values) {
        Json all = Json::array();
        for (const T& v : values) all.push_back(json(v));
        return all;
    }
    template <class T, std::size_t N>
    static Json json(const std::array<T, N>& values) {
        Json all = Json::array();
        for (const T& v : values) all.push_back(json(v));
        return all;
    }
    template <class T>
    static Json record(const T& value) {
        Json object = Json::object();
        Writer inside{object};
        Fields<T>::visit(inside, value);
        return object;
    }
};

// ---- reading: what does not fit its field leaves the default
struct Reader {
    const Json& from;
    template <class T>
    void operator()(const char* key, T& value) {
        if (const auto at = from.find(key); at != from.end()) read(*at, value);
    }

    template <class T>
    static void read(const Json& json, T& value) {
        if constexpr (std::is_enum_v<T>)
            readName(json, value);
        else if constexpr (std::is_same_v<T, bool>)
            value = json.is_boolean() ? json.template get<bool>() : value;
        else if constexpr (std::is_arithmetic_v<T>)
            value = json.is_number() ? json.template get<T>() : value;
        else if constexpr (std::is_same_v<T, std::string>)
            value = json.is_string() ? json.template get<std::string>() : value;
        else if (json.is_object()) {
            Reader inside{json};
            Fields<T>::visit(inside, value);
        }
    }
    template <class E>
    static void readName(const Json& json, E& value) {
        for (std::size_t i = 0; i < Names<E>::kAll.size(); ++i)
            if (json == Names<E>::kAll[i]) value = static_cast<E>(i);
    }
    template <class T>
    static void read(const Json& json, std::optional<T>& value) {
        if (json.is_null()) return value.reset();
        read(json, value.emplace());
    }
    template <class T>
    static void read(const Json& json, std::shared_ptr<const T>& value) {
        if (!json.is_object()) return;
        auto made = std::make_shared<T>();
        read(json, *made);
        value = std::move(made);
    }
    static void read(const Json& json, std::vector<float>& value) {
        if (!json.is_string()) return;
        if (auto floats = floatsFromText(json.get_ref<const std::string&>())) value = std::move(*floats);
    }
    template <class T>
    static void read(const Json& json, std::vector<T>& values) {
        if (!json.is_array()) return;
        values.clear();
        for (const Json& one : json) {
            T value{};
            read(one, value);
            values.push_back(std::move(value));
        }
    }
    template <class T, std::size_t N>
    static void read(const Json& json, std::array<T, N>& values) {
        for (std::size_t i = 0; i < N && i < json.size() && json.is_array(); ++i) read(json[i], values[i]);
    }
};

// A null among the traces would surprise the widgets, which draw every one of them.
bool whole(const Snapshot& snapshot) {
    for (const auto& trace : snapshot.traces)
        if (!trace) return false;
    return true;
}

}  // namespace

std::string frameJson(const FrozenFrame& frame) {
    Json object{{"frame", kVersion}};
    Writer writer{object};
    Fields<FrozenFrame>::visit(writer, frame);
    return object.dump(-1, ' ', false, Json::error_handler_t::replace);
}

Result<FrozenFrame> frameFromJson(const std::string& text) {
    const Json object = Json::parse(text, nullptr, false);
    if (!object.is_object() || !object.contains("frame"))
        return Error{"This is no frame that Trueunit has written, or only a part of one."};
    FrozenFrame frame;
    Reader reader{object};
    Fields<FrozenFrame>::visit(reader, frame);
    if (frame.before && !whole(*frame.before)) frame.before.reset();
    if (!frame.snapshot || !whole(*frame.snapshot)) return Error{"The frame is incomplete: its picture is missing."};
    return frame;
}

}  // namespace trueunit
