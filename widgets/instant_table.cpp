// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/instant_table.h"

#include <QPainter>
#include <QStringList>
#include <array>

#include "core/report/shown_instants.h"
#include "widgets/figures.h"
#include "widgets/marker.h"
#include "widgets/theme.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

constexpr double kRowPitch = 1.55;  // of the text size
constexpr std::array kHeads = {QT_TRANSLATE_NOOP("Words", "count"), QT_TRANSLATE_NOOP("Words", "mean"),
                               QT_TRANSLATE_NOOP("Words", "rms"), QT_TRANSLATE_NOOP("Words", "earliest"),
                               QT_TRANSLATE_NOOP("Words", "latest")};
// Right edges of the numeric columns as parts of the width; the first two columns are words.
constexpr std::array kRights = {0.46, 0.60, 0.71, 0.86, 1.0};

std::array<QString, 5> cells(const InstantReading& i) {
    return {QString::number(i.count), signedNumber(i.meanPercent, 1), number(i.rmsPercent, 1),
            signedNumber(i.minPercent, 1), signedNumber(i.maxPercent, 1)};
}

void paintHeads(QPainter& painter, const QRectF& area, double baseline) {
    painter.setPen(theme::kSecondary);
    painter.drawText(QPointF(area.left(), baseline), Words::tr("instant"));
    for (std::size_t c = 0; c < kHeads.size(); ++c) {
        const QString head = Words::tr(kHeads[c]);
        drawFiguresRight(painter, {area.left() + kRights[c] * area.width(), baseline}, head);
    }
}

}  // namespace

InstantTable::InstantTable(QWidget* parent) : Panel(Words::tr("Instants"), parent) { refresh(shown()); }

QSize InstantTable::sizeHint() const { return {400, static_cast<int>(60 + 12 * kRowPitch * theme::kSmallPx)}; }

void InstantTable::refresh(const Snapshot& snapshot) {
    setRemark(instantsWords(snapshot.reading));
    QStringList said;
    for (const InstantReading& i : shownInstants(snapshot.reading).instants)
        said << Words::tr("%1 %2 mean %3")
                    .arg(elementName(i.k, snapshot.levels), toWords(i.to), signedNumber(i.meanPercent, 1));
    describe(said.isEmpty() ? whyNothing(snapshot) : said.join(QStringLiteral("; ")));
    update();
}

double InstantTable::paintTable(QPainter& painter, const QRectF& area, const Snapshot& snapshot, double textPx) {
    const double pitch = kRowPitch * textPx;
    painter.setFont(theme::text(textPx));
    double baseline = area.top() + textPx;
    paintHeads(painter, area, baseline);
    const double markerX = area.left() + 3.4 * textPx;
    for (const InstantReading& i : shownInstants(snapshot.reading).instants) {
        painter.setPen(theme::pen(theme::kHairline));
        painter.drawLine(QPointF(area.left(), baseline + 0.42 * textPx),
                         QPointF(area.right(), baseline + 0.42 * textPx));
        baseline += pitch;
        const bool out = meanIsOut(i, snapshot);
        const QColor color = out ? theme::kOut : theme::kInk;
        painter.setPen(theme::kInk);
        drawFigures(painter, {area.left(), baseline}, elementName(i.k, snapshot.levels));
        drawMarker(painter, i.to, {markerX, baseline - 0.36 * textPx}, 0.6 * textPx, theme::kInk);
        painter.setPen(theme::kSecondary);
        painter.drawText(QPointF(markerX + 0.7 * textPx, baseline), toWords(i.to));
        const auto row = cells(i);
        for (std::size_t c = 0; c < row.size(); ++c) {
            painter.setPen(c == 1 ? color : theme::kInk);
            painter.setFont(theme::text(textPx, c == 1 ? QFont::DemiBold : QFont::Normal));
            drawFiguresRight(painter, {area.left() + kRights[c] * area.width(), baseline}, row[c]);
        }
        painter.setFont(theme::text(textPx));
    }
    return baseline + 0.42 * textPx - area.top();
}

void InstantTable::paintBody(QPainter& painter, const QRectF& body) {
    if (shown().reading.instants.empty()) {
        painter.setFont(theme::text(theme::kSmallPx));
        painter.setPen(theme::kSecondary);
        painter.drawText(body, Qt::AlignCenter | Qt::TextWordWrap, whyNothing(shown()));
        return;
    }
    const double rows = static_cast<double>(shown().reading.instants.size()) + 1.0;
    const double px = std::clamp(body.height() / (rows * kRowPitch), 9.0, theme::kTextPx);
    paintTable(painter, body, shown(), px);
}

}  // namespace trueunit
