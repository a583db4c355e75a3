// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/cause_words.h"

#include "core/report/bias_pull.h"
#include "widgets/words.h"

namespace trueunit {

QString pulledBy(const Snapshot& s) {
    const bool alone = contactIsInOrder(s.reading, s.limits);
    switch (biasPulledIn(s.reading)) {
        case BiasPull::level:
            return alone ? Words::tr("by a level") : Words::tr("partly a level");
        case BiasPull::unsettled:
            return alone ? Words::tr("not the eccentric") : Words::tr("not by the contact alone");
        case BiasPull::none:
            break;
    }
    return {};
}

QString pullWords(const Snapshot& s) {
    const QString by = pulledBy(s);
    return by.isEmpty() ? by : Words::tr("%1, see findings").arg(by);
}

QString causeWords(const Snapshot& s) {
    bool any = false;
    if (s.reading.findings)
        for (const Finding& f : *s.reading.findings) {
            if (!isSureFault(f) || f.id == "contact-offset") continue;
            if (!f.minor) return Words::tr("yet a fault, see findings");
            any = true;
        }
    return any ? Words::tr("see findings") : QString();
}

}  // namespace trueunit
