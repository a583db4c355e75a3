// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

namespace trueunit {

// "trueunit log": the logbook from the command line. Takes the arguments after "log"; 0 done, 2 refused in one
// sentence. needsFonts: the call draws and wants a QGuiApplication.
int runLog(const QStringList& arguments);
bool logNeedsFonts(const QStringList& arguments);

}  // namespace trueunit
