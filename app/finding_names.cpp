// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/finding_names.h"

#include <array>

#include "core/finding_ids.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

// In the order of kFindingIds.
constexpr std::array<const char*, kFindingIds.size()> kFindingNames = {
    QT_TRANSLATE_NOOP("Words", "in order"),        QT_TRANSLATE_NOOP("Words", "contact offset"),
    QT_TRANSLATE_NOOP("Words", "end offset"),      QT_TRANSLATE_NOOP("Words", "level lost"),
    QT_TRANSLATE_NOOP("Words", "level stuck"),     QT_TRANSLATE_NOOP("Words", "level out of place"),
    QT_TRANSLATE_NOOP("Words", "wrong speed"),     QT_TRANSLATE_NOOP("Words", "unsteady speed"),
    QT_TRANSLATE_NOOP("Words", "uneven drive"),    QT_TRANSLATE_NOOP("Words", "contact bounce"),
    QT_TRANSLATE_NOOP("Words", "contact scatter"), QT_TRANSLATE_NOOP("Words", "slow rise"),
    QT_TRANSLATE_NOOP("Words", "stop uneven"),     QT_TRANSLATE_NOOP("Words", "feed slip"),
    QT_TRANSLATE_NOOP("Words", "weak signal"),     QT_TRANSLATE_NOOP("Words", "mains hum"),
    QT_TRANSLATE_NOOP("Words", "clipped input"),   QT_TRANSLATE_NOOP("Words", "reversed line"),
    QT_TRANSLATE_NOOP("Words", "no characters"),   QT_TRANSLATE_NOOP("Words", "no signal")};

}  // namespace

QString findingName(const QString& id) {
    for (std::size_t i = 0; i < kFindingIds.size(); ++i)
        if (id == QLatin1String(kFindingIds[i].data(), static_cast<int>(kFindingIds[i].size())))
            return Words::tr(kFindingNames[i]);
    return id;
}

}  // namespace trueunit
