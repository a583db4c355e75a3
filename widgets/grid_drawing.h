// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QHash>
#include <QPolygonF>

#include "widgets/grid_item.h"

namespace trueunit {

class GridCursors;
class GridOlder;

// The character on its grid, drawn on a plot: the same on the screen and on paper. The plot belongs to the caller and
// outlives this. Window thread.
class GridDrawing {
public:
    explicit GridDrawing(QCustomPlot& plot);

    void setContent(GridContent content);
    const GridContent& content() const { return content_; }
    void showWhole();  // the range of one character with a little before it
    bool isWhole() const;
    void keepInRange();  // after zoom and pan: not beyond what there is to see
    std::optional<std::size_t> cursorAt(double x) const;

private:
    void drawTraces();
    const QPolygonF& lineOf(const CharacterTrace& trace);
    void forgetAllBut(const std::vector<quint64>& numbers);
    QCPRange whole() const;

    QCustomPlot& plot_;
    GridContent content_;
    GridOlder* older_;
    QCPGraph* chosen_;
    GridCursors* cursors_;
    QHash<quint64, QPolygonF> lines_;  // units and level; made once per character
    double linesUnit_ = 0.0;           // grid unit they were made for
};

}  // namespace trueunit
