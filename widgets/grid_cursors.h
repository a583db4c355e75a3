// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "widgets/grid_item.h"

namespace trueunit {

// The two cursors A and B and, in a strip at the foot, what they read.
class GridCursors : public GridItem {
public:
    using GridItem::GridItem;

    static int stripHeight(int plotWidth);           // pixels; one line, or two on a narrow plot
    std::optional<std::size_t> hit(double x) const;  // which cursor stands within reach of this pixel

protected:
    void draw(QCPPainter* painter) override;

private:
    double tabX(std::size_t cursor) const;  // of the letter's box
    void drawLines(QCPPainter& painter) const;
    void drawReadout(QCPPainter& painter) const;
};

}  // namespace trueunit
