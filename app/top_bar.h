// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QWidget>
#include <array>
#include <memory>

#include "core/report/snapshot.h"

class QAction;
class QHBoxLayout;
class QLabel;

namespace trueunit {

class LevelMeter;
class MachineBar;
class Session;
class SourcePicker;

// The top of the window, read from the left: what comes in, how it is, which machine sends it, and what to do with
// the picture. One row where there is room, two where there is not; nothing in it moves when words change.
class TopBar : public QWidget {
    Q_OBJECT

public:
    TopBar(Session& session, const QList<QAction*>& buttons, QWidget* parent = nullptr);

    void show(const std::shared_ptr<const Snapshot>& snapshot);  // always the live one
    using QWidget::show;
    void showPlayback();  // a recording that is paused or has ended stands above the state of its signal
    QString stateShown() const;
    QString inputWords() const;  // what has been found of the wiring
    SourcePicker& source() { return *source_; }
    MachineBar& machine() { return *machine_; }
    QSize minimumSizeHint() const override;

protected:
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    QWidget* makeInput();
    QWidget* makeButtons(const QList<QAction*>& actions);
    void arrange();

    const Session& session_;
    SourcePicker* source_;
    MachineBar* machine_;
    LevelMeter* level_;
    QLabel* state_;
    std::array<QHBoxLayout*, 2> rows_;
    QWidget* input_ = nullptr;
    QWidget* buttons_ = nullptr;
    SignalState signal_ = SignalState::waiting;
    int shape_ = -1;  // which of the three arrangements is laid out
};

}  // namespace trueunit
