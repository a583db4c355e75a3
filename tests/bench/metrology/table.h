// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>
#include <cstdio>
#include <optional>
#include <string>

namespace trueunit::bench {

// One line of the table: what was set, what was read, and the bound it is held against.
struct Row {
    std::string condition;
    std::optional<double> truth;
    std::optional<double> reading;
    std::optional<double> stated;  // uncertainty, 95 %
    double measure = 0.0;          // what is held against the bound: an error, a scatter, a share
    double bound = 0.0;
    bool ok = false;
    std::string remark;
};

// A row whose error may not be larger than the bound; without a reading it fails.
inline Row errorRow(std::string condition, double truth, std::optional<double> reading, std::optional<double> stated,
                    double bound) {
    Row row{std::move(condition), truth, reading, stated, 0.0, bound, false, {}};
    if (!reading) {
        row.remark = "no reading";
        return row;
    }
    row.measure = std::abs(*reading - truth);
    row.ok = row.measure <= bound;
    return row;
}

// Prints rows as they are done and remembers whether any of them failed.
class Table {
public:
    void heading(const char* text, const char* unit) const {
        std::printf("\n%s\n", text);
        std::printf("%-46s %10s %10s %9s %10s %10s %6s\n", "condition", "truth", "reading", "stated", "error", "bound",
                    "ratio");
        std::printf("%-46s %10s %10s %9s %10s %10s\n", "", unit, unit, unit, unit, unit);
    }
    void add(const Row& row) {
        const auto cell = [](const std::optional<double>& v, int width) {
            char text[32];
            if (v)
                std::snprintf(text, sizeof text, "%*.4f", width, *v);
            else
                std::snprintf(text, sizeof text, "%*s", width, "-");
            return std::string(text);
        };
        std::printf("%-46s %s %s %s %10.4f %10.4f %6.3f %s%s%s\n", row.condition.c_str(), cell(row.truth, 10).c_str(),
                    cell(row.reading, 10).c_str(), cell(row.stated, 9).c_str(), row.measure, row.bound,
                    row.bound > 0.0 ? row.measure / row.bound : row.measure, row.ok ? "ok" : "FAIL",
                    row.remark.empty() ? "" : "  ", row.remark.c_str());
        std::fflush(stdout);
        ++rows_;
        if (!row.ok) ++failed_;
    }
    int rows() const { return rows_; }
    int failed() const { return failed_; }

private:
    int rows_ = 0;
    int failed_ = 0;
};

}  // namespace trueunit::bench
