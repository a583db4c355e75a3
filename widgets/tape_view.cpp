// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/tape_view.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPushButton>
#include <QStringList>
#include <QToolTip>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "widgets/tape_drawing.h"
#include "widgets/tape_words.h"
#include "widgets/theme.h"
#include "widgets/told.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

constexpr double kLevelsWidth = 22;   // level numbers at the left
constexpr double kLargestPitch = 30;  // between characters
constexpr int kWholeTape = 1000000;   // more characters than any
constexpr int kWheelStep = 4;         // characters

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

using OnTape = std::vector<TapeCharacter>::const_iterator;

TapeFaults faultsOf(OnTape first, OnTape last, bool presumed) {
    return {std::count_if(first, last, isWrong),
            std::count_if(first, last, [](const TapeCharacter& c) { return c.slipped(); }), presumed,
            std::count_if(first, last, [](const TapeCharacter& c) { return c.instead.has_value(); })};
}

}  // namespace

TapeView::TapeView(QWidget* parent)
    : Panel(Words::tr("Tape"), parent), toNewest_(new QPushButton(Words::tr("Newest"), this)) {
    setFocusPolicy(Qt::TabFocus);
    toNewest_->setToolTip(Words::tr("Back to the newest characters (End)"));
    toNewest_->setFont(theme::text(theme::kSmallPx));
    toNewest_->setFocusPolicy(Qt::TabFocus);
    toNewest_->hide();
    connect(toNewest_, &QPushButton::clicked, this, [this] { scrollBack(-kWholeTape); });
    addTool(toNewest_);
    refresh(shown());
}

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
        newest_ = 0;
        toNewest_->hide();
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
    const auto end = s.tape.begin() + static_cast<std::ptrdiff_t>(endVisible());
    const bool presumed = std::any_of(s.tape.begin(), s.tape.end(), [](const auto& c) { return c.presumed; });
    const TapeFaults inView = faultsOf(seen, end, presumed), kept = faultsOf(s.tape.begin(), s.tape.end(), presumed);
    const TextReading& text = s.reading.text;
    const TapeFaults passed{std::max(text.wrongCharacters.value_or(0), kept.wrong), text.feedSlips.value_or(0),
                            presumed, 0};
    const QString back = end == s.tape.end() ? QString() : Words::tr("%1 back: ").arg(s.tape.end() - end);
    const QString count = counted(text.characters, Words::tr("character"), Words::tr("characters"));
    const QString fault = Words::tr("%1 without a stop").arg(text.framingErrors);
    const auto say = [&](const QString& words, Tone tone, const QString& brief) {
        setRemark(back + words, tone, {back + brief});
    };
    if (inView.any()) {
        const auto causes = causes_.begin() + (seen - s.tape.begin());
        const bool anyCase =
            std::any_of(causes, causes + (end - seen), [](const auto& cause) { return cause.has_value(); });
        say(Words::tr("%1 on this tape: %2").arg(inView.words(), inView.legend(anyCase)), Tone::out, inView.words());
    } else if (text.framingErrors > 0) {
        say(Words::tr("%1, %2, boxed ✕").arg(count, fault), Tone::out, fault + QStringLiteral(" ✕"));
    } else if (passed.any()) {
        const QString where =
            kept.any() ? Words::tr(", elsewhere on the tape (turn the wheel)") : Words::tr(", none marked here");
        say(passed.words() + where, Tone::out, passed.words());
    } else {
        say(count + Words::tr(", every one with its stop"), Tone::inOrder, Words::tr("no framing errors"));
    }
}

void TapeView::setSelected(quint64 number) {
    if (number == selected_) return;
    selected_ = number;
    const auto at = placeOf(number);
    if (number == 0)
        scrollBack(-kWholeTape);
    else if (at && (*at < firstVisible() || *at >= endVisible()))
        scrollBack(static_cast<int>(endVisible()) - static_cast<int>(*at) - visibleCharacters() / 2);
    update();
}

QRectF TapeView::strip() const { return body().adjusted(kLevelsWidth, 0, 0, 0); }

double TapeView::pitch() const {
    return std::min(kLargestPitch, std::max(15.0, 1.9 * (strip().height() - 4) / (shown().levels + 1.8)));
}

int TapeView::visibleCharacters() const { return static_cast<int>(strip().width() / pitch()); }

