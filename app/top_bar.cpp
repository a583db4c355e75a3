// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/top_bar.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QPainter>
#include <QToolButton>
#include <QVBoxLayout>

#include "app/captioned.h"
#include "app/machine_bar.h"
#include "app/session.h"
#include "app/source_picker.h"
#include "widgets/level_meter.h"
#include "widgets/theme.h"

namespace trueunit {

namespace {

constexpr int kRowHeight = 46;
constexpr int kOneRowFrom = 1350;   // logical pixels of width
constexpr int kWideRowsFrom = 820;  // two rows, level beside the input
constexpr int kBareLevel = 210;     // segments and figures of the meter, without the words beside them
constexpr int kBarSide = 16;

// A shape and a word, so that neither colour nor the word alone carries it.
QString stateWords(SignalState state) {
    switch (state) {
        case SignalState::waiting:
            return TopBar::tr("\u25cb waiting");
        case SignalState::silent:
            return TopBar::tr("\u25cb silent");
        case SignalState::searching:
            return TopBar::tr("\u25d0 searching");
        case SignalState::reading:
            return TopBar::tr("\u25cf listening");
        case SignalState::idle:
            return TopBar::tr("\u25a0 at rest");
    }
    return {};
}

}  // namespace

TopBar::TopBar(Session& session, const QList<QAction*>& buttons, QWidget* parent)
    : QWidget(parent),
      session_(session),
      source_(new SourcePicker(session)),
      machine_(new MachineBar),
      level_(new LevelMeter),
      state_(new QLabel),
      rows_{new QHBoxLayout, new QHBoxLayout} {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(kBarSide, 6, kBarSide, 6);
    column->setSpacing(6);
    for (QHBoxLayout* row : rows_) {
        row->setSpacing(12);
        column->addLayout(row);
    }
    input_ = makeInput();
    buttons_ = makeButtons(buttons);
    arrange();
}

QWidget* TopBar::makeInput() {
    auto* group = new QWidget(this);
    auto* row = new QHBoxLayout(group);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    state_->setFont(theme::text(theme::kTextPx, QFont::DemiBold));
    state_->setFixedWidth(state_->fontMetrics().horizontalAdvance(stateWords(SignalState::searching)) + 12);
    source_->setProperty(theme::kHelpPage, tr("connect.md#the-sound-input", "page of the help"));
    level_->setProperty(theme::kHelpPage, tr("connect.md#levels-and-grounds", "page of the help"));
    row->addWidget(captioned(tr("Input"), source_), 8, Qt::AlignBottom);
    row->addWidget(captioned(tr("State"), state_), 0, Qt::AlignBottom);
    row->addStretch(1);
    return group;
}

QWidget* TopBar::makeButtons(const QList<QAction*>& actions) {
    auto* group = new QWidget(this);
    auto* row = new QHBoxLayout(group);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(5);
    for (QAction* action : actions) {
        auto* button = new QToolButton(group);
        button->setDefaultAction(action);
        if (action->menu()) button->setPopupMode(QToolButton::InstantPopup);
        button->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
        button->setFixedHeight(28);
        button->setAccessibleDescription(action->statusTip());
        row->addWidget(button, 0, Qt::AlignBottom);
    }
    auto* first = qobject_cast<QToolButton*>(row->itemAt(0)->widget());  // the one that is used all the time
    first->setMinimumWidth(84);                                          // holds either of its texts
    first->setStyleSheet(QStringLiteral("QToolButton { background: %1; color: %2; border-color: %1; font-weight: 600; }"
                                        "QToolButton:checked { background: %3; border-color: %3; }")
                             .arg(theme::kInk.name(), theme::kPanel.name(), theme::kBlue.name()));
    return group;
}

void TopBar::arrange() {
    const int shape = width() >= kOneRowFrom ? 0 : width() >= kWideRowsFrom ? 1 : 2;
    if (shape == shape_) return;
    shape_ = shape;
    for (QWidget* part : {input_, static_cast<QWidget*>(level_), static_cast<QWidget*>(machine_), buttons_})
        for (QHBoxLayout* row : rows_) row->removeWidget(part);
    const auto place = [this](std::size_t row, QWidget* part, int stretch) {
        rows_[row]->addWidget(part, stretch, Qt::AlignBottom);
    };
    const bool narrow = shape == 2;  // there the buttons need less room beside the input than beside the machine
    const std::size_t second = shape == 0 ? 0 : 1;
    place(0, input_, 3);
    if (!narrow) place(0, level_, 2);
    place(second, machine_, 4);
    if (narrow) place(1, level_, 2);
    place(narrow ? 0 : second, buttons_, 0);
    if (shape == 1)
        level_->setMaximumWidth(QWIDGETSIZE_MAX);
    else
        level_->setMaximumWidth(kBareLevel);
    setFixedHeight(shape == 0 ? kRowHeight + 12 : 2 * kRowHeight + 18);
}

QString TopBar::inputWords() const { return level_->inputWords(); }

QSize TopBar::minimumSizeHint() const { return {660, kRowHeight}; }

void TopBar::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange();
}

void TopBar::show(const std::shared_ptr<const Snapshot>& snapshot) {
    level_->show(snapshot);
    if (!snapshot) return;
    signal_ = snapshot->state;
    showPlayback();
}

void TopBar::showPlayback() {
    const auto playback = session_.playback();
    const bool ended = session_.ended(), paused = playback && playback->paused;
    level_->setStill(ended || paused);
    const QString state = ended ? tr("\u25a0 ended") : paused ? tr("\u25a1 paused") : stateWords(signal_);
    if (state != state_->text()) state_->setText(state);
}

QString TopBar::stateShown() const { return state_->text(); }

void TopBar::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), theme::kPanel);
    painter.setPen(theme::pen(theme::kBorder));
    painter.drawLine(0, height() - 1, width(), height() - 1);
}

}  // namespace trueunit
