// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "widgets/grid_item.h"

namespace trueunit {

// Notes as numbered flags at their point, the text beside each where there is room.
class GridNotes : public GridItem {
public:
    using GridItem::GridItem;

protected:
    void draw(QCPPainter* painter) override;

private:
    QRectF placeLabel(QPointF point, QSizeF size, const std::vector<QRectF>& taken) const;
};

}  // namespace trueunit
