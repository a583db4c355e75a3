// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/visit_pictures.h"

#include "app/page_flow.h"
#include "app/report_grid.h"
#include "app/report_ink.h"
#include "app/report_text.h"
#include "app/visit_report.h"
#include "core/report/shown_trace.h"
#include "widgets/words.h"

namespace trueunit {

using namespace report_ink;

namespace {

constexpr double kGridHeight = 52.0;  // mm

void grid(PageFlow& page, const FrozenFrame& frame, const QString& when) {
    page.reserve(kGridHeight + 11.0);
    const auto trace = shownTrace(frame);
    page.heading(trace ? Words::tr("%1: character %2, number %3, taken %4")
                             .arg(when, printName(trace->print))
                             .arg(trace->number + 1)  // the first is 1
                             .arg(takenText(frame))
                       : Words::tr("%1, taken %2").arg(when, takenText(frame)));
    ReportGrid(frame, page.area(0.0, PageFlow::kTextWidth, kGridHeight), page.dots(1.0)).draw(page.painter());
    page.space(kGridHeight + 1.5);
}

// What could be taken for a comparison of like with like and is none, and the other way round; else empty.
QString differenceText(const FrozenFrame& before, const FrozenFrame& after) {
    const auto b = shownTrace(before), a = shownTrace(after);
    if (!b || !a) return {};
    if (b->code == a->code)
        return b->print == a->print
                   ? QString()
                   : Words::tr("The same marks and spaces in both: in one shift they print %1, in the other %2.")
                         .arg(printName(b->print), printName(a->print));
    return areAlike(before, after) ? Words::tr("The same character of the tape: before it came as %1, after as %2.")
                                         .arg(printName(b->print), printName(a->print))
                                   : Words::tr("Not the same character: before %1, after %2.")
                                         .arg(printName(b->print), printName(a->print));
}

}  // namespace

void drawPictures(PageFlow& page, const VisitStory& story) {
    if (!story.before() && !story.after()) return;
    if (!story.before()) return grid(page, withFaultShown(story.after()->frame), Words::tr("After"));
    FrozenFrame before = withFaultShown(story.before()->frame);
    if (!story.after()) return grid(page, before, Words::tr("Before"));
    FrozenFrame after = withFaultShown(story.after()->frame);
    showAlike(before, after);
    page.reserve(2.0 * (kGridHeight + 11.0) + 4.0);
    grid(page, before, Words::tr("Before"));
    grid(page, after, Words::tr("After"));
    if (const QString text = differenceText(before, after); !text.isEmpty())
        page.paragraph(text, PageFlow::font(8.5), kInk);
}

}  // namespace trueunit
