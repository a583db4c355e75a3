// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/trail_nudges.h"

#include "widgets/figures.h"
#include "widgets/theme.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

constexpr double kHead = 4.0;  // half the arrow head, pixels

}  // namespace

TrailNudges::TrailNudges(QCustomPlot* plot) : QCPAbstractItem(plot) {
    setSelectable(false);
    setClipToAxisRect(true);
}

void TrailNudges::draw(QCPPainter* painter) {
    if (!snapshot_) return;
    const QRectF inside = parentPlot()->axisRect()->rect();
    std::array<double, kWordRows> rights;  // of each row: words end before those of the next younger nudge in it
    rights.fill(inside.right());
    for (auto n = snapshot_->nudges.rbegin(); n != snapshot_->nudges.rend(); ++n) {
        const double x = parentPlot()->xAxis->coordToPixel(n->seconds - snapshot_->seconds);
        if (x < inside.left()) break;
        painter->setAntialiasing(false);
        painter->setPen(QPen(theme::kSecondary, 1.0, Qt::DotLine));
        painter->drawLine(QPointF(x, inside.top()), QPointF(x, inside.bottom()));
        const double way = n->step.value > 0.0 ? -1.0 : 1.0;  // down the screen when the bias fell
        const double y = parentPlot()->yAxis->coordToPixel(0.5 * (n->before.value + n->after.value));
        painter->setAntialiasing(true);
        painter->setPen(Qt::NoPen);
        painter->setBrush(theme::kInk);
        painter->drawPolygon(
            QPolygonF({{x - kHead, y - way * kHead}, {x + kHead, y - way * kHead}, {x, y + way * kHead}}));
        drawWords(*painter, *n, x, rights);
    }
}

void TrailNudges::drawWords(QCPPainter& painter, const Nudge& n, double x,
                            std::array<double, kWordRows>& rights) const {
    painter.setFont(theme::text(theme::kSmallPx - 1));
    const QFontMetricsF metrics(painter.font());
    const QString full = Words::tr("%1 to %2").arg(signedNumber(n.before.value, 1), signedNumber(n.after.value, 1));
    const QString brief = signedNumber(n.step.value, 1);
    for (std::size_t row = 0; row < kWordRows; ++row) {
        const double room = rights[row] - x - 8;
        const bool beside = figuresWidth(metrics, brief) > room;  // of a nudge just now: at its left
        const QString& words = beside || figuresWidth(metrics, full) <= room ? full : brief;
        const double width = figuresWidth(metrics, words) + 4;
        if (beside && rights[row] < parentPlot()->axisRect()->right()) continue;
        rights[row] = beside ? x - width - 2 : x;
        const QRectF ground(rights[row] + (beside ? 0 : 2),
                            parentPlot()->axisRect()->top() + 1 + double(row) * metrics.height(), width,
                            metrics.height());
        painter.fillRect(ground, theme::kPanel);  // an older nudge's hairline may cross
        painter.setPen(theme::kSecondary);
        drawFigures(painter, {ground.left() + 2, ground.top() + metrics.ascent()}, words);
        return;
    }
}

}  // namespace trueunit
