// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/top_bar.h"

#include <QAction>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QToolButton>

#include "app/captioned.h"
#include "app/machine_bar.h"
#include "app/source_picker.h"
#include "widgets/level_meter.h"
#include "widgets/theme.h"

namespace trueunit {

namespace {
constexpr int kRowHeight = 46;
constexpr int kOneRowFrom = 1300;  // logical pixels of width
constexpr int kSide = 16;

// A shape and a word, so that neither colour nor the word alone carries it.
QString stateWords(SignalState state) {
    switch (state) {
        case SignalState::waiting:
            return QStringLiteral("\u25cb waiting");
        case SignalState::silent:
            return QStringLiteral("\u25cb silent");
        case SignalState::searching:
            return QStringLiteral("\u25d0 searching");
        case SignalState::reading:
            return QStringLiteral("\u25cf listening");
        case SignalState::idle:
            return QStringLiteral("\u25a0 at rest");
    }
    return {};
}

}  // namespace

TopBar::TopBar(Session& session, const QList<QAction*>& buttons, QWidget* parent)
    : QWidget(parent),
      source_(new SourcePicker(session)),
      machine_(new MachineBar),
      level_(new LevelMeter),
      state_(new QLabel),
      grid_(new QGridLayout(this)) {
    grid_->setContentsMargins(kSide, 6, kSide, 6);
    grid_->setHorizontalSpacing(16);
    grid_->setVerticalSpacing(6);
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
    row->addWidget(captioned(tr("Input"), source_), 3);
    row->addWidget(captioned(tr("State"), state_));
    row->addWidget(level_, 4);
    return group;
}

QWidget* TopBar::makeButtons(const QList<QAction*>& actions) {
    auto* group = new QWidget(this);
    auto* row = new QHBoxLayout(group);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    for (QAction* action : actions) {
        auto* button = new QToolButton(group);
        button->setDefaultAction(action);
        button->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
        button->setMinimumHeight(32);
        row->addWidget(button, 0, Qt::AlignBottom);
    }
    return group;
}

void TopBar::arrange() {
    const int rows = width() >= kOneRowFrom ? 1 : 2;
    if (rows == rows_) return;
    rows_ = rows;
    for (QWidget* part : {input_, static_cast<QWidget*>(machine_), buttons_}) grid_->removeWidget(part);
    if (rows == 1) {
        grid_->addWidget(input_, 0, 0);
        grid_->addWidget(machine_, 0, 1);
        grid_->addWidget(buttons_, 0, 2);
    } else {
        grid_->addWidget(input_, 0, 0, 1, 2);
        grid_->addWidget(machine_, 1, 0);
        grid_->addWidget(buttons_, 1, 1);
    }
    grid_->setColumnStretch(0, 1);
    setFixedHeight(rows * (kRowHeight + 6) + 6);
}

QSize TopBar::minimumSizeHint() const { return {660, kRowHeight}; }

void TopBar::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange();
}

void TopBar::show(const std::shared_ptr<const Snapshot>& snapshot) {
    level_->show(snapshot);
    if (!snapshot) return;
    const QString state = stateWords(snapshot->state);
    if (state != state_->text()) state_->setText(state);
}

void TopBar::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), theme::kPanel);
    painter.setPen(theme::pen(theme::kBorder));
    painter.drawLine(0, height() - 1, width(), height() - 1);
}

}  // namespace trueunit
