// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/bias_scale.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "widgets/figures.h"
#include "widgets/theme.h"
#include "widgets/words.h"

namespace trueunit {

double BiasScale::xOf(double percent, const QRectF& track) const {
    return track.center().x() + 0.5 * track.width() * std::clamp(percent / end, -1.0, 1.0);
}

void BiasScale::paint(QPainter& painter, const QRectF& area) const {
    const double px = painter.font().pixelSize();
    const QRectF words(area.left(), area.top(), area.width(), 1.5 * px);
    const double inset = figuresWidth(QFontMetricsF(painter.font()), QStringLiteral("+00")) / 2;
    const QRectF track(area.left() + inset, words.bottom() + 0.35 * px, area.width() - 2 * inset, 1.5 * px);
    paintWords(painter, words.adjusted(inset, 0, -inset, 0));
    paintTrack(painter, track);
    paintPeaks(painter, track);
    paintNumbers(painter, track, track.bottom() + 1.5 * px);
}

void BiasScale::paintWords(QPainter& painter, const QRectF& row) const {
    const QFontMetricsF metrics(painter.font());
    const QString shortWords = Words::tr("marks short"), longWords = Words::tr("marks long");
    painter.setPen(theme::kSecondary);
    painter.drawText(row, Qt::AlignLeft | Qt::AlignVCenter, shortWords);
    painter.drawText(row, Qt::AlignRight | Qt::AlignVCenter, longWords);
    if (!lowest || !highest) return;
    const QString least = signedNumber(*lowest, 1), most = signedNumber(*highest, 1);
    const QString held = least == most ? Words::tr("held ") + most : Words::tr("held %1 to %2").arg(least, most);
    const double room = row.width() - 2 * metrics.horizontalAdvance(shortWords) - 16;
    const double baseline = row.center().y() + metrics.capHeight() / 2;
    if (figuresWidth(metrics, held) < room) drawFiguresCentred(painter, {row.center().x(), baseline}, held);
}

void BiasScale::paintTrack(QPainter& painter, const QRectF& track) const {
    painter.fillRect(track, theme::kTrack);
    const QRectF band(QPointF(xOf(-limit, track), track.top()), QPointF(xOf(limit, track), track.bottom()));
    painter.fillRect(band, theme::kBandEdge);
    paintLimits(painter, track);
    const double zero = track.center().x();
    if (value) {
        const bool out = !open && std::abs(*value) > limit;
        const QColor color = !live ? theme::kSecondary : out ? theme::kOut : theme::kInk;
        const double x = xOf(*value, track);
        const double inset = 0.24 * track.height();
        painter.fillRect(QRectF(std::min(zero, x), track.top() + inset, std::abs(x - zero), track.height() - 2 * inset),
                         color);
        if (std::abs(*value) > end) {  // beyond the scale: an arrow head at its end
            const double tip = track.height() / 2 * (*value > 0 ? 1 : -1);
            const double y = track.center().y();
            painter.setPen(Qt::NoPen);
            painter.setBrush(color);
            painter.drawPolygon(
                QPolygonF({{x + tip, y}, {x - 0.2 * tip, y - std::abs(tip)}, {x - 0.2 * tip, y + std::abs(tip)}}));
        }
    }
    painter.setPen(theme::pen(theme::kInk, std::max(1.5, track.height() / 10)));
    painter.drawLine(QPointF(zero, track.top() - 0.2 * track.height()),
                     QPointF(zero, track.bottom() + 0.2 * track.height()));
}

// Brackets, so that the limits are a shape and not a tint alone.
void BiasScale::paintLimits(QPainter& painter, const QRectF& track) const {
    const double foot = 0.28 * track.height();
    painter.setPen(theme::pen(theme::kInOrder, std::max(1.2, track.height() / 14)));
    for (const int side : {-1, 1}) {
        const double x = xOf(side * limit, track);
        painter.drawPolyline(QPolygonF({{x - side * foot, track.top()},
                                        {x, track.top()},
                                        {x, track.bottom()},
                                        {x - side * foot, track.bottom()}}));
    }
}

void BiasScale::paintPeaks(QPainter& painter, const QRectF& track) const {
    for (const auto& peak : {lowest, highest}) {
        if (!peak) continue;
        const double x = xOf(*peak, track);
        const bool out = std::abs(*peak) > limit;
        painter.setPen(theme::pen(out ? theme::kOut : theme::kInk, std::max(1.5, track.height() / 10)));
        painter.drawLine(QPointF(x, track.top() - 0.15 * track.height()),
                         QPointF(x, track.bottom() + 0.15 * track.height()));
    }
}

// Round numbers, and the limits where they stand free between them.
void BiasScale::paintNumbers(QPainter& painter, const QRectF& track, double baseline) const {
    const double px = painter.font().pixelSize();
    const int halves = track.width() > 15 * px ? 2 : 1;
    painter.setPen(theme::kSecondary);
    for (int i = -halves; i <= halves; ++i) {
        const double percent = end * i / halves;
        drawFiguresCentred(painter, {xOf(percent, track), baseline}, signedNumber(percent, 0));
    }
    const double toZero = 0.5 * track.width() * limit / end;
    const double toNext = 0.5 * track.width() * (end / halves - limit) / end;
    const double free = figuresWidth(QFontMetricsF(painter.font()), QStringLiteral("+00")) + 0.3 * px;
    if (limit <= 0.0 || std::min(toZero, toNext) < free) return;
    painter.setPen(theme::kInOrder);
    for (const double percent : {-limit, limit})
        drawFiguresCentred(painter, {xOf(percent, track), baseline},
                           (percent > 0 ? u'+' : u'\u2212') + limitNumber(limit));
}

}  // namespace trueunit
