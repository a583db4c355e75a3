// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/marker.h"

#include <QPainter>
#include <QPolygonF>

#include "widgets/theme.h"

namespace trueunit {

void drawMarker(QPainter& painter, Condition to, QPointF c, double size, const QColor& color) {
    const double half = size / 2;
    const double rise = to == Condition::mark ? -half : half;  // of the point; y grows downward
    const QPolygonF triangle({c + QPointF(0, rise), c + QPointF(half, -rise), c + QPointF(-half, -rise)});
    const bool up = to == Condition::mark;
    painter.setPen(theme::pen(color, up ? 1.0 : 1.3));
    painter.setBrush(up ? QBrush(color) : QBrush(Qt::NoBrush));
    painter.drawPolygon(triangle);
}

void drawLozenge(QPainter& painter, QPointF c, double size) {
    const double half = size / 2;
    painter.setPen(theme::pen(theme::kInk, 1.2));
    painter.setBrush(theme::kPanel);
    painter.drawPolygon(
        QPolygonF({c + QPointF(0, -half), c + QPointF(half, 0), c + QPointF(0, half), c + QPointF(-half, 0)}));
}

}  // namespace trueunit
