// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QUuid>

namespace trueunit {

// A name no other machine, visit or frame in the world has: RFC 4122, random.
inline QString freshUid() { return QUuid::createUuid().toString(QUuid::WithoutBraces); }

}  // namespace trueunit
