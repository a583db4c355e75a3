// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <vector>

#include "app/page_flow.h"
#include "core/report/snapshot.h"

namespace trueunit {

// What was received, in the font of a printer; where the feed slipped, with its slips.
struct ReceivedText {
    QString words, count;
    QString slips, slipSigns;  // empty: none among the last characters
    QFont font = PageFlow::font(8.5);

    double height(const PageFlow& page, double width) const;  // mm
    void draw(PageFlow& page, double left, double width) const;
};

ReceivedText receivedText(const PageFlow& page, const Snapshot& snapshot);

// What printed, "[E]" for what was sent twice and "(H)" for what was passed over. Empty where nothing slipped.
QString textWithSlips(const std::vector<TapeCharacter>& tape);

}  // namespace trueunit
