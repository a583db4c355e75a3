// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/first_steps.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QShortcut>
#include <algorithm>

#include "widgets/theme.h"

namespace trueunit {

namespace {
constexpr int kCardWidth = 320;
constexpr int kApart = 14;  // between the card and what it speaks of
constexpr int kEdge = 8;    // of the window
}  // namespace

FirstSteps::FirstSteps(std::vector<Step> steps, QWidget* window)
    : QWidget(window),
      steps_(std::move(steps)),
      card_(new QWidget(window)),
      words_(new QLabel),
      next_(new QPushButton) {
    setAttribute(Qt::WA_TransparentForMouseEvents);  // the outline only; the card is a widget of its own
    card_->setObjectName(QStringLiteral("card"));
    card_->setAttribute(Qt::WA_StyledBackground);
    card_->setStyleSheet(QStringLiteral("#card { background: %1; border: 2px solid %2; border-radius: 6px; }")
                             .arg(theme::kPanel.name(), theme::kBlue.name()));
    words_->setWordWrap(true);
    words_->setFont(theme::text(theme::kTextPx + 1));
    auto* enough = new QPushButton(tr("Enough"));
    auto* buttons = new QHBoxLayout;
    buttons->addStretch(1);
    buttons->addWidget(enough);
    buttons->addWidget(next_);
    auto* column = new QVBoxLayout(card_);
    column->addWidget(words_);
    column->addLayout(buttons);
    connect(enough, &QPushButton::clicked, this, &FirstSteps::end);
    connect(next_, &QPushButton::clicked, this, &FirstSteps::next);
    window->installEventFilter(this);
    show();
    card_->show();
    place();
}

void FirstSteps::next() {
    if (at_ + 1 >= steps_.size()) return end();
    ++at_;
    place();
}

void FirstSteps::end() {
    emit ended();
    card_->deleteLater();
    deleteLater();
    card_->hide();
    hide();
}

bool FirstSteps::eventFilter(QObject* watched, QEvent* event) {
    if (watched == parent() && (event->type() == QEvent::Resize || event->type() == QEvent::LayoutRequest)) place();
    return QWidget::eventFilter(watched, event);
}

QRect FirstSteps::targetRect() const {
    const QWidget* target = steps_[at_].target;
    return {target->mapTo(parentWidget(), QPoint(0, 0)), target->size()};
}

// Beside what it speaks of, so that nothing of it is hidden: left where there is room, or above, or else below.
void FirstSteps::place() {
    words_->setText(QStringLiteral("<b>%1/%2</b> &nbsp;%3").arg(number()).arg(steps_.size()).arg(steps_[at_].words));
    next_->setText(at_ + 1 < steps_.size() ? tr("Next") : tr("To work"));
    card_->setAccessibleName(steps_[at_].words);
    card_->setFixedWidth(kCardWidth);
    card_->setFixedHeight(std::max(card_->layout()->heightForWidth(kCardWidth), card_->sizeHint().height()));
    const QRect target = targetRect();
    QPoint at(target.left() - kCardWidth - kApart, target.center().y() - card_->height() / 2);
    if (at.x() < kEdge) at = {target.left() + kApart, target.top() - card_->height() - kApart};
    if (at.y() < kEdge) at = {target.right() - kCardWidth, target.bottom() + kApart};
    at.setY(std::clamp(at.y(), kEdge, std::max(kEdge, parentWidget()->height() - card_->height() - kEdge)));
    at.setX(std::clamp(at.x(), kEdge, std::max(kEdge, parentWidget()->width() - kCardWidth - kEdge)));
    card_->move(at);
    setGeometry(parentWidget()->rect());
    raise();
    card_->raise();
    update();
}

void FirstSteps::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(theme::pen(theme::kBlue, 3.0));
    painter.drawRoundedRect(QRectF(targetRect()).adjusted(1.5, 1.5, -1.5, -1.5), 6.0, 6.0);
}

}  // namespace trueunit
