// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/displacement_marks.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/report/comparison.h"
#include "core/report/shown_instants.h"
#include "widgets/marker.h"
#include "widgets/theme.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

constexpr double kSide = 0.21;        // of a column: to mark stands left of its middle, to space right
constexpr double kHalfSpread = 0.15;  // of a column: width of a cluster, oldest to newest
constexpr double kDotSize = 6.0;      // pixels
constexpr int kLeastHeight = 20;      // of the plot, pixels: less is folded up, with no room for a mark
constexpr double kStampSize = 10.0;
constexpr double kPaleFrom = 250.0;  // dots: so many that the means would be lost among them
constexpr double kLozenge = 8.0;

QString outWord() { return Words::tr("out"); }
double widthOf(const QPainter& painter, const QString& word) {
    return QFontMetricsF(painter.font()).horizontalAdvance(word);
}

double sideOf(Condition to) { return to == Condition::mark ? -kSide : kSide; }

QPixmap stamp(Condition to, double pixelRatio) {
    QPixmap picture(QSize(1, 1) * static_cast<int>(std::ceil(kStampSize * pixelRatio)));
    picture.setDevicePixelRatio(pixelRatio);
    picture.fill(Qt::transparent);
    QPainter painter(&picture);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setOpacity(0.75);
    drawMarker(painter, to, {kStampSize / 2, kStampSize / 2}, kDotSize,
               to == Condition::mark ? theme::kBlue : theme::kInk);
    return picture;
}

}  // namespace

DisplacementMarks::DisplacementMarks(QCustomPlot* plot) : QCPAbstractItem(plot) {
    setSelectable(false);
    setClipToAxisRect(false);
}

QPointF DisplacementMarks::place(double x, double percent) const {
    return {parentPlot()->xAxis->coordToPixel(x), parentPlot()->yAxis->coordToPixel(percent)};
}

void DisplacementMarks::makeStamps(double pixelRatio) {
    if (!toMark_.isNull() && toMark_.devicePixelRatio() == pixelRatio) return;
    toMark_ = stamp(Condition::mark, pixelRatio);
    toSpace_ = stamp(Condition::space, pixelRatio);
}

void DisplacementMarks::draw(QCPPainter* painter) {
    drawLegend(*painter);
    if (!snapshot_ || parentPlot()->axisRect()->height() < kLeastHeight) return;
    makeStamps(parentPlot()->bufferDevicePixelRatio());
    drawEvidence(*painter);
    drawDots(*painter);
    drawMeans(*painter);
    drawExtremes(*painter);
    drawBefore(*painter);
    drawWords(*painter);
}

// A frame about the clusters the chosen finding rests on.
void DisplacementMarks::drawEvidence(QCPPainter& painter) const {
    painter.setAntialiasing(true);
    painter.setPen(theme::pen(theme::kBlue, 1.5));
    painter.setBrush(theme::kChosen);
    for (const InstantReading& i : shownInstants(snapshot_->reading).instants) {
        if (!restsOn(evidence_, i.k, i.to)) continue;
        const double half = kHalfSpread + 0.05;
        const QPointF top = place(i.k + sideOf(i.to) - half, i.maxPercent);
        const QPointF bottom = place(i.k + sideOf(i.to) + half, i.minPercent);
        painter.drawRoundedRect(QRectF(top, bottom).adjusted(0, -6, 0, 6), 4, 4);
    }
}

void DisplacementMarks::drawDots(QCPPainter& painter) const {
    if (snapshot_->dots.empty()) return;
    const auto first = snapshot_->dots.front().number;
    const auto last = snapshot_->dots.back().number;
    const double span = std::max<double>(1.0, static_cast<double>(last - first));
    const QRectF inside = parentPlot()->axisRect()->rect();
    painter.setOpacity(std::clamp(kPaleFrom / static_cast<double>(snapshot_->dots.size()), 0.35, 1.0));
    for (const DisplacementDot& dot : snapshot_->dots) {
        const double age = last == first ? 0.5 : static_cast<double>(dot.number - first) / span;
        QPointF at = place(dot.k + sideOf(dot.to) + kHalfSpread * (2 * age - 1), dot.percent);
        at.setY(std::clamp(at.y(), inside.top(), inside.bottom()));
        painter.drawPixmap(at - QPointF(kStampSize / 2, kStampSize / 2),
                           dot.to == Condition::mark ? toMark_ : toSpace_);
    }
    painter.setOpacity(1.0);
}

