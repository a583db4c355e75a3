// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report_verdict.h"

#include "app/report_ink.h"

namespace trueunit {

using namespace report_ink;

void drawVerdict(PageFlow& page, const VerdictText& v, const QString& when) {
    const bool bad = v.beyond || v.within == false;
    const QColor calm = !v.fault.isEmpty() ? kInk : v.within ? kIn : kFaint;
    page.paragraph(v.headline + when, PageFlow::font(13.0, QFont::Bold), bad ? kOut : calm);
    if (!v.fault.isEmpty()) page.paragraph(v.fault, PageFlow::font(10.0, QFont::Bold), v.beyond ? kOut : kInk);
    if (!v.lookAt.isEmpty()) page.paragraph(v.lookAt, PageFlow::font(9.0), kInk);
}

}  // namespace trueunit
