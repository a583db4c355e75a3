// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/panel.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QHelpEvent>
#include <QPainter>
#include <QTimer>
#include <QToolTip>
#include <QVBoxLayout>
#include <cmath>
#include <utility>

#include "widgets/theme.h"

namespace trueunit {

namespace {

constexpr int kHeaderHeight = 22;
constexpr int kHeaderTop = 9;
constexpr int kHeaderGap = 6;  // to the body
constexpr double kRemarkGap = 16;
constexpr qint64 kBetweenWordsMs = 2000;

QColor colorOf(Panel::Tone tone) {
    switch (tone) {
        case Panel::Tone::inOrder:
            return theme::kInOrder;
        case Panel::Tone::out:
            return theme::kOut;
        case Panel::Tone::quiet:
            break;
    }
    return theme::kSecondary;
}

}  // namespace

Panel::Panel(const QString& title, QWidget* parent)
    : QWidget(parent),
      title_(title),
      snapshot_(std::make_shared<const Snapshot>()),
      tools_(new QHBoxLayout),
      outer_(new QVBoxLayout(this)) {
    setAccessibleName(title);
    outer_->setContentsMargins(theme::kMargin, kHeaderTop, theme::kMargin, theme::kMargin - 2);
    outer_->setSpacing(kHeaderGap);
    tools_->setContentsMargins(0, 0, 0, 0);
    tools_->setSpacing(6);
    auto* header = new QHBoxLayout;
    header->setContentsMargins(0, 0, 0, 0);
    header->addStretch(1);
    header->addLayout(tools_);
    header->addStrut(kHeaderHeight);
    outer_->addLayout(header);
    outer_->addStretch(1);  // gives way to the body layout
}

void Panel::show(const SnapshotPtr& snapshot) {
    static const SnapshotPtr kNoInput = std::make_shared<const Snapshot>();
    const SnapshotPtr& next = snapshot ? snapshot : kNoInput;
    if (next == snapshot_) return;
    snapshot_ = next;
    refresh(*snapshot_);
}

void Panel::setTitle(const QString& title) {
    if (title == title_) return;
    title_ = title;
    setAccessibleName(title);
    update();
}

void Panel::setRemark(const QString& remark, Tone tone, const QStringList& shorter) {
    if (remark == remark_ && tone == tone_ && shorter == shorter_) return;
    remark_ = remark;
    shorter_ = shorter;
    tone_ = tone;
    update(0, 0, width(), kHeaderTop + kHeaderHeight + 1);
}

void Panel::setFramed(bool framed) {
    framed_ = framed;
    update();
}

QRectF Panel::body() const {
    const double top = kHeaderTop + kHeaderHeight + kHeaderGap;
    return QRectF(rect()).adjusted(theme::kMargin, top, -theme::kMargin, -(theme::kMargin - 2));
}

QVBoxLayout* Panel::bodyLayout() {
    if (!body_) {
        body_ = new QVBoxLayout;
        body_->setContentsMargins(0, 0, 0, 0);
        body_->setSpacing(0);
        delete outer_->takeAt(1);
        outer_->addLayout(body_, 1);
    }
    return body_;
}

void Panel::addTool(QWidget* tool) {
    tool->setFixedHeight(kHeaderHeight);
    tools_->addWidget(tool);
}

// Somebody who listens hears what changed at most every two seconds, and the newest then.
void Panel::describe(const QString& description) {
    description_ = description;
    if (!QAccessible::isActive() || !lastSaid_.isValid() || lastSaid_.hasExpired(kBetweenWordsMs))
        sayDescription();
    else if (!std::exchange(pending_, true))
        QTimer::singleShot(kBetweenWordsMs - lastSaid_.elapsed(), this, &Panel::sayDescription);
}

void Panel::sayDescription() {
    pending_ = false;
    if (description_ == accessibleDescription()) return;
    lastSaid_.start();
    setAccessibleDescription(description_);  // tells assistive tools
}

void Panel::paintBody(QPainter&, const QRectF&) {}

void Panel::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (framed_) {
        painter.setPen(theme::pen(hasFocus() ? theme::kBlue : theme::kBorder));
        painter.setBrush(theme::kPanel);
        painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 6, 6);
    } else {
        painter.fillRect(rect(), theme::kPanel);
    }
    paintHeader(painter);
    paintBody(painter, body());
}

double Panel::toolsLeft() const { return tools_->count() > 0 ? tools_->geometry().left() : width() - theme::kMargin; }

QRectF Panel::remarkRoom() const {
    const double titleWidth = QFontMetricsF(theme::text(theme::kTitlePx, QFont::DemiBold)).horizontalAdvance(title_);
    const double left = theme::kMargin + titleWidth + kRemarkGap;
    const double right = tools_->count() > 0 ? toolsLeft() - kRemarkGap : width() - theme::kMargin;
    return {left, kHeaderTop, std::max(0.0, right - left), kHeaderHeight};
}

QString Panel::fittingRemark() const {
    const QFontMetrics metrics(theme::text(theme::kSmallPx));
    const double room = remarkRoom().width();
    const auto fits = [&](const QString& words) { return metrics.horizontalAdvance(words) <= room; };
    if (fits(remark_)) return remark_;
    for (const QString& words : shorter_)
        if (fits(words)) return words;
    if (!shorter_.isEmpty()) return {};  // rather nothing than half a word
    return metrics.elidedText(remark_, Qt::ElideRight, static_cast<int>(std::ceil(room)));
}

void Panel::paintHeader(QPainter& painter) const {
    const QRectF row(theme::kMargin, kHeaderTop, width() - 2 * theme::kMargin, kHeaderHeight);
    painter.setFont(theme::text(theme::kTitlePx, QFont::DemiBold));
    painter.setPen(theme::kInk);
    painter.drawText(row, Qt::AlignLeft | Qt::AlignVCenter, title_);
    if (remark_.isEmpty()) return;
    painter.setFont(theme::text(theme::kSmallPx));
    painter.setPen(colorOf(tone_));
    painter.drawText(remarkRoom(), Qt::AlignRight | Qt::AlignVCenter, fittingRemark());
}

bool Panel::event(QEvent* event) {
    if (event->type() != QEvent::ToolTip) return QWidget::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    const bool cut = remarkRoom().contains(help->pos()) && fittingRemark() != remark_;
    if (!cut) return QWidget::event(event);
    QToolTip::showText(help->globalPos(), remark_, this);
    return true;
}

}  // namespace trueunit
