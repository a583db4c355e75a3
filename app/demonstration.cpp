// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/demonstration.h"

#include <QFile>

// The resource sits in a static library, where nothing else would make the linker keep it.
static void keepDemonstration() { Q_INIT_RESOURCE(demonstration); }

namespace trueunit {

Result<Scenario> demonstrationScenario() {
    keepDemonstration();
    QFile file(":/scenarios/demonstration.json");
    if (!file.open(QIODevice::ReadOnly)) return Error{"The built-in demonstration is missing from this build."};
    const QByteArray json = file.readAll();
    return parseScenario({json.constData(), static_cast<std::size_t>(json.size())});
}

}  // namespace trueunit
