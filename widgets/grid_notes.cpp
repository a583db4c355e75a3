// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/grid_notes.h"

#include <algorithm>
#include <array>

#include "widgets/theme.h"

namespace trueunit {

namespace {

constexpr double kBadge = 9.0;  // radius
constexpr double kWidestText = 210.0;
constexpr double kLongestText = 3.5;  // lines of that width; more stands on the report
constexpr int kWrapped = Qt::AlignCenter | Qt::TextWordWrap;
constexpr double kGap = 6.0;

}  // namespace

// Tries the places about the point in turn: the first that stays inside and covers no other flag.
QRectF GridNotes::placeLabel(QPointF p, QSizeF size, const std::vector<QRectF>& taken) const {
    const double right = p.x() + kBadge + kGap, left = p.x() - kBadge - kGap - size.width();
    const double below = p.y() + kBadge + kGap, above = p.y() - kBadge - kGap - size.height();
    const double level = p.y() - size.height() / 2;
    const std::array<QPointF, 6> tries = {
        {{right, level}, {left, level}, {right, below}, {right, above}, {left, below}, {left, above}}};
    QRectF best(tries[0], size);
    for (const QPointF& at : tries) {
        const QRectF label(at, size);
        const bool free =
            std::none_of(taken.begin(), taken.end(), [&](const QRectF& t) { return t.intersects(label); });
        if (free && inside().contains(label)) return label;
    }
    best.moveLeft(std::clamp(best.left(), inside().left(), std::max(inside().left(), inside().right() - size.width())));
    return best;
}

void GridNotes::draw(QCPPainter* painter) {
    painter->setAntialiasing(true);
    painter->setFont(theme::text(theme::kSmallPx));
    const QFontMetricsF metrics(painter->font());
    std::vector<QRectF> taken;
    for (const Note& note : content().notes)
        taken.emplace_back(xOf(note.units) - kBadge, yOf(note.level) - kBadge, 2 * kBadge, 2 * kBadge);
    for (std::size_t i = 0; i < content().notes.size(); ++i) {
        const Note& note = content().notes[i];
        const QPointF point(xOf(note.units), yOf(note.level));
        if (!isVisibleX(point.x())) continue;
        const QString text =
            metrics.elidedText(QString::fromStdString(note.text), Qt::ElideRight, kLongestText * kWidestText);
        if (!text.isEmpty()) {
            const QSizeF size = metrics.boundingRect(QRectF(0, 0, kWidestText, 1000), kWrapped, text).size();
            const QRectF label = placeLabel(point, size + QSizeF(10, 4), taken);
            taken.push_back(label);
            painter->setPen(theme::pen(theme::kBlue));
            painter->drawLine(point, label.center());
            painter->setBrush(theme::kPanel);
            painter->drawRoundedRect(label, 3, 3);
            painter->setPen(theme::kInk);
            painter->setFont(theme::text(theme::kSmallPx));
            painter->drawText(label.adjusted(4, 0, -4, 0), kWrapped, text);
        }
        painter->setPen(theme::pen(theme::kPanel, 1.5));
        painter->setBrush(theme::kBlue);
        painter->drawEllipse(point, kBadge, kBadge);
        painter->setPen(theme::kPanel);
        painter->setFont(theme::text(theme::kSmallPx - 1, QFont::DemiBold));
        painter->drawText(QRectF(point.x() - kBadge, point.y() - kBadge, 2 * kBadge, 2 * kBadge), Qt::AlignCenter,
                          QString::number(i + 1));
    }
}

}  // namespace trueunit
