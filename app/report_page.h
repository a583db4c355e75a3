// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>
#include <QString>
#include <vector>

#include "core/report/frozen_frame.h"
#include "core/result.h"

namespace trueunit {

// The report of one frozen frame, composed for A4 paper at 200 dots an inch. One page as a rule; long remarks or
// many notes go on to further pages. Needs a QGuiApplication for its fonts (the offscreen platform will do).
std::vector<QImage> reportPages(const FrozenFrame& frame);

// Writes the pages as PNG: the first to path, further ones beside it ("name, page 2.png"). Every file is complete
// or not there at all. REQUIRES: frame.snapshot is not empty.
Result<QStringList> writeReport(const FrozenFrame& frame, const QString& path);

}  // namespace trueunit
