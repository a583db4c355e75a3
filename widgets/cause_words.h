// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/report/snapshot.h"

namespace trueunit {

// What the findings have to say beside the bias; empty when nothing.

// What but the eccentric moves the bias as read: "partly a level"; and with where to read on.
QString pulledBy(const Snapshot& snapshot);
QString pullWords(const Snapshot& snapshot);

// A bias in limits beside a cause that is as good as certain: the green word must not speak for the machine. That the
// contact is a little off is what the gauge itself shows.
QString causeWords(const Snapshot& snapshot);

}  // namespace trueunit
