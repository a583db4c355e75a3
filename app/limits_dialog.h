// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <array>
#include <vector>

#include "core/report/limits.h"

class QComboBox;
class QDoubleSpinBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace trueunit {

// The sets of limits with their origin, one to be chosen; any can be changed and kept as an own one. Window's thread.
class LimitsDialog : public QDialog {
    Q_OBJECT

public:
    explicit LimitsDialog(const Limits& now, QWidget* parent = nullptr);

    const Limits& chosen() const { return shown_; }  // what accepting means

private:
    void fill(const std::string& name);
    void show(const Limits& limits);
    Limits typed() const;
    void edited();
    void keepOwn();
    void removeOwn();
    void use();
    void say(const QString& sentence);

    std::vector<Limits> sets_;
    Limits shown_;
    bool filling_ = false;
    QComboBox* choice_;
    QLabel* origin_;
    std::array<QDoubleSpinBox*, 5> fields_{};
    QLineEdit* title_;
    QPushButton* keep_;
    QPushButton* remove_;
    QLabel* message_;
};

}  // namespace trueunit
