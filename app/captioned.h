// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

class QWidget;

namespace trueunit {

// The field with its caption in small type above it; the caption is also its accessible name.
QWidget* captioned(const QString& caption, QWidget* field, const QString& toolTip = {});

}  // namespace trueunit
