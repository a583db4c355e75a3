// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/page_flow.h"
#include "app/report_text.h"

namespace trueunit {

// The head of a report: the verdict, `when` it held, and the fault that is next to certain.
void drawVerdict(PageFlow& page, const VerdictText& verdict, const QString& when = {});

}  // namespace trueunit
