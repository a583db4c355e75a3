// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

class QWidget;

namespace trueunit {

// A file to open, or one to write to; empty: none was chosen. Asks with the desktop's own dialog where it has one.
// at: the folder or file to begin with. kinds: as in "Text (*.txt);;All files (*)".
QString askToOpen(QWidget* parent, const QString& title, const QString& at, const QString& kinds);
// kind: which of the kinds was chosen.
QString askToSave(QWidget* parent, const QString& title, const QString& at, const QString& kinds,
                  QString* kind = nullptr);

}  // namespace trueunit
