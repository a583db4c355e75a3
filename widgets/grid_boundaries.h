// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "widgets/grid_item.h"

namespace trueunit {

// The ideal boundaries, the names of the elements between them, the rows mark and space and the slice line.
class GridBoundaries : public GridItem {
public:
    using GridItem::GridItem;

protected:
    void draw(QCPPainter* painter) override;

private:
    void drawRows(QCPPainter& painter) const;
    void drawNames(QCPPainter& painter, int levels) const;
};

}  // namespace trueunit
