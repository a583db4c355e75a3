// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QString>
#include <memory>

#include "app/logbook/keeping.h"

namespace trueunit::test {

inline constexpr qint64 kMorning = 1795600000;  // 2026-11-25, UTC

// A drawn frame of the machine, taken at the given time, with some bulk in the place of sound.
Keeping keepingOf(const QString& machine, qint64 taken, const QString& uid = {}, qsizetype soundBytes = 2000);

std::unique_ptr<Store> opened(const QString& path);  // a failed expectation and nullptr when refused

// A logbook of schema 1 with the given number of frames.
void makeOldLogbook(const QString& path, int frames);

}  // namespace trueunit::test
