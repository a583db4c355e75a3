// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report_finding.h"

#include "app/report_ink.h"
#include "widgets/finding_list.h"
#include "widgets/told.h"
#include "widgets/words.h"

namespace trueunit {

using namespace report_ink;

void drawFinding(PageFlow& page, const Finding& f, const FindingText& text, const QString& heading) {
    QString title = told(f.title);
    if (const QString sure = sureText(f); !sure.isEmpty()) title += QStringLiteral(" (") + sure + QLatin1Char(')');
    std::vector<PageParagraph> parts{{title, PageFlow::font(8.5, QFont::DemiBold), kInk}};
    const auto add = [&](const QString& label, const QString& words) {
        if (!words.isEmpty()) parts.push_back({label + words, PageFlow::font(8.5), kInk});
    };
    add({}, text.evidence);
    add(Words::tr("Look at: "), text.lookAt);
    add(Words::tr("Confirm: "), text.confirm);
    page.together(parts, heading);
    page.space(0.8);
}

void drawFindingNotes(PageFlow& page, bool simulated) {
    if (simulated)
        page.paragraph(Words::tr("An exercise on a simulated sender: only its eccentric can be turned, which moves the "
                                 "bias. What to look at and how to confirm is what one would do on a machine."),
                       PageFlow::font(8.5), kInk);
    page.paragraph(sureMeans(), PageFlow::font(7.0), kFaint);
    page.space(1.2);
}

}  // namespace trueunit
