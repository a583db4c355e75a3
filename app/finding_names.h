// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "app/logbook/frames.h"

namespace trueunit {

// A finding in the words of its title, without the figures: where a list has no room for the title, or where no frame
// is meant. An id that is not known comes as it is.
QString findingName(const QString& id);
QString findingName(const QString& id, const FrameRow& frame);  // and which level or way was off in this frame

}  // namespace trueunit
