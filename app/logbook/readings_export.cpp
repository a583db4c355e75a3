// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/logbook/readings_export.h"

#include <algorithm>
#include <nlohmann/json.hpp>

#include "app/logbook/visit_record.h"
#include "core/report/reading_json.h"

namespace trueunit {

namespace {

using Json = nlohmann::ordered_json;

// Columns of the table after the frame's own: the reading's JSON, by path.
struct Column {
    const char* name;
    const char* path;
};
constexpr Column kCsvColumns[] = {{"nominal_baud", "/speed/nominal_baud"},
                                  {"baud", "/speed/baud"},
                                  {"speed_error_percent", "/speed/error_percent"},
                                  {"speed_error_uncertainty", "/speed/error_uncertainty"},
                                  {"operations_per_minute", "/speed/operations_per_minute"},
                                  {"stop_units", "/speed/stop_units"},
                                  {"bias_percent", "/distortion/bias_percent"},
                                  {"bias_uncertainty", "/distortion/bias_uncertainty"},
                                  {"end_percent", "/distortion/end_percent"},
                                  {"end_uncertainty", "/distortion/end_uncertainty"},
                                  {"gross_percent", "/distortion/gross_percent"},
                                  {"synchronous_percent", "/distortion/synchronous_percent"},
                                  {"characteristic_percent", "/distortion/characteristic_percent"},
                                  {"fortuitous_rms_percent", "/distortion/fortuitous_rms_percent"},
                                  {"fortuitous_peak_percent", "/distortion/fortuitous_peak_percent"},
                                  {"margin_low_percent", "/margin/low_percent"},
                                  {"margin_high_percent", "/margin/high_percent"},
                                  {"code", "/text/code"},
                                  {"characters", "/text/characters"},
                                  {"framing_errors", "/text/framing_errors"},
                                  {"limits", "/verdict/limits"},
                                  {"within", "/verdict/within"}};

// Quoted where the standard asks for it. A text that a spreadsheet would take for a formula gets a space before it.
std::string field(std::string text) {
    if (!text.empty() && std::string("=+-@\t\r").find(text[0]) != std::string::npos) text.insert(0, 1, ' ');
    if (text.find_first_of(",\"\r\n") == std::string::npos) return text;
    for (std::size_t at = text.find('"'); at != std::string::npos; at = text.find('"', at + 2)) text.insert(at, 1, '"');
    return '"' + text + '"';
}

std::string cell(const Json& reading, const char* path) {
    const Json::json_pointer at(path);
    if (!reading.contains(at) || reading[at].is_null()) return {};
    return reading[at].is_string() ? field(reading[at].get<std::string>()) : reading[at].dump();
}

struct Read {
    const FoundFrame* found;
    Json reading;
};

Result<std::vector<Read>> readAll(const Store& store, const std::vector<FoundFrame>& frames) {
    std::vector<const FoundFrame*> order;
    for (const FoundFrame& f : frames) order.push_back(&f);
    std::stable_sort(order.begin(), order.end(),
                     [](const FoundFrame* a, const FoundFrame* b) { return a->row.taken < b->row.taken; });
    std::vector<Read> all;
    for (const FoundFrame* f : order) {
        const Result<KeptFrame> kept = readFrame(store, f->row.id);
        if (!kept) return kept.error();
        all.push_back({f, Json::parse(readingJson(kept->frame.snapshot->reading))});
    }
    return all;
}

}  // namespace

Result<std::string> readingsCsv(const Store& store, const std::vector<FoundFrame>& frames) {
    const auto all = readAll(store, frames);
    if (!all) return all.error();
    std::string text = "frame,visit,machine,taken,role,remarks,findings";
    for (const Column& c : kCsvColumns) text += std::string(",") + c.name;
    text += "\r\n";
    for (const Read& r : *all) {
        const FrameRow& row = r.found->row;
        text += std::to_string(row.id) + ',' + std::to_string(row.visit) + ',' +
                field(r.found->machineName.toStdString()) + ',' + timeText(row.taken).toStdString() + ',' +
                roleName(row.role).toStdString() + ',' + field(row.remarks.toStdString()) + ',' +
                row.findings.join(QLatin1Char(' ')).toStdString();
        for (const Column& c : kCsvColumns) text += ',' + cell(r.reading, c.path);
        text += "\r\n";
    }
    return text;
}

Result<std::string> readingsJson(const Store& store, const std::vector<FoundFrame>& frames) {
    auto all = readAll(store, frames);
    if (!all) return all.error();
    Json list = Json::array();
    for (Read& r : *all) {
        const FrameRow& row = r.found->row;
        list.push_back({{"frame", row.id},
                        {"uid", row.uid.toStdString()},
                        {"visit", row.visit},
                        {"machine", r.found->machineName.toStdString()},
                        {"taken", timeText(row.taken).toStdString()},
                        {"role", roleName(row.role).toStdString()},
                        {"remarks", row.remarks.toStdString()},
                        {"reading", std::move(r.reading)}});
    }
    return Json{{"schema", 1}, {"frames", list}}.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace trueunit
