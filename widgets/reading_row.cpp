// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/reading_row.h"

#include <QHelpEvent>
#include <QPainter>
#include <QTextDocument>
#include <QToolTip>
#include <algorithm>

#include "widgets/figures.h"
#include "widgets/theme.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

// Columns in pixels; what a wide row has left over is shared out between them.
constexpr double kName = 150, kValue = 50, kUnit = 37, kUncertainty = 36, kJudgement = 80, kBriefJudgement = 40;
constexpr double kFullWidth = kName + kValue + kUnit + kUncertainty + kJudgement;
constexpr double kNarrowName = 108;  // what a name may shrink to, before the uncertainty goes to the tooltip
constexpr double kBriefOthers = kValue + kUnit + kUncertainty + kBriefJudgement;
constexpr double kBriefWidth = kNarrowName + kBriefOthers;
constexpr double kUnitGap = 4.0, kNameGap = 8.0;

}  // namespace

ReadingRow::ReadingRow(const QString& name, const QString& meaning, QWidget* parent)
    : QWidget(parent), name_(name), meaning_(meaning) {
    setAccessibleName(name);
    setToolTip(meaning_);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Expanding);
    setMaximumHeight(34);
}

void ReadingRow::setText(const RowText& text) {
    if (text == text_) return;
    text_ = text;
    setToolTip((text_.reason.isEmpty() ? said() : text_.reason) + u'\n' + meaning_);
    setAccessibleDescription(said());
    update();
}

QString ReadingRow::said() const {
    if (text_.value.isEmpty()) return name_ + Words::tr(": no reading. ") + text_.reason;
    QString s = name_ + u' ' + text_.value;
    if (!text_.unit.isEmpty()) s += u' ' + text_.unit;
    if (!text_.uncertainty.isEmpty()) s += u' ' + text_.uncertainty;
    const QString& words = text_.inWords.isEmpty() ? text_.judgement : text_.inWords;
    if (!words.isEmpty()) s += QStringLiteral(", ") + words;
    return s;
}

bool ReadingRow::event(QEvent* event) {
    if (event->type() != QEvent::ToolTip) return QWidget::event(event);
    QToolTip::showText(static_cast<QHelpEvent*>(event)->globalPos(), Qt::convertFromPlainText(toolTip()), this);
    return true;
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

    const bool full = w >= kFullWidth, brief = !full && w >= kBriefWidth;
    const double nameWidth = full ? kName : brief ? std::min(kName, w - kBriefOthers) : kNarrowName;
    const double spare = full ? w - kFullWidth : brief ? w - kBriefOthers - nameWidth : 0.0;
    const double valueRight = nameWidth + kValue + 0.35 * spare;

    painter.setFont(small);
    painter.setPen(theme::kSecondary);
    const double free = valueRight - figuresWidth(strongMetrics, text_.value) - kNameGap;  // a short value leaves more
    painter.drawText(QPointF(0, baseline), smallMetrics.elidedText(name_, Qt::ElideRight, std::max(nameWidth, free)));
    if (text_.value.isEmpty()) {
        painter.drawText(QPointF(valueRight - smallMetrics.horizontalAdvance(u'—'), baseline), QStringLiteral("—"));
        const double room = w - valueRight - kUnitGap;
        drawFiguresRight(painter, {w, baseline}, smallMetrics.elidedText(text_.judgement, Qt::ElideRight, room));
        return;
    }
    painter.drawText(QPointF(valueRight + kUnitGap, baseline), text_.unit);
    const double unitEnd = valueRight + kUnitGap + smallMetrics.horizontalAdvance(text_.unit);
    double written = std::max(valueRight + kUnit + 0.2 * spare, unitEnd + kNameGap);
    if (full || brief) drawFigures(painter, {written, baseline}, text_.uncertainty);
    if (!text_.uncertainty.isEmpty()) written += figuresWidth(smallMetrics, text_.uncertainty) + kUnitGap;

    painter.setPen(out ? theme::kOut : text_.within ? theme::kInOrder : theme::kSecondary);
    painter.setFont(theme::text(theme::kSmallPx, out ? QFont::DemiBold : QFont::Normal));
    const bool room = figuresWidth(QFontMetricsF(painter.font()), text_.judgement) <= w - written;
    drawFiguresRight(painter, {w, baseline}, full && room ? text_.judgement : text_.brief);

    painter.setFont(strong);
    painter.setPen(out ? theme::kOut : theme::kInk);
    drawFiguresRight(painter, {valueRight, baseline}, text_.value);
}

}  // namespace trueunit
