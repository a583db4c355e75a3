// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

#include "app/page_flow.h"
#include "core/report/frozen_frame.h"

namespace trueunit {

// The end of a report: what the instrument was set to and found.
void drawInstrument(PageFlow& page, const QStringList& parts);

// The caution that belongs to every connection; whole on one page.
void drawCaution(PageFlow& page);

// "name: value" of settingsRows(), which stay together at the end of a line.
QStringList instrumentParts(const FrozenFrame& frame);

}  // namespace trueunit
