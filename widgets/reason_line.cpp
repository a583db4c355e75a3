// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/reason_line.h"

#include <QFontMetrics>
#include <QPainter>

#include "widgets/theme.h"
#include "widgets/words.h"

namespace trueunit {

ReasonLine::ReasonLine(QWidget* parent) : QWidget(parent) {
    setAccessibleName(Words::tr("Why a reading is missing"));
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

void ReasonLine::setText(const QString& text) {
    if (text == text_) return;
    text_ = text;
    setToolTip(text);
    setAccessibleDescription(text);
    updateGeometry();
    update();
}

void ReasonLine::resizeEvent(QResizeEvent*) { updateGeometry(); }

QSize ReasonLine::sizeHint() const {
    const QFontMetrics metrics(theme::text(theme::kSmallPx - 1));
    const int lines = metrics.horizontalAdvance(text_) <= width() ? 1 : 2;
    return {200, lines * metrics.lineSpacing() + 4};
}

void ReasonLine::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setFont(theme::text(theme::kSmallPx - 1));
    painter.setPen(theme::kSecondary);
    painter.drawText(QRectF(0, 4, width(), height() - 4), Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, text_);
}

}  // namespace trueunit
