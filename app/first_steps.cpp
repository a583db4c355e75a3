// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/first_steps.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QShortcut>
#include <algorithm>
#include <limits>

#include "widgets/panel.h"
#include "widgets/theme.h"

namespace trueunit {

namespace {
constexpr int kCardWidth = 440;
constexpr int kApart = 14;      // between the card and what it speaks of
constexpr int kEdge = 8;        // of the window
constexpr int kBeginning = 90;  // of the lines of a panel
}  // namespace

FirstSteps::FirstSteps(std::vector<Step> steps, std::vector<QWidget*> spared, QWidget* window)
    : QWidget(window),
      steps_(std::move(steps)),
      spared_(std::move(spared)),
      card_(new QWidget(window)),
      words_(new QLabel),
      enough_(new QPushButton(tr("Enough"))),
      next_(new QPushButton) {
    setAttribute(Qt::WA_TransparentForMouseEvents);  // the outline only; the card is a widget of its own
    card_->setObjectName(QStringLiteral("card"));
    card_->setAttribute(Qt::WA_StyledBackground);
    card_->setStyleSheet(QStringLiteral("#card { background: %1; border: 2px solid %2; border-radius: 6px; }")
                             .arg(theme::kPanel.name(), theme::kBlue.name()));
    words_->setWordWrap(true);
    words_->setFont(theme::text(theme::kTextPx + 1));
    words_->setAlignment(Qt::AlignLeft | Qt::AlignTop);  // the card is as tall as the longest step wants
    auto* buttons = new QHBoxLayout;
    buttons->addStretch(1);
    buttons->addWidget(enough_);
    buttons->addWidget(next_);
    auto* column = new QVBoxLayout(card_);
    column->addWidget(words_, 1);
    column->addLayout(buttons);
    connect(enough_, &QPushButton::clicked, this, &FirstSteps::end);
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

QRect FirstSteps::rectOf(const QWidget* target) const {
    return {target->mapTo(parentWidget(), QPoint(0, 0)), target->size()};
}

int FirstSteps::tallestCard() {
    int tallest = 0;
    for (std::size_t i = 0; i < steps_.size(); ++i) {
        words_->setText(wordsOf(i));
        tallest = std::max(tallest, card_->layout()->heightForWidth(kCardWidth));
    }
    return tallest;
}

QString FirstSteps::wordsOf(std::size_t i) const {
    return QStringLiteral("<b>%1/%2</b> &nbsp;%3").arg(i + 1).arg(steps_.size()).arg(steps_[i].words);
}

// A panel read without the first letters of its lines is not read at all.
bool FirstSteps::cutsBeginnings(const QRect& card) const {
    for (const Panel* panel : parentWidget()->findChildren<Panel*>()) {
        if (!panel->isVisible()) continue;
        const QRect about(panel->mapTo(parentWidget(), QPoint(0, 0)), panel->size());
        if (card.intersects({about.left(), about.top(), kBeginning, about.height()})) return true;
    }
    return false;
}

// One place for all steps, so that the hand need not follow the button: it hides nothing they speak of, and is as near
// to it as can be.
std::optional<QPoint> FirstSteps::placeForAll(Sparing sparing) const {
    constexpr int kRaster = 20;
    std::optional<QPoint> best;
    int least = std::numeric_limits<int>::max();
    for (int y = kEdge; y + card_->height() + kEdge <= parentWidget()->height(); y += kRaster)
        for (int x = kEdge; x + kCardWidth + kEdge <= parentWidget()->width(); x += kRaster) {
            const QRect card(x, y, kCardWidth, card_->height());
            int far = 0;
            bool free = true;
            for (std::size_t i = 0; i < steps_.size() && free; ++i) {
                const QRect target = targetRect(i);
                free = !target.adjusted(-kApart, -kApart, kApart, kApart).intersects(card);
                far += (target.center() - card.center()).manhattanLength();
            }
            if (!free || far >= least || (sparing != Sparing::targets && cutsBeginnings(card))) continue;
            const bool hides = std::any_of(spared_.begin(), spared_.end(),
                                           [&](const QWidget* w) { return rectOf(w).intersects(card); });
            if (sparing == Sparing::all && hides) continue;
            least = far;
            best = card.topLeft();
        }
    return best;
}

// Where no place does for all, beside what it speaks of: left where there is room, or above, or else below.
QPoint FirstSteps::placeBeside(const QRect& target) const {
    QPoint at(target.left() - kCardWidth - kApart, target.center().y() - card_->height() / 2);
    if (at.x() < kEdge) at = {target.left() + kApart, target.top() - card_->height() - kApart};
    if (at.y() < kEdge) at = {target.right() - kCardWidth, target.bottom() + kApart};
    at.setY(std::clamp(at.y(), kEdge, std::max(kEdge, parentWidget()->height() - card_->height() - kEdge)));
    at.setX(std::clamp(at.x(), kEdge, std::max(kEdge, parentWidget()->width() - kCardWidth - kEdge)));
    return at;
}

void FirstSteps::place() {
    card_->setFixedWidth(kCardWidth);
    card_->setFixedHeight(tallestCard());
    words_->setText(wordsOf(at_));
    enough_->setVisible(at_ + 1 < steps_.size());  // on the last one both would do the same
    next_->setText(at_ + 1 < steps_.size() ? tr("Next") : tr("To work"));
    card_->setAccessibleName(steps_[at_].words);
    std::optional<QPoint> place;
    for (const Sparing sparing : {Sparing::all, Sparing::beginnings, Sparing::targets})
        if (!place) place = placeForAll(sparing);
    card_->move(place.value_or(placeBeside(targetRect(at_))));
    setGeometry(parentWidget()->rect());
    raise();
    card_->raise();
    update();
}

void FirstSteps::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(theme::pen(theme::kBlue, 3.0));
    painter.drawRoundedRect(QRectF(targetRect(at_)).adjusted(1.5, 1.5, -1.5, -1.5), 6.0, 6.0);
}

}  // namespace trueunit
