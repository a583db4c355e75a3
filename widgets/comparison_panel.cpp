// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/comparison_panel.h"

#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "core/report/judge.h"
#include "widgets/figures.h"
#include "widgets/theme.h"
#include "widgets/told.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

constexpr int kRowHeight = 16, kFewestRows = 2;  // pixels
constexpr int kTitle = 28, kBelowRows = 4;       // pixels; as low as they can be, for the readings' sake
constexpr double kColumnGap = 10.0;              // pixels
constexpr double kMostOfNameCut = 24.0;          // a name may lose that much before what was and is are left out

// "shaft, /min"
QString nameOf(const Difference& d) {
    return told(d.name) + QStringLiteral(", ") +
           (d.unit == "units" ? Words::tr("units") : QString::fromStdString(d.unit));
}

bool isSigned(const Difference& d) { return d.unit == "%"; }

// Of all figures of a row.
int placesOf(const Difference& d) {
    if (!d.change) return d.key == "stop_units" || d.key == "error_percent" ? 2 : 1;
    return d.change->uncertainty < 0.095 ? 2 : 1;
}

QString valueOf(const std::optional<Measured>& m, const Difference& d) {
    if (!m) return QStringLiteral("\u2014");
    const int places = placesOf(d);
    return isSigned(d) ? signedNumber(m->value, places) : number(m->value, places);
}

// The difference of the figures as they are shown: what is written down adds up.
QString changeOf(const Difference& d) {
    if (!d.change || !d.before || !d.after) return QStringLiteral("\u2014");
    const int places = placesOf(d);
    const double unit = std::pow(10.0, -places);
    const double shown = unit * (std::round(d.after->value / unit) - std::round(d.before->value / unit));
    return signedNumber(shown, places) + QStringLiteral(" \u00b1") + number(d.change->uncertainty, places);
}

}  // namespace

QString seenWords(Seen seen) {
    switch (seen) {
        case Seen::notKnown:
            return Words::tr("not known");
        case Seen::none:
            return Words::tr("none seen");
        case Seen::unsure:
            return Words::tr("unsure");
        case Seen::changed:
            return Words::tr("changed");
    }
    return {};
}

ComparisonPanel::ComparisonPanel(QWidget* parent) : Panel(Words::tr("Before and now"), parent) {
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    chooseRows();
}

void ComparisonPanel::setBefore(const SnapshotPtr& before) {
    before_ = before;
    changed_.clear();
    refresh(shown());
}

void ComparisonPanel::refresh(const Snapshot& snapshot) {
    comparison_ = before_ ? compareReadings(before_->reading, snapshot.reading) : Comparison{};
    QStringList said;
    for (const std::vector<Difference>* part : {&comparison_.readings, &comparison_.instants})
        for (const Difference& d : *part)
            said << Words::tr("%1 %2, now %3, change %4, %5")
                        .arg(told(d.name), valueOf(d.before, d), valueOf(d.after, d), changeOf(d), seenWords(d.seen()));
    if (before_)
        setRemark(Words::tr("before, now, change \u00b1 uncertainty"), Tone::quiet,
                  {Words::tr("change \u00b1 uncertainty")});
    describe(said.join(QStringLiteral("; ")));
    chooseRows();
    update();
}

void ComparisonPanel::chooseRows() {
    const std::set<std::string> before = keys();
    rows_.clear();
    for (const Difference& d : comparison_.readings) {
        if (d.seen() == Seen::changed) changed_.insert(d.key);
        if (d.seen() == Seen::none || d.seen() == Seen::notKnown) changed_.erase(d.key);
        if (d.key == "bias_percent" || d.key == "end_percent" || changed_.count(d.key) > 0) rows_.push_back(d);
    }
    if (keys() == before) return;
    updateGeometry();
    emit rowsChosen();
}

std::set<std::string> ComparisonPanel::keys() const {
    std::set<std::string> keys;
    for (const Difference& d : rows_) keys.insert(d.key);
    return keys;
}