void DisplacementMarks::drawMeans(QCPPainter& painter) const {
    painter.setAntialiasing(true);
    for (const InstantReading& i : shownInstants(snapshot_->reading).instants) {
        const bool out = meanIsOut(i, *snapshot_);
        const QColor color = out ? theme::kOut : theme::kInk;
        const QPointF centre = place(i.k + sideOf(i.to), i.meanPercent);
        const double half = place(i.k + kHalfSpread, 0).x() - place(i.k, 0).x() + 5;
        const double up = place(0, i.meanPercent + i.rmsPercent).y();
        const double down = place(0, i.meanPercent - i.rmsPercent).y();
        painter.setPen(theme::pen(color, 1.0));
        painter.setBrush(Qt::NoBrush);
        painter.drawLine(QPointF(centre.x() - half, up), QPointF(centre.x() - half, down));  // the spread, at the side
        painter.setPen(theme::pen(color, 2.2));
        painter.drawLine(centre - QPointF(half, 0), centre + QPointF(half, 0));
    }
}

// Of a window with more characters than there are dots for.
bool DisplacementMarks::showsExtremes() const {
    if (!snapshot_ || snapshot_->dots.empty()) return false;
    return snapshot_->dots.back().number - snapshot_->dots.front().number + 1 < snapshot_->windowUsed;
}

void DisplacementMarks::drawExtremes(QCPPainter& painter) const {
    if (!showsExtremes()) return;
    painter.setAntialiasing(false);
    painter.setPen(theme::pen(theme::kSecondary, 1.0));
    for (const InstantReading& i : shownInstants(snapshot_->reading).instants)
        for (const double percent : {i.minPercent, i.maxPercent}) {
            const QPointF at = place(i.k + sideOf(i.to), percent);
            painter.drawLine(at - QPointF(kDotSize, 0), at + QPointF(kDotSize, 0));
        }
}

void DisplacementMarks::drawWords(QCPPainter& painter) const {
    painter.setFont(theme::text(theme::kSmallPx - 1, QFont::DemiBold));
    if (place(2 * kSide, 0).x() - place(0, 0).x() <= widthOf(painter, outWord())) return;
    for (const InstantReading& i : shownInstants(snapshot_->reading).instants)
        if (meanIsOut(i, *snapshot_))
            drawWord(painter, i, outWord(), theme::kOut);
        else if (meanIsOpen(i, *snapshot_))
            drawWord(painter, i, QStringLiteral("?"), theme::kSecondary);
}

// Beyond the dots, seen from zero, and left of the moment before, which stands at the right of a cluster.
void DisplacementMarks::drawWord(QCPPainter& painter, const InstantReading& i, const QString& word,
                                 const QColor& color) const {
    const double width = widthOf(painter, word);
    const QRectF inside = parentPlot()->axisRect()->rect();
    const double height = QFontMetricsF(painter.font()).capHeight();
    const QPointF last = place(i.k + sideOf(i.to), i.meanPercent < 0 ? i.minPercent : i.maxPercent);
    const double beyond = kDotSize / 2 + (restsOn(evidence_, i.k, i.to) ? 7 : 3);  // clear of its frame
    const double base = i.meanPercent < 0 ? last.y() + beyond + height : last.y() - beyond;
    const double lozenge = place(i.k + sideOf(i.to) + kHalfSpread, 0).x() - kLozenge / 2 - 2;
    const double left = before_ ? lozenge - width : last.x() - width / 2;
    const QPointF at(left, std::clamp(base, inside.top() + height, inside.bottom()));
    painter.setPen(color);
    painter.drawText(at, word);
}

