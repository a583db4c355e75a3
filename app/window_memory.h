// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSize>
#include <QString>
#include <QStringList>

class QWidget;

namespace trueunit {

// What the window itself remembers from run to run, beside the options of the measurement. Window's thread.
QStringList recentFiles();               // newest first; only those that are still there
void rememberFile(const QString& path);  // a recording or scenario that was opened
void rememberPlace(const QWidget& window);
void restorePlace(QWidget& window);  // as it was; at first, or where no screen shows it any more, as large as it likes

void resizeOnScreen(QWidget& window, QSize wanted);  // no larger than the screen, the desktop's frame included

bool firstStepsSeen();
void rememberFirstSteps();

void forgetAll();  // every setting of this program, as if it had never run

}  // namespace trueunit
