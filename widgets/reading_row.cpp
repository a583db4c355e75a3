// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/reading_row.h"

#include <QPainter>

#include "widgets/figures.h"
#include "widgets/theme.h"

namespace trueunit {

namespace {

// Right edge of the numbers and left edge of the judgement, as parts of the width.
constexpr double kValueRight = 0.54;
constexpr double kUnitGap = 4.0;

}  // namespace

ReadingRow::ReadingRow(const QString& name, QWidget* parent) : QWidget(parent), name_(name) {
    setAccessibleName(name);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Expanding);
    setMaximumHeight(34);
}

void ReadingRow::setText(const RowText& text) {
    if (text == text_) return;
    text_ = text;
    setToolTip(text_.reason);
    setAccessibleDescription(said());
    update();
}

QString ReadingRow::said() const {
    if (text_.value.isEmpty()) return name_ + QStringLiteral(": no reading. ") + text_.reason;
    QString s = name_ + u' ' + text_.value;
    if (!text_.unit.isEmpty()) s += u' ' + text_.unit;
    if (!text_.uncertainty.isEmpty()) s += u' ' + text_.uncertainty;
    if (!text_.judgement.isEmpty()) s += QStringLiteral(", ") + text_.judgement;
    return s;
}

void ReadingRow::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const double w = width();
    painter.setPen(theme::pen(theme::kHairline));
    painter.drawLine(QPointF(0, height() - 0.5), QPointF(w, height() - 0.5));

    const QFont small = theme::text(theme::kSmallPx);
    const QFont strong = theme::text(theme::kTextPx + 1, QFont::DemiBold);
    const QFontMetricsF smallMetrics(small), strongMetrics(strong);
    const double baseline = (height() + strongMetrics.capHeight()) / 2;
    const bool out = text_.within == false;

    painter.setFont(small);
    painter.setPen(theme::kSecondary);
    painter.drawText(QPointF(0, baseline), name_);
    if (text_.value.isEmpty()) {
        painter.drawText(QPointF(w * kValueRight - smallMetrics.horizontalAdvance(u'—'), baseline),
                         QStringLiteral("—"));
        return;
    }
    double x = w * kValueRight + kUnitGap;
    painter.drawText(QPointF(x, baseline), text_.unit);
    x += smallMetrics.horizontalAdvance(QStringLiteral("/min")) + 8;
    drawFigures(painter, {x, baseline}, text_.uncertainty);

    painter.setPen(out ? theme::kOut : text_.within ? theme::kInOrder : theme::kSecondary);
    painter.setFont(theme::text(theme::kSmallPx, out ? QFont::DemiBold : QFont::Normal));
    drawFiguresRight(painter, {w, baseline}, text_.judgement);

    painter.setFont(strong);
    painter.setPen(out ? theme::kOut : theme::kInk);
    drawFiguresRight(painter, {w * kValueRight, baseline}, text_.value);
}

}  // namespace trueunit
