// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QPointF>

#include "core/units.h"

class QPainter;

namespace trueunit {

// The sign of an instant's direction, the same everywhere: filled triangle pointing up for an instant to mark, open
// triangle pointing down for one to space. Shape tells them apart, colour is free for the limits.
void drawMarker(QPainter& painter, Condition to, QPointF centre, double size, const QColor& color);

// The sign of what was before: an open lozenge.
void drawLozenge(QPainter& painter, QPointF centre, double size);

}  // namespace trueunit
