// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace trueunit {

// A finding in two or three words, "contact offset" for "contact-offset", where a list has no room for its title.
// An id that is not known comes as it is.
QString findingName(const QString& id);

}  // namespace trueunit
