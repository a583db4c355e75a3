// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/comparison_panel.h"

#include <QPainter>

#include "widgets/figures.h"
#include "widgets/theme.h"
#include "widgets/told.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

constexpr double kNarrow = 300.0;  // pixels; below this the values before and after are left to the readings

bool isSigned(const Difference& d) { return d.unit == "%"; }

QString valueOf(const std::optional<Measured>& m, const Difference& d) {
    if (!m) return QStringLiteral("\u2014");
    const int places = d.key == "stop_units" || d.key == "error_percent" ? 2 : 1;
    return isSigned(d) ? signedNumber(m->value, places) : number(m->value, places);
}

QString changeOf(const Difference& d) {
    if (!d.change) return QStringLiteral("\u2014");
    const int places = d.change->uncertainty < 0.095 ? 2 : 1;
    return signedNumber(d.change->value, places) + QStringLiteral(" \u00b1") + number(d.change->uncertainty, places);
}

QString verdictOf(const Difference& d) {
    const auto significant = d.significant();
    if (!significant) return Words::tr("not known");
    return *significant ? Words::tr("differs") : Words::tr("may be chance");
}

}  // namespace

ComparisonPanel::ComparisonPanel(QWidget* parent) : Panel(Words::tr("Before and now"), parent) {}

void ComparisonPanel::setBefore(const SnapshotPtr& before) {
    before_ = before;
    refresh(shown());
}

void ComparisonPanel::refresh(const Snapshot& snapshot) {
    comparison_ = before_ ? compareReadings(before_->reading, snapshot.reading) : Comparison{};
    QStringList said;
    for (const std::vector<Difference>* part : {&comparison_.readings, &comparison_.instants})
        for (const Difference& d : *part)
            said << Words::tr("%1 %2, now %3, change %4, %5")
                        .arg(told(d.name), valueOf(d.before, d), valueOf(d.after, d), changeOf(d), verdictOf(d));
    if (before_) setRemark(Words::tr("was, is, change \u00b1 95 %"), Tone::quiet, Words::tr("change \u00b1 95 %"));
    describe(said.join(QStringLiteral("; ")));
    update();
}

void ComparisonPanel::paintBody(QPainter& painter, const QRectF& body) {
    if (comparison_.readings.empty()) return;
    const double height = body.height() / static_cast<double>(comparison_.readings.size());
    QRectF row(body.left(), body.top(), body.width(), height);
    for (const Difference& d : comparison_.readings) {
        paintRow(painter, row, d);
        row.translate(0, height);
    }
}

void ComparisonPanel::paintRow(QPainter& painter, const QRectF& row, const Difference& d) const {
    painter.setPen(theme::pen(theme::kHairline));
    painter.drawLine(row.bottomLeft(), row.bottomRight());
    painter.setFont(theme::text(theme::kSmallPx));
    const QFontMetricsF metrics(painter.font());
    const double baseline = row.center().y() + metrics.capHeight() / 2;
    const bool differs = d.significant().value_or(false);
    const double w = row.width();
    const bool wide = w >= kNarrow;
    painter.setPen(theme::kSecondary);
    painter.drawText(QPointF(row.left(), baseline), told(d.name));
    if (wide) {
        drawFiguresRight(painter, {row.left() + 0.355 * w, baseline}, valueOf(d.before, d));
        painter.setPen(theme::kInk);
        drawFiguresRight(painter, {row.left() + 0.485 * w, baseline}, valueOf(d.after, d));
    }
    painter.setPen(differs ? theme::kInk : theme::kSecondary);
    painter.setFont(theme::text(theme::kSmallPx, differs ? QFont::DemiBold : QFont::Normal));
    drawFiguresRight(painter, {row.left() + 0.715 * w, baseline}, changeOf(d));
    painter.drawText(QRectF(row.left() + 0.715 * w, row.top(), 0.285 * w, row.height()),
                     Qt::AlignRight | Qt::AlignVCenter, verdictOf(d));
}

}  // namespace trueunit
