// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/cursor_readout.h"

#include "widgets/words.h"

namespace trueunit {

std::optional<CursorPlace> cursorPlace(double units, const Snapshot& snapshot) {
    if (snapshot.gridUnitSeconds <= 0.0) return std::nullopt;
    CursorPlace place{units, 1e3 * units * snapshot.gridUnitSeconds, std::nullopt};
    const auto& period = snapshot.reading.speed.characterMs;
    if (period && period->value > 0.0) place.degrees = 360.0 * place.ms / period->value;
    return place;
}

QString cursorWords(const CursorPlace& place, bool distance) {
    const auto said = [distance](double v, int decimals) {
        return distance ? signedNumber(v, decimals) : number(v, decimals);
    };
    QString words = Words::tr("%1 ms  %2 units").arg(said(place.ms, 2), said(place.units, 3));
    if (place.degrees) words += QStringLiteral("  %1°").arg(said(*place.degrees, 1));
    return words;
}

std::array<QString, 3> cursorLines(const Cursors& cursors, const Snapshot& snapshot) {
    std::array<QString, 3> lines;
    const std::array<QString, 2> names = {QStringLiteral("A  "), QStringLiteral("B  ")};
    for (std::size_t i = 0; i < cursors.size(); ++i) {
        if (!cursors[i]) continue;
        if (const auto place = cursorPlace(*cursors[i], snapshot)) lines[i] = names[i] + cursorWords(*place, false);
    }
    if (!cursors[0] || !cursors[1]) return lines;
    if (const auto distance = cursorPlace(*cursors[1] - *cursors[0], snapshot))
        lines[2] = Words::tr("B − A  ") + cursorWords(*distance, true);
    return lines;
}

}  // namespace trueunit
