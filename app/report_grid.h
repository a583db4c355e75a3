// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>
#include <QRectF>

#include "core/report/frozen_frame.h"

namespace trueunit {

// Draws the frozen frame's grid for paper: the chosen character strongest over the ideal boundaries, earlier ones
// faint, every instant with its displacement, notes as numbered rings, cursors as lettered lines.
class ReportGrid {
public:
    ReportGrid(const FrozenFrame& frame, QRectF area, double dotsPerMm);
    void draw(QPainter& painter) const;

private:
    double x(double units) const;
    double y(double level) const;
    void drawBoundaries(QPainter& painter) const;
    void drawTraces(QPainter& painter) const;
    void drawTrace(QPainter& painter, const CharacterTrace& trace, const QPen& pen) const;
    void drawTrace(QPainter& painter, const CharacterTrace& trace, const QPen& pen, double unitSeconds) const;
    void drawBefore(QPainter& painter, const CharacterTrace& chosen) const;
    void drawFlags(QPainter& painter, const CharacterTrace& trace) const;
    void drawCursors(QPainter& painter) const;
    void drawNotes(QPainter& painter) const;

    const FrozenFrame& frame_;
    const Snapshot& snapshot_;
    QRectF area_;  // all of it
    QRectF plot_;  // inside the labels
    double mm_;
    double left_ = -0.35, right_ = 8.0;  // units at the sides of plot_
};

}  // namespace trueunit
