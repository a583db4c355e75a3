// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <memory>

#include "core/acquire/recent_input.h"

class QDoubleSpinBox;
class QLabel;

namespace trueunit {

// The trim of the card's clock: typed, or measured from a reference tone in the input that is at hand. Window's thread.
class ClockDialog : public QDialog {
    Q_OBJECT

public:
    ClockDialog(double ppm, std::shared_ptr<const RecentInput> input, QWidget* parent = nullptr);

    double ppm() const;  // parts in a million, fast is positive
    void measure();
    QString message() const;
    void setTone(double hz);

private:
    std::shared_ptr<const RecentInput> input_;  // nullptr: there has been none
    QDoubleSpinBox* ppm_;
    QDoubleSpinBox* tone_;
    QLabel* message_;
};

}  // namespace trueunit
