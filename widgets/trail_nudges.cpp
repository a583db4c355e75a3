// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/trail_nudges.h"

#include <algorithm>

#include "widgets/figures.h"
#include "widgets/theme.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

constexpr double kHead = 4.0;        // half the arrow head, pixels
constexpr double kWordsApart = 6.0;  // words of two nudges side by side, pixels
constexpr double kHairlineGap = 2.0;

QFont nudgeFont() { return theme::text(theme::kSmallPx - 1); }

bool covers(const NudgePlace& place, double x) { return x > place.left - kHairlineGap && x < place.right; }

// Neither upon the words of another, nor the hairline of either through the words of the other.
bool clear(const NudgePlace& wanted, const std::vector<NudgePlace>& taken) {
    return std::none_of(taken.begin(), taken.end(), [&](const NudgePlace& other) {
        if (wanted.row == other.row)
            return wanted.left < other.right + kWordsApart && other.left < wanted.right + kWordsApart;
        return wanted.row < other.row ? covers(wanted, other.words->x) : covers(other, wanted.words->x);
    });
}

}  // namespace

std::vector<NudgePlace> placeNudgeWords(const std::vector<NudgeWords>& youngestFirst, double left, double right,
                                        int rows) {
    std::vector<NudgePlace> taken;
    const auto placed = [&](const NudgeWords& words, bool rightward, int row) {
        const double from = rightward ? std::min(words.x, right - words.width) : words.x - words.width - kHairlineGap;
        const NudgePlace wanted{&words, row, from, from + words.width};
        if (from < left || !clear(wanted, taken)) return false;
        taken.push_back(wanted);
        return true;
    };
    for (const NudgeWords& words : youngestFirst) {
        // Words that lie to the left, over older hairlines, bar none of them in the top row.
        const bool atTheEnd = words.x + words.width > right;
        bool done = false;
        for (const bool rightward : {true, false})
            for (int i = 0; i < rows && !done; ++i)
                done = placed(words, rightward, atTheEnd || !rightward ? rows - 1 - i : i);
    }
    return taken;
}

TrailNudges::TrailNudges(QCustomPlot* plot) : QCPAbstractItem(plot) {
    setSelectable(false);
    setClipToAxisRect(false);  // the words stand above it
}

double TrailNudges::rowHeight() { return QFontMetricsF(nudgeFont()).height(); }

void TrailNudges::draw(QCPPainter* painter) {
    if (!snapshot_) return;
    const QRectF inside = parentPlot()->axisRect()->rect();
    const QFontMetricsF metrics(nudgeFont());
    std::vector<NudgeWords> all;
    for (auto n = snapshot_->nudges.rbegin(); n != snapshot_->nudges.rend(); ++n) {
        const double x = parentPlot()->xAxis->coordToPixel(n->seconds - snapshot_->seconds);
        if (x < inside.left()) break;
        drawHead(*painter, *n, x);
        const QString words =
            Words::tr("%1 to %2").arg(signedNumber(n->before.value, 1), signedNumber(n->after.value, 1));
        all.push_back({x, words, figuresWidth(metrics, words)});
    }
    for (const NudgePlace& place : placeNudgeWords(all, inside.left(), inside.right(), rows_))
        drawWords(*painter, place);  // and the line to them: one without words would point at those of another
}

void TrailNudges::drawHead(QCPPainter& painter, const Nudge& n, double x) const {
    const double way = n.step.value > 0.0 ? -1.0 : 1.0;  // down the screen when the bias fell
    const double y = parentPlot()->yAxis->coordToPixel(0.5 * (n.before.value + n.after.value));
    painter.setAntialiasing(true);
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme::kInk);
    painter.drawPolygon(QPolygonF({{x - kHead, y - way * kHead}, {x + kHead, y - way * kHead}, {x, y + way * kHead}}));
}

void TrailNudges::drawWords(QCPPainter& painter, const NudgePlace& place) const {
    painter.setFont(nudgeFont());
    const double foot = parentPlot()->axisRect()->top() - place.row * rowHeight();
    painter.setAntialiasing(false);
    painter.setPen(QPen(theme::kSecondary, 1.0, Qt::DotLine));
    painter.drawLine(QPointF(place.words->x, foot), QPointF(place.words->x, parentPlot()->axisRect()->bottom()));
    painter.setAntialiasing(true);
    painter.setPen(theme::kSecondary);
    drawFigures(painter, {place.left, foot - QFontMetricsF(painter.font()).descent()}, place.words->words);
}

}  // namespace trueunit
