// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/bias_gauge.h"

#include <QKeyEvent>
#include <QPainter>
#include <QToolButton>
#include <algorithm>
#include <cmath>

#include "core/report/bias_pull.h"
#include "core/report/judge.h"
#include "core/report/nudge_words.h"
#include "widgets/bias_scale.h"
#include "widgets/cause_words.h"
#include "widgets/figures.h"
#include "widgets/limit_shape.h"
#include "widgets/theme.h"
#include "widgets/told.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

constexpr double kNarrowScale = 20.0;  // percent of a unit
constexpr double kWideScale = 50.0;
constexpr double kRoomForBoth = 190.0;  // logical pixels
constexpr int kSettled = 32;            // characters
constexpr double kBackToNarrow = 18.0;  // so that a value about the end does not make the scale flutter

// Smaller where it would not fit, never cut.
void drawWithin(QPainter& painter, const QRectF& row, const QString& words, double px,
                QFont::Weight weight = QFont::Normal) {
    const double needed = QFontMetricsF(theme::text(px, weight)).horizontalAdvance(words) + 1.0;
    painter.setFont(theme::text(row.width() < needed ? std::floor(px * row.width() / needed) : px, weight));
    painter.drawText(row, Qt::AlignCenter, words);
}

}  // namespace

BiasGauge::BiasGauge(QWidget* parent)
    : Panel(Words::tr("Bias"), parent), scaleEnd_(kNarrowScale), reset_(new QToolButton(this)) {
    setFocusPolicy(Qt::StrongFocus);
    reset_->setText(Words::tr("Reset peaks"));
    reset_->setToolTip(Words::tr("Forget the peaks held on the scale (P)"));
    reset_->setAccessibleName(Words::tr("Reset the held peaks of the bias"));
    reset_->setFont(theme::text(theme::kSmallPx));
    connect(reset_, &QToolButton::clicked, this, &BiasGauge::resetPeaks);
    addTool(reset_);
    say(shown());
}

void BiasGauge::refresh(const Snapshot& snapshot) {
    bias_ = snapshot.reading.distortion.biasPercent;
    limit_ = snapshot.limits.biasPercent;
    resting_ = bias_ && snapshot.state != SignalState::reading;
    holdPeaks(snapshot);
    chooseScale();
    say(snapshot);
    update();
}

void BiasGauge::setAlone(bool alone) {
    alone_ = alone;
    setFramed(!alone);
    say(shown());
    update();
}

void BiasGauge::say(const Snapshot& snapshot) {
    const NudgeAdvice advice = adviceAfter(snapshot);
    did_ = told(advice.did);
    next_ = told(advice.next);
    if (alone_ && did_.isEmpty()) did_ = told(learningWords(snapshot));
    const Limits& limits = snapshot.limits;
    const QString limit = limits.statesBias ? Words::tr("limit ±%1 %").arg(limitNumber(limits.biasPercent))
                                            : Words::tr("bias not judged");
    // The scale has the limit itself; whose it is stands here alone.
    setRemark(QStringLiteral("%1, %2").arg(limit, told(limits.title)), Tone::quiet,
              {limits.statesBias ? told(limits.title) : limit});
    if (!bias_) {
        digits_ = QStringLiteral("—");
        words_ = whyNothing(snapshot);
        others_.clear();
        small_.clear();
        describe(Words::tr("No reading: ") + words_);
        return;
    }
    digits_ = signedNumber(bias_->value, 1);
    const JudgedReading* judgement = judged(snapshot.reading.verdict, "bias_percent");
    open_ = judgement && judgement->judgement == Judgement::open;
    words_ = open_ ? told(judgementWords(*judgement)) : biasWords(bias_->value, limits.biasPercent);
    const bool biasIn = !open_ && std::abs(bias_->value) <= limits.biasPercent;
    others_ = biasIn ? othersOutWords(snapshot.reading.verdict) : QString();
    othersOut_ = !others_.isEmpty();
    if (biasIn && !othersOut_) others_ = causeWords(snapshot);
    if (biasIn && others_.isEmpty()) others_ = othersOpenWords(snapshot.reading.verdict);
    if (!others_.isEmpty()) words_ = Words::tr("bias in limits");
    const QString pull = pullWords(snapshot);
    foreign_ = !biasIn && !open_ && !pull.isEmpty() && contactIsInOrder(snapshot.reading, limits);
    if (!biasIn && !pull.isEmpty()) (open_ || foreign_ ? words_ : others_) = pull;
    if (alone_ && !open_ && !foreign_) words_ += directionWords(bias_->value, limits.biasPercent);
    const auto n = static_cast<int>(snapshot.windowUsed);
    const QString characters = n == 1 ? Words::tr("one character") : Words::tr("%1 characters").arg(n);
    small_ = Words::tr("± %1 % over %2").arg(uncertaintyNumber(bias_->uncertainty), characters);
    if (const std::size_t since = charactersSinceNudge(snapshot); since < snapshot.windowUsed)
        small_ += Words::tr(", %1 since the nudge").arg(since);
    if (resting_) small_ = Words::tr("line rests, last ") + characters;
    QStringList said{Words::tr("%1 percent").arg(digits_), words_};
    for (const QString& part : {others_, small_, did_, next_})
        if (!part.isEmpty()) said << part;
    describe(said.join(QStringLiteral(", ")));
}

