// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/grid_boundaries.h"

#include <algorithm>

#include "widgets/theme.h"
#include "widgets/words.h"

namespace trueunit {

void GridBoundaries::draw(QCPPainter* painter) {
    painter->setAntialiasing(false);
    drawRows(*painter);
    if (!content().snapshot) return;
    if (!content().chosen || content().snapshot->gridUnitSeconds <= 0.0) {
        painter->setFont(theme::text(theme::kTextPx));
        painter->setPen(theme::kSecondary);
        painter->drawText(inside().adjusted(0, 0, 0, -inside().height() / 2), Qt::AlignCenter | Qt::TextWordWrap,
                          whyNothing(*content().snapshot));
        return;
    }
    const int levels = content().snapshot->levels;
    if (const int level = content().evidence.level; level > 0) {
        const double left = std::max(inside().left(), xOf(level));
        const double right = std::min(inside().right(), xOf(level + 1));
        if (right > left)
            painter->fillRect(QRectF(left, inside().top() - 4, right - left, inside().height() + 10), theme::kChosen);
    }
    painter->setAntialiasing(false);
    for (int k = 0; k <= levels + 1; ++k) {
        const double x = std::round(xOf(k));
        if (!isVisibleX(x)) continue;
        painter->setPen(theme::pen(k == 0 || k == levels + 1 ? theme::kSecondary : theme::kBoundary));
        painter->drawLine(QPointF(x, inside().top() - 4), QPointF(x, inside().bottom() + 6));
    }
    drawNames(*painter, levels);
}

void GridBoundaries::drawRows(QCPPainter& painter) const {
    const double left = inside().left();
    const double slice = content().snapshot ? content().snapshot->options.slicePercent : 50.0;
    QPen dotted = theme::pen(theme::kBorder);
    dotted.setDashPattern({2, 4});
    painter.setPen(dotted);
    const double y = std::round(yOf(slice / 100.0));
    painter.drawLine(QPointF(left, y), QPointF(inside().right(), y));

    painter.setAntialiasing(true);
    painter.setFont(theme::text(theme::kSmallPx));
    painter.setPen(theme::kSecondary);
    const auto name = [&](double level, const QString& text) {
        painter.drawText(QRectF(0, yOf(level) - 12, left - 10, 24), Qt::AlignRight | Qt::AlignVCenter, text);
    };
    name(1.0, Words::tr("mark"));
    name(0.0, Words::tr("space"));
    name(slice / 100.0, number(slice, 0) + QStringLiteral(" %"));
}

void GridBoundaries::drawNames(QCPPainter& painter, int levels) const {
    painter.setAntialiasing(true);
    painter.setFont(theme::text(theme::kTextPx, QFont::DemiBold));
    painter.setPen(theme::kSecondary);
    for (int k = 0; k <= levels + 1; ++k) {
        const double from = std::max(inside().left(), xOf(k));
        const double to = std::min(inside().right(), k <= levels ? xOf(k + 1) : inside().right());
        if (to - from < 12) continue;
        painter.drawText(QRectF(from, 0, to - from, inside().top() - 4), Qt::AlignCenter, elementName(k, levels));
    }
}

}  // namespace trueunit
