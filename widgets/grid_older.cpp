// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/grid_older.h"

#include "widgets/theme.h"

namespace trueunit {

GridOlder::GridOlder(QCustomPlot* plot, const GridContent& content) : GridItem(plot, content) {
    setClipToAxisRect(true);
}

void GridOlder::draw(QCPPainter* painter) {
    QColor faint = theme::kBlue;
    faint.setAlpha(90);
    painter->setAntialiasing(true);
    painter->setPen(theme::pen(faint));
    painter->setBrush(Qt::NoBrush);
    QPolygonF pixels;
    for (const QPolygonF& line : lines_) {
        pixels.resize(line.size());
        for (qsizetype i = 0; i < line.size(); ++i) pixels[i] = {xOf(line[i].x()), yOf(line[i].y())};
        painter->drawPolyline(pixels);
    }
}

}  // namespace trueunit
