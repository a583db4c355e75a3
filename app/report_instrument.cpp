// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report_instrument.h"

#include "app/report_ink.h"
#include "app/report_text.h"
#include "widgets/words.h"

namespace trueunit {

using namespace report_ink;

QStringList instrumentParts(const FrozenFrame& frame) {
    QStringList parts;
    for (const auto& [name, value] : settingsRows(frame)) {
        const bool sentence = value.endsWith(QLatin1Char('.'));  // others follow it
        parts += name + QStringLiteral(":\u00a0") + (sentence ? value.chopped(1) : value);
    }
    return parts;
}

void drawInstrument(PageFlow& page, const QStringList& parts) {
    page.heading(Words::tr("Instrument"));
    page.paragraph(parts.join(QStringLiteral("; ")), PageFlow::font(8.0), kInk);
}

void drawCaution(PageFlow& page) {
    page.reserve(12.0);
    page.space(2.5);
    page.paragraph(
        Words::tr(
            "Caution: the signal loop is hazardous live (well above 60 V DC) and its current limit does not make it "
            "safe. Isolate between loop and sound card, and unplug the machine before hands or tools go in. "
            "Local codes and licensed practice come first."),
        PageFlow::font(8.0, QFont::DemiBold), kInk);
}

}  // namespace trueunit
