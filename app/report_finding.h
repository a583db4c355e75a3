// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "app/page_flow.h"
#include "core/report/finding.h"

namespace trueunit {

// What is printed below the title of a finding; what is empty is left out.
struct FindingText {
    QString evidence, lookAt, confirm;
};

// A finding stays on one page when it fits on a page at all, and the first one under its heading.
void drawFinding(PageFlow& page, const Finding& finding, const FindingText& text, const QString& heading = {});

// Below the last: what "% sure" means, and of a simulated sender what can be turned there.
void drawFindingNotes(PageFlow& page, bool simulated);

}  // namespace trueunit
