// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/limits_command.h"

#include <cstdio>

#include "app/limit_sets.h"
#include "core/report/judge.h"

namespace trueunit {

int runLimits() {
    for (const Limits& l : limitSets()) std::printf("%-14s %s\n", l.name.c_str(), limitsText(l).c_str());
    std::printf("Own sets are kept in %s.\n", ownLimitsFolder().toLocal8Bit().constData());
    return 0;
}

}  // namespace trueunit
