// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/grid_cursors.h"

#include "widgets/figures.h"
#include "widgets/theme.h"

namespace trueunit {

namespace {

constexpr double kReach = 7.0;  // pixels about a cursor that take hold of it
constexpr int kLineHeight = 18;
constexpr int kOneLineWidth = 640;  // of the plot, from here on the three readings stand side by side
constexpr double kTab = 14.0;       // the letter's box at the top

}  // namespace

int GridCursors::stripHeight(int plotWidth) { return plotWidth >= kOneLineWidth ? kLineHeight : 2 * kLineHeight; }

std::optional<std::size_t> GridCursors::hit(double x) const {
    std::optional<std::size_t> nearest;
    double best = kReach;
    for (std::size_t i = 0; i < content().cursors.size(); ++i) {
        if (!content().cursors[i]) continue;
        const double off = std::abs(xOf(*content().cursors[i]) - x);
        if (off > best) continue;
        best = off;
        nearest = i;
    }
    return nearest;
}

void GridCursors::draw(QCPPainter* painter) {
    if (!content().cursors[0] && !content().cursors[1]) return;
    painter->setAntialiasing(true);
    drawLines(*painter);
    drawReadout(*painter);
}

// The letters of two cursors that stand close move apart, each to its own side.
double GridCursors::tabX(std::size_t cursor) const {
    constexpr double kApart = kTab + 1;
    const auto& [a, b] = content().cursors;
    const double here = xOf(*content().cursors[cursor]);
    if (!a || !b || std::abs(xOf(*a) - xOf(*b)) >= kApart) return here;
    const bool left = cursor == 0 ? *a <= *b : *b < *a;
    return (xOf(*a) + xOf(*b)) / 2 + (left ? -kApart : kApart) / 2;
}

void GridCursors::drawLines(QCPPainter& painter) const {
    painter.setFont(theme::text(theme::kSmallPx - 1, QFont::DemiBold));
    for (std::size_t i = 0; i < content().cursors.size(); ++i) {
        if (!content().cursors[i]) continue;
        const double x = xOf(*content().cursors[i]);
        if (!isVisibleX(x)) continue;
        QPen line = theme::pen(theme::kBlue, 1.3);
        if (i == 1) line.setDashPattern({5, 3});  // A is drawn through, B dashed
        painter.setPen(line);
        painter.drawLine(QPointF(x, inside().top()), QPointF(x, inside().bottom()));
        const QRectF tab(tabX(i) - kTab / 2, inside().top() - 2, kTab, kTab);
        painter.setPen(Qt::NoPen);
        painter.setBrush(theme::kBlue);
        painter.drawRoundedRect(tab, 3, 3);
        painter.setPen(theme::kPanel);
        painter.drawText(tab, Qt::AlignCenter, i == 0 ? QStringLiteral("A") : QStringLiteral("B"));
    }
}

void GridCursors::drawReadout(QCPPainter& painter) const {
    const auto lines = cursorLines(content().cursors, *content().snapshot);
    const QRectF all = parentPlot()->viewport();
    painter.setFont(theme::text(theme::kSmallPx, QFont::Medium));
    painter.setPen(theme::kBlue);
    const double left = inside().left();
    const bool wide = all.width() >= kOneLineWidth;
    const double column = (all.right() - left) / (wide ? 3 : 2);
    const double firstLine = all.bottom() - stripHeight(static_cast<int>(all.width())) + 13;
    drawFigures(painter, {left, firstLine}, lines[0]);
    drawFigures(painter, {left + column, firstLine}, lines[1]);
    drawFigures(painter, wide ? QPointF(left + 2 * column, firstLine) : QPointF(left, firstLine + kLineHeight),
                lines[2]);
}

}  // namespace trueunit
