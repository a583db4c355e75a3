// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

#include "widgets/grid_item.h"

namespace trueunit {

// The words over the grid and for a screen reader: which character of the content it shows, and what the grid is for.
struct GridHeading {
    QString remark;
    QStringList shorter;  // for less room, the longest first
    QString description;
};
GridHeading headingOf(const GridContent& content, bool frozen);

}  // namespace trueunit
