// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/tape_view.h"

#include <QHelpEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QStringList>
#include <QToolTip>
#include <algorithm>
#include <cmath>

#include "widgets/tape_words.h"
#include "widgets/theme.h"
#include "widgets/told.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

constexpr double kLevelsWidth = 22;   // level numbers at the left
constexpr double kLargestPitch = 30;  // between characters

// The feed holes run between levels 2 and 3 of a five-level tape, 3 and 4 of a wider one (common practice).
int levelsBeforeFeed(int levels) { return levels > 5 ? 3 : 2; }

// What is wrong with some of the characters, told above the tape.
struct TapeFaults {
    long wrong = 0;
    long slips = 0;
    bool presumed = false;  // the text is not known
    long doubtful = 0;      // beside a slip

    bool any() const { return wrong > 0 || slips > 0; }
    QString words() const {
        QStringList words;
        if (wrong > 0)
            words << (presumed ? Words::tr("%1 probably wrong") : Words::tr("%1 wrong"))
                         .arg(counted(wrong, Words::tr("character"), Words::tr("characters")));
        if (slips > 0) words << counted(slips, Words::tr("slip of the feed"), Words::tr("slips of the feed"));
        return words.join(QStringLiteral(", "));
    }
    QString legend(bool wrongCase) const {
        QStringList signs;
        if (wrong > 0) signs << Words::tr("○ lost mark") << Words::tr("✕ filled space");
        if (slips > 0) signs << Words::tr("─ sent twice") << Words::tr("│ passed over");
        if (doubtful > 0) signs << Words::tr("grey: cannot tell, too close to a slip");
        if (wrongCase) signs << Words::tr("underlined: wrong case");
        return signs.join(QStringLiteral(", "));
    }
};

// Rows of equal height: the levels, the feed row squeezed to half, and the print.
struct TapeRows {
    TapeRows(const QRectF& strip, int levels) : count(levels), pitch((strip.height() - 4) / (levels + 0.6 + 1.2)) {
        top = strip.top() + 2;
    }
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

}  // namespace

TapeView::TapeView(QWidget* parent) : Panel(Words::tr("Tape"), parent) { refresh(shown()); }

void TapeView::setEvidence(const EvidencePlaces& places) {
    evidence_ = places;
    update();
}

std::optional<std::size_t> TapeView::placeOf(quint64 number) const {
    const auto& tape = shown().tape;
    const auto found =
        std::find_if(tape.begin(), tape.end(), [number](const TapeCharacter& c) { return c.number == number; });
    return found == tape.end() ? std::nullopt : std::optional(static_cast<std::size_t>(found - tape.begin()));
}

QString TapeView::wordsOf(quint64 number) const {
    const auto at = placeOf(number);
    return at ? characterWords(shown().tape, *at, causes_) : QString();
}

QString TapeView::allWordsOf(quint64 number) const {
    const auto at = placeOf(number);
    return at ? wordsOf(number) + printWords(shown().tape, *at) : QString();
}

void TapeView::refresh(const Snapshot& s) {
    const bool same = std::equal(s.tape.begin(), s.tape.end(), drawn_.begin(), drawn_.end(), drawnAlike);
    if (!same) causes_ = wrongCase(s);
    if (s.tape.empty()) {
        setRemark(QString());
        describe(whyNothing(s));
    } else {
        remarkOn(s);
        if (!same) describe(tapeWords(s));
    }
    if (same && !s.tape.empty()) return;
    drawn_ = s.tape;
    update();
}

