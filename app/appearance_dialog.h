// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

#include "app/appearance.h"

class QComboBox;

namespace trueunit {

// Language, size and colours of the window, from the next start on. Window's thread.
class AppearanceDialog : public QDialog {
    Q_OBJECT

public:
    explicit AppearanceDialog(const Appearance& now, QWidget* parent = nullptr);
    Appearance chosen() const;

private:
    QComboBox* language_;
    QComboBox* size_;
    QComboBox* ground_;
};

}  // namespace trueunit