// Peaks of another input, or read in another way than the bias now is, are not its own.
void BiasGauge::forgetOthers(const Snapshot& s) {
    const std::uint64_t next = s.trail.empty() ? 0 : s.trail.back().number + 1;
    const Ground ground{s.options.windowCharacters, s.options.slicePercent, s.options.baud, s.options.input};
    const bool begun = s.seconds < seconds_ || next < heldFrom_, changed = ground_ && ground != *ground_;
    seconds_ = s.seconds;
    ground_ = ground;
    if (!begun && !changed) return;
    lowest_.reset();
    highest_.reset();
    heldFrom_ = begun ? 0 : next;
}

// Every character has its point of the trail, whether or not the window was drawn at it: the same recording always
// leaves the same peaks. The first few characters after a beginning scatter too much to be held against a sender.
void BiasGauge::holdPeaks(const Snapshot& s) {
    forgetOthers(s);
    const int window = s.options.windowCharacters;
    const auto settled = static_cast<std::uint64_t>(window == 0 ? kSettled : std::min(window, kSettled));
    const auto from = std::partition_point(s.trail.begin(), s.trail.end(), [&](const TrailPoint& p) {
        return p.number < heldFrom_ || p.number + 1 < settled;
    });
    std::for_each(from, s.trail.end(), [this](const TrailPoint& p) { holdPeak(p.biasPercent); });
    if (!s.trail.empty()) heldFrom_ = s.trail.back().number + 1;
}

void BiasGauge::holdPeak(double bias) {
    lowest_ = std::min(lowest_.value_or(bias), bias);
    highest_ = std::max(highest_.value_or(bias), bias);
}

void BiasGauge::chooseScale() {
    double furthest = bias_ ? std::abs(bias_->value) : 0.0;
    for (const auto& peak : {lowest_, highest_})
        if (peak) furthest = std::max(furthest, std::abs(*peak));
    if (furthest > kNarrowScale) scaleEnd_ = kWideScale;
    if (furthest < kBackToNarrow) scaleEnd_ = kNarrowScale;
}

void BiasGauge::resetPeaks() {
    lowest_.reset();
    highest_.reset();
    if (!shown().trail.empty()) holdPeak(shown().trail.back().biasPercent);
    chooseScale();
    update();
    emit peaksReset();
}

void BiasGauge::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_P && event->modifiers() == Qt::NoModifier)
        resetPeaks();
    else
        Panel::keyPressEvent(event);
}

void BiasGauge::paintBody(QPainter& painter, const QRectF& body) {
    const double unit = std::clamp(std::min(body.width() / 29.0, body.height() / 19.0), 9.0, 60.0);  // small text, px
    const double scaleHeight = BiasScale::heightFor(unit);
    QRectF area(body.left(), body.top(), body.width(), body.height() - scaleHeight);
    if (bias_ && !did_.isEmpty()) {
        const double px = std::max(1.05 * unit, 11.5);
        const double height = adviceHeight(px, body.height());
        const QRectF advice(area.left(), area.bottom() - height, area.width(), height);
        paintAdvice(painter, advice, px);
        paintDigits(painter, area.adjusted(0, 0, 0, -advice.height()), 1.75 * unit);
    } else if (bias_) {
        paintDigits(painter, area, 1.75 * unit);
    } else {
        paintReason(painter, area, 1.1 * unit);
    }

    painter.setFont(theme::text(unit));
    BiasScale scale{scaleEnd_, limit_, {}, lowest_, highest_, !resting_, open_};
    if (bias_) scale.value = bias_->value;
    scale.paint(painter, QRectF(body.left(), body.bottom() - scaleHeight, body.width(), scaleHeight));
}