void TapeView::remarkOn(const Snapshot& s) {
    const auto seen = s.tape.begin() + static_cast<std::ptrdiff_t>(firstVisible());
    const bool presumed = std::any_of(s.tape.begin(), s.tape.end(), [](const auto& c) { return c.presumed; });
    const TapeFaults inView{std::count_if(seen, s.tape.end(), isWrong),
                            std::count_if(seen, s.tape.end(), [](const auto& c) { return c.slipped(); }), presumed,
                            std::count_if(seen, s.tape.end(), [](const auto& c) { return c.instead.has_value(); })};
    const TextReading& text = s.reading.text;
    const TapeFaults passed{
        std::max(text.wrongCharacters.value_or(0), static_cast<long>(std::count_if(s.tape.begin(), seen, isWrong))),
        text.feedSlips.value_or(0), presumed, 0};
    const QString count = counted(text.characters, Words::tr("character"), Words::tr("characters"));
    const QString fault = Words::tr("%1 without a stop").arg(text.framingErrors);
    if (inView.any()) {
        const bool anyCase = std::any_of(causes_.begin() + (seen - s.tape.begin()), causes_.end(),
                                         [](const auto& cause) { return cause.has_value(); });
        setRemark(Words::tr("%1 on this tape: %2").arg(inView.words(), inView.legend(anyCase)), Tone::out,
                  {inView.words()});
    } else if (text.framingErrors > 0) {
        setRemark(Words::tr("%1, %2, boxed ✕").arg(count, fault), Tone::out, {fault + QStringLiteral(" ✕")});
    } else if (passed.any()) {
        setRemark(passed.words() + Words::tr(", none marked here"), Tone::out, {passed.words()});
    } else {
        setRemark(count + Words::tr(", every one with its stop"), Tone::inOrder, {Words::tr("no framing errors")});
    }
}

void TapeView::setSelected(quint64 number) {
    if (number == selected_) return;
    selected_ = number;
    update();
}

QRectF TapeView::strip() const { return body().adjusted(kLevelsWidth, 0, 0, 0); }

double TapeView::pitch() const {
    return std::min(kLargestPitch, std::max(15.0, 1.9 * (strip().height() - 4) / (shown().levels + 1.8)));
}

int TapeView::visibleCharacters() const { return static_cast<int>(strip().width() / pitch()); }

std::size_t TapeView::firstVisible() const {
    const auto fit = static_cast<std::size_t>(std::max(0, visibleCharacters()));
    return shown().tape.size() > fit ? shown().tape.size() - fit : 0;
}

QRectF TapeView::cell(std::size_t index) const {
    const QRectF paper = strip();
    const double fromRight = static_cast<double>(shown().tape.size() - index);
    return {paper.right() - fromRight * pitch(), paper.top(), pitch(), paper.height()};
}

QRectF TapeView::cellOf(quint64 number) const {
    for (std::size_t i = firstVisible(); i < shown().tape.size(); ++i)
        if (shown().tape[i].number == number) return cell(i);
    return {};
}

const TapeCharacter* TapeView::at(QPointF position) const {
    for (std::size_t i = firstVisible(); i < shown().tape.size(); ++i)
        if (cell(i).contains(position)) return &shown().tape[i];
    return nullptr;
}

void TapeView::mousePressEvent(QMouseEvent* event) {
    if (const TapeCharacter* hit = at(event->position()); hit && event->button() == Qt::LeftButton)
        emit characterClicked(hit->number);
    else
        Panel::mousePressEvent(event);
}

// So that the words do not hide the holes they speak of; the style moves them down by the height of the pointer.
QPoint TapeView::aboveTheTape(QPoint pointer) const {
    constexpr int kPointer = 16, kFrame = 26;
    const int top = mapToGlobal(QPoint(0, static_cast<int>(body().top()))).y();
    return {pointer.x(), top - QFontMetrics(QToolTip::font()).lineSpacing() - kFrame - kPointer};
}

bool TapeView::event(QEvent* event) {
    if (event->type() != QEvent::ToolTip) return Panel::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    if (help->pos().y() < body().top()) return Panel::event(event);
    if (const TapeCharacter* hit = at(help->pos()))
        QToolTip::showText(aboveTheTape(help->globalPos()), allWordsOf(hit->number), this);
    else
        QToolTip::hideText();
    return true;
}

void TapeView::paintBody(QPainter& painter, const QRectF& body) {
    const QRectF paper = strip();
    painter.setPen(theme::pen(theme::kTapeEdge));
    painter.setBrush(theme::kTape);
    painter.drawRect(paper.adjusted(0.5, 0.5, -0.5, -0.5));
    paintLevels(painter);
    if (shown().tape.empty()) {
        painter.setFont(theme::text(theme::kSmallPx));
        painter.setPen(theme::kHole);
        painter.drawText(paper.adjusted(12, 0, -12, 0), Qt::AlignCenter | Qt::TextWordWrap,
                         Words::tr("No characters."));
        return;
    }
    painter.save();
    painter.setClipRect(body);
    for (std::size_t i = firstVisible(); i < shown().tape.size(); ++i)
        paintCharacter(painter, cell(i), shown().tape[i], i < causes_.size() && causes_[i]);
    painter.restore();
}

