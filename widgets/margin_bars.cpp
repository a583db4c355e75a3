// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/margin_bars.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "widgets/figures.h"
#include "widgets/theme.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

constexpr double kNames = 44.0;    // pixels at the left for the levels' names
constexpr double kNumbers = 18.0;  // at the bottom for the scale
constexpr double kSame = 1e-6;     // percent

bool isBound(const std::optional<MarginBound>& bound, double percent) {
    return bound && std::abs(bound->percent - percent) < kSame;
}

}  // namespace

double MarginBars::xOf(double percent) const {
    return area_.left() + kNames + (area_.width() - kNames) * std::clamp(percent, 0.0, 100.0) / 100.0;
}

double MarginBars::rowHeight() const {
    return (area_.height() - kNumbers) / static_cast<double>(margin_.levels.size() + 1);
}

QRectF MarginBars::row(std::size_t index) const {
    return {area_.left(), area_.top() + static_cast<double>(index) * rowHeight(), area_.width(), rowHeight()};
}

void MarginBars::paint(QPainter& painter) const {
    paintScale(painter);
    for (const LevelMargin& level : margin_.levels) paintLevel(painter, level);
    paintAll(painter);
}

void MarginBars::paintScale(QPainter& painter) const {
    painter.setFont(theme::text(theme::kSmallPx));
    const double bottom = area_.bottom() - kNumbers;
    for (const int percent : {0, 25, 50, 75, 100}) {
        const double x = xOf(percent);
        painter.setPen(theme::pen(percent == 50 ? theme::kSecondary : theme::kHairline));
        painter.drawLine(QPointF(x, area_.top()), QPointF(x, bottom));
        painter.setPen(theme::kSecondary);
        const QString text = QString::number(percent) + (percent == 100 ? QStringLiteral(" %") : QString());
        if (percent == 100)
            drawFiguresRight(painter, {x, area_.bottom() - 4}, text);
        else
            drawFiguresCentred(painter, {x, area_.bottom() - 4}, text);
    }
}

void MarginBars::paintLevel(QPainter& painter, const LevelMargin& level) const {
    const QRectF r = row(static_cast<std::size_t>(level.level - 1));
    painter.setFont(theme::text(theme::kSmallPx));
    painter.setPen(theme::kSecondary);
    painter.drawText(r, Qt::AlignLeft | Qt::AlignVCenter, Words::tr("level %1").arg(level.level));
    const double left = xOf(level.low ? level.low->percent : 0.0);
    const double right = xOf(level.high ? level.high->percent : 100.0);
    const QRectF bar(left, r.top() + 0.2 * r.height(), std::max(0.0, right - left), 0.6 * r.height());
    painter.fillRect(bar, theme::kBandEdge);
    paintBound(painter, bar, level.low, true);
    paintBound(painter, bar, level.high, false);
}

// The end of a bar: a stroke where an instant bounds it, strong where it bounds the whole; its character inside.
void MarginBars::paintBound(QPainter& painter, const QRectF& bar, const std::optional<MarginBound>& bound,
                            bool low) const {
    if (!bound) return;
    const bool first = isBound(bound, low ? margin_.lowPercent : margin_.highPercent);
    const double x = low ? bar.left() : bar.right();
    painter.setPen(theme::pen(theme::kInk, first ? 3.0 : 1.2));
    painter.drawLine(QPointF(x, bar.top() - (first ? 2 : 0)), QPointF(x, bar.bottom() + (first ? 2 : 0)));
    painter.setFont(theme::text(theme::kSmallPx - 1, first ? QFont::DemiBold : QFont::Normal));
    const QFontMetricsF metrics(painter.font());
    const QString value = number(bound->percent, 1);
    const QString words = low ? value + u' ' + shortPrint(bound->print) : shortPrint(bound->print) + u' ' + value;
    if (2.2 * metrics.horizontalAdvance(words) > bar.width() || metrics.height() > bar.height() + 4) return;
    painter.setPen(first ? theme::kInk : theme::kSecondary);
    const double baseline = bar.center().y() + metrics.capHeight() / 2;
    if (low)
        drawFigures(painter, {x + 6, baseline}, words);
    else
        drawFiguresRight(painter, {x - 6, baseline}, words);
}

void MarginBars::paintAll(QPainter& painter) const {
    const QRectF r = row(margin_.levels.size());
    painter.setFont(theme::text(theme::kSmallPx, QFont::DemiBold));
    painter.setPen(theme::kInk);
    painter.drawText(r, Qt::AlignLeft | Qt::AlignVCenter, Words::tr("all"));
    const double left = xOf(margin_.lowPercent), right = xOf(margin_.highPercent);
    if (right <= left) {
        painter.setPen(theme::kOut);
        painter.drawText(r.adjusted(kNames, 0, 0, 0), Qt::AlignCenter, Words::tr("nowhere: some level would misread"));
        return;
    }
    const QRectF bar(left, r.top() + 0.2 * r.height(), right - left, 0.6 * r.height());
    painter.fillRect(bar, theme::kInOrder);
    painter.setPen(theme::kPanel);
    drawFiguresCentred(painter, {bar.center().x(), bar.center().y() + painter.fontMetrics().capHeight() / 2.0},
                       Words::tr("%1 to %2 %").arg(number(margin_.lowPercent, 1), number(margin_.highPercent, 1)));
}

}  // namespace trueunit