// Where the means stood before; a stroke to where they are where the difference is more than chance.
void DisplacementMarks::drawBefore(QCPPainter& painter) const {
    if (!before_) return;
    painter.setAntialiasing(true);
    for (const InstantReading& was : shownInstants(before_->reading).instants) {
        const QPointF from = place(was.k + sideOf(was.to) + kHalfSpread, was.meanPercent);
        for (const InstantReading& is : shownInstants(snapshot_->reading).instants) {
            if (is.k != was.k || is.to != was.to) continue;
            const auto a = meanOf(was), b = meanOf(is);
            if (!a || !b || !differs(*a, *b)) continue;
            painter.setPen(theme::pen(theme::kInk, 1.0));
            painter.drawLine(from, QPointF(from.x(), place(is.k, is.meanPercent).y()));
        }
        drawLozenge(painter, from, kLozenge);
    }
}

void DisplacementMarks::drawLegend(QCPPainter& painter) const {
    const QRectF inside = parentPlot()->axisRect()->rect();
    painter.setAntialiasing(true);
    painter.setFont(theme::text(theme::kSmallPx));
    const QFontMetricsF metrics(painter.font());
    double x = inside.left() + 4;
    const double middle = inside.top() - 12;
    const double baseline = middle + metrics.capHeight() / 2;
    const auto words = [&](const QString& text) {
        painter.setPen(theme::kSecondary);
        painter.drawText(QPointF(x, baseline), text);
        x += metrics.horizontalAdvance(text) + 12;
    };
    const auto fits = [&](double symbol, const QString& text) {  // rather nothing than half a word
        return x + symbol + metrics.horizontalAdvance(text) <= inside.right();
    };
    for (const Condition to : {Condition::mark, Condition::space}) {
        drawMarker(painter, to, {x + 4, middle}, 7, to == Condition::mark ? theme::kBlue : theme::kInk);
        x += 13;
        words(toWords(to));
    }
    const QString mean = Words::tr("mean"), spread = showsExtremes() ? Words::tr("rms") : Words::tr("rms spread"),
                  limit = Words::tr("limit");
    const QString led = Words::tr("before to now");
    // Everything else comes before more words.
    const double others = 13 + 12 + 19 + 12 + 6 + 12 + 17 + metrics.horizontalAdvance(mean + spread + limit);
    if (const QString before = fits(others, led) ? led : Words::tr("before"); before_ && fits(13, before)) {
        painter.setPen(theme::pen(theme::kInk, 1.0));
        painter.drawLine(QPointF(x + 4, middle), QPointF(x + 4, middle - 9));
        drawLozenge(painter, {x + 4, middle}, kLozenge);
        x += 13;
        words(before);
    }
    if (fits(19, mean)) {
        painter.setPen(theme::pen(theme::kInk, 2.2));
        painter.drawLine(QPointF(x, middle), QPointF(x + 14, middle));
        x += 19;
        words(mean);
    }
    if (fits(6, spread)) {
        painter.setPen(theme::pen(theme::kInk, 1.0));
        painter.drawLine(QPointF(x, middle - 6), QPointF(x, middle + 6));
        x += 6;
        words(spread);
    }
    const QString extremes = Words::tr("extremes");
    if (showsExtremes() && fits(17 + 12 + 17 + metrics.horizontalAdvance(limit), extremes)) {
        painter.setPen(theme::pen(theme::kSecondary, 1.0));
        painter.drawLine(QPointF(x, middle - 5), QPointF(x + 12, middle - 5));
        painter.drawLine(QPointF(x, middle + 5), QPointF(x + 12, middle + 5));
        x += 17;
        words(extremes);
    }
    if (fits(17, limit)) {
        painter.fillRect(QRectF(x, middle - 5, 12, 10), theme::kBandEdge);
        x += 17;
        words(limit);
    }
}

}  // namespace trueunit
