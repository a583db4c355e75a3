// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPolygonF>

#include "widgets/grid_item.h"

namespace trueunit {

// The character of the moment marked "before" on the same grid: its line dashed, a lozenge at each of its instants.
// Always the same combination as the chosen one; where that moment has none, words say so.
class GridBefore : public GridItem {
public:
    GridBefore(QCustomPlot* plot, const GridContent& content) : GridItem(plot, content) { setClipToAxisRect(true); }

    static std::shared_ptr<const CharacterTrace> traceFor(const GridContent& content);

protected:
    void draw(QCPPainter* painter) override;

private:
    void drawWords(QCPPainter& painter, const QString& full, const QString& brief) const;
};

}  // namespace trueunit
