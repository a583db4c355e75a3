// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <string>
#include <vector>

#include "app/logbook/frames.h"
#include "app/logbook/machines.h"
#include "app/logbook/visits.h"

namespace trueunit {

// The texts of machines, visits and frames as JSON objects (UTF-8), as they stand in archives. What does not fit is
// passed over; what is missing is empty.
std::string machineJson(const Machine& machine);
std::string visitJson(const Visit& visit);
Result<Machine> machineFromJson(const QByteArray& json);
Result<Visit> visitFromJson(const QByteArray& json);

QString timeText(qint64 secondsUtc);  // "2026-11-25T14:03:22Z"
qint64 timeFrom(const std::string& text);

}  // namespace trueunit
