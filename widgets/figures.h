// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFontMetricsF>
#include <QPointF>
#include <QString>

class QPainter;

namespace trueunit {

inline constexpr char16_t kMinus = u'\u2212';  // as wide as the plus; a hyphen is not

// Numbers whose digits do not jump: every digit takes the width of the widest one, every sign that of the widest
// sign, whatever the font's own advances are (Inter's "1" is narrow by default).
double figuresWidth(const QFontMetricsF& metrics, const QString& text);
void drawFigures(QPainter& painter, QPointF baselineLeft, const QString& text);
void drawFiguresRight(QPainter& painter, QPointF baselineRight, const QString& text);
void drawFiguresCentred(QPainter& painter, QPointF baselineCentre, const QString& text);

}  // namespace trueunit
