// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/grid_heading.h"

#include <algorithm>

#include "widgets/grid_flags.h"
#include "widgets/tape_words.h"
#include "widgets/told.h"
#include "widgets/words.h"

namespace trueunit {

GridHeading headingOf(const GridContent& content, bool frozen) {
    const Snapshot& snapshot = *content.snapshot;
    if (!content.chosen) return {frozen ? Words::tr("frozen") : QString(), {}, whyNothing(snapshot)};
    const auto at = std::find(snapshot.traces.begin(), snapshot.traces.end(), content.chosen);
    const auto older = static_cast<long>(snapshot.traces.end() - at) - 1;
    QString print = Words::tr("\u201c%1\u201d").arg(told(content.chosen->print));
    for (const TapeCharacter& c : snapshot.tape)
        if (c.number == content.chosen->number) print += dueWords(c);
    const QString which = older == 0 ? Words::tr("newest of %1: %2").arg(snapshot.windowUsed).arg(print)
                                     : Words::tr("%1 before the newest: %2").arg(older).arg(print);
    const QString ruled = gridWords(snapshot);
    const QString brief = snapshot.reading.speed.nominalBaud ? Words::tr("nominal") : Words::tr("own speed");
    QStringList late;
    for (const InstantFlag& flag : flagsOf(content))
        late << QStringLiteral("%1 %2 %3%4")
                    .arg(elementName(flag.k, snapshot.levels), toWords(flag.to), flag.text,
                         flag.out ? Words::tr(" out of limits") : QString());
    return {Words::tr("%1; grid for %2").arg((frozen ? Words::tr("frozen, ") : QString()) + which, ruled),
            {Words::tr("%1; for %2").arg(print, ruled), ruled, brief},
            Words::tr("Character %1. Percent late: ").arg(print) + late.join(QStringLiteral(", "))};
}

}  // namespace trueunit
