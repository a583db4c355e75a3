// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "core/options.h"

class QComboBox;
class QLineEdit;

namespace trueunit {

// The machine in plain sight: its name, code, speed and stop, and over how many characters the readings go.
// Shows what is set and says what is wanted; changes nothing itself.
class MachineBar : public QWidget {
    Q_OBJECT

public:
    explicit MachineBar(QWidget* parent = nullptr);

    void show(const Options& options);
    using QWidget::show;
    void setMachine(const QString& name);
    QString machine() const;

    void focusMachine();
    void focusSpeed();
    void focusStop();
    void focusCode();
    void stepWindow(int steps);  // to the next longer window, round and round

signals:
    void wanted(const trueunit::Options& options);
    void refused(const QString& sentence);  // what was typed is no number
    void renamed(const QString& name);

private:
    void readFields();
    void fillChoices();

    Options shown_;
    QLineEdit* name_;
    QComboBox* code_;
    QComboBox* speed_;
    QComboBox* stop_;
    QComboBox* window_;
};

}  // namespace trueunit
