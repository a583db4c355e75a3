// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/firm_moment.h"

#include "core/report/nudge_words.h"

namespace trueunit {

std::shared_ptr<const Snapshot> firmMoment(const std::shared_ptr<const Snapshot>& moment) {
    if (!moment || !moment->firm) return moment;
    const FirmReading& firm = *moment->firm;
    if (charactersSinceNudge(*moment, firm.characters) < firm.characters) return moment;
    auto firmer = std::make_shared<Snapshot>(*moment);
    firmer->reading = firm.reading;
    firmer->windowUsed = firm.characters;
    firmer->dots = firm.dots;
    firmer->firm.reset();
    return firmer;
}

}  // namespace trueunit
