// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/self_check.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <cstdio>

#include "core/pipeline.h"
#include "core/simulate/scenario_signal.h"

namespace trueunit {

namespace {

constexpr double kAllowedPercent = 0.1;  // what is asked of the instrument, beside the scatter of the reading itself
constexpr double kSeconds = 9.0;
constexpr double kBiases[] = {-20.0, -10.0, -3.0, 0.0, 3.0, 10.0, 20.0};

struct Wiring {
    const char* words;
    const char* code;
    double baud;
    double stopUnits;
    double rateHz;
    std::vector<double> couplingHz;
    double snrDb;
    bool inverted;
};

const std::vector<Wiring>& wirings() {
    static const std::vector<Wiring> all = {
        {QT_TRANSLATE_NOOP("CheckWords", "45.45 baud, ita2, straight, 60 dB"),
         "ita2",
         45.45,
         1.42,
         48000.0,
         {},
         60.0,
         false},
        {QT_TRANSLATE_NOOP("CheckWords", "50 baud, ita2, coupled at 8 Hz, 40 dB"),
         "ita2",
         50.0,
         1.5,
         48000.0,
         {8.0},
         40.0,
         false},
        {QT_TRANSLATE_NOOP("CheckWords", "50 baud, ita2, coupled at 1 and 20 Hz, 44.1 kHz, 40 dB"),
         "ita2",
         50.0,
         1.5,
         44100.0,
         {1.0, 20.0},
         40.0,
         false},
        {QT_TRANSLATE_NOOP("CheckWords", "75 baud, ita2, coupled at 3 Hz, reversed, 25 dB"),
         "ita2",
         75.0,
         1.5,
         48000.0,
         {3.0},
         25.0,
         true},
        {QT_TRANSLATE_NOOP("CheckWords", "110 baud, ita5, coupled at 8 Hz, 40 dB"),
         "ita5",
         110.0,
         2.0,
         48000.0,
         {8.0},
         40.0,
         false},
    };
    return all;
}

Scenario scenarioOf(const Wiring& c, double bias, std::uint64_t seed) {
    Scenario s;
    s.machine = {"self-check", c.code, c.baud, c.stopUnits};
    s.text.randomCharacters = 200;
    s.text.randomSeed = seed;
    s.seconds = kSeconds;
    s.faults.biasPercent = bias;
    s.card.rateHz = c.rateHz;
    s.card.couplingHz = c.couplingHz;
    s.card.snrDb = c.snrDb;
    s.card.inverted = c.inverted;
    s.seed = seed;
    return s;
}

CheckRow check(const Wiring& c, double bias, std::uint64_t seed) {
    ScenarioSignal signal(scenarioOf(c, bias, seed));
    Options options;
    options.code = c.code;
    Pipeline pipeline(c.rateHz, options, Limits{});
    while (const auto block = signal.nextBlock()) pipeline.push(*block);
    pipeline.finish();
    CheckRow row{c.words, bias, {0.0, -1.0}};
    if (const auto read = pipeline.reading().distortion.biasPercent) row.read = *read;
    return row;
}

}  // namespace

// A signal that was not read at all has no uncertainty, and is not good.
bool CheckRow::good() const {
    return read.uncertainty >= 0.0 && std::abs(residual()) <= kAllowedPercent + read.uncertainty;
}

CheckSummary summaryOf(const std::vector<CheckRow>& rows) {
    CheckSummary s;
    double sum = 0.0, squares = 0.0;
    for (const CheckRow& row : rows) {
        ++s.rows;
        s.good += row.good() ? 1 : 0;
        const double r = row.residual();
        sum += r;
        squares += r * r;
        if (std::abs(r) > std::abs(s.worstPercent)) s.worstPercent = r;
    }
    if (s.rows < 2) return s;
    const double mean = sum / s.rows;
    const double variance = std::max(squares / s.rows - mean * mean, 0.0) * s.rows / (s.rows - 1);
    s.residualPercent = {mean, 2.0 * std::sqrt(variance / s.rows)};
    return s;
}

std::vector<CheckRow> checkInMemory(const std::function<void(double)>& progress, const std::stop_token& stop) {
    std::vector<CheckRow> rows;
    const std::size_t all = wirings().size() * std::size(kBiases);
    for (const Wiring& c : wirings())
        for (const double bias : kBiases) {
            if (stop.stop_requested()) return rows;
            rows.push_back(check(c, bias, rows.size() + 1));
            if (progress) progress(static_cast<double>(rows.size()) / static_cast<double>(all));
        }
    return rows;
}

}  // namespace trueunit