int ComparisonPanel::heightOfRows() const {
    return kTitle + kBelowRows + kRowHeight * std::max(kFewestRows, static_cast<int>(rows_.size()));
}

// Columns are as wide as what they hold; where that is too much, what was and is are left to the readings beside.
ComparisonPanel::Columns ComparisonPanel::columnsFor(const QFontMetricsF& metrics, double room) const {
    Columns c;
    double names = 0.0;
    const QFontMetricsF strong(theme::text(theme::kSmallPx, QFont::DemiBold));
    for (const Difference& d : rows_) {
        names = std::max(names, metrics.horizontalAdvance(nameOf(d)));
        c.before = std::max(c.before, figuresWidth(metrics, valueOf(d.before, d)));
        c.after = std::max(c.after, figuresWidth(metrics, valueOf(d.after, d)));
        c.change = std::max(c.change, figuresWidth(strong, changeOf(d)));
        c.verdict = std::max(c.verdict, strong.horizontalAdvance(seenWords(d.seen())));
    }
    const auto wanted = [&] {
        return names + (c.withValues ? c.before + c.after + 2 * kColumnGap : 0.0) + c.change + c.verdict +
               2 * kColumnGap;
    };
    c.withValues = wanted() <= room + kMostOfNameCut;
    if (!c.withValues) c.before = c.after = 0.0;
    return c;
}

void ComparisonPanel::paintBody(QPainter& painter, const QRectF& body) {
    if (rows_.empty()) return;
    const double room = rect().height() - kTitle - kBelowRows;
    const Columns columns = columnsFor(QFontMetricsF(theme::text(theme::kSmallPx)), body.width());
    QRectF row(body.left(), kTitle, body.width(), room / static_cast<double>(rows_.size()));
    for (const Difference& d : rows_) {
        paintRow(painter, row, d, columns);
        row.translate(0, row.height());
    }
}

void ComparisonPanel::paintRow(QPainter& painter, const QRectF& row, const Difference& d, const Columns& c) const {
    painter.setPen(theme::pen(theme::kHairline));
    painter.drawLine(row.bottomLeft(), row.bottomRight());
    painter.setFont(theme::text(theme::kSmallPx));
    const QFontMetricsF metrics(painter.font());
    const double baseline = row.center().y() + metrics.capHeight() / 2;
    const bool differs = d.seen() == Seen::changed;
    double right = row.right() - c.verdict - kColumnGap;
    painter.setPen(differs ? theme::kInk : theme::kSecondary);
    painter.setFont(theme::text(theme::kSmallPx, differs ? QFont::DemiBold : QFont::Normal));
    painter.drawText(QPointF(row.right() - c.verdict, baseline), seenWords(d.seen()));
    drawFiguresRight(painter, {right, baseline}, changeOf(d));
    painter.setFont(theme::text(theme::kSmallPx));
    right -= c.change;
    if (c.withValues) {
        const JudgedReading* judgement = judged(shown().reading.verdict, d.key);
        const bool out = judgement && judgement->judgement == Judgement::out;
        painter.setPen(out ? theme::kOut : theme::kInk);
        painter.setFont(theme::text(theme::kSmallPx, out ? QFont::DemiBold : QFont::Normal));
        drawFiguresRight(painter, {right - kColumnGap, baseline}, valueOf(d.after, d));
        painter.setFont(theme::text(theme::kSmallPx));
        painter.setPen(theme::kSecondary);
        drawFiguresRight(painter, {right - c.after - 2 * kColumnGap, baseline}, valueOf(d.before, d));
        right -= c.before + c.after + 2 * kColumnGap;
    }
    painter.setPen(theme::kSecondary);
    painter.drawText(QPointF(row.left(), baseline),
                     metrics.elidedText(nameOf(d), Qt::ElideRight, right - row.left() - 4.0));
}

}  // namespace trueunit