void TapeView::paintLevels(QPainter& painter) const {
    const TapeRows rows(strip(), shown().levels);
    if (evidence_.level > 0 && evidence_.level <= rows.count)
        painter.fillRect(QRectF(body().left(), rows.level(evidence_.level - 1) - 0.5 * rows.pitch,
                                strip().right() - body().left(), rows.pitch),
                         theme::kChosen);
    painter.setFont(theme::text(std::min(theme::kSmallPx - 1, 1.05 * rows.pitch)));
    painter.setPen(theme::kSecondary);
    for (int i = 0; i < rows.count; ++i)
        painter.drawText(QRectF(body().left(), rows.level(i) - rows.pitch, kLevelsWidth - 8, 2 * rows.pitch),
                         Qt::AlignRight | Qt::AlignVCenter, QString::number(i + 1));
}

// As it is on the tape: a ring where a hole was not felt, a cross where one was felt that should not be there.
void TapeView::paintHole(QPainter& painter, QPointF centre, double radius, bool mark, bool due,
                         const QColor& wrong) const {
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
void TapeView::paintSlip(QPainter& painter, const QRectF& cell, const TapeCharacter& character) const {
    const TapeRows rows(strip(), shown().levels);
    painter.setPen(theme::pen(theme::kOut, 2.0));
    const QPointF feed(cell.center().x(), rows.feed());
    if (character.again) painter.drawLine(feed - QPointF(cell.width(), 0), feed);
    if (!character.passed.empty())
        painter.drawLine(QPointF(cell.left(), rows.level(0) - 0.4 * rows.pitch),
                         QPointF(cell.left(), rows.level(rows.count - 1) + 0.4 * rows.pitch));
}

void TapeView::paintCharacter(QPainter& painter, const QRectF& cell, const TapeCharacter& character,
                              bool wrongCase) const {
    const TapeRows rows(strip(), shown().levels);
    const double x = cell.center().x();
    if (character.number == selected_ && selected_ != 0) {
        painter.setPen(theme::pen(theme::kBlue, 1.5));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(cell.adjusted(1, 1.5, -1, -1.5));
    }
    if ((evidence_.characters && isWrong(character)) || (evidence_.slips && character.slipped())) {
        painter.setPen(theme::pen(theme::kBlue));
        painter.setBrush(theme::kChosen);
        painter.drawRect(cell.adjusted(2, 2, -2, -2));
    }
    const double hole = 0.38 * rows.pitch;
    const unsigned due = character.due.value_or(character.instead.value_or(character.code));
    const QColor& wrong = character.instead ? theme::kSecondary : theme::kOut;
    for (int i = 0; i < rows.count; ++i)
        paintHole(painter, {x, rows.level(i)}, hole, (character.code >> i & 1u) != 0, (due >> i & 1u) != 0, wrong);
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme::kHole);
    painter.drawEllipse(QPointF(x, rows.feed()), 0.45 * hole, 0.45 * hole);

    paintSlip(painter, cell, character);

    const QString print = shortPrint(character.print);
    const double px = std::min(theme::kSmallPx, 1.1 * rows.pitch);
    QFont font = theme::text(print.size() > 1 ? 0.85 * px : px, QFont::Medium);
    font.setUnderline(wrongCase);
    painter.setFont(font);
    painter.setPen(character.stopPresent && !isWrong(character) && !wrongCase ? theme::kHole : theme::kOut);
    painter.drawText(rows.print(cell), Qt::AlignCenter, print);
    if (character.stopPresent) return;
    painter.setPen(theme::pen(theme::kOut, 1.5));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(cell.adjusted(3, 3, -3, -3));
    painter.drawLine(QPointF(cell.left() + 3, cell.top() + 3), QPointF(cell.right() - 3, rows.print(cell).top()));
    painter.drawLine(QPointF(cell.right() - 3, cell.top() + 3), QPointF(cell.left() + 3, rows.print(cell).top()));
}

}  // namespace trueunit
