// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/figures.h"

#include <QPainter>
#include <algorithm>

namespace trueunit {

namespace {

bool isSign(QChar c) { return c == u'+' || c == kMinus; }

struct Cells {
    explicit Cells(const QFontMetricsF& m) : sign(std::max(m.horizontalAdvance(u'+'), m.horizontalAdvance(kMinus))) {
        for (char16_t c = u'0'; c <= u'9'; ++c) digit = std::max(digit, m.horizontalAdvance(QChar(c)));
    }
    double digit = 0.0;
    double sign;
};

// Calls each(run, offset, cell) for every digit or sign (cell > 0) and every run of other text (cell = 0).
template <class Each>
double walk(const QFontMetricsF& metrics, const QString& text, Each each) {
    const Cells cells(metrics);
    double x = 0.0;
    for (qsizetype i = 0; i < text.size();) {
        const QChar c = text[i];
        if (c.isDigit() || isSign(c)) {
            const double cell = c.isDigit() ? cells.digit : cells.sign;
            each(text.mid(i, 1), x, cell);
            x += cell;
            ++i;
            continue;
        }
        qsizetype end = i;
        while (end < text.size() && !text[end].isDigit() && !isSign(text[end])) ++end;
        const QString run = text.mid(i, end - i);
        each(run, x, 0.0);
        x += metrics.horizontalAdvance(run);
        i = end;
    }
    return x;
}

}  // namespace

double figuresWidth(const QFontMetricsF& metrics, const QString& text) {
    return walk(metrics, text, [](const QString&, double, double) {});
}

void drawFigures(QPainter& painter, QPointF left, const QString& text) {
    const QFontMetricsF metrics(painter.font());
    walk(metrics, text, [&](const QString& part, double x, double cell) {
        const double inset = cell > 0.0 ? (cell - metrics.horizontalAdvance(part)) / 2 : 0.0;
        painter.drawText(left + QPointF(x + inset, 0), part);
    });
}

void drawFiguresRight(QPainter& painter, QPointF right, const QString& text) {
    drawFigures(painter, right - QPointF(figuresWidth(QFontMetricsF(painter.font()), text), 0), text);
}

void drawFiguresCentred(QPainter& painter, QPointF centre, const QString& text) {
    drawFigures(painter, centre - QPointF(figuresWidth(QFontMetricsF(painter.font()), text) / 2, 0), text);
}

}  // namespace trueunit
