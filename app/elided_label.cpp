// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/elided_label.h"

#include <QPainter>

namespace trueunit {

ElidedLabel::ElidedLabel(QWidget* parent) : QLabel(parent) {
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
}

void ElidedLabel::say(const QString& text) {
    if (text == text_) return;
    text_ = text;
    setAccessibleName(text);
    setToolTip(text);
    update();
}

void ElidedLabel::setElide(Qt::TextElideMode where) {
    elide_ = where;
    update();
}

QSize ElidedLabel::minimumSizeHint() const { return {24, fontMetrics().height() + 2}; }
QSize ElidedLabel::sizeHint() const { return {120, fontMetrics().height() + 2}; }

void ElidedLabel::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setPen(palette().color(foregroundRole()));
    const QRect room = contentsRect();
    painter.drawText(room, static_cast<int>(alignment()) | Qt::TextSingleLine,
                     fontMetrics().elidedText(text_, elide_, room.width()));
}

}  // namespace trueunit
