// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report_compare.h"

#include <QDateTime>

#include "app/page_flow.h"
#include "app/report_ink.h"
#include "app/report_text.h"
#include "core/report/comparison.h"
#include "widgets/told.h"
#include "widgets/words.h"

namespace trueunit {

using namespace report_ink;

namespace {

using Align = PageColumn::Align;

// An instant of key "6 to mark" is called as the elements are elsewhere on the page: "stop to mark".
QString nameOf(const Difference& d, int levels) {
    bool isInstant = false;
    const int k = QString::fromStdString(d.key).section(QLatin1Char(' '), 0, 0).toInt(&isInstant);
    if (!isInstant) return told(d.name);
    const Condition to = d.key.ends_with("mark") ? Condition::mark : Condition::space;
    return elementName(k, levels) + QLatin1Char(' ') + toWords(to);
}

PageRow rowOf(const Difference& d, int levels) {
    const QString none = QStringLiteral("\u2014");
    const int places = d.change ? placesFor(*d.change) : 2;  // of all figures of the row
    const auto value = [&](const std::optional<Measured>& m) {
        if (!m) return none;
        return d.unit == "%" ? signedNumber(m->value, places) : number(m->value, places);
    };
    const auto significant = d.significant();
    const QString verdict = !significant   ? Words::tr("not known")
                            : *significant ? Words::tr("changed")
                                           : Words::tr("unsure");
    return {
        {nameOf(d, levels), value(d.before), value(d.after), d.change ? signedNumber(d.change->value, places) : none,
         d.change ? QStringLiteral("\u00b1 ") + number(d.change->uncertainty, places) : QString(),
         d.unit == "units" ? Words::tr("units") : QString::fromStdString(d.unit), verdict},
        false};
}

std::vector<PageRow> rowsOf(const std::vector<Difference>& differences, int levels) {
    std::vector<PageRow> rows;
    for (const Difference& d : differences) rows.push_back(rowOf(d, levels));
    return rows;
}

void drawDifferences(PageFlow& page, const std::vector<PageRow>& rows) {
    page.table({{42.0, Align::left, Words::tr("quantity")},
                {22.0, Align::point, Words::tr("before")},
                {22.0, Align::point, Words::tr("now")},
                {22.0, Align::point, Words::tr("change")},
                {22.0, Align::point, Words::tr("uncertainty")},
                {16.0, Align::left, Words::tr("unit")},
                {32.0, Align::left, Words::tr("changed?")}},
               rows);
}

}  // namespace

// The readings, which prove the repair, begin on the page where there is room for them; the instants may follow on the
// next.
void drawComparison(PageFlow& page, const FrozenFrame& frame) {
    if (!frame.before) return;
    const Comparison comparison = compareReadings(frame.before->reading, frame.snapshot->reading);
    const int levels = frame.snapshot->levels;
    const std::vector<PageRow> readings = rowsOf(comparison.readings, levels);
    const std::vector<PageRow> instants = rowsOf(comparison.instants, levels);
    page.reserve(page.tableHeight(readings.size()) + 12.0);
    FrozenFrame then;
    then.takenSecondsUtc = frame.beforeTakenSecondsUtc;
    page.heading(Words::tr("Against the moment marked \"before\", ") + takenText(then));
    drawDifferences(page, readings);
    if (!instants.empty()) {
        page.reserve(page.tableHeight(instants.size()) + 6.0);
        drawDifferences(page, instants);
    }
    page.paragraph(
        Words::tr("Instants: mean displacement, late positive. A row says changed when the change is larger than "
                  "its uncertainty; chance alone does that in 5 rows of 100."),
        PageFlow::font(7.0), kFaint);
}

}  // namespace trueunit
