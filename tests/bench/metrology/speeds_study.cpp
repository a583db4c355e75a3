// SPDX-License-Identifier: GPL-3.0-or-later
// Speed and stop found without being told, within two seconds of running tape, heard once as a sound input is.
#include <algorithm>
#include <cmath>

#include "tests/bench/metrology/parallel.h"
#include "tests/bench/metrology/studies.h"
#include "tests/support/measure_twice.h"

namespace trueunit::bench {

namespace {

constexpr double kSeconds = 2.0;     // of running tape
constexpr double kSpeedBound = 0.2;  // percent; two seconds of tape are a dozen characters
constexpr double kStopBound = 0.05;  // units

struct Found {
    double baud = 0.0;
    double stop = 0.0;
    std::optional<Measured> readBaud;
    std::optional<Measured> readStop;
    std::optional<double> nominal;
};

Found hear(double baud, double stopUnits) {
    test::PlainSender sender;
    sender.unit = sender.nominal = namedSpeed(baud).unitSeconds;
    sender.stopUnits = stopUnits;
    sender.snrDb = 40.0;
    sender.polesHz = {8.0};
    sender.scatterPercent = 0.3;
    sender.biasPercent = 3.0;
    sender.seed = static_cast<std::uint64_t>(10.0 * baud + 100.0 * stopUnits);
    const double characterSeconds = (6.0 + stopUnits) * sender.unit;
    auto samples = sender.send(foxCodes(static_cast<std::size_t>(kSeconds / characterSeconds) + 3), 0.0);
    samples.resize(std::min(samples.size(), static_cast<std::size_t>((sender.leadIn + kSeconds) * sender.rateHz)));
    Pipeline pipeline(sender.rateHz, Options{}, Limits{});
    pipeline.push(samples);  // no end is announced: the tape runs on
    const Reading r = pipeline.reading();
    return {1.0 / sender.unit, stopUnits, r.speed.baud, r.speed.stopUnits, r.speed.nominalBaud};
}

// The nominal speed must be the one of the table within 3 %, or none.
bool namedRightly(const Found& f) {
    const auto nearest = nearestStandardSpeed(1.0 / f.baud);
    if (!nearest) return !f.nominal;
    return f.nominal && std::abs(*f.nominal - nearest->baud) < 0.01;
}

}  // namespace

void studySpeeds(Table& table) {
    std::vector<std::pair<double, double>> cases;
    for (const double baud : {40.0, 45.45, 50.0, 56.88, 62.0, 68.0, 74.2, 75.0, 85.0, 100.0, 110.0, 120.0})
        for (const double stop : {1.0, 1.42, 1.5, 2.0}) cases.emplace_back(baud, stop);
    const auto found = onTwoThreads(cases.size(), [&](std::size_t i) { return hear(cases[i].first, cases[i].second); });
    const auto part = [](const std::optional<Measured>& m, double Measured::*member) {
        return m ? std::optional((*m).*member) : std::nullopt;
    };
    table.heading("Speed after two seconds of tape, not told", "baud");
    for (std::size_t i = 0; i < found.size(); ++i) {
        const Found& f = found[i];
        char name[80];
        std::snprintf(name, sizeof name, "%.2f baud, stop %.2f", cases[i].first, f.stop);
        Row row = errorRow(name, f.baud, part(f.readBaud, &Measured::value), part(f.readBaud, &Measured::uncertainty),
                           0.01 * kSpeedBound * f.baud);
        if (f.readBaud && !namedRightly(f)) {
            row.ok = false;
            row.remark = "named " + (f.nominal ? std::to_string(*f.nominal) : std::string("no standard speed"));
        }
        table.add(row);
    }
    table.heading("Stop after two seconds of tape, not told", "units");
    for (std::size_t i = 0; i < found.size(); ++i) {
        const Found& f = found[i];
        char name[80];
        std::snprintf(name, sizeof name, "%.2f baud, stop %.2f", cases[i].first, f.stop);
        table.add(errorRow(name, f.stop, part(f.readStop, &Measured::value), part(f.readStop, &Measured::uncertainty),
                           kStopBound));
    }
}

}  // namespace trueunit::bench
