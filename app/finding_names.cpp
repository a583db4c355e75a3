// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/finding_names.h"

#include <algorithm>
#include <array>
#include <string_view>

#include "core/finding_ids.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

struct FindingName {
    std::string_view id;
    const char* name;
};

// What the titles say, without their numbers.
constexpr std::array kFindingNames = {
    FindingName{"in-order", QT_TRANSLATE_NOOP("Words", "in order")},
    FindingName{"contact-offset", QT_TRANSLATE_NOOP("Words", "marks too long or short")},
    FindingName{"end-offset", QT_TRANSLATE_NOOP("Words", "marks end late or early")},
    FindingName{"level-dropout", QT_TRANSLATE_NOOP("Words", "marks of a level lost")},
    FindingName{"level-stuck", QT_TRANSLATE_NOOP("Words", "spaces of a level filled")},
    FindingName{"level-late", QT_TRANSLATE_NOOP("Words", "level late or early")},
    FindingName{"wrong-speed", QT_TRANSLATE_NOOP("Words", "runs fast or slow")},
    FindingName{"unsteady-speed", QT_TRANSLATE_NOOP("Words", "speed wanders")},
    FindingName{"cyclic-drive", QT_TRANSLATE_NOOP("Words", "displacement swings")},
    FindingName{"contact-bounce", QT_TRANSLATE_NOOP("Words", "contact bounces")},
    FindingName{"contact-scatter", QT_TRANSLATE_NOOP("Words", "instants or start scatter")},
    FindingName{"slow-rise", QT_TRANSLATE_NOOP("Words", "current slow to rise or fall")},
    FindingName{"trip-late", QT_TRANSLATE_NOOP("Words", "stop irregular or long")},
    FindingName{"feed-slip", QT_TRANSLATE_NOOP("Words", "tape feed slips")},
    FindingName{"weak-signal", QT_TRANSLATE_NOOP("Words", "signal faint or noisy")},
    FindingName{"hum", QT_TRANSLATE_NOOP("Words", "mains hum")},
    FindingName{"clipped", QT_TRANSLATE_NOOP("Words", "input overdriven")},
    FindingName{"reversed", QT_TRANSLATE_NOOP("Words", "signal reversed")},
    FindingName{"not-start-stop", QT_TRANSLATE_NOOP("Words", "cannot be read")},
    FindingName{"no-signal", QT_TRANSLATE_NOOP("Words", "input silent")}};

constexpr bool eachIdHasItsName() {
    for (const std::string_view id : kFindingIds)
        if (std::none_of(kFindingNames.begin(), kFindingNames.end(), [&](auto& n) { return n.id == id; })) return false;
    return kFindingNames.size() == kFindingIds.size();
}
static_assert(eachIdHasItsName());

int levelOf(const QString& id, const FrameRow& frame) {
    return frame.findingLevels.value(frame.findings.indexOf(id)).toInt();
}

QString withLevel(const QString& id, int level) {
    if (level > 0 && id == QLatin1String("level-dropout")) return Words::tr("marks of level %1 lost").arg(level);
    if (level > 0 && id == QLatin1String("level-stuck")) return Words::tr("spaces of level %1 filled").arg(level);
    if (level > 0 && id == QLatin1String("level-late")) return Words::tr("level %1 late or early").arg(level);
    return findingName(id);
}

}  // namespace

QString findingName(const QString& id) {
    for (const FindingName& n : kFindingNames)
        if (id == QLatin1String(n.id.data(), static_cast<int>(n.id.size()))) return Words::tr(n.name);
    return id;
}

QString findingName(const QString& id, const FrameRow& frame) {
    if (id == QLatin1String("contact-offset") && frame.bias)
        return *frame.bias > 0.0 ? Words::tr("marks too long") : Words::tr("marks too short");
    if (id == QLatin1String("end-offset") && frame.end)
        return *frame.end > 0.0 ? Words::tr("marks end late") : Words::tr("marks end early");
    if (id == QLatin1String("wrong-speed") && frame.speedError)
        return *frame.speedError > 0.0 ? Words::tr("runs fast") : Words::tr("runs slow");
    return withLevel(id, levelOf(id, frame));
}

}  // namespace trueunit
