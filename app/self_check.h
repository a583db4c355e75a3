// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <stop_token>
#include <string>
#include <vector>

#include "core/units.h"

namespace trueunit {

// One known signal and what was read of it. Bias in percent of a unit.
struct CheckRow {
    std::string condition;  // "45.45 baud, ita2, coupled at 8 Hz, 40 dB"
    double set = 0.0;
    Measured read;
    double residual() const { return read.value - set; }
    bool good() const;  // off by no more than a tenth of a percent and what its uncertainty allows
};

// What a row of checks says of the instrument: the mean of the residuals with its own uncertainty, and the worst one.
struct CheckSummary {
    Measured residualPercent;
    double worstPercent = 0.0;
    int rows = 0;
    int good = 0;
    bool passed() const { return rows > 0 && good == rows; }
};
CheckSummary summaryOf(const std::vector<CheckRow>& rows);

// The instrument held against signals of known bias that go through memory: bias from -20 to +20 %, codes, speeds,
// coupling, noise and sample rates. No sound device is touched. Half a minute; any thread. Stopped: the rows so far.
std::vector<CheckRow> checkInMemory(const std::function<void(double fraction)>& progress, const std::stop_token& stop);

}  // namespace trueunit
