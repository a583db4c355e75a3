// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QUrl>

#include "app/page_flow.h"
#include "core/result.h"

namespace trueunit {

// Writes a page of the help (as of HelpPages::source()) as PDF, ink on paper whatever the window's colours are, to be
// taken to the shop or laid beside the work. Complete or not there at all. Needs a QApplication.
Outcome writeHelpPaper(const QUrl& page, const QString& title, Paper paper, const QString& path);

}  // namespace trueunit