// Scrolled back it stands where it is while new characters come, until what it shows is no longer kept.
std::size_t TapeView::endVisible() const {
    const std::size_t all = shown().tape.size();
    if (newest_ == 0) return all;
    const auto fit = static_cast<std::size_t>(std::max(0, visibleCharacters()));
    return std::max(placeOf(newest_).value_or(0) + 1, std::min(all, fit));
}

std::size_t TapeView::firstVisible() const {
    const auto fit = static_cast<std::size_t>(std::max(0, visibleCharacters()));
    return endVisible() > fit ? endVisible() - fit : 0;
}

void TapeView::scrollBack(int characters) {
    const auto& tape = shown().tape;
    if (tape.empty()) return;
    const auto fit = std::min<std::ptrdiff_t>(std::ssize(tape), std::max(1, visibleCharacters()));
    const auto end =
        std::clamp<std::ptrdiff_t>(static_cast<std::ptrdiff_t>(endVisible()) - characters, fit, std::ssize(tape));
    newest_ = end == std::ssize(tape) ? 0 : tape[static_cast<std::size_t>(end - 1)].number;
    toNewest_->setVisible(newest_ != 0);
    remarkOn(shown());
    update();
}

QRectF TapeView::cell(std::size_t index) const {
    const QRectF paper = strip();
    const double fromRight = static_cast<double>(endVisible()) - static_cast<double>(index);
    return {paper.right() - fromRight * pitch(), paper.top(), pitch(), paper.height()};
}

QRectF TapeView::cellOf(quint64 number) const {
    for (std::size_t i = firstVisible(); i < endVisible(); ++i)
        if (shown().tape[i].number == number) return cell(i);
    return {};
}

const TapeCharacter* TapeView::at(QPointF position) const {
    for (std::size_t i = firstVisible(); i < endVisible(); ++i)
        if (cell(i).contains(position)) return &shown().tape[i];
    return nullptr;
}

void TapeView::mousePressEvent(QMouseEvent* event) {
    if (const TapeCharacter* hit = at(event->position()); hit && event->button() == Qt::LeftButton)
        emit characterClicked(hit->number);
    else
        Panel::mousePressEvent(event);
}

void TapeView::wheelEvent(QWheelEvent* event) {
    const QPoint turned = event->angleDelta();
    wheel_ += std::abs(turned.y()) >= std::abs(turned.x()) ? turned.y() : turned.x();
    constexpr int kNotch = QWheelEvent::DefaultDeltasPerStep;
    scrollBack(wheel_ / kNotch * kWheelStep);
    wheel_ %= kNotch;
    event->accept();
}

void TapeView::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
        case Qt::Key_Left:
            return scrollBack(1);
        case Qt::Key_Right:
            return scrollBack(-1);
        case Qt::Key_PageUp:
            return scrollBack(visibleCharacters());
        case Qt::Key_PageDown:
            return scrollBack(-visibleCharacters());
        case Qt::Key_Home:
            return scrollBack(kWholeTape);
        case Qt::Key_End:
            return scrollBack(-kWholeTape);
        default:
            Panel::keyPressEvent(event);
    }
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

TapeEmphasis TapeView::emphasisOf(std::size_t index) const {
    const TapeCharacter& c = shown().tape[index];
    return {selected_ != 0 && c.number == selected_,
            (evidence_.characters && isWrong(c)) || (evidence_.slips && c.slipped()),
            index < causes_.size() && causes_[index].has_value()};
}

void TapeView::paintBody(QPainter& painter, const QRectF& body) {
    const QRectF paper = strip();
    painter.setPen(theme::pen(theme::kTapeEdge));
    painter.setBrush(theme::kTape);
    painter.drawRect(paper.adjusted(0.5, 0.5, -0.5, -0.5));
    const TapePaper tape{paper, shown().levels};
    drawTapeLevels(painter, tape, body.left(), evidence_.level);
    if (shown().tape.empty()) {
        painter.setFont(theme::text(theme::kSmallPx));
        painter.setPen(theme::kHole);
        painter.drawText(paper.adjusted(12, 0, -12, 0), Qt::AlignCenter | Qt::TextWordWrap,
                         Words::tr("No characters."));
        return;
    }
    painter.save();
    painter.setClipRect(body);
    for (std::size_t i = firstVisible(); i < endVisible(); ++i)
        drawTapeCharacter(painter, tape, cell(i), shown().tape[i], emphasisOf(i));
    painter.restore();
}

}  // namespace trueunit
