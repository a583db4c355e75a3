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

// Whole sentences where they fill some of the room, else as many letters as fit.
QString ElidedLabel::fitting(int width) const {
    const QFontMetrics letters = fontMetrics();
    if (elide_ == Qt::ElideRight && letters.horizontalAdvance(text_) > width)
        for (qsizetype end = text_.lastIndexOf(QLatin1String(". ")); end > 0;
             end = text_.lastIndexOf(QLatin1String(". "), end - 1)) {
            const QString sentences = text_.left(end + 1) + QStringLiteral(" \u2026");
            const int taken = letters.horizontalAdvance(sentences);
            if (taken <= width && 3 * taken > width) return sentences;
        }
    return letters.elidedText(text_, elide_, width);
}

void ElidedLabel::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setPen(palette().color(foregroundRole()));
    const QRect room = contentsRect();
    painter.drawText(room, static_cast<int>(alignment()) | Qt::TextSingleLine, fitting(room.width()));
}

}  // namespace trueunit
