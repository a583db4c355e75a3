// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report_compare.h"

#include <QDateTime>
#include <algorithm>
#include <cmath>

#include "app/page_flow.h"
#include "app/report_ink.h"
#include "app/report_text.h"
#include "core/report/comparison.h"
#include "widgets/comparison_panel.h"
#include "widgets/told.h"
#include "widgets/words.h"

namespace trueunit {

using namespace report_ink;

namespace {

using Align = PageColumn::Align;

constexpr double kInstantsAt = 104.5;  // mm from the left; what remains holds the instants
const QString kGiveOrTake = QStringLiteral("\u00b1");

// As it is printed, so that a column can be reckoned after.
double rounded(double value, int places) { return std::round(value * std::pow(10.0, places)) / std::pow(10.0, places); }

PageRow readingRow(const Difference& d) {
    const QString none = QStringLiteral("\u2014");
    const int places = d.after ? placesFor(*d.after) : 2;  // as among the readings of the page
    const auto value = [&](const std::optional<Measured>& m) {
        if (!m) return none;
        return d.unit == "%" ? signedNumber(m->value, places) : number(m->value, places);
    };
    const QString unit = d.unit == "units" ? Words::tr("units") : QString::fromStdString(d.unit);
    QString name = told(d.name);
    name[0] = name[0].toUpper();
    return {{name + QStringLiteral(", ") + unit, value(d.before), value(d.after),
             d.change ? signedNumber(rounded(d.after->value, places) - rounded(d.before->value, places), places) : none,
             d.change ? number(d.change->uncertainty, places) : QString(), QString(), seenWords(d.seen())},
            false};
}

// An instant of key "6 to mark" is called as in the table of instants, which has what it is now.
PageRow instantRow(const Difference& d, int levels) {
    const int k = QString::fromStdString(d.key).section(QLatin1Char(' '), 0, 0).toInt();
    return {{elementName(k, levels), d.key.ends_with("mark") ? Words::tr("mark") : Words::tr("space"),
             signedNumber(d.before->value, 2), signedNumber(d.change->value, 2), number(d.change->uncertainty, 2),
             QString(), seenWords(d.seen())},
            false};
}

void drawReadings(PageFlow& page, const std::vector<PageRow>& rows, const QString& laterTitle) {
    page.table({{28.0, Align::left, Words::tr("quantity")},
                {13.0, Align::point, Words::tr("before")},
                {13.0, Align::point, laterTitle},
                {14.0, Align::point, Words::tr("change")},
                {13.0, Align::point, kGiveOrTake},
                {3.0, Align::left, {}},
                {18.0, Align::left, Words::tr("changed?")}},
               rows);
}

void drawInstants(PageFlow& page, const std::vector<PageRow>& rows) {
    page.table({{8.5, Align::left, Words::tr("at")},
                {12.5, Align::left, Words::tr("to")},
                {11.5, Align::right, Words::tr("before")},
                {12.5, Align::right, Words::tr("change")},
                {9.0, Align::right, kGiveOrTake},
                {2.0, Align::left, {}},
                {17.5, Align::left, Words::tr("changed?")}},
               rows, kInstantsAt);
}

QString footnote(const MomentsCompared& moments, std::size_t unchanged, std::size_t leftOut) {
    QString text = Words::tr(
        "Changed: by more than twice its uncertainty; about one report in a hundred has such a row though nothing was "
        "changed. None seen: within its uncertainty. Unsure: between the two. Instants: mean displacement in "
        "percent of a unit, late positive, each against the sender's own speed; a fault that makes that read wrong is "
        "set aside first.");
    if (unchanged > 0) text += QLatin1Char(' ') + Words::tr("No change seen at %1 other instants.").arg(unchanged);
    if (leftOut > 0)
        text += QLatin1Char(' ') +
                Words::tr("Left out, met too seldom to tell a change of 5 % of a unit: %1 of them.").arg(leftOut);
    if (std::min(moments.before.windowUsed, moments.later.windowUsed) < kFirmCharacters)
        text += QLatin1Char(' ') + Words::tr(
                                       "At one of the moments fewer than 32 characters were measured: a longer window "
                                       "makes the proof firmer.");
    return text;
}

}  // namespace

// The readings prove the repair, those first that moved; of the instants those alone.
void drawComparison(PageFlow& page, const MomentsCompared& moments) {
    Comparison comparison = compareReadings(moments.before.reading, moments.later.reading);
    std::stable_partition(comparison.readings.begin(), comparison.readings.end(),
                          [](const Difference& d) { return d.seen() != Seen::none; });
    std::vector<PageRow> readings, instants;
    for (const Difference& d : comparison.readings) readings.push_back(readingRow(d));
    std::size_t unchanged = 0, leftOut = 0;
    for (const Difference& d : comparison.instants)
        if (!tells(d))
            ++leftOut;
        else if (d.seen() == Seen::none)
            ++unchanged;
        else
            instants.push_back(instantRow(d, moments.later.levels));
    constexpr double kHeadingAndFoot = 27.0;  // mm; the small print stays with its table
    page.reserve(page.tableHeight(std::max(readings.size(), instants.size())) + kHeadingAndFoot);
    page.heading(moments.heading);
    const double top = page.y();
    drawReadings(page, readings, moments.laterTitle);
    double end = page.y();
    if (!instants.empty()) {
        page.moveTo(top);
        drawInstants(page, instants);
        end = std::max(end, page.y());
    }
    page.moveTo(end);
    page.paragraph(footnote(moments, unchanged, leftOut), PageFlow::font(7.0), kFaint);
}

void drawComparison(PageFlow& page, const FrozenFrame& frame) {
    if (!frame.before) return;
    FrozenFrame then;
    then.takenSecondsUtc = frame.beforeTakenSecondsUtc;
    drawComparison(page, {*frame.before, *frame.snapshot,
                          Words::tr("Against the moment marked \"before\", ") + takenText(then), Words::tr("now")});
}

}  // namespace trueunit
