// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/limit_shape.h"

#include <QPainter>
#include <QPolygonF>

#include "widgets/theme.h"

namespace trueunit {

void drawLimitShape(QPainter& painter, QPointF c, double size, int out, const QColor& color) {
    const double half = size / 2;
    painter.save();
    if (out == 0) {
        painter.setPen(theme::pen(color, size / 8));
        painter.setBrush(Qt::NoBrush);
        painter.drawEllipse(c, 0.24 * size, 0.24 * size);
        for (const double x : {-half, half}) painter.drawLine(c + QPointF(x, -half), c + QPointF(x, half));
    } else {
        painter.setPen(Qt::NoPen);
        painter.setBrush(color);
        painter.drawPolygon(
            QPolygonF({c + QPointF(out * half, 0), c + QPointF(-out * half, -half), c + QPointF(-out * half, half)}));
    }
    painter.restore();
}

}  // namespace trueunit
