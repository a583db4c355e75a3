// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/finding_names.h"

#include <array>

#include "core/finding_ids.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

// In the order of kFindingIds: what the titles say, without their numbers.
constexpr std::array<const char*, kFindingIds.size()> kFindingNames = {
    QT_TRANSLATE_NOOP("Words", "in order"),
    QT_TRANSLATE_NOOP("Words", "marks too long or short"),
    QT_TRANSLATE_NOOP("Words", "marks end late or early"),
    QT_TRANSLATE_NOOP("Words", "marks of a level lost"),
    QT_TRANSLATE_NOOP("Words", "spaces of a level filled"),
    QT_TRANSLATE_NOOP("Words", "level late or early"),
    QT_TRANSLATE_NOOP("Words", "runs fast or slow"),
    QT_TRANSLATE_NOOP("Words", "speed wanders"),
    QT_TRANSLATE_NOOP("Words", "displacement swings"),
    QT_TRANSLATE_NOOP("Words", "contact bounces"),
    QT_TRANSLATE_NOOP("Words", "instants scatter"),
    QT_TRANSLATE_NOOP("Words", "current slow to rise or fall"),
    QT_TRANSLATE_NOOP("Words", "stop irregular or long"),
    QT_TRANSLATE_NOOP("Words", "tape feed slips"),
    QT_TRANSLATE_NOOP("Words", "signal faint or noisy"),
    QT_TRANSLATE_NOOP("Words", "mains hum"),
    QT_TRANSLATE_NOOP("Words", "input overdriven"),
    QT_TRANSLATE_NOOP("Words", "signal reversed"),
    QT_TRANSLATE_NOOP("Words", "cannot be read"),
    QT_TRANSLATE_NOOP("Words", "input silent")};

}  // namespace

QString findingName(const QString& id) {
    for (std::size_t i = 0; i < kFindingIds.size(); ++i)
        if (id == QLatin1String(kFindingIds[i].data(), static_cast<int>(kFindingIds[i].size())))
            return Words::tr(kFindingNames[i]);
    return id;
}

QString findingName(const QString& id, const FrameRow& frame) {
    if (id == QLatin1String("contact-offset") && frame.bias)
        return *frame.bias > 0.0 ? Words::tr("marks too long") : Words::tr("marks too short");
    if (id == QLatin1String("wrong-speed") && frame.speedError)
        return *frame.speedError > 0.0 ? Words::tr("runs fast") : Words::tr("runs slow");
    return findingName(id);
}

}  // namespace trueunit
