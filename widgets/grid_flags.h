// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "widgets/grid_item.h"

namespace trueunit {

// One instant of the chosen character, as flagged below the trace.
struct InstantFlag {
    double units = 0.0;  // where it is
    int k = 0;           // where it belongs
    Condition to = Condition::mark;
    QString text;  // "−7.1"
    bool out = false;
    bool ringed = false;  // the chosen finding is seen at it
};

std::vector<InstantFlag> flagsOf(const GridContent& content);
double furthestOut(const GridContent& content, double withoutAny);  // units

// Each instant of the chosen character: marker of its direction, a bar from the ideal boundary to where it is, its
// displacement in percent, and the word "out" when it belongs to a reading out of limits.
class GridFlags : public GridItem {
public:
    static constexpr int kHeight = 44;  // below the axis rectangle, pixels

    using GridItem::GridItem;

protected:
    void draw(QCPPainter* painter) override;

private:
    void drawFlag(QCPPainter& painter, const InstantFlag& flag, bool withText) const;
};

}  // namespace trueunit
