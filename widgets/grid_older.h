// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPolygonF>
#include <vector>

#include "widgets/grid_item.h"

namespace trueunit {

// The characters before the chosen one, faint behind it. An item of its own and not graphs: the plot draws its lines
// piece by piece, which suits the one wide line of the chosen character but takes twice the time for many thin ones.
class GridOlder : public GridItem {
public:
    GridOlder(QCustomPlot* plot, const GridContent& content);
    void setLines(std::vector<QPolygonF> lines) { lines_ = std::move(lines); }  // in units and level

protected:
    void draw(QCPPainter* painter) override;

private:
    std::vector<QPolygonF> lines_;
};

}  // namespace trueunit
