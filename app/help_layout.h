// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QImage>
#include <QString>

class QTextDocument;

namespace trueunit {

// How a page of the help is set, on the screen and on paper alike.

inline constexpr int kHelpLineHeight = 115;  // percent of what the font asks for

struct HelpRules {
    QColor head, row;  // under the first row of a table, under the others
};

// What a page read from plain text lacks: room between paragraphs, quiet rules in tables.
void layOutHelp(QTextDocument& page, const HelpRules& rules);

// No line ends within a product, a sum in brackets, or between a number and its unit.
QString helpFormulasWhole(QString page);

// A drawing of so many dots to the pixel.
QImage helpDrawing(QByteArray svg, double scale, int widest = 660);

}  // namespace trueunit
