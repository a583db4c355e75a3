// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QPointF>

class QPainter;

namespace trueunit {

// Where the bias stands, as a shape that needs no colour: a ring between two bars in limits, a filled triangle to the
// right when marks are too long, to the left when they are too short. `out`: -1, 0, +1.
void drawLimitShape(QPainter& painter, QPointF centre, double size, int out, const QColor& color);

}  // namespace trueunit
