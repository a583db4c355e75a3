// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

class QDoubleSpinBox;

namespace trueunit {

// The part of the swing at which an instant is taken. Window's thread.
class SliceDialog : public QDialog {
    Q_OBJECT

public:
    explicit SliceDialog(double percent, QWidget* parent = nullptr);

    double percent() const;

private:
    QDoubleSpinBox* percent_;
};

}  // namespace trueunit
