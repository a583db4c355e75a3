// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/tape_drawing.h"

#include <QPainter>
#include <algorithm>

#include "widgets/tape_words.h"
#include "widgets/theme.h"

namespace trueunit {

namespace {

// The feed holes run between levels 2 and 3 of a five-level tape, 3 and 4 of a wider one (common practice).
int levelsBeforeFeed(int levels) { return levels > 5 ? 3 : 2; }

// Rows of equal height: the levels, the feed row squeezed to half, and the print.
struct TapeRows {
    explicit TapeRows(const TapePaper& paper)
        : count(paper.levels),
          pitch((paper.strip.height() - 4) / (paper.levels + 0.6 + 1.2)),
          top(paper.strip.top() + 2) {}
    double level(int i) const {  // centre of level i = 0 ..
        return top + pitch * (i + 0.5) + (i >= levelsBeforeFeed(count) ? 0.6 * pitch : 0.0);
    }
    double feed() const { return top + pitch * (levelsBeforeFeed(count) + 0.3); }
    QRectF print(const QRectF& cell) const {
        return {cell.left() - 4, top + pitch * (count + 0.6), cell.width() + 8, 1.2 * pitch};
    }
    int count;
    double pitch;
    double top;
};

// As it is on the tape: a ring where a hole was not felt, a cross where one was felt that should not be there.
void drawHole(QPainter& painter, QPointF centre, double radius, bool mark, bool due, const QColor& wrong) {
    if (!mark && !due) return;
    painter.setPen(mark == due ? QPen(Qt::NoPen) : theme::pen(wrong, 1.8));
    painter.setBrush(mark ? QBrush(mark == due ? theme::kHole : wrong) : QBrush(Qt::NoBrush));
    painter.drawEllipse(centre, radius, radius);
    if (!mark || due) return;
    const QPointF arm(1.5 * radius, 1.5 * radius);
    const QPointF other(arm.x(), -arm.y());
    painter.drawLine(centre - arm, centre + arm);
    painter.drawLine(centre - other, centre + other);
}

// Across from the feed hole before, where the tape stood still; down between the two, where holes were passed over.
void drawSlip(QPainter& painter, const TapeRows& rows, const QRectF& cell, const TapeCharacter& character) {
    painter.setPen(theme::pen(theme::kOut, 2.0));
    const QPointF feed(cell.center().x(), rows.feed());
    if (character.again) painter.drawLine(feed - QPointF(cell.width(), 0), feed);
    if (!character.passed.empty())
        painter.drawLine(QPointF(cell.left(), rows.level(0) - 0.4 * rows.pitch),
                         QPointF(cell.left(), rows.level(rows.count - 1) + 0.4 * rows.pitch));
}

}  // namespace

void drawTapeLevels(QPainter& painter, const TapePaper& paper, double left, int chosen) {
    const TapeRows rows(paper);
    if (chosen > 0 && chosen <= rows.count)
        painter.fillRect(
            QRectF(left, rows.level(chosen - 1) - 0.5 * rows.pitch, paper.strip.right() - left, rows.pitch),
            theme::kChosen);
    painter.setFont(theme::text(std::min(theme::kSmallPx - 1, 1.05 * rows.pitch)));
    painter.setPen(theme::kSecondary);
    for (int i = 0; i < rows.count; ++i)
        painter.drawText(QRectF(left, rows.level(i) - rows.pitch, paper.strip.left() - left - 8, 2 * rows.pitch),
                         Qt::AlignRight | Qt::AlignVCenter, QString::number(i + 1));
}

void drawTapeCharacter(QPainter& painter, const TapePaper& paper, const QRectF& cell, const TapeCharacter& character,
                       const TapeEmphasis& emphasis) {
    const TapeRows rows(paper);
    const double x = cell.center().x();
    if (emphasis.selected) {
        painter.setPen(theme::pen(theme::kBlue, 1.5));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(cell.adjusted(1, 1.5, -1, -1.5));
    }
    if (emphasis.evident) {
        painter.setPen(theme::pen(theme::kBlue));
        painter.setBrush(theme::kChosen);
        painter.drawRect(cell.adjusted(2, 2, -2, -2));
    }
    const double hole = 0.38 * rows.pitch;
    const unsigned due = character.due.value_or(character.instead.value_or(character.code));
    const QColor& wrong = character.instead ? theme::kSecondary : theme::kOut;
    for (int i = 0; i < rows.count; ++i)
        drawHole(painter, {x, rows.level(i)}, hole, (character.code >> i & 1u) != 0, (due >> i & 1u) != 0, wrong);
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme::kHole);
    painter.drawEllipse(QPointF(x, rows.feed()), 0.45 * hole, 0.45 * hole);

    drawSlip(painter, rows, cell, character);

    const QString print = shortPrint(character.print);
    const double px = std::min(theme::kSmallPx, 1.1 * rows.pitch);
    QFont font = theme::text(print.size() > 1 ? 0.85 * px : px, QFont::Medium);
    font.setUnderline(emphasis.wrongCase);
    painter.setFont(font);
    painter.setPen(character.stopPresent && !isWrong(character) && !emphasis.wrongCase ? theme::kHole : theme::kOut);
    painter.drawText(rows.print(cell), Qt::AlignCenter, print);
    if (character.stopPresent) return;
    painter.setPen(theme::pen(theme::kOut, 1.5));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(cell.adjusted(3, 3, -3, -3));
    painter.drawLine(QPointF(cell.left() + 3, cell.top() + 3), QPointF(cell.right() - 3, rows.print(cell).top()));
    painter.drawLine(QPointF(cell.right() - 3, cell.top() + 3), QPointF(cell.left() + 3, rows.print(cell).top()));
}

}  // namespace trueunit
