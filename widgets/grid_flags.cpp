// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/grid_flags.h"

#include <cmath>

#include "widgets/figures.h"
#include "widgets/marker.h"
#include "widgets/theme.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

constexpr double kTextGap = 7.0;     // from the instant to its figure
constexpr double kRingedGap = 13.0;  // the same where a ring is about it
constexpr double kBaseline = 25.0;   // of the figure, below the axis rectangle
constexpr double kOutBaseline = 39.0;
constexpr double kMarkerSize = 8.0;
constexpr double kRing = 8.0;       // its radius
constexpr double kWideUnit = 60.0;  // pixels; narrower units take smaller figures

bool isEvidence(const TraceInstant& i, const EvidencePlaces& places) {
    const bool bounced = i.to == Condition::mark && i.steadySeconds > 0.0;
    return restsOn(places, i.k, i.to) || (places.bounces && bounced);
}

}  // namespace

std::vector<InstantFlag> flagsOf(const GridContent& content) {
    std::vector<InstantFlag> flags;
    if (!content.chosen || content.snapshot->gridUnitSeconds <= 0.0) return flags;
    flags.reserve(content.chosen->instants.size());
    for (const TraceInstant& i : content.chosen->instants)
        flags.push_back(
            {i.seconds / content.snapshot->gridUnitSeconds, i.k, i.to, signedNumber(i.displacementPercent, 1),
             instantIsOut(i.to, i.displacementPercent, *content.snapshot), isEvidence(i, content.evidence)});
    return flags;
}

double furthestOut(const GridContent& content, double withoutAny) {
    double most = 0.0;
    for (const InstantFlag& flag : flagsOf(content)) {
        const double off = std::abs(flag.units - flag.k);
        if (off <= most) continue;
        most = off;
        withoutAny = flag.units;
    }
    return withoutAny;
}

void GridFlags::draw(QCPPainter* painter) {
    painter->setAntialiasing(true);
    const QRectF area = inside();
    painter->setFont(theme::text(theme::kSmallPx));
    painter->setPen(theme::kSecondary);
    const auto name = [&](double baseline, const QString& words) {
        painter->drawText(QRectF(0, area.bottom() + baseline - 18, area.left() - 10, 24),
                          Qt::AlignRight | Qt::AlignVCenter, words);
    };
    name(kBaseline, Words::tr("% late +"));
    name(kOutBaseline, Words::tr("early \u2212"));
    const bool wide = xOf(1) - xOf(0) >= kWideUnit;
    painter->setFont(wide ? theme::text(theme::kTextPx, QFont::DemiBold) : theme::text(theme::kSmallPx - 1));
    const QFontMetricsF metrics(painter->font());
    double freeFrom = area.left();  // no figure over the one before
    for (const InstantFlag& flag : flagsOf(content())) {
        const double x = xOf(flag.units);
        if (!isVisibleX(x)) continue;
        const bool withText = x - (flag.ringed ? kRing : kMarkerSize / 2) >= freeFrom;
        drawFlag(*painter, flag, withText);
        if (withText) freeFrom = x + (flag.ringed ? kRingedGap : kTextGap) + figuresWidth(metrics, flag.text);
    }
}

void GridFlags::drawFlag(QCPPainter& painter, const InstantFlag& flag, bool withText) const {
    const double bottom = inside().bottom();
    const double x = xOf(flag.units);
    const double boundary = xOf(flag.k);
    const QColor color = flag.out ? theme::kOut : theme::kInk;
    const double middle = bottom + kBaseline - 4.5;
    painter.setPen(theme::pen(color, 3.0));
    painter.drawLine(QPointF(boundary, bottom + 8), QPointF(x, bottom + 8));
    const double textLeft = x + (flag.ringed ? kRingedGap : kTextGap);
    if (flag.ringed) {
        painter.setPen(theme::pen(theme::kBlue, 1.5));
        painter.setBrush(theme::kChosen);
        painter.drawEllipse(QPointF(x, middle), kRing, kRing);
    }
    drawMarker(painter, flag.to, {x, middle}, kMarkerSize, color);
    if (!withText) return;
    painter.setPen(color);
    drawFigures(painter, {textLeft, bottom + kBaseline}, flag.text);
    if (!flag.out) return;
    painter.save();
    painter.setFont(theme::text(theme::kSmallPx - 1, QFont::DemiBold));
    painter.drawText(QPointF(textLeft, bottom + kOutBaseline), Words::tr("out"));
    painter.restore();
}

}  // namespace trueunit