// The direction as a shape and in words, together in the middle, smaller where they would not fit. What else is out
// stands beside a bias that is in, so that a green word alone never speaks for the machine. A bias whose uncertainty
// reaches over its limit is called neither.
void BiasGauge::paintWords(QPainter& painter, const QRectF& row, double wordPx, bool out) const {
    constexpr double kShape = 0.62;  // of the letters' height
    constexpr double kRoom = 1.1;    // for the shape and the gap after it
    const QString besides = others_.isEmpty() ? QString() : QStringLiteral(", ") + others_;
    const auto widthAt = [&](double px) {
        return QFontMetricsF(theme::text(px, QFont::DemiBold)).horizontalAdvance(words_ + besides) + kRoom * px;
    };
    wordPx *= std::min(1.0, row.width() / widthAt(wordPx));
    const double width = widthAt(wordPx);
    painter.setFont(theme::text(wordPx, QFont::DemiBold));
    painter.setPen(resting_ || open_ ? theme::kSecondary : out ? theme::kOut : theme::kInOrder);
    const double left = row.center().x() - width / 2;
    const int side = !out ? 0 : bias_->value > 0.0 ? 1 : -1;
    if (!open_ && !foreign_)
        drawLimitShape(painter, {left + kShape * wordPx / 2, row.center().y()}, kShape * wordPx, side,
                       painter.pen().color());
    QRectF text(left + kRoom * wordPx, row.top(), width, row.height());
    painter.drawText(text, Qt::AlignLeft | Qt::AlignVCenter, words_);
    text.translate(painter.fontMetrics().horizontalAdvance(words_), 0);
    painter.setPen(othersOut_ && !resting_ ? theme::kOut : theme::kSecondary);
    painter.drawText(text, Qt::AlignLeft | Qt::AlignVCenter, besides);
}

// Digits as large as the area takes, the words below, the small words last.
void BiasGauge::paintDigits(QPainter& painter, const QRectF& area, double wordPx) {
    const double smallPx = wordPx / 1.6;
    const double below = 1.35 * wordPx + 1.6 * smallPx;
    const double digitsHeight = area.height() - below;
    const double part = digits_.contains(u',') ? 0.9 : 1.0;  // a decimal comma reaches below the line
    const QFontMetricsF trial(theme::display(100));
    const double widthAt100 = figuresWidth(trial, QStringLiteral("+88.8")) + 60;  // with the percent sign
    const double px = std::min(1.22 * part * digitsHeight, 100 * 0.94 * area.width() / widthAt100);
    const bool out = !open_ && std::abs(bias_->value) > limit_;
    const QColor color = resting_ ? theme::kSecondary : out ? theme::kOut : theme::kInk;

    const QFont big = theme::display(px);
    const QFont unit = theme::display(0.42 * px);
    const QString digits = digits_.front().isDigit() ? QStringLiteral(" ") + digits_ : digits_;
    const double digitsWidth = figuresWidth(QFontMetricsF(big), digits);
    const double gap = 0.1 * px;
    const double whole = digitsWidth + gap + QFontMetricsF(unit).horizontalAdvance(u'%');
    const double left = area.center().x() - whole / 2;
    const double cap = QFontMetricsF(big).capHeight();
    digitHeight_ = cap;
    const double baseline = area.top() + (part * digitsHeight + cap) / 2;
    painter.setPen(color);
    painter.setFont(big);
    drawFigures(painter, {left, baseline}, digits);
    painter.setFont(unit);
    painter.drawText(QPointF(left + digitsWidth + gap, baseline), QStringLiteral("%"));

    QRectF row(area.left(), area.top() + digitsHeight, area.width(), 1.35 * wordPx);
    paintWords(painter, row, wordPx, out);
    row = QRectF(area.left(), row.bottom(), area.width(), 1.4 * smallPx);
    painter.setPen(theme::kSecondary);
    drawWithin(painter, row, small_, smallPx);
}

// One line for what the last nudge did and one for what comes next, so that nothing moves as the words change. Where
// there is little room the digits need it more than the first, which the trail says as well.
double BiasGauge::adviceHeight(double px, double room) const {
    return (room < kRoomForBoth && !next_.isEmpty() ? 1 : 2) * 1.35 * px;
}

void BiasGauge::paintAdvice(QPainter& painter, const QRectF& area, double px) const {
    QRectF line(area.left(), area.top(), area.width(), 1.35 * px);
    if (area.height() > 1.5 * line.height()) {
        painter.setPen(theme::kSecondary);
        drawWithin(painter, line, did_, px);
        line.translate(0, line.height());
    }
    if (next_.isEmpty()) return;
    painter.setPen(theme::kInk);
    drawWithin(painter, line, next_, px, QFont::DemiBold);
}

void BiasGauge::paintReason(QPainter& painter, const QRectF& area, double px) {
    const double digitsHeight = 0.5 * area.height();
    painter.setPen(theme::kSecondary);
    painter.setFont(theme::display(0.8 * digitsHeight));
    painter.drawText(QRectF(area.left(), area.top(), area.width(), digitsHeight), Qt::AlignCenter, digits_);
    painter.setFont(theme::text(px));
    painter.drawText(QRectF(area.left(), area.top() + digitsHeight, area.width(), area.height() - digitsHeight),
                     Qt::AlignHCenter | Qt::AlignTop | Qt::TextWordWrap, words_);
}

}  // namespace trueunit
